package startwater.app.view;

import java.util.function.Supplier;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.geometry.Insets;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import startwater.text.Texts;

/** A heading with its gist beside it; what is behind is made when it is first opened. */
final class Fold extends VBox {
    private final Texts texts;
    private final String title;
    private final Label said;
    private final Supplier<Region> content;
    private final Button head = new Button();
    private final Region sign = new Region();
    private final BooleanProperty open = new SimpleBooleanProperty();
    private boolean made;

    Fold(Texts texts, String id, String title, String gist, Supplier<Region> content) {
        this.texts = texts;
        this.title = title;
        this.content = content;
        setId("fold-" + id);
        sign.getStyleClass().add("sw-fold-sign");
        Label name = Ui.text(title, "sw-strong");
        name.setWrapText(false);
        name.setMinWidth(Region.USE_PREF_SIZE);
        said = Ui.text(gist, "sw-label", "sw-quiet");
        // A button does not grow with the lines of what is in it: a gist is one line, and a test sees to it.
        said.setWrapText(false);
        said.setMinWidth(0);
        HBox.setHgrow(said, Priority.ALWAYS);
        head.setGraphic(Ui.row(8, sign, name, said));
        head.getStyleClass().add("sw-fold");
        head.setMaxWidth(Double.MAX_VALUE);
        head.setOnAction(e -> open.set(!open.get()));
        head.setId("open-" + id);
        getChildren().add(head);
        getStyleClass().add("sw-hairline-top");
        open.addListener((p, was, is) -> show());
        show();
    }

    /** Says another gist. */
    void say(String gist) {
        said.setText(gist);
        speak();
    }

    BooleanProperty openProperty() {
        return open;
    }

    private void show() {
        boolean now = open.get();
        if (now && !made) {
            made = true;
            Region inside = content.get();
            VBox.setMargin(inside, new Insets(2, 0, 10, 0));
            getChildren().add(inside);
        }
        if (made) {
            getChildren().get(1).setVisible(now);
            getChildren().get(1).setManaged(now);
        }
        sign.setRotate(now ? 90 : 0);
        speak();
    }

    private void speak() {
        head.setAccessibleText(texts.text(open.get() ? "fold.isOpen" : "fold.isFolded", title, said.getText()));
    }
}
