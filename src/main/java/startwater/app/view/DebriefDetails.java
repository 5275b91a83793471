package startwater.app.view;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import javafx.geometry.HPos;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;
import startwater.app.chart.CauseBars;
import startwater.app.chart.LevelBar;
import startwater.app.chart.Tone;
import startwater.app.model.DebriefModel;
import startwater.fish.Stressor;
import startwater.score.Component;
import startwater.score.Flip;
import startwater.score.KnownOverTime;
import startwater.score.SecondLook;
import startwater.score.Verdict;
import startwater.strip.Pad;
import startwater.text.DrillWords;
import startwater.text.Texts;

/** What unfolds below the sentences and the first chart, each with its gist in a line. */
final class DebriefDetails {
    /** Parts under this, % of the stock, are not shown. */
    private static final double SHOWN_PART = 0.005;

    private static final String ROOM_FOR_A_SENTENCE = "-fx-min-height: 4.6em;";

    private final DebriefModel model;
    private final Verdict verdict;
    private final DrillWords words;
    private final Texts texts;
    private final DebriefCharts charts;
    private final Awaited<SecondLook> second;

    /** @param second what is told a moment later */
    DebriefDetails(DebriefModel model, DrillWords words, DebriefCharts charts, Awaited<SecondLook> second) {
        this.second = second;
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
        all.add(changed());
        all.add(habit());
        all.add(new Fold(texts, "known", texts.text("win.known"), texts.text("end.knownGist"), this::known));
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

    /** What the log let one know up to this decision, beside the truth up to here; what came after is still to be read. */
    private Later known() {
        return Later.of(
                texts.text("win.workingOut"),
                () -> KnownOverTime.of(model.run().scenario(), model.log()),
                k -> new KnownPane(k, model.run(), words, model.decisive()));
    }

    /** Room for a sentence of three lines: it is there before the sentence is, so that nothing jumps. */
    private VBox sentence(Function<SecondLook, Verdict.Line> line) {
        Label said = Ui.text(texts.text("win.workingOut"));
        said.setStyle(ROOM_FOR_A_SENTENCE);
        said.setAlignment(Pos.TOP_LEFT);
        second.thenShow(look -> said.setText(words.why().format(line.apply(look))));
        return new VBox(said);
    }

    private Fold changed() {
        Fold fold = new Fold(
                texts,
                "changed",
                texts.text("win.changed"),
                texts.text("win.workingOut"),
                () -> sentence(SecondLook::changes));
        second.thenShow(look -> fold.say(changedGist(look.flip())));
        return fold;
    }

    private String changedGist(@Nullable Flip flip) {
        if (flip == null) {
            return texts.text("win.changed.none");
        }
        Pad pad = flip.pad();
        String key = "win.changed." + ScreenKeys.of(flip.kind());
        return pad == null ? texts.text(key) : texts.text(key, words.pad(pad));
    }

    private Fold habit() {
        Fold fold = new Fold(
                texts,
                "habit",
                texts.text("win.habit"),
                texts.text("win.workingOut"),
                () -> sentence(look -> look.habit().line()));
        second.thenShow(look -> fold.say(texts.text(
                "win.habitGist", look.habit().days(), words.word(look.habit().word()))));
        return fold;
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
