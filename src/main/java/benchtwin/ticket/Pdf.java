package benchtwin.ticket;

import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.svgsupport.BatikSVGDrawer;
import com.openhtmltopdf.util.XRLog;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.Calendar;
import java.util.GregorianCalendar;
import java.util.Locale;
import java.util.TimeZone;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences;

/**
 * A page as it goes to the printer. The same XHTML and facts give the same bytes.
 * @param bytes a PDF file, with what it needs of the letters in it
 * @param pages how many sheets
 */
record Pdf(byte[] bytes, int pages) {

    /** What every page is written in. */
    static final String LANGUAGE = "en";
    private static final long SAME_EVERY_TIME = 0;

    /** What is known of a file beside its pages: its title, and when it was made, by the clock at the bench. */
    record About(String title, LocalDateTime made) {
    }

    /**
     * Prints a page.
     * @param xhtml well-formed, with CSS 2.1; its paper's size is in its style sheet. Nothing is fetched for it
     * @param about title and date
     * @return the file
     */
    static Pdf of(String xhtml, About about) {
        XRLog.setLoggingEnabled(false);
        PdfRendererBuilder builder = new PdfRendererBuilder().withHtmlContent(xhtml, null).useSVGDrawer(new BatikSVGDrawer())
            .useFastMode().withProducer("benchtwin").useReplacementText(PaperText.REPLACEMENT);
        Typeface.useIn(builder);
        try (PdfBoxRenderer renderer = builder.buildPdfRenderer()) {
            renderer.layout();
            renderer.createPDFWithoutClosing();
            return written(renderer.getPdfDocument(), about);
        } catch (IOException notWritten) {
            throw new UncheckedIOException(notWritten);
        }
    }

    private static Pdf written(PDDocument document, About about) throws IOException {
        PDDocumentInformation information = document.getDocumentInformation();
        information.setTitle(about.title());
        information.setCreator("benchtwin");
        information.setCreationDate(date(about.made()));
        information.setModificationDate(date(about.made()));
        document.getDocumentCatalog().setLanguage(LANGUAGE);
        PDViewerPreferences viewer = new PDViewerPreferences(new org.apache.pdfbox.cos.COSDictionary());
        viewer.setDisplayDocTitle(true);
        document.getDocumentCatalog().setViewerPreferences(viewer);
        document.setDocumentId(SAME_EVERY_TIME);
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        document.save(bytes);
        return new Pdf(bytes.toByteArray(), document.getNumberOfPages());
    }

    private static Calendar date(LocalDateTime made) {
        Calendar calendar = new GregorianCalendar(TimeZone.getTimeZone(ZoneOffset.UTC), Locale.ROOT);
        calendar.setTimeInMillis(made.toInstant(ZoneOffset.UTC).toEpochMilli());
        return calendar;
    }
}
