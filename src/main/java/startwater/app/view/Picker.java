package startwater.app.view;

import java.nio.file.Path;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Asks the person at the window for files and folders. */
public interface Picker {
    /**
     * A kind of file.
     *
     * @param words what it is called
     * @param ending of its name, with the point
     */
    record Kind(String words, String ending) {}

    /**
     * Where to write a file.
     *
     * @param name to begin with
     * @param kinds it may be of, the usual one first; the name that comes back ends like one of them
     * @return the file, or null where nobody wants it any more
     */
    @Nullable
    Path save(String title, String name, List<Kind> kinds);

    /** Which file to read, or null. */
    @Nullable
    Path open(String title, List<Kind> kinds);

    /** Which folder to look into, or null. */
    @Nullable
    Path folder(String title);
}
