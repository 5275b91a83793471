package startwater.page;

import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.PageSizeUnits;
import com.openhtmltopdf.outputdevice.helper.ExternalResourceControlPriority;
import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.util.XRLog;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.Calendar;
import java.util.GregorianCalendar;
import java.util.Locale;
import java.util.Objects;
import java.util.TimeZone;
import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.w3c.dom.Document;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;

/**
 * A page of {@link Html} as PDF: the same page, laid out on paper, with its title, its language, page numbers and words that
 * can be marked and read aloud. Nothing is fetched from a disk or a net. The same page gives the same bytes.
 */
public final class Pdf {
    /** How the name of such a file ends. */
    public static final String ENDING = ".pdf";

    private static final String FONTS = "/startwater/app/font/";
    static final String FAMILY = "Source Sans 3";
    private static final int REGULAR = 400;
    private static final int SEMIBOLD = 700;

    static {
        // Its remarks on style sheets are for those who write them.
        XRLog.setLoggingEnabled(false);
    }

    private Pdf() {}

    /** Whether a file is to be one, by its name. */
    public static boolean is(Path file) {
        return String.valueOf(file.getFileName()).toLowerCase(Locale.ROOT).endsWith(ENDING);
    }

    /**
     * Lays a page out.
     *
     * @param page of {@link Html}
     * @param paper where the page does not name its own
     * @throws IllegalArgumentException where the page is not well-formed
     */
    public static byte[] of(String page, Paper paper) {
        PdfRendererBuilder builder = new PdfRendererBuilder();
        builder.withW3cDocument(parsed(page), null);
        builder.useFont(() -> font("SourceSansPro-Regular.ttf"), FAMILY, REGULAR, FontStyle.NORMAL, true);
        builder.useFont(() -> font("SourceSansPro-Semibold.ttf"), FAMILY, SEMIBOLD, FontStyle.NORMAL, true);
        builder.useDefaultPageSize(paper.widthMm(), paper.heightMm(), PageSizeUnits.MM);
        builder.useExternalResourceAccessControl(
                (uri, kind) -> false, ExternalResourceControlPriority.RUN_BEFORE_RESOLVING_URI);
        builder.useExternalResourceAccessControl(
                (uri, kind) -> false, ExternalResourceControlPriority.RUN_AFTER_RESOLVING_URI);
        builder.useSVGDrawer(new SvgDrawing());
        builder.usePdfUaAccessibility(true);
        builder.withProducer("Startwater");
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (PdfBoxRenderer renderer = builder.buildPdfRenderer();
                PDDocument document = renderer.createPDFKeepOpen()) {
            withoutTime(document, page);
            document.save(out);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return out.toByteArray();
    }

    /** The clock and chance are left out of the file. */
    private static void withoutTime(PDDocument document, String page) {
        Calendar start = new GregorianCalendar(TimeZone.getTimeZone("UTC"), Locale.ROOT);
        start.setTimeInMillis(0);
        document.getDocumentInformation().setCreationDate(start);
        document.getDocumentInformation().setModificationDate(start);
        document.setDocumentId((long) page.hashCode());
    }

    private static InputStream font(String file) {
        return Objects.requireNonNull(Pdf.class.getResourceAsStream(FONTS + file), file);
    }

    private static Document parsed(String page) {
        try {
            DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
            factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
            factory.setFeature("http://xml.org/sax/features/external-general-entities", false);
            factory.setFeature("http://apache.org/xml/features/nonvalidating/load-external-dtd", false);
            factory.setExpandEntityReferences(false);
            return factory.newDocumentBuilder().parse(new InputSource(new StringReader(page)));
        } catch (SAXException | IOException e) {
            throw new IllegalArgumentException("The page is not well-formed: " + e.getMessage(), e);
        } catch (ParserConfigurationException e) {
            throw new IllegalStateException("Every Java reads XML", e);
        }
    }
}
