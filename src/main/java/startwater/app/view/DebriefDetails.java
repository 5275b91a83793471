package startwater.app.view;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import javafx.geometry.HPos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import startwater.app.chart.CauseBars;
import startwater.app.chart.KnownChart;
import startwater.app.chart.LevelBar;
import startwater.app.chart.RangeBar;
import startwater.app.chart.Tick;
import startwater.app.chart.Tone;
import startwater.app.model.DebriefModel;
import startwater.fish.Stressor;
import startwater.score.Component;
import startwater.score.Verdict;
import startwater.strip.Pad;
import startwater.text.DrillWords;
import startwater.text.Texts;

/** What unfolds below the sentences and the first chart, each with its gist in a line. */
final class DebriefDetails {
    /** Parts under this, % of the stock, are not shown. */
    private static final double SHOWN_PART = 0.005;

    private final DebriefModel model;
    private final Verdict verdict;
    private final DrillWords words;
    private final Texts texts;
    private final DebriefCharts charts;

    DebriefDetails(DebriefModel model, DrillWords words, DebriefCharts charts) {
        this.model = model;
        this.verdict = model.verdict();
        this.words = words;
        this.texts = words.texts();
        this.charts = charts;
    }

    List<Fold> all() {
        List<Fold> all = new ArrayList<>();
        all.add(new Fold(texts, "ahead", charts.aheadTitle(), charts.aheadGist(), charts::fan));
        if (model.fishIn()) {
            all.add(new Fold(texts, "causes", texts.text("win.causes"), causeGist(), this::causes));
        }
        all.add(new Fold(
                texts,
                "parts",
                texts.text("win.parts"),
                texts.text(
                        "win.partsGist",
                        texts.decimals(verdict.chosen().loss(), 2),
                        texts.decimals(verdict.best().loss(), 2)),
                this::parts));
        all.add(new Fold(texts, "known", texts.text("win.known"), knownGist(), this::known));
        all.add(new Fold(texts, "testing", texts.text("win.testing"), testingGist(), this::testing));
        all.add(new Fold(texts, "why", texts.text("win.rules"), "", this::why));
        return all;
    }

    private String causeGist() {
        Verdict.Option own = verdict.chosen();
        Stressor main = Arrays.stream(Stressor.values())
                .reduce((a, b) -> own.deathsBy(b) > own.deathsBy(a) ? b : a)
                .orElseThrow();
        return own.deaths() < 0.05
                ? texts.text("win.causesNone")
                : texts.text(
                        "win.causesGist",
                        words.why().cause(main),
                        texts.decimals(own.deathsBy(main), 1),
                        texts.decimals(own.deaths(), 1));
    }

    private CauseBars causes() {
        Verdict.Option own = verdict.chosen();
        Verdict.Option best = verdict.best();
        List<CauseBars.Row> rows = new ArrayList<>();
        for (Stressor s : Stressor.values()) {
            boolean always = s == Stressor.NITRITE || s == Stressor.AMMONIA || s == Stressor.LOW_OXYGEN;
            if (always || Math.max(own.deathsBy(s), best.deathsBy(s)) >= 0.05) {
                rows.add(cause(words.why().cause(s), own.deathsBy(s), best.deathsBy(s)));
            }
        }
        StringBuilder spoken = new StringBuilder();
        rows.forEach(r -> spoken.append(r.label())
                .append(": ")
                .append(r.ownText())
                .append(", ")
                .append(r.bestText())
                .append(". "));
        return new CauseBars(new CauseBars.Data(
                texts.text("win.yours"),
                texts.text("win.best"),
                rows,
                cause(texts.text("win.allDeaths"), own.deaths(), best.deaths()),
                spoken.toString()));
    }

    private CauseBars.Row cause(String name, double own, double best) {
        return new CauseBars.Row(name, own, best, texts.decimals(own, 1), texts.decimals(best, 1));
    }

    /** Every option in a row, every part of its loss that counts anywhere in a column. */
    private GridPane parts() {
        List<Component> shown = Arrays.stream(Component.values())
                .filter(c -> verdict.options().stream().anyMatch(o -> Math.abs(o.part(c)) >= SHOWN_PART))
                .toList();
        GridPane grid = new GridPane();
        grid.setHgap(8);
        grid.setVgap(2);
        ColumnConstraints names = new ColumnConstraints();
        names.setHgrow(Priority.ALWAYS);
        grid.getColumnConstraints().add(names);
        for (int c = 0; c <= shown.size(); c++) {
            ColumnConstraints figures = new ColumnConstraints();
            figures.setHalignment(HPos.RIGHT);
            figures.setMinWidth(Region.USE_PREF_SIZE);
            grid.getColumnConstraints().add(figures);
            String head =
                    c == shown.size() ? texts.text("part.all") : texts.text("part." + ScreenKeys.of(shown.get(c)));
            grid.add(Ui.text(head, "sw-label", "sw-quiet"), c + 1, 0);
        }
        int row = 1;
        for (Verdict.Option o : verdict.options()) {
            String tone = o.own() ? "sw-own" : o.equals(verdict.best()) ? "sw-best" : "sw-ink";
            grid.add(Ui.text(words.option(o.decision(), model.fishIn()), "sw-label", tone), 0, row);
            for (int c = 0; c < shown.size(); c++) {
                grid.add(figure(o.part(shown.get(c)), "sw-label", tone), c + 1, row);
            }
            grid.add(figure(o.loss(), "sw-label", "sw-strong", tone), shown.size() + 1, row);
            row++;
        }
        return grid;
    }

    private Label figure(double value, String... classes) {
        Label label = Ui.text(Math.abs(value) < SHOWN_PART ? "·" : texts.decimals(value, 2), classes);
        label.setWrapText(false);
        return label;
    }

    private String knownGist() {
        Pad pad = model.decisivePad();
        return verdict.ranges().stream()
                .filter(r -> r.pad() == pad)
                .findFirst()
                .map(r -> texts.text(
                        "win.knownGist",
                        words.pad(pad),
                        texts.number(r.today().low(), 2),
                        texts.number(r.today().high(), 2)))
                .orElse("");
    }

    private VBox known() {
        VBox shown = new VBox(4);
        Ui.Choice<Pad> pads =
                new Ui.Choice<>(texts.text("win.knownOf"), DebriefModel.KNOWABLE, words::pad, p -> show(shown, p));
        pads.select(model.decisivePad());
        show(shown, model.decisivePad());
        return new VBox(6, pads, shown);
    }

    private void show(VBox into, Pad pad) {
        List<DebriefModel.Known> known = model.known(pad);
        List<DebriefModel.Truth> truth = model.truth(pad);
        List<Node> parts = new ArrayList<>();
        if (!known.isEmpty() && !truth.isEmpty()) {
            DebriefModel.Known today = known.get(known.size() - 1);
            double real = truth.get(truth.size() - 1).value();
            String said = texts.text(
                    "win.range",
                    words.pad(pad),
                    texts.number(today.allowed().low(), 2),
                    texts.number(today.allowed().high(), 2),
                    texts.number(real, 2));
            parts.add(Ui.text(said, "sw-label"));
            parts.add(range(pad, today, real, said));
            if (known.size() > 1) {
                parts.add(overTime(pad, known, truth, said));
            }
        }
        into.getChildren().setAll(parts);
    }

    private RangeBar range(Pad pad, DebriefModel.Known today, double real, String said) {
        return new RangeBar(new RangeBar.Data(
                steps(pad),
                pad.scale().position(today.allowed().low()),
                pad.scale().position(today.allowed().high()),
                Tick.of(pad.scale().position(real), texts.text("win.thisTank", texts.number(real, 2))),
                today.written() == null
                        ? null
                        : Tick.of(
                                pad.scale().position(today.written().value()),
                                texts.text("win.youWrote", words.written(today.written()))),
                said));
    }

    private KnownChart overTime(Pad pad, List<DebriefModel.Known> known, List<DebriefModel.Truth> truth, String said) {
        List<KnownChart.At> written = new ArrayList<>();
        List<Tick> days = new ArrayList<>();
        for (DebriefModel.Known k : known) {
            int minute = (int) Math.round(k.day() * 1440);
            days.add(new Tick(k.day(), words.shortDay(minute), k.equals(known.get(known.size() - 1))));
            if (k.written() != null) {
                written.add(new KnownChart.At(
                        k.day(), pad.scale().position(k.written().value())));
            }
        }
        return new KnownChart(new KnownChart.Data(
                steps(pad),
                days,
                known.stream()
                        .map(k -> new KnownChart.Range(
                                k.day(),
                                pad.scale().position(k.allowed().low()),
                                pad.scale().position(k.allowed().high())))
                        .toList(),
                truth.stream()
                        .map(t -> new KnownChart.At(t.day(), pad.scale().position(t.value())))
                        .toList(),
                written,
                texts.text("win.logAllowed"),
                texts.text("win.tankWas"),
                texts.text("win.wrote"),
                said));
    }

    private List<Tick> steps(Pad pad) {
        List<Tick> steps = new ArrayList<>();
        for (int block = 0; block < pad.scale().blocks(); block++) {
            steps.add(Tick.of(block, words.block(pad, block)));
        }
        return steps;
    }

    private String testingGist() {
        Verdict.Information i = verdict.information();
        return texts.text(
                i.retest() ? "win.testingWorth" : "win.testingNot",
                texts.decimals(i.strip(), 2),
                texts.decimals(i.price(), 2));
    }

    /** What each pad, read once more, would have saved, beside its price and beside knowing everything. */
    private VBox testing() {
        Verdict.Information i = verdict.information();
        VBox box = new VBox(6, Ui.text(texts.text("win.testingHow", texts.decimals(i.perfect(), 2)), "sw-label"));
        GridPane grid = new GridPane();
        grid.setHgap(12);
        grid.setVgap(2);
        List<Verdict.PadWorth> pads = i.pads().stream()
                .sorted(Comparator.comparingDouble(Verdict.PadWorth::worth).reversed())
                .toList();
        double whole = Math.max(1e-9, Math.max(i.perfect(), i.price()));
        int row = 0;
        for (Verdict.PadWorth pad : pads) {
            String name = texts.text(pad.read() ? "win.padAgain" : "win.padUnread", words.pad(pad.pad()));
            String figure = texts.decimals(pad.worth(), 2) + " %";
            LevelBar bar = new LevelBar(new LevelBar.Data(
                    Math.min(1, pad.worth() / whole),
                    Math.min(1, i.price() / whole),
                    Tone.WATER,
                    name + ": " + figure));
            grid.addRow(row++, Ui.text(name, "sw-label"), bar, Ui.text(figure, "sw-label", "sw-strong"));
        }
        box.getChildren().addAll(grid, Ui.text(texts.text("win.testingTick"), "sw-label", "sw-quiet"));
        return box;
    }

    private VBox why() {
        VBox box = new VBox(6);
        model.rest().forEach(l -> box.getChildren().add(Ui.text(words.why().format(l))));
        return box;
    }
}
