package benchtwin.ticket;

import static org.assertj.core.api.Assertions.assertThat;

import gg.jte.Content;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.time.LocalDateTime;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Pages as PDF, read back with PDFBox. */
class PdfTest {

    private static final Pdf.About ABOUT = new Pdf.About("Job 12 & <more>", LocalDateTime.of(2026, 5, 20, 9, 30));
    private static final String STYLES = "@page { size: 210mm 297mm; margin: 10mm } body { font-family: \"DejaVu Sans\" }";

    private static String page(String words) {
        return Templates.filled("page.jte", Map.of("title", "a page", "styles", STYLES, "content",
            (Content) output -> output.writeUserContent(words)));
    }

    @Test
    void writesLatinGreekAndCyrillicWithLettersThatAreInTheFile() {
        PrintedText read = PrintedText.of(Pdf.of(page("Ærø Ñandú 9.4° ±0.25 · Ελένη Ωμέγα · Щукин Жанна <b>"), ABOUT).bytes());

        assertThat(read.text()).contains("Ærø Ñandú 9.4° ±0.25 · Ελένη Ωμέγα · Щукин Жанна <b>");
        assertThat(read.missing()).isEmpty();
        assertThat(read.fonts()).containsExactly("DejaVuSans");
        assertThat(read.loose()).isEmpty();
        assertThat(read.pages()).isEqualTo(1);
        assertThat(read.title()).isEqualTo("Job 12 & <more>");
        assertThat(read.lang()).isEqualTo("en");
    }

    @Test
    void aLetterThatSlippedThroughIsReplacedAllTheSame() {
        PrintedText read = PrintedText.of(Pdf.of(page("a 中 b"), ABOUT).bytes());

        assertThat(read.text()).contains("a \uFFFD b");
        assertThat(read.missing()).isEmpty();
    }

    @Test
    void theSamePageGivesTheSameBytes() {
        assertThat(Pdf.of(page("twice"), ABOUT).bytes()).isEqualTo(Pdf.of(page("twice"), ABOUT).bytes());
    }

    @Test
    void drawingsAreDrawnWithTheSameLetters() {
        String drawing = "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"200\" height=\"50\"><text x=\"0\" y=\"20\" "
            + "font-family=\"DejaVu Sans\" font-size=\"16\">lie 58.5°</text><rect x=\"0\" y=\"30\" width=\"100\" height=\"5\"/></svg>";
        String page = page("HERE").replace("HERE", drawing);
        PrintedText read = PrintedText.of(Pdf.of(page, ABOUT).bytes());

        assertThat(read.pages()).isEqualTo(1);
        assertThat(read.missing()).isEmpty();
        assertThat(read.loose()).isEmpty();
    }

    @Test
    void saysNothingOnTheWay() {
        PrintStream complaints = System.err;
        ByteArrayOutputStream said = new ByteArrayOutputStream();
        System.setErr(new PrintStream(said, true, StandardCharsets.UTF_8));
        try {
            Pdf.of(page("quiet 中"), ABOUT);
        } finally {
            System.setErr(complaints);
        }
        assertThat(said.toString(StandardCharsets.UTF_8)).isEmpty();
    }
}
