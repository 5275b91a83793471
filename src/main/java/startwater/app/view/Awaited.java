package startwater.app.view;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** Something that is worked out once beside the window, and shown wherever it is waited for. For the thread that paints. */
final class Awaited<T> {
    private final List<Consumer<T>> waiting = new ArrayList<>();
    private final Background.Work work;
    private @Nullable T there;

    /** Begins at once. */
    Awaited(Supplier<T> made) {
        work = Background.run(made, this::came);
    }

    private void came(T result) {
        there = result;
        waiting.forEach(w -> w.accept(result));
        waiting.clear();
    }

    /** Shows it as soon as it is there: now, or later. */
    void thenShow(Consumer<T> shown) {
        T now = there;
        if (now != null) {
            shown.accept(now);
        } else {
            waiting.add(shown);
        }
    }

    /** Nobody waits for it any more. */
    void cancel() {
        work.cancel();
        waiting.clear();
    }
}
