package startwater.app.view;

import java.util.List;
import javafx.geometry.Insets;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.VBox;
import startwater.drill.DrillRun;
import startwater.score.RunSummary;
import startwater.score.Verdict;
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
                        Ui.text(texts.text("shell.endChart"), "sw-strong"),
                        new RunChart(run, verdicts, words),
                        Ui.text(texts.text("shell.endChartHow"), "sw-label", "sw-quiet"),
                        Ui.text(texts.text("caution"), "sw-label", "sw-quiet"),
                        Ui.button(texts.text("shell.toShelf"), "sw-primary", navigator::home));
        ScrollPane scroll = new ScrollPane(page);
        scroll.setFitToWidth(true);
        scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        scroll.setStyle("-fx-background-color: transparent; -fx-background: transparent; -fx-padding: 0;");
        setCenter(scroll);
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
