package startwater.app.view;

import java.util.function.Consumer;
import java.util.function.Supplier;
import javafx.scene.layout.Region;
import startwater.app.Desk;
import startwater.content.Library;
import startwater.text.DrillWords;
import startwater.text.Language;

/** What the pages of the window ask of the frame around them. */
interface Frame {
    Desk desk();

    Library library();

    Language language();

    DrillWords words();

    Banner banner();

    /** Who asks for files and folders. */
    Picker picker();

    /** Goes to a page. @param page makes it, and makes it anew when language, look or text size change */
    void go(Place where, Supplier<Region> page);

    /** Works something out beside the window and hands it over, unless another page was gone to meanwhile. */
    <T> void work(Supplier<T> work, Consumer<T> done);

    /** Whether this page is still the present one. */
    boolean shows(Supplier<Region> page);

    /** Makes the present page anew. */
    void refresh();

    /** Says so as soon as something is not on the disk, and no longer than that. */
    void kept();

    /** Back to where one came from: what was handed out, or the shelf. */
    void home();

    /** Opens a lesson. */
    void lesson(String id);
}
