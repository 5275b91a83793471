package startwater.app.view;

import java.util.List;
import java.util.function.Consumer;
import javafx.geometry.Insets;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.VBox;
import startwater.content.LessonCard;
import startwater.text.DrillWords;
import startwater.text.Texts;

/** The lessons there are, in the order of the course. */
final class LessonList extends BorderPane {
    LessonList(List<LessonCard> lessons, DrillWords words, Consumer<LessonCard> read) {
        Texts texts = words.texts();
        VBox page = new VBox(12, Ui.text(texts.text("shell.lessons"), "sw-title"));
        page.setPadding(new Insets(28, 24, 24, 32));
        for (LessonCard lesson : lessons) {
            var open = Ui.button(texts.text("lesson.read"), "sw-second", () -> read.accept(lesson));
            open.setId("lesson-" + lesson.id());
            open.setAccessibleText(texts.text("lesson.readSpoken", lesson.title()));
            VBox card = new VBox(
                    6,
                    Ui.text(lesson.number() + "  " + lesson.title(), "sw-sentence", "sw-strong"),
                    Ui.text(
                            texts.text(
                                    "lesson.about",
                                    lesson.minutes(),
                                    String.join(
                                            ", ",
                                            lesson.skills().stream()
                                                    .map(id -> texts.text("skill." + id))
                                                    .toList())),
                            "sw-label",
                            "sw-quiet"),
                    open);
            card.getStyleClass().add("sw-card");
            card.setPadding(new Insets(14, 16, 14, 16));
            card.setMaxWidth(640);
            page.getChildren().add(card);
        }
        setCenter(Ui.scroll(page));
    }
}
