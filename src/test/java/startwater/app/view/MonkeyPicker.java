package startwater.app.view;

import java.nio.file.Path;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** A person who closes every other chooser, and else picks a file or folder beside the data. */
final class MonkeyPicker implements Picker {
    private final Path folder;
    private int asked;

    MonkeyPicker(Path folder) {
        this.folder = folder;
    }

    private @Nullable Path or(Path given) {
        return asked++ % 2 == 0 ? null : given;
    }

    @Override
    public @Nullable Path save(String title, String name, List<Kind> kinds) {
        return or(folder.resolve("picked" + kinds.get(0).ending()));
    }

    @Override
    public @Nullable Path open(String title, List<Kind> kinds) {
        return or(folder.resolve("picked" + kinds.get(0).ending()));
    }

    @Override
    public @Nullable Path folder(String title) {
        return or(folder);
    }
}
