package startwater.app.view;

import javafx.scene.Node;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.Region;
import startwater.app.theme.Look;

/** Widths that follow text size and window. */
final class Sizes {
    private Sizes() {}

    /** Gives every child of a flow one width in design pixels, and never more than the flow itself has. */
    static void share(FlowPane flow, double width) {
        Runnable size = () -> {
            double scale = Look.of(flow.getScene()).scale();
            double room = flow.getWidth() - flow.snappedLeftInset() - flow.snappedRightInset();
            double wide = room > 0 ? Math.min(width * scale, room) : width * scale;
            for (Node child : flow.getChildren()) {
                ((Region) child).setMinWidth(0);
                ((Region) child).setPrefWidth(wide);
            }
        };
        // What it holds now must not keep it from becoming narrower.
        flow.setMinWidth(0);
        flow.widthProperty().addListener((p, was, is) -> size.run());
        flow.sceneProperty().addListener((p, was, is) -> size.run());
        size.run();
    }
}
