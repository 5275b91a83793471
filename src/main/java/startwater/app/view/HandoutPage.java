package startwater.app.view;

import java.util.function.Consumer;
import javafx.geometry.Insets;
import javafx.scene.control.Button;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.VBox;
import startwater.classroom.Handout;
import startwater.content.Library;
import startwater.drill.Scenario;
import startwater.record.Entry;
import startwater.text.DrillWords;
import startwater.text.Texts;

/** What a teacher handed out, as a learner sees it: drills and lessons in order, and the file to hand in. */
final class HandoutPage extends BorderPane {
    /**
     * @param words with the words of a class among them
     * @param play starts a drill of the hand-out, or takes it up
     * @param read opens the lesson of an id
     * @param handIn saves the file to hand in
     */
    HandoutPage(
            Handout handout,
            DrillWords words,
            Library library,
            Consumer<Scenario> play,
            Consumer<String> read,
            Runnable handIn) {
        Texts texts = words.texts();
        boolean exam = handout.mode() == Entry.Mode.EXAM;
        VBox page = new VBox(
                12,
                Ui.text(texts.text("desk.handedOut"), "sw-strong", "sw-quiet"),
                Ui.text(handout.title().isBlank() ? contents(handout, words) : handout.title(), "sw-title"),
                Ui.text(texts.text(exam ? "desk.examSays" : "desk.practiceSays"), "sw-sentence"));
        if (!handout.deadline().isBlank()) {
            page.getChildren().add(Ui.text(texts.text("desk.untilSays", handout.deadline()), "sw-strong"));
        }
        for (String id : handout.lessons()) {
            library.lessonCards(texts.language().code()).stream()
                    .filter(card -> card.id().equals(id))
                    .forEach(card -> page.getChildren()
                            .add(line(
                                    texts.text("progress.lesson", card.number(), card.title()),
                                    texts.text("progress.readLesson"),
                                    "handed-" + id,
                                    () -> read.accept(id))));
        }
        for (Handout.Drill drill : handout.drills()) {
            Scenario s = drill.scenario();
            page.getChildren()
                    .add(line(
                            texts.text(
                                    "progress.drill",
                                    s.number(),
                                    words.scenario(s).title()),
                            texts.text("progress.startDrill"),
                            "handed-" + s.id(),
                            () -> play.accept(s)));
        }
        Button save = Ui.button(texts.text("desk.handIn"), "sw-primary", handIn);
        save.setId("hand-in");
        VBox end = new VBox(8, Ui.text(texts.text("desk.handInSays"), "sw-quiet"), save);
        end.getStyleClass().add("sw-hairline-top");
        end.setPadding(new Insets(16, 0, 0, 0));
        page.getChildren().add(end);
        page.setPadding(new Insets(28, 24, 24, 32));
        setCenter(Ui.scroll(page));
    }

    /** What to call a hand-out without a title. */
    private static String contents(Handout handout, DrillWords words) {
        return handout.drills().stream()
                .map(drill -> words.scenario(drill.scenario()).title())
                .reduce((a, b) -> a + ", " + b)
                .orElseGet(() -> words.texts().text("shell.lessons"));
    }

    private static VBox line(String title, String act, String id, Runnable does) {
        Button button = Ui.button(act, "sw-second", does);
        button.setId(id);
        button.setAccessibleText(title + ". " + act);
        VBox card = new VBox(8, Ui.text(title, "sw-sentence", "sw-strong"), button);
        card.getStyleClass().add("sw-card");
        card.setPadding(new Insets(14, 16, 14, 16));
        card.setMaxWidth(640);
        return card;
    }
}
