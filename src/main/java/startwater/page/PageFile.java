package startwater.page;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/** A page in a file: a PDF where the name ends like one, else the HTML as it is. */
public final class PageFile {
    private PageFile() {}

    /**
     * Writes it; the page is laid out before the file is touched.
     *
     * @param paper where the page does not name its own
     * @throws IOException where the file cannot be written
     */
    public static void write(Path file, String page, Paper paper) throws IOException {
        byte[] bytes = Pdf.is(file) ? Pdf.of(page, paper) : page.getBytes(StandardCharsets.UTF_8);
        Files.write(file, bytes);
    }

    /** The same for a page that names its paper. */
    public static void write(Path file, String page) throws IOException {
        write(file, page, Paper.A4);
    }
}
