package startwater.app.view;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import javafx.geometry.Insets;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import startwater.app.chart.LogTrend;
import startwater.app.chart.Tick;
import startwater.app.chart.TimeLine;
import startwater.app.chart.Tone;
import startwater.app.model.EndModel;
import startwater.app.theme.Look;
import startwater.drill.Calendar;
import startwater.drill.DrillRun.TruthPoint;
import startwater.drill.Scenario;
import startwater.drill.VisitRecord;
import startwater.drill.Written;
import startwater.score.KnownOverTime;
import startwater.score.RunSummary;
import startwater.score.Verdict;
import startwater.strip.Pad;
import startwater.text.DrillWords;
import startwater.text.Texts;

/** The end of a drill: the stock beside the standing rules and doing nothing, truth against what was written, luck apart. */
final class EndView extends BorderPane {
    private static final double STACK_FROM = 1.45;

    private final EndModel model;
    private final DrillWords words;
    private final Texts texts;
    private final Predicate<String> resolved;
    private String resolution = "";
    private boolean kept;

    /** @param resolved takes the sentence that the learner resolves on, and says whether it is on the disk */
    EndView(EndModel model, DrillWords words, Predicate<String> resolved, Runnable home, Runnable again) {
        this.resolved = resolved;
        this.model = model;
        this.words = words;
        this.texts = words.texts();
        setTop(topBar());
        sceneProperty().addListener((p, was, is) -> {
            if (is != null) {
                setCenter(page());
            }
        });
        setCenter(page());
        setBottom(bottom(home, again));
    }

    private Region page() {
        VBox page = new VBox(18);
        page.setPadding(new Insets(20, 24, 24, 24));
        if (model.summaryProperty().get() == null) {
            page.getChildren().add(Ui.text(texts.text("end.working"), "sw-sentence", "sw-quiet"));
        } else {
            fill(page, model.summary());
        }
        return Ui.scroll(page);
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
        page.getChildren().addAll(head(end), chart(end), decisions(), known());
        Scenario.Words told = words.scenario(model.run().scenario());
        VBox rule =
                new VBox(4, Ui.text(texts.text("end.takeAway"), "sw-strong"), Ui.text(told.debrief(), "sw-sentence"));
        words.rules(model.run().scenario()).forEach(said -> rule.getChildren().add(Ui.text(said, "sw-sentence")));
        rule.getStyleClass().add("sw-wash");
        rule.setPadding(new Insets(14, 16, 14, 16));
        page.getChildren().add(Look.of(getScene()).scale() >= STACK_FROM ? new VBox(16, rule, nextTime()) : pair(rule));
    }

    private HBox pair(VBox rule) {
        VBox next = nextTime();
        HBox.setHgrow(rule, Priority.ALWAYS);
        HBox.setHgrow(next, Priority.ALWAYS);
        rule.setPrefWidth(1);
        next.setPrefWidth(1);
        return new HBox(24, rule, next);
    }

    /** The learner's own if-then sentence, kept and shown before the next drill of the same kind. */
    private VBox nextTime() {
        TextField field = new TextField(resolution);
        field.setId("next-time");
        field.setPromptText(texts.text("end.nextTimePrompt"));
        field.setAccessibleText(texts.text("end.nextTime"));
        Label said = Ui.text(texts.text(kept ? "end.nextTimeKept" : "end.nextTimeWhy"), "sw-label", "sw-quiet");
        Button keep = Ui.button(texts.text("end.nextTimeKeep"), "sw-second", () -> keep(field, said));
        keep.setId("keep-next-time");
        keep.setMinWidth(Region.USE_PREF_SIZE);
        field.setOnAction(e -> keep(field, said));
        field.textProperty().addListener((p, was, is) -> resolution = is);
        HBox.setHgrow(field, Priority.ALWAYS);
        VBox box = new VBox(
                6, Ui.text(texts.text("end.nextTime"), "sw-sentence", "sw-strong"), new HBox(8, field, keep), said);
        box.getStyleClass().add("sw-wash");
        box.setPadding(new Insets(14, 16, 14, 16));
        return box;
    }

    private void keep(TextField field, Label said) {
        String text = field.getText().strip();
        if (!text.isEmpty()) {
            kept = resolved.test(text);
            said.setText(texts.text(kept ? "end.nextTimeKept" : "end.nextTimeNotKept"));
        }
    }

    /** The decision with the largest regret, where it was one to regret. */
    private String pivotal() {
        return model.steps().stream()
                .filter(s -> s.verdict().scored() && s.verdict().word() != Verdict.Word.SOUND)
                .max(Comparator.comparingDouble((EndModel.Step s) -> s.verdict().regret()))
                .map(s -> texts.text(
                        "end.pivotal",
                        words.clock(s.visit().minute()),
                        words.option(
                                s.verdict().chosen().decision(),
                                model.run().scenario().fish() != null),
                        words.option(
                                s.verdict().best().decision(),
                                model.run().scenario().fish() != null)))
                .orElseGet(() -> texts.text("end.noPivotal"));
    }

    private Region head(RunSummary end) {
        Scenario.Fish fish = model.run().scenario().fishHereOrPlanned();
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
        said.getChildren().add(Ui.text(pivotal()));
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
        if (Look.of(getScene()).scale() >= STACK_FROM) {
            return new VBox(16, said, mark);
        }
        return new HBox(24, said, mark);
    }

    private Region chart(RunSummary end) {
        TimeLine line = new TimeLine(new TimeLine.Data(
                texts.text("end.water"),
                model.run().scenario().fishHereOrPlanned() == null ? "" : texts.text("end.stock"),
                steps(),
                days(),
                List.of(
                        trace(Pad.AMMONIA, LogTrend.Mark.SQUARE, Tone.QUIET, end, TruthPoint::ammoniaMgPerL),
                        trace(Pad.NITRITE, LogTrend.Mark.DOT, Tone.WATER, end, TruthPoint::nitriteMgPerL)),
                marks(),
                stocks(end),
                texts.language().locale(),
                texts.text("end.spoken", end.ownAlive(), end.rulesAlive(), end.nothingAlive())));
        line.setId("truth");
        // At large type it may be squeezed rather than push the page out of the window.
        line.setMinWidth(0);
        return new VBox(
                6,
                Ui.text(texts.text("end.truth"), "sw-sentence", "sw-strong"),
                new Tabled(texts, "truth", line, () -> numbers(end)),
                Ui.text(texts.text("end.chartHow"), "sw-label", "sw-quiet"));
    }

    /** What the tank held at every visit, beside what was written down, and the fish alive under the three ways. */
    private Tabled.Rows numbers(RunSummary end) {
        List<TimeLine.Stock> stocks = stocks(end);
        List<String> heads = new ArrayList<>(List.of(
                texts.text("chart.visit"),
                words.pad(Pad.AMMONIA),
                texts.text("chart.wrote", words.pad(Pad.AMMONIA)),
                words.pad(Pad.NITRITE),
                texts.text("chart.wrote", words.pad(Pad.NITRITE))));
        stocks.forEach(stock -> heads.add(stock.label()));
        List<List<String>> rows = new ArrayList<>();
        for (VisitRecord visit : model.run().past().visits()) {
            TruthPoint truth = nearest(end.own(), TruthPoint::day, visit.day());
            List<String> row = new ArrayList<>(List.of(
                    words.clock(visit.minute()),
                    texts.number(truth.ammoniaMgPerL(), 2),
                    wrote(visit, Pad.AMMONIA),
                    texts.number(truth.nitriteMgPerL(), 2),
                    wrote(visit, Pad.NITRITE)));
            for (TimeLine.Stock stock : stocks) {
                row.add(texts.number(Math.rint(
                        nearest(stock.points(), TimeLine.At::day, visit.day()).value())));
            }
            rows.add(row);
        }
        return new Tabled.Rows(heads, rows);
    }

    private static <T> T nearest(List<T> points, ToDoubleFunction<T> at, double day) {
        return points.stream()
                .min(Comparator.comparingDouble(p -> Math.abs(at.applyAsDouble(p) - day)))
                .orElseThrow();
    }

    private String wrote(VisitRecord visit, Pad pad) {
        Written last = visit.lastWritten(pad);
        return last == null ? "–" : texts.number(last.value());
    }

    private List<Tick> steps() {
        List<Tick> steps = new ArrayList<>();
        for (int block = 0; block < Pad.NITRITE.scale().blocks(); block++) {
            steps.add(new Tick(block, words.block(Pad.NITRITE, block), false));
        }
        return steps;
    }

    private List<Tick> days() {
        List<VisitRecord> visits = model.run().past().visits();
        int first = visits.get(0).minute() / Calendar.DAY;
        int last = visits.get(visits.size() - 1).minute() / Calendar.DAY;
        List<Tick> days = new ArrayList<>();
        days.add(new Tick(visits.get(0).day(), texts.text("end.day", first), false));
        for (int day = first + 1; day <= last; day++) {
            days.add(new Tick(day, texts.text("end.day", day), false));
        }
        return days;
    }

    private TimeLine.Trace trace(
            Pad pad, LogTrend.Mark mark, Tone tone, RunSummary end, ToDoubleFunction<TruthPoint> value) {
        List<TimeLine.At> truth = end.own().stream()
                .map(p -> new TimeLine.At(p.day(), pad.scale().position(value.applyAsDouble(p))))
                .toList();
        List<TimeLine.At> written = new ArrayList<>();
        for (VisitRecord visit : model.run().past().visits()) {
            for (Written w : visit.written()) {
                if (w.pad() == pad) {
                    written.add(new TimeLine.At(visit.day(), pad.scale().position(w.value())));
                }
            }
        }
        return new TimeLine.Trace(List.of(words.pad(pad)), mark, tone, truth, written);
    }

    private List<TimeLine.Decision> marks() {
        return model.steps().stream()
                .filter(s -> s.verdict().scored())
                .map(s -> new TimeLine.Decision(
                        s.visit().day(),
                        TimeLine.Word.valueOf(s.verdict().word().name()),
                        texts.number(Math.rint(s.verdict().mark())),
                        words.word(s.verdict().word())))
                .toList();
    }

    private List<TimeLine.Stock> stocks(RunSummary end) {
        return model.run().scenario().fishHereOrPlanned() == null
                ? List.of()
                : List.of(
                        stock("end.nothing", Tone.QUIET, end.nothing()),
                        stock("end.rules", Tone.BEST, end.rules()),
                        stock("end.own", Tone.OWN, end.own()));
    }

    private TimeLine.Stock stock(String key, Tone tone, List<TruthPoint> points) {
        return new TimeLine.Stock(
                texts.text(key),
                tone,
                points.stream().map(p -> new TimeLine.At(p.day(), p.stock())).toList());
    }

    /** What the log let one know of every quantity, beside the truth: the belief is worked out when it is opened. */
    private Fold known() {
        return new Fold(
                texts,
                "known",
                texts.text("win.known"),
                texts.text("end.knownGist"),
                () -> Later.of(
                        texts.text("end.working"),
                        () -> KnownOverTime.of(
                                model.run().scenario(), model.run().past()),
                        k -> new KnownPane(k, model.run(), words, KnownOverTime.Quantity.NITRITE)));
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
