package startwater.app.view;

import javafx.scene.Node;
import javafx.scene.Parent;
import org.jspecify.annotations.Nullable;

/** Where the keys are, for parts that are made anew under them. */
final class Keys {
    private Keys() {}

    /** What has the keys within a part; null where they are elsewhere. */
    static @Nullable Node within(Parent part) {
        Node owner = part.getScene() == null ? null : part.getScene().getFocusOwner();
        Node at = owner;
        while (at != null && at != part) {
            at = at.getParent();
        }
        return at == null ? null : owner;
    }

    /** Makes a part anew; keys that were within it stay on what has the same id. */
    static void keep(Parent part, Runnable anew) {
        Node before = within(part);
        anew.run();
        Node same = before == null || before.getId() == null ? null : part.lookup("#" + before.getId());
        if (same != null) {
            same.requestFocus();
        }
    }
}
