package startwater.app.view;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import javafx.scene.layout.VBox;
import startwater.app.chart.FanChart;
import startwater.app.chart.OptionBars;
import startwater.app.chart.Tick;
import startwater.app.model.DebriefModel;
import startwater.drill.Calendar;
import startwater.score.Verdict;
import startwater.text.DrillWords;
import startwater.text.Texts;

/** The options side by side, and the way ahead of what decides. */
final class DebriefCharts {
    private static final int SHOWN_OPTIONS = 9;
    /** Deaths under this, fish, are no bars to compare; what else a choice costs is shown instead. */
    private static final double FEW_DEATHS = 0.05;

    private final DebriefModel model;
    private final Verdict verdict;
    private final DrillWords words;
    private final Texts texts;

    DebriefCharts(DebriefModel model, DrillWords words) {
        this.model = model;
        this.verdict = model.verdict();
        this.words = words;
        this.texts = words.texts();
    }

    VBox options() {
        List<Verdict.Option> shown = new ArrayList<>();
        for (Verdict.Option option : verdict.options()) {
            boolean own = option.own();
            boolean room = shown.size() < SHOWN_OPTIONS - (shown.contains(verdict.chosen()) ? 0 : 1);
            if (own || room) {
                shown.add(option);
            }
        }
        shown.sort(Comparator.comparingDouble((Verdict.Option o) -> Math.rint(10 * o.deaths()))
                .thenComparing(Verdict.Option::loss));
        boolean byLoss = shown.stream().allMatch(o -> o.deathsHigh() < FEW_DEATHS);
        List<OptionBars.Row> rows = shown.stream().map(o -> row(o, byLoss)).toList();
        StringBuilder spoken = new StringBuilder();
        rows.forEach(
                r -> spoken.append(r.label()).append(": ").append(r.meanText()).append(". "));
        OptionBars bars = new OptionBars(new OptionBars.Data(
                rows,
                texts.text("win.yours"),
                texts.text("win.best"),
                texts.language().locale(),
                spoken.toString()));
        bars.setId("options");
        VBox box = new VBox(
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
                bars);
        int left = verdict.options().size() - shown.size();
        if (left > 0) {
            box.getChildren().add(Ui.text(texts.text("win.moreOptions", left), "sw-label", "sw-quiet"));
        }
        return box;
    }

    /** A skewed mean may lie outside eight tanks of ten; the whisker then reaches to it. */
    private OptionBars.Row row(Verdict.Option o, boolean byLoss) {
        double mean = byLoss ? o.loss() : o.deaths();
        return new OptionBars.Row(
                words.option(o.decision(), model.fishIn()),
                mean,
                byLoss ? mean : Math.min(mean, o.deathsLow()),
                byLoss ? mean : Math.max(mean, o.deathsHigh()),
                texts.decimals(mean, byLoss ? 2 : 1),
                o.own(),
                o.equals(verdict.best()));
    }

    String aheadTitle() {
        return texts.text("win.ahead", words.why().variable(verdict.decisive().variable()));
    }

    /** Where both lead: the worst of the medians. */
    String aheadGist() {
        Verdict.Path path = verdict.decisive();
        return verdict.own() == 0
                ? texts.text("win.aheadOne", texts.number(worst(path, path.own()), 2), texts.number(path.guidance()))
                : texts.text(
                        "win.aheadTwo",
                        texts.number(worst(path, path.own()), 2),
                        texts.number(worst(path, path.best()), 2),
                        texts.number(path.guidance()));
    }

    private static double worst(Verdict.Path path, List<Verdict.Band> bands) {
        boolean downwards = path.variable() == Verdict.Variable.OXYGEN;
        var middles = bands.stream().mapToDouble(Verdict.Band::middle);
        return (downwards ? middles.min() : middles.max()).orElse(Double.NaN);
    }

    Tabled fan() {
        Verdict.Path path = verdict.decisive();
        List<Tick> days = new ArrayList<>();
        for (int day = 0; day <= (int) verdict.days(); day += verdict.days() > 10 ? 3 : 1) {
            days.add(Tick.of(day, words.shortDay(model.decided().minute() + day * Calendar.DAY)));
        }
        FanChart.Path own = path(path, path.own(), "win.yours");
        FanChart.Path best = verdict.own() == 0 ? null : path(path, path.best(), "win.best");
        FanChart chart = new FanChart(new FanChart.Data(
                days,
                own,
                best,
                new FanChart.Level(path.guidance(), texts.text("win.harmsFrom", texts.number(path.guidance()))),
                new FanChart.Moment(path.returnHours() / 24, List.of(texts.text("win.rulesAct"))),
                Double.isNaN(path.todayFromLog())
                        ? null
                        : new FanChart.Level(
                                path.todayFromLog(), texts.text("win.today", texts.number(path.todayFromLog(), 2))),
                texts.language().locale(),
                aheadTitle() + ". " + aheadGist()));
        return new Tabled(
                texts, "ahead", chart, () -> BandTable.of(texts, best == null ? List.of(own) : List.of(own, best)));
    }

    private FanChart.Path path(Verdict.Path path, List<Verdict.Band> bands, String key) {
        List<FanChart.Point> points = new ArrayList<>();
        for (int i = 0; i < bands.size(); i++) {
            Verdict.Band b = bands.get(i);
            points.add(new FanChart.Point(path.hours().get(i) / 24, b.low(), b.middle(), b.high()));
        }
        return new FanChart.Path(List.of(texts.text(key)), points);
    }
}
