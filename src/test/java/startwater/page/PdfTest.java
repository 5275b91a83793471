package startwater.page;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** What a PDF of a page must be: whole, readable, the same again, and made of nothing but the page. */
class PdfTest {
    private static final int ROWS = 36;

    private static PDDocument open(byte[] pdf) throws IOException {
        return Loader.loadPDF(pdf);
    }

    private static List<String> pages(byte[] pdf) throws IOException {
        try (PDDocument document = open(pdf)) {
            List<String> pages = new ArrayList<>();
            for (int page = 1; page <= document.getNumberOfPages(); page++) {
                PDFTextStripper words = new PDFTextStripper();
                words.setStartPage(page);
                words.setEndPage(page);
                pages.add(words.getText(document));
            }
            return pages;
        }
    }

    private static String page() {
        Html html = Paper.A4.page("es", "Nitrito y sal: ¿cuánta?");
        return html.tag("p", "Ñandú, pingüino, NH₃/NH₄⁺, NO₂⁻, ☐ sí, 0,5 – 1 %, ✓")
                .page();
    }

    @ParameterizedTest
    @EnumSource(Paper.class)
    void itHasTheSizeOfThePaperATitleALanguageAndPageNumbers(Paper paper) throws IOException {
        byte[] pdf = Pdf.of(paper.page("es", "Nitrito y sal: ¿cuánta?").page(), Paper.A4);
        try (PDDocument document = open(pdf)) {
            PDRectangle size = document.getPage(0).getMediaBox();
            PDRectangle wanted = paper == Paper.A4 ? PDRectangle.A4 : PDRectangle.LETTER;
            assertThat(size.getWidth()).isBetween(wanted.getWidth() - 1, wanted.getWidth() + 1);
            assertThat(size.getHeight()).isBetween(wanted.getHeight() - 1, wanted.getHeight() + 1);
            assertThat(document.getDocumentInformation().getTitle()).isEqualTo("Nitrito y sal: ¿cuánta?");
            assertThat(document.getDocumentCatalog().getLanguage()).isEqualTo("es");
            assertThat(document.getDocumentCatalog().getMarkInfo().isMarked())
                    .as("structure for screen readers")
                    .isTrue();
        }
        assertThat(pages(pdf)).singleElement().asString().contains("1 / 1");
    }

    @Test
    void everyLetterIsThereToBeMarkedAndCopied() throws IOException {
        assertThat(pages(Pdf.of(page(), Paper.A4)).get(0))
                .contains("Ñandú, pingüino, NH₃/NH₄⁺, NO₂⁻, ☐ sí, 0,5 – 1 %, ✓")
                .doesNotContain("#");
    }

    @Test
    void theSamePageGivesTheSameBytes() {
        byte[] once = Pdf.of(page(), Paper.A4);
        // The files would name the second they were made in.
        long second = System.currentTimeMillis() / 1000;
        while (System.currentTimeMillis() / 1000 == second) {
            Thread.onSpinWait();
        }
        assertThat(Pdf.of(page(), Paper.A4)).isEqualTo(once);
    }

    private static boolean torn(List<String> pages) {
        return IntStream.rangeClosed(1, ROWS).anyMatch(i -> pages.stream()
                .noneMatch(p -> p.contains("from" + i + "x") && p.contains("to" + i + "x")));
    }

    @Test
    void noRowIsTornAndTheHeadStandsOnEveryPage() throws IOException {
        Html html = Paper.LETTER.page("en", "Rows").raw("<table>").row("th", "Heading", "Words");
        for (int i = 1; i <= ROWS; i++) {
            html.row("td", "from" + i + "x", ("line of row " + i + " ").repeat(1 + i % 9 * 6) + "to" + i + "x");
        }
        String page = html.raw("</table>").page();
        List<String> pages = pages(Pdf.of(page, Paper.A4));
        assertThat(pages).hasSizeGreaterThan(2).allSatisfy(p -> assertThat(p).contains("Heading"));
        assertThat(torn(pages)).isFalse();
        assertThat(torn(pages(Pdf.of(page.replaceAll("(page-)?break-inside:avoid", "color:inherit"), Paper.A4))))
                .as("without the rule rows are torn, so the rule is what holds them")
                .isTrue();
    }

    @Test
    void chartsAreDrawnWithTheirWordsAndWhatIsNotKnownIsRefused() throws IOException {
        String chart = "<svg viewBox=\"0 0 100 50\" width=\"200\" font-size=\"13\"><title>said</title>"
                + "<rect x=\"1\" y=\"1\" width=\"20\" height=\"9\" fill=\"#A3271F\"/>"
                + "<polyline fill=\"none\" stroke=\"#0E5A73\" stroke-dasharray=\"3 3\" points=\"1,1 50,20 99,40\"/>"
                + "<text x=\"50\" y=\"30\" text-anchor=\"middle\">nitrito</text></svg>";
        byte[] with = Pdf.of(Paper.A4.page("en", "Chart").raw(chart).page(), Paper.A4);
        assertThat(pages(with).get(0)).contains("nitrito");
        String strange =
                Paper.A4.page("en", "x").raw(chart.replace("rect", "image")).page();
        assertThatThrownBy(() -> Pdf.of(strange, Paper.A4)).hasMessageContaining("image");
    }

    @Test
    void nothingIsFetchedFromNetOrDisk(@TempDir Path folder) throws IOException {
        AtomicInteger asked = new AtomicInteger();
        HttpServer server = HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0), 0);
        server.createContext("/", exchange -> {
            asked.incrementAndGet();
            exchange.sendResponseHeaders(404, -1);
            exchange.close();
        });
        server.start();
        try {
            String there = "http://localhost:" + server.getAddress().getPort() + "/";
            Path css = Files.writeString(folder.resolve("x.css"), "p{display:none}");
            String page = Paper.A4
                    .page("en", "x")
                    .raw("<img src=\"" + there + "a.png\" alt=\"a\"/>")
                    .raw("<img src=\"" + css.toUri() + "\" alt=\"b\"/>")
                    .raw("<p style=\"background:url(" + there + "b.png)\">still here</p>")
                    .page()
                    .replace(
                            "<style>",
                            "<link rel=\"stylesheet\" href=\"" + css.toUri() + "\"/><link rel=\"stylesheet\" href=\""
                                    + there + "c.css\"/><style>@import url(" + there + "d.css);");
            assertThat(pages(Pdf.of(page, Paper.A4)).get(0)).contains("still here");
            String doctype = page.replace(
                    "<!DOCTYPE html>",
                    "<!DOCTYPE html SYSTEM \"" + there + "e.dtd\" [<!ENTITY e SYSTEM \"" + css.toUri() + "\">]>");
            assertThat(pages(Pdf.of(doctype.replace("still here", "still here &e;"), Paper.A4))
                            .get(0))
                    .contains("still here")
                    .doesNotContain("display:none");
        } finally {
            server.stop(0);
        }
        assertThat(asked).hasValue(0);
    }

    @Test
    void aPageThatIsNotWellFormedIsRefused() {
        assertThatThrownBy(() -> Pdf.of("<html><p>", Paper.A4)).isInstanceOf(IllegalArgumentException.class);
    }
}
