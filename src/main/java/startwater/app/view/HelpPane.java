package startwater.app.view;

import java.util.List;
import javafx.geometry.Insets;
import javafx.scene.control.Button;
import javafx.scene.control.ScrollPane;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.VBox;
import startwater.text.Texts;

/** Help beside the work, never over the decision: what to do in which order, the keys, the words. */
final class HelpPane extends BorderPane {
    private static final List<String> PARTS = List.of("order", "strip", "log", "sum", "decide", "foresee", "keys");

    private final Button close;

    HelpPane(Texts texts, Runnable closed) {
        setId("help");
        getStyleClass().addAll("sw-panel", "sw-hairline-left");
        close = Ui.button(texts.text("help.close"), "sw-second", closed);
        close.setId("help-close");
        var head = Ui.row(8, Ui.text(texts.text("help.title"), "sw-sentence", "sw-strong"), Ui.grow(), close);
        head.setPadding(new Insets(12, 16, 8, 16));
        setTop(head);
        VBox said = new VBox(10);
        said.setPadding(new Insets(0, 16, 16, 16));
        for (String part : PARTS) {
            said.getChildren()
                    .add(new VBox(
                            2,
                            Ui.text(texts.text("help." + part), "sw-strong"),
                            Ui.text(texts.text("help.says." + part))));
        }
        said.getChildren().add(Ui.text(texts.text("caution"), "sw-label", "sw-quiet"));
        ScrollPane scroll = Ui.scroll(said);
        setCenter(scroll);
        addEventFilter(KeyEvent.KEY_PRESSED, e -> {
            if (e.getCode() == KeyCode.ESCAPE) {
                closed.run();
                e.consume();
            }
        });
    }

    /** Puts the keys here. */
    void focusIn() {
        close.requestFocus();
    }
}
