package startwater.app.view;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import javafx.geometry.Insets;
import javafx.scene.control.Button;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;
import startwater.app.model.EndModel;
import startwater.drill.DrillRun.TruthPoint;
import startwater.drill.Scenario;
import startwater.drill.VisitRecord;
import startwater.drill.Written;
import startwater.score.RunSummary;
import startwater.score.Verdict;
import startwater.strip.Pad;
import startwater.strip.Scale;
import startwater.text.DrillWords;
import startwater.text.Texts;

/** The end of a drill: the stock beside the standing rules and doing nothing, truth against what was written, luck apart. */
final class EndView extends BorderPane {
    private final EndModel model;
    private final DrillWords words;
    private final Texts texts;
    private final VBox chart = new VBox();

    /** What the chart shows. @param pad null for the fish */
    private record Topic(@Nullable Pad pad, String name, ToDoubleFunction<TruthPoint> value, boolean fromZero) {}

    EndView(EndModel model, DrillWords words, Runnable home, Runnable again) {
        this.model = model;
        this.words = words;
        this.texts = words.texts();
        setTop(topBar());
        VBox page = new VBox(18);
        page.setPadding(new Insets(20, 24, 24, 24));
        if (model.summaryProperty().get() == null) {
            page.getChildren().add(Ui.text(texts.text("end.working"), "sw-sentence", "sw-quiet"));
        } else {
            fill(page, model.summary());
        }
        setCenter(Shell.scroll(page));
        setBottom(bottom(home, again));
    }

    private HBox topBar() {
        HBox bar = Ui.row(
                16,
                Ui.text(texts.text("end.title"), "sw-strong"),
                Ui.text(words.scenario(model.run().scenario()).title()));
        bar.getStyleClass().addAll("sw-panel", "sw-hairline-bottom");
        bar.setPadding(new Insets(12, 24, 12, 24));
        return bar;
    }

    private void fill(VBox page, RunSummary end) {
        page.getChildren().addAll(head(end), topics(end), chart, decisions());
        Scenario.Words told = words.scenario(model.run().scenario());
        VBox rule =
                new VBox(4, Ui.text(texts.text("end.takeAway"), "sw-strong"), Ui.text(told.debrief(), "sw-sentence"));
        rule.getStyleClass().add("sw-wash");
        rule.setPadding(new Insets(14, 16, 14, 16));
        page.getChildren().add(rule);
    }

    private Region head(RunSummary end) {
        Scenario.Fish fish = model.run().scenario().fish();
        VBox said = new VBox(6);
        said.getChildren()
                .add(Ui.text(
                        fish == null ? texts.text("end.noFish") : texts.text("end.alive", end.ownAlive(), fish.count()),
                        "sw-title"));
        if (fish != null) {
            said.getChildren()
                    .add(Ui.text(texts.text("end.others", end.rulesAlive(), end.nothingAlive()), "sw-sentence"));
            double luck = end.luck();
            String key = Math.abs(luck) < 1 ? "end.luckNone" : luck > 0 ? "end.luckGood" : "end.luckBad";
            said.getChildren().add(Ui.text(texts.text(key, words.why().deaths(Math.abs(luck)))));
        }
        HBox.setHgrow(said, Priority.ALWAYS);
        VBox mark = new VBox(2, Ui.text(texts.text("end.mark"), "sw-strong"));
        boolean none = Double.isNaN(end.mark());
        mark.getChildren()
                .add(Ui.text(
                        none ? "–" : texts.number(Math.rint(end.mark())),
                        "sw-title",
                        end.passed() ? "sw-safe" : "sw-danger"));
        mark.getChildren()
                .add(Ui.text(
                        texts.text(none ? "end.nothingScored" : end.passed() ? "end.passed" : "end.notPassed"),
                        "sw-label",
                        end.passed() ? "sw-safe" : "sw-danger"));
        mark.setMinWidth(180);
        mark.getStyleClass().add("sw-hairline-left");
        mark.setPadding(new Insets(0, 0, 0, 20));
        return new HBox(24, said, mark);
    }

    private Region topics(RunSummary end) {
        List<Topic> all = new ArrayList<>();
        if (model.run().scenario().fish() != null) {
            all.add(new Topic(null, texts.text("end.fish"), TruthPoint::expectedAlive, true));
        }
        all.add(new Topic(Pad.AMMONIA, words.pad(Pad.AMMONIA), TruthPoint::ammoniaMgPerL, true));
        all.add(new Topic(Pad.NITRITE, words.pad(Pad.NITRITE), TruthPoint::nitriteMgPerL, true));
        all.add(new Topic(Pad.PH, words.pad(Pad.PH), TruthPoint::ph, false));
        all.add(new Topic(Pad.ALKALINITY, words.pad(Pad.ALKALINITY), TruthPoint::alkalinityMgPerL, true));
        all.add(new Topic(Pad.CHLORIDE, words.pad(Pad.CHLORIDE), TruthPoint::chlorideMgPerL, true));
        Ui.Choice<Topic> choice = new Ui.Choice<>(texts.text("end.show"), all, Topic::name, t -> draw(t, end));
        choice.select(all.get(0));
        choice.setId("topics");
        draw(all.get(0), end);
        return new FlowPane(16, 8, Ui.text(texts.text("end.truth"), "sw-sentence", "sw-strong"), choice);
    }

    private void draw(Topic topic, RunSummary end) {
        List<TimeChart.Line> lines = List.of(
                line(TimeChart.Kind.NOTHING, end.nothing(), topic, "end.nothing"),
                line(TimeChart.Kind.RULES, end.rules(), topic, "end.rules"),
                line(TimeChart.Kind.OWN, end.own(), topic, "end.own"));
        TimeChart.Content content =
                new TimeChart.Content(lines, points(topic.pad()), marks(), topic.fromZero(), texts.text("end.day"));
        String spoken = texts.text(
                "end.spoken", topic.name(), lastOf(lines.get(2)), lastOf(lines.get(1)), lastOf(lines.get(0)));
        String unit = topic.pad() == null ? texts.text("end.fishUnit") : words.unit(topic.pad());
        chart.getChildren()
                .setAll(
                        Ui.text(topic.name() + (unit.isEmpty() ? "" : ", " + unit), "sw-label", "sw-quiet"),
                        new TimeChart(content, spoken),
                        Ui.text(
                                texts.text(topic.pad() == null ? "end.chartFish" : "end.chartWritten"),
                                "sw-label",
                                "sw-quiet"));
    }

    private String lastOf(TimeChart.Line line) {
        return texts.number(line.values()[line.values().length - 1]);
    }

    private TimeChart.Line line(TimeChart.Kind kind, List<TruthPoint> points, Topic topic, String key) {
        double[] days = points.stream().mapToDouble(TruthPoint::day).toArray();
        double[] values = points.stream().mapToDouble(topic.value()).toArray();
        return new TimeChart.Line(kind, days, values, texts.text(key));
    }

    private List<TimeChart.Point> points(@Nullable Pad pad) {
        List<TimeChart.Point> points = new ArrayList<>();
        for (VisitRecord visit : model.run().past().visits()) {
            for (Written w : visit.written()) {
                if (w.pad() == pad) {
                    Scale scale = w.pad().scale();
                    double times = w.pad() == Pad.PH ? 1 : w.dilution();
                    double low = scale.blockValue(w.stop() / 2) * times;
                    double high = w.stop() % 2 == 0 ? low : scale.blockValue(w.stop() / 2 + 1) * times;
                    points.add(new TimeChart.Point(visit.day(), low, high));
                }
            }
        }
        return points;
    }

    private List<TimeChart.Mark> marks() {
        Function<Verdict, String> mark = v -> v.scored() ? texts.number(Math.rint(v.mark())) : "";
        return model.steps().stream()
                .map(s -> new TimeChart.Mark(
                        s.visit().day(), mark.apply(s.verdict()), s.verdict().word() == Verdict.Word.DANGEROUS))
                .toList();
    }

    private Region decisions() {
        GridPane grid = new GridPane();
        grid.setHgap(20);
        grid.setVgap(4);
        ColumnConstraints when = new ColumnConstraints();
        when.setMinWidth(Region.USE_PREF_SIZE);
        ColumnConstraints what = new ColumnConstraints();
        what.setHgrow(Priority.ALWAYS);
        grid.getColumnConstraints().addAll(when, what);
        int row = 0;
        boolean fishIn = model.run().scenario().fish() != null;
        for (EndModel.Step step : model.steps()) {
            Verdict v = step.verdict();
            boolean harm = v.scored() && v.word() == Verdict.Word.DANGEROUS;
            String mark = v.scored()
                    ? texts.text("end.stepMark", Math.rint(v.mark()), words.word(v.word()))
                    : texts.text("end.stepNone");
            grid.add(Ui.text(words.clock(step.visit().minute()), "sw-quiet"), 0, row);
            grid.add(Ui.text(words.option(v.chosen().decision(), fishIn)), 1, row);
            grid.add(Ui.text(mark, harm ? "sw-danger" : "sw-quiet"), 2, row);
            row++;
        }
        return new VBox(6, Ui.text(texts.text("end.decisions"), "sw-sentence", "sw-strong"), grid);
    }

    private HBox bottom(Runnable home, Runnable again) {
        Button back = Ui.button(texts.text("end.home"), "sw-primary", home);
        back.setId("to-home");
        back.setDefaultButton(true);
        Button more = Ui.button(texts.text("end.again"), "sw-second", again);
        more.setMinWidth(Region.USE_PREF_SIZE);
        back.setMinWidth(Region.USE_PREF_SIZE);
        HBox bar = Ui.row(16, Ui.text(texts.text("caution"), "sw-label", "sw-quiet"), Ui.grow(), more, back);
        bar.getStyleClass().addAll("sw-panel", "sw-hairline-top");
        bar.setPadding(new Insets(10, 24, 10, 24));
        return bar;
    }
}
