package startwater.app.view;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import javafx.geometry.Insets;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;
import startwater.cli.Notices;
import startwater.record.Notice;
import startwater.text.Texts;

/** What has to be told about the learner's file, above the page: what was found can be closed, a trouble stays while it is one. */
final class Banner {
    private final Consumer<@Nullable Node> top;
    private final List<Notice> found = new ArrayList<>();
    private final List<String> told = new ArrayList<>();
    private @Nullable Notice trouble;

    /** @param top shows it, or nothing */
    Banner(Consumer<@Nullable Node> top) {
        this.top = top;
    }

    void clear() {
        found.clear();
        told.clear();
    }

    /** Says a sentence until it is closed; a new one takes its place. */
    void tell(String sentence) {
        told.clear();
        told.add(sentence);
    }

    void say(Notice notice) {
        found.add(notice);
    }

    /** Shows it as it stands. @param now why nothing is kept just now, or null */
    void show(Texts texts, @Nullable Notice now) {
        trouble = now;
        if (now == null && found.isEmpty() && told.isEmpty()) {
            top.accept(null);
            return;
        }
        VBox lines = new VBox(4);
        if (now != null) {
            Label danger = Ui.text(Notices.say(now, texts), "sw-strong", "sw-danger");
            danger.setId("not-kept");
            lines.getChildren().add(danger);
        }
        found.forEach(n -> lines.getChildren().add(Ui.text(Notices.say(n, texts))));
        told.forEach(sentence -> lines.getChildren().add(Ui.text(sentence)));
        HBox.setHgrow(lines, Priority.ALWAYS);
        HBox bar = Ui.row(16, lines);
        if (!found.isEmpty() || !told.isEmpty()) {
            Region close = Ui.button(texts.text("learner.seen"), "", () -> {
                clear();
                show(texts, trouble);
            });
            close.setId("banner-close");
            close.setMinWidth(Region.USE_PREF_SIZE);
            bar.getChildren().add(close);
        }
        bar.setId("banner");
        bar.getStyleClass().addAll("sw-wash", "sw-hairline-bottom");
        bar.setPadding(new Insets(8, 24, 8, 24));
        top.accept(bar);
    }
}
