package startwater.app.view;

import java.util.function.Function;
import java.util.function.Supplier;
import javafx.scene.Node;
import javafx.scene.layout.VBox;

/** A place on a page for what takes longer than a blink: worked out beside the window, shown when it is there. */
final class Later extends VBox {
    private Later(String meanwhile) {
        getChildren().add(Ui.text(meanwhile, "sw-label", "sw-quiet"));
    }

    /** @param meanwhile said until it is there, @param work done beside the window, @param shown made of the result */
    static <T> Later of(String meanwhile, Supplier<T> work, Function<T, Node> shown) {
        Later place = new Later(meanwhile);
        Background.run(work, result -> place.getChildren().setAll(shown.apply(result)));
        return place;
    }
}
