package startwater.app.view;

import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Supplier;
import javafx.stage.DirectoryChooser;
import javafx.stage.FileChooser;
import javafx.stage.Window;
import org.jspecify.annotations.Nullable;

/** The choosers of the system. */
final class SystemPicker implements Picker {
    private final Supplier<@Nullable Window> window;

    SystemPicker(Supplier<@Nullable Window> window) {
        this.window = window;
    }

    @Override
    public @Nullable Path save(String title, String name, List<Kind> kinds) {
        FileChooser where = chooser(title, kinds);
        where.setInitialFileName(name);
        File to = where.showSaveDialog(window.get());
        if (to == null) {
            return null;
        }
        FileChooser.ExtensionFilter filter = where.getSelectedExtensionFilter();
        int chosen = Math.max(0, where.getExtensionFilters().indexOf(filter));
        return named(to.toPath(), kinds, chosen);
    }

    /** Not every system adds the ending of the kind that was chosen; a file that nobody was asked about is left alone. */
    static Path named(Path to, List<Kind> kinds, int chosen) {
        String name = String.valueOf(to.getFileName());
        if (kinds.isEmpty() || kinds.stream().anyMatch(k -> name.endsWith(k.ending()))) {
            return to;
        }
        String ending = kinds.get(chosen).ending();
        Path file = to.resolveSibling(name + ending);
        for (int i = 2; Files.exists(file); i++) {
            file = to.resolveSibling(name + "-" + i + ending);
        }
        return file;
    }

    @Override
    public @Nullable Path open(String title, List<Kind> kinds) {
        File from = chooser(title, kinds).showOpenDialog(window.get());
        return from == null ? null : from.toPath();
    }

    @Override
    public @Nullable Path folder(String title) {
        DirectoryChooser where = new DirectoryChooser();
        where.setTitle(title);
        File folder = where.showDialog(window.get());
        return folder == null ? null : folder.toPath();
    }

    private static FileChooser chooser(String title, List<Kind> kinds) {
        FileChooser where = new FileChooser();
        where.setTitle(title);
        kinds.forEach(kind ->
                where.getExtensionFilters().add(new FileChooser.ExtensionFilter(kind.words(), "*" + kind.ending())));
        return where;
    }
}
