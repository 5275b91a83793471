package startwater.app.view;

import java.util.ArrayList;
import java.util.List;
import javafx.geometry.Insets;
import javafx.geometry.VPos;
import javafx.scene.control.Button;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TitledPane;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.RowConstraints;
import javafx.scene.layout.VBox;
import startwater.app.chart.FanChart;
import startwater.app.chart.OptionBars;
import startwater.app.chart.Tick;
import startwater.app.model.DrillModel;
import startwater.app.theme.Look;
import startwater.drill.Calendar;
import startwater.drill.DrillRun.TruthPoint;
import startwater.drill.VisitRecord;
import startwater.fish.Stressor;
import startwater.score.Component;
import startwater.score.ReadingMark;
import startwater.score.Verdict;
import startwater.score.Verdict.Line.Severity;
import startwater.strip.Pad;
import startwater.text.DrillWords;
import startwater.text.Texts;

/** One decision looked back on: three sentences and one chart first, the rest unfolds. */
public final class DebriefScreen extends BorderPane {
    private static final double STACK_FROM = 1.45;
    private static final int SHOWN_OPTIONS = 7;

    private final Verdict verdict;
    private final VisitRecord decided;
    private final DrillModel model;
    private final DrillWords words;
    private final Texts texts;
    private final boolean fishIn;

    DebriefScreen(
            Verdict verdict, VisitRecord decided, DrillModel model, DrillWords words, boolean fishIn, Runnable goOn) {
        this.verdict = verdict;
        this.decided = decided;
        this.model = model;
        this.words = words;
        this.texts = words.texts();
        this.fishIn = fishIn;
        setTop(topBar());
        setBottom(bottom(goOn));
        sceneProperty().addListener((p, was, is) -> setCenter(body()));
        setCenter(body());
    }

    private HBox topBar() {
        HBox bar = Ui.row(
                16,
                Ui.text(words.clock(decided.minute()), "sw-strong"),
                Ui.text(words.scenario(model.run().scenario()).title()),
                Ui.grow(),
                Ui.text(texts.text("win.lookedBack"), "sw-quiet"));
        bar.getStyleClass().addAll("sw-panel", "sw-hairline-bottom");
        bar.setPadding(new Insets(12, 24, 12, 24));
        return bar;
    }

    private ScrollPane body() {
        boolean stack = Look.of(getScene()).scale() >= STACK_FROM;
        VBox page = new VBox(16);
        page.setPadding(new Insets(16, 24, 16, 24));
        Region head = sentences();
        Region marks = marks();
        Region options = options();
        Region fan = fan();
        Region causes = folded("win.causes", causes(), !stack);
        Region known = folded("win.known", known(), !stack);
        Region rules = folded("win.rules", rules(), !stack);
        if (stack) {
            page.getChildren().addAll(head, marks, options, fan, causes, known, rules);
        } else {
            page.getChildren().addAll(beside(head, marks, 56), beside(options, fan, 50));
            GridPane three = new GridPane();
            three.setHgap(24);
            for (int c = 0; c < 3; c++) {
                javafx.scene.layout.ColumnConstraints third = new javafx.scene.layout.ColumnConstraints();
                third.setPercentWidth(100.0 / 3);
                three.getColumnConstraints().add(third);
            }
            three.getRowConstraints().add(top());
            three.add(causes, 0, 0);
            three.add(known, 1, 0);
            three.add(rules, 2, 0);
            page.getChildren().add(three);
        }
        ScrollPane scroll = new ScrollPane(page);
        scroll.setFitToWidth(true);
        scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        scroll.setStyle("-fx-background-color: transparent; -fx-background: transparent; -fx-padding: 0;");
        return scroll;
    }

    private static RowConstraints top() {
        RowConstraints row = new RowConstraints();
        row.setValignment(VPos.TOP);
        return row;
    }

    private static GridPane beside(Region left, Region right, double percent) {
        GridPane pair = new GridPane();
        pair.setHgap(32);
        for (double share : new double[] {percent, 100 - percent}) {
            javafx.scene.layout.ColumnConstraints column = new javafx.scene.layout.ColumnConstraints();
            column.setPercentWidth(share);
            pair.getColumnConstraints().add(column);
        }
        pair.getRowConstraints().add(top());
        pair.add(left, 0, 0);
        pair.add(right, 1, 0);
        return pair;
    }

    /** What was done, and the three sentences that weigh most. */
    private VBox sentences() {
        VBox box = new VBox(6);
        box.getChildren()
                .add(Ui.text(
                        texts.text("win.youDid", words.option(verdict.chosen().decision(), fishIn)), "sw-statement"));
        for (Verdict.Line line : leading()) {
            box.getChildren().add(Ui.text(words.why().format(line), "sw-sentence", tone(line)));
        }
        return box;
    }

    private List<Verdict.Line> leading() {
        List<Verdict.Line> chosen = new ArrayList<>();
        for (String start : List.of("credit.", "said.", "does.", "costs.")) {
            verdict.lines().stream()
                    .filter(l -> l.key().startsWith(start))
                    .findFirst()
                    .ifPresent(chosen::add);
        }
        return chosen.subList(0, Math.min(3, chosen.size()));
    }

    private static String tone(Verdict.Line line) {
        return switch (line.severity()) {
            case OWN -> "sw-own";
            case BEST -> "sw-best";
            default -> "sw-ink";
        };
    }

    private VBox marks() {
        boolean dangerous = verdict.word() == Verdict.Word.DANGEROUS;
        VBox decision = new VBox(
                2,
                Ui.text(texts.text("win.decisionMark"), "sw-label", "sw-strong"),
                Ui.text(
                        verdict.scored() ? texts.number(Math.rint(verdict.mark())) : "–",
                        "sw-title",
                        dangerous ? "sw-danger" : verdict.word() == Verdict.Word.SOUND ? "sw-safe" : "sw-ink"),
                Ui.text(
                        verdict.scored() ? words.word(verdict.word()) : texts.text("win.notScored"),
                        "sw-label",
                        dangerous ? "sw-danger" : "sw-quiet"));
        ReadingMark readings = ReadingMark.of(model.run(), decided);
        VBox reading = new VBox(
                2,
                Ui.text(texts.text("win.readingMark"), "sw-label", "sw-strong"),
                Ui.text(texts.text("win.ofSo", readings.right(), readings.total()), "sw-statement"),
                Ui.text(said(readings), "sw-label", "sw-quiet"));
        Verdict.Foresight f = verdict.foresight();
        VBox foresight = new VBox(
                2,
                Ui.text(texts.text("win.foresightMark"), "sw-label", "sw-strong"),
                Ui.text(f == null ? "–" : texts.number(Math.rint(f.mark())), "sw-statement"),
                Ui.text(
                        f == null
                                ? texts.text("win.notForeseen")
                                : texts.text("win.chance", Math.rint(100 * f.chance())),
                        "sw-label",
                        "sw-quiet"));
        HBox row = new HBox(24, decision, reading, foresight);
        for (VBox box : List.of(decision, reading, foresight)) {
            HBox.setHgrow(box, Priority.ALWAYS);
            box.setPrefWidth(150);
        }
        return new VBox(8, row, Ui.text(texts.text("win.marksApart"), "sw-label", "sw-quiet"));
    }

    private VBox options() {
        List<Verdict.Option> shown = new ArrayList<>();
        for (Verdict.Option option : verdict.options()) {
            if (shown.size() < SHOWN_OPTIONS - 1 || option.own()) {
                shown.add(option);
            }
        }
        boolean byLoss = shown.stream().allMatch(o -> o.deathsHigh() < 0.05);
        List<OptionBars.Row> rows = shown.stream().map(o -> row(o, byLoss)).toList();
        StringBuilder spoken = new StringBuilder();
        rows.forEach(
                r -> spoken.append(r.label()).append(": ").append(r.meanText()).append(". "));
        return new VBox(
                6,
                Ui.row(
                        8,
                        Ui.text(texts.text("win.options"), "sw-strong"),
                        Ui.grow(),
                        Ui.text(
                                byLoss
                                        ? texts.text("win.optionsByLoss")
                                        : texts.text("win.optionsUnit", verdict.days(), verdict.stock()),
                                "sw-label",
                                "sw-quiet")),
                new OptionBars(new OptionBars.Data(
                        rows,
                        texts.text("win.yours"),
                        texts.text("win.best"),
                        texts.language().locale(),
                        spoken.toString())),
                Ui.text(more(shown.size()), "sw-label", "sw-quiet"));
    }

    /** A skewed mean may lie outside eight tanks of ten; the whisker then reaches to it. */
    private OptionBars.Row row(Verdict.Option o, boolean byLoss) {
        double mean = byLoss ? o.loss() : o.deaths();
        return new OptionBars.Row(
                words.option(o.decision(), fishIn),
                mean,
                byLoss ? mean : Math.min(mean, o.deathsLow()),
                byLoss ? mean : Math.max(mean, o.deathsHigh()),
                texts.decimals(mean, byLoss ? 2 : 1),
                o.own(),
                o.equals(verdict.best()));
    }

    private String more(int shown) {
        int left = verdict.options().size() - shown;
        return left <= 0 ? "" : texts.text("win.moreOptions", left);
    }

    private VBox fan() {
        Verdict.Path path = verdict.decisive();
        List<Tick> days = new ArrayList<>();
        for (int day = 0; day <= (int) verdict.days(); day += verdict.days() > 10 ? 3 : 1) {
            days.add(Tick.of(day, words.shortDay(decided.minute() + day * Calendar.DAY)));
        }
        String name = words.why().variable(path.variable());
        String spoken = verdict.lines().stream()
                .filter(l -> l.key().startsWith("does."))
                .findFirst()
                .map(words.why()::format)
                .orElse(name);
        boolean ownIsBest = verdict.own() == 0;
        FanChart chart = new FanChart(new FanChart.Data(
                days,
                path(path, path.own(), "win.yours"),
                ownIsBest ? null : path(path, path.best(), "win.best"),
                new FanChart.Level(path.guidance(), texts.text("win.harmsFrom", texts.number(path.guidance()))),
                new FanChart.Moment(path.returnHours() / 24, List.of(texts.text("win.rulesAct"))),
                Double.isNaN(path.todayFromLog())
                        ? null
                        : new FanChart.Level(
                                path.todayFromLog(), texts.text("win.today", texts.number(path.todayFromLog(), 2))),
                texts.language().locale(),
                spoken));
        return new VBox(
                6,
                Ui.row(
                        8,
                        Ui.text(texts.text("win.ahead", name), "sw-strong"),
                        Ui.grow(),
                        Ui.text("mg/L", "sw-label", "sw-quiet")),
                chart);
    }

    private FanChart.Path path(Verdict.Path path, List<Verdict.Band> bands, String key) {
        List<FanChart.Point> points = new ArrayList<>();
        for (int i = 0; i < bands.size(); i++) {
            Verdict.Band b = bands.get(i);
            points.add(new FanChart.Point(path.hours().get(i) / 24, b.low(), b.middle(), b.high()));
        }
        return new FanChart.Path(List.of(texts.text(key)), points);
    }

    private Region folded(String key, Region content, boolean open) {
        TitledPane pane = new TitledPane(texts.text(key), content);
        pane.setExpanded(open);
        pane.setAnimated(false);
        return pane;
    }

    private GridPane causes() {
        GridPane grid = new GridPane();
        grid.setHgap(16);
        grid.setVgap(4);
        grid.add(Ui.text(texts.text("win.yours"), "sw-label", "sw-own"), 1, 0);
        grid.add(Ui.text(texts.text("win.best"), "sw-label", "sw-best"), 2, 0);
        int row = 1;
        Verdict.Option own = verdict.chosen();
        Verdict.Option best = verdict.best();
        if (fishIn) {
            for (Stressor s : Stressor.values()) {
                if (own.deathsBy(s) >= 0.005
                        || best.deathsBy(s) >= 0.005
                        || s == Stressor.NITRITE
                        || s == Stressor.AMMONIA) {
                    line(grid, row++, words.why().cause(s), own.deathsBy(s), best.deathsBy(s), 1);
                }
            }
            line(grid, row++, texts.text("win.allDeaths"), own.deaths(), best.deaths(), 1);
        }
        for (Component c : Component.values()) {
            if (c != Component.DEATHS && Math.max(own.part(c), best.part(c)) >= 0.05) {
                line(grid, row++, words.why().component(c) + ", %", own.part(c), best.part(c), 2);
            }
        }
        line(grid, row, texts.text("win.lossInAll"), own.loss(), best.loss(), 2);
        return grid;
    }

    private void line(GridPane grid, int row, String name, double own, double best, int decimals) {
        grid.add(Ui.text(name), 0, row);
        grid.add(Ui.text(texts.decimals(own, decimals), "sw-strong", "sw-own"), 1, row);
        grid.add(Ui.text(texts.decimals(best, decimals), "sw-strong", "sw-best"), 2, row);
    }

    /** What the log made plausible beside the hidden truth: shown only now that the decision is made. */
    private VBox known() {
        VBox box = new VBox(6, Ui.text(texts.text("win.knownHow"), "sw-label", "sw-quiet"));
        TruthPoint truth = model.run().truth().stream()
                .filter(t -> t.day() <= decided.day() + 1e-9)
                .reduce((a, b) -> b)
                .orElse(model.run().truth().get(0));
        for (Verdict.Range r : verdict.ranges()) {
            if (r.pad() == Pad.AMMONIA || r.pad() == Pad.NITRITE || r.pad() == Pad.PH || r.pad() == Pad.CHLORIDE) {
                double real =
                        switch (r.pad()) {
                            case AMMONIA -> truth.ammoniaMgPerL();
                            case NITRITE -> truth.nitriteMgPerL();
                            case PH -> truth.ph();
                            default -> truth.chlorideMgPerL();
                        };
                box.getChildren()
                        .add(Ui.text(texts.text(
                                "win.range",
                                words.pad(r.pad()),
                                texts.number(r.today().low(), 2),
                                texts.number(r.today().high(), 2),
                                texts.number(real, 2))));
            }
        }
        return box;
    }

    private VBox rules() {
        VBox box = new VBox(6);
        verdict.lines().stream()
                .filter(l -> l.severity() == Severity.RULE || !leading().contains(l))
                .forEach(l -> box.getChildren().add(Ui.text(words.why().format(l))));
        return box;
    }

    private String said(ReadingMark readings) {
        if (readings.total() == 0) {
            return texts.text("win.nothingRead");
        }
        return readings.worst() == null
                ? texts.text("win.allRead")
                : texts.text("win.offRead", words.pad(readings.worst().pad()));
    }

    private HBox bottom(Runnable goOn) {
        Button on = Ui.button(texts.text("win.goOn"), "sw-primary", goOn);
        on.setId("go-on");
        on.setMinWidth(Region.USE_PREF_SIZE);
        on.setDefaultButton(true);
        HBox bar = Ui.row(16, Ui.text(texts.text("caution"), "sw-label", "sw-quiet"), Ui.grow(), on);
        bar.getStyleClass().addAll("sw-panel", "sw-hairline-top");
        bar.setPadding(new Insets(10, 24, 10, 24));
        return bar;
    }
}
