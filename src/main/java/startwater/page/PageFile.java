package startwater.page;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;

/** What a page is as a file: a PDF where the name ends like one, else the HTML as it is. */
public final class PageFile {
    private PageFile() {}

    /**
     * The bytes to write.
     *
     * @param file its name decides
     * @param paper where the page does not name its own
     */
    public static byte[] bytes(Path file, String page, Paper paper) {
        return Pdf.is(file) ? Pdf.of(page, paper) : page.getBytes(StandardCharsets.UTF_8);
    }
}
