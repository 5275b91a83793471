package startwater.app;

import java.util.List;
import javafx.css.PseudoClass;
import javafx.geometry.Insets;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.CheckBox;
import javafx.scene.control.Hyperlink;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import startwater.app.view.part.Choice;
import startwater.app.view.part.Stepper;

/** The controls and the sizes of type on one board. */
final class GalleryControls {
    private GalleryControls() {}

    static Node board() {
        Choice feed = new Choice("Feed", List.of("none", "half", "full", "other"));
        feed.chosenProperty().set(2);
        Choice read = new Choice("Nitrite will read", List.of("0.2", "0.5", "1", "2", "5", "10"));
        read.chosenProperty().set(0);
        Stepper change = new Stepper(
                new Stepper.Names("Change water", "less", "more"), 0, 100, 5, v -> Math.round(v) + " %", text -> null);
        change.amountProperty().set(20);
        TextField field = new TextField("turn the feeder off");
        Button second = styled(new Button("Write it down"), "sw-second");
        showFocus(second);
        showFocus(read.getChildren().get(3));
        showFocus(change.field());
        Button primary = styled(new Button("Do it, go on"), "sw-primary");
        Button off = new Button("Not now");
        off.setDisable(true);
        VBox wash = styled(
                new VBox(4, text("Note to self", "sw-label", "sw-quiet"), text("If nitrite shows ...", "sw-strong")),
                "sw-wash");
        wash.setPadding(new Insets(12));
        HBox colours = new HBox(
                16,
                text("water", "sw-water"),
                text("yours", "sw-own", "sw-strong"),
                text("best", "sw-best", "sw-strong"),
                text("dangerous", "sw-danger", "sw-strong"),
                text("passed", "sw-safe", "sw-strong"),
                text("label", "sw-label", "sw-quiet"));
        return new VBox(
                14,
                text("One title", "sw-title"),
                text("The statement over the button", "sw-statement"),
                text("A sentence with its facts, 84 g a day.", "sw-sentence"),
                colours,
                new HBox(16, feed, change),
                new HBox(16, read, new CheckBox("air on")),
                new HBox(16, second, new Button("Dip again"), off, new Hyperlink("add a note")),
                new HBox(16, field, primary),
                wash);
    }

    private static void showFocus(Node node) {
        node.pseudoClassStateChanged(PseudoClass.getPseudoClass("focused"), true);
        node.pseudoClassStateChanged(PseudoClass.getPseudoClass("focus-visible"), true);
    }

    private static Label text(String words, String... classes) {
        return styled(new Label(words), classes);
    }

    private static <T extends Node> T styled(T node, String... classes) {
        node.getStyleClass().addAll(classes);
        return node;
    }
}
