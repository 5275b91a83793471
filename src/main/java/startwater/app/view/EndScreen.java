package startwater.app.view;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import javafx.geometry.Insets;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.VBox;
import startwater.app.chart.LogTrend;
import startwater.app.chart.Tick;
import startwater.app.chart.TimeLine;
import startwater.app.chart.Tone;
import startwater.drill.DrillRun;
import startwater.drill.DrillRun.TruthPoint;
import startwater.drill.VisitRecord;
import startwater.score.RunSummary;
import startwater.score.Verdict;
import startwater.strip.Pad;
import startwater.text.DrillWords;
import startwater.text.Texts;

/** The whole run on one page: marks, the stock beside the rules and doing nothing, luck apart, truth against the log. */
final class EndScreen extends BorderPane {
    EndScreen(DrillRun run, List<Verdict> verdicts, RunSummary end, DrillWords words, Navigator navigator) {
        Texts texts = words.texts();
        VBox page = new VBox(14);
        page.setPadding(new Insets(24, 32, 24, 32));
        page.getChildren()
                .addAll(
                        Ui.text(words.scenario(run.scenario()).title(), "sw-label", "sw-strong", "sw-quiet"),
                        Ui.text(
                                Double.isNaN(end.mark())
                                        ? texts.text("shell.endNoMark")
                                        : texts.text(
                                                end.passed() ? "shell.endPassed" : "shell.endNot",
                                                Math.rint(end.mark())),
                                "sw-title",
                                end.passed() ? "sw-safe" : "sw-ink"));
        if (run.scenario().fishCount() > 0) {
            page.getChildren()
                    .addAll(
                            Ui.text(
                                    texts.text(
                                            "shell.endAlive",
                                            end.ownAlive(),
                                            run.scenario().fishCount(),
                                            end.rulesAlive(),
                                            end.nothingAlive()),
                                    "sw-sentence"),
                            Ui.text(luck(end, words), "sw-sentence", "sw-quiet"));
        }
        page.getChildren()
                .addAll(
                        Ui.text(words.scenario(run.scenario()).debrief(), "sw-sentence"),
                        timeLine(run, verdicts, end, words),
                        Ui.text(texts.text("shell.endChartHow"), "sw-label", "sw-quiet"),
                        Ui.text(texts.text("caution"), "sw-label", "sw-quiet"),
                        Ui.button(texts.text("shell.toShelf"), "sw-primary", navigator::home));
        ScrollPane scroll = new ScrollPane(page);
        scroll.setFitToWidth(true);
        scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        scroll.setStyle("-fx-background-color: transparent; -fx-background: transparent; -fx-padding: 0;");
        setCenter(scroll);
    }

    private static TimeLine timeLine(DrillRun run, List<Verdict> verdicts, RunSummary end, DrillWords words) {
        Texts texts = words.texts();
        Pad scale = Pad.NITRITE;
        List<Tick> steps = new ArrayList<>();
        for (int b = 0; b < scale.scale().blocks(); b++) {
            steps.add(Tick.of(b, words.block(scale, b)));
        }
        List<Tick> days = new ArrayList<>();
        int first = (int) Math.floor(run.truth().get(0).day());
        for (int day = first; day <= run.past().last().day(); day += 2) {
            days.add(Tick.of(day, texts.text("shell.day", day)));
        }
        List<TimeLine.Trace> traces = List.of(
                trace(run, Pad.AMMONIA, LogTrend.Mark.SQUARE, Tone.QUIET, words, TruthPoint::ammoniaMgPerL),
                trace(run, Pad.NITRITE, LogTrend.Mark.DOT, Tone.WATER, words, TruthPoint::nitriteMgPerL));
        List<TimeLine.Decision> marks = new ArrayList<>();
        for (VisitRecord v : run.past().visits()) {
            if (v.asked() && v.decision() != null && marks.size() < verdicts.size()) {
                Verdict verdict = verdicts.get(marks.size());
                marks.add(new TimeLine.Decision(
                        v.day(),
                        TimeLine.Word.valueOf(verdict.word().name()),
                        verdict.scored() ? texts.number(Math.rint(verdict.mark())) : "",
                        words.word(verdict.word())));
            }
        }
        List<TimeLine.Stock> stocks = run.scenario().fishCount() == 0
                ? List.of()
                : List.of(
                        new TimeLine.Stock(texts.text("shell.stockOwn"), Tone.OWN, alive(end.own())),
                        new TimeLine.Stock(texts.text("shell.stockRules"), Tone.BEST, alive(end.rules())),
                        new TimeLine.Stock(texts.text("shell.stockNothing"), Tone.QUIET, alive(end.nothing())));
        return new TimeLine(new TimeLine.Data(
                texts.text("shell.endChart"),
                stocks.isEmpty() ? "" : texts.text("shell.stockHead"),
                steps,
                days,
                traces,
                marks,
                stocks,
                texts.language().locale(),
                texts.text("shell.endChartHow")));
    }

    private static TimeLine.Trace trace(
            DrillRun run,
            Pad pad,
            LogTrend.Mark mark,
            Tone tone,
            DrillWords words,
            ToDoubleFunction<TruthPoint> value) {
        List<TimeLine.At> truth = run.truth().stream()
                .map(t -> new TimeLine.At(t.day(), Pad.NITRITE.scale().position(value.applyAsDouble(t))))
                .toList();
        List<TimeLine.At> written = new ArrayList<>();
        for (VisitRecord v : run.past().visits()) {
            v.written().stream()
                    .filter(w -> w.pad() == pad)
                    .forEach(w -> written.add(
                            new TimeLine.At(v.day(), Pad.NITRITE.scale().position(w.value()))));
        }
        return new TimeLine.Trace(List.of(words.pad(pad)), mark, tone, truth, written);
    }

    private static List<TimeLine.At> alive(List<TruthPoint> points) {
        return points.stream()
                .map(t -> new TimeLine.At(t.day(), t.expectedAlive()))
                .toList();
    }

    private static String luck(RunSummary end, DrillWords words) {
        String count = words.why().deaths(Math.abs(end.luck()));
        return words.texts()
                .text(
                        Math.abs(end.luck()) < 1
                                ? "shell.luckNone"
                                : end.luck() > 0 ? "shell.luckGood" : "shell.luckBad",
                        count);
    }
}
