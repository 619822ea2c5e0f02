package benchtwin.ticket;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.zxing.BinaryBitmap;
import com.google.zxing.NotFoundException;
import com.google.zxing.RGBLuminanceSource;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.qrcode.QRCodeReader;
import java.awt.image.BufferedImage;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import javax.xml.parsers.DocumentBuilderFactory;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.Document;
import org.xml.sax.InputSource;

/** Tickets as paper, read back with PDFBox and ZXing. */
class TicketPageTest {

    /** Eighty letters and no space among them. */
    private static final String LONG = "Wolfeschlegelsteinhausenbergerdorffvoralternwarengewissenhaftschaferswessenwoesc";

    private static PrintedText printed(Ticket ticket, Paper paper) {
        return PrintedText.of(TicketPage.pdf(ticket, paper).bytes());
    }

    private static void readsWell(PrintedText page) {
        assertThat(page.missing()).as("letters without a shape").isEmpty();
        assertThat(page.loose()).as("fonts that are not in the file").isEmpty();
        assertThat(page.fonts()).containsExactlyInAnyOrder("DejaVuSans", "DejaVuSans-Bold");
        assertThat(page.lang()).isEqualTo("en");
    }

    @ParameterizedTest
    @EnumSource(Paper.class)
    void theLongestJobOfOneClubFitsOnOnePage(Paper paper) {
        PrintedText page = printed(SampleTickets.twin("N. Oakes", "OAKES-DR"), paper);

        readsWell(page);
        assertThat(page.pages()).isEqualTo(1);
        assertThat(page.title()).isEqualTo("Job 12: Twin of OAKES-DR for N. Oakes");
        assertThat(page.text()).contains("Twin of OAKES-DR", "N. Oakes", "Due 2026-05-21 14:20", "LATE: Hand over from 2026-05-21 17:05",
            "tees off early", "H-069", "driver drawer 2", "is 58.10°", "56.80°", "± 0.25°", "Final measure", "D2.8", "1 of 1",
            "never bend a cracked or unknown head", "resin sensitises skin", "Angles are read soled.");
        assertThat(page.text()).doesNotContain("\uFFFD");
    }

    @ParameterizedTest
    @EnumSource(Paper.class)
    void aSetOfThirteenFitsOnOnePage(Paper paper) {
        PrintedText page = printed(SampleTickets.set(13, "L. Wexcombe"), paper);

        readsWell(page);
        assertThat(page.pages()).isEqualTo(1);
        assertThat(page.text()).contains("Set, 13 clubs", "14-iron", "H-012", "iron drawer 9", "regrip", "D1.5", "37 1/4");
    }

    @Test
    void whatDoesNotFitGoesOnASecondPageAndSaysSo() {
        PrintedText page = printed(SampleTickets.set(18, "L. Wexcombe"), Paper.A4);

        assertThat(page.pages()).isEqualTo(2);
        assertThat(page.text()).contains("This ticket has 2 pages.", "1 of 2", "2 of 2", "19-iron");
    }

    @ParameterizedTest
    @ValueSource(strings = {LONG, "<script>alert(1)</script> & \"so\"", "Ελένη Παπαδοπούλου", "Щукин Євген", "Ærø Ñandú Žižek"})
    void namesOfEveryKindAreThereWhole(String name) {
        PrintedText page = printed(SampleTickets.twin(name, name), Paper.A4);

        readsWell(page);
        assertThat(page.pages()).isEqualTo(1);
        assertThat(page.text().replace(" ", "")).contains(name.replace(" ", ""));
        assertThat(page.text()).doesNotContain("\uFFFD");
    }

    /** One replacement a character, and the note says which they were. */
    @Test
    void whatThePrinterHasNoLettersForIsReplacedAndListed() {
        PrintedText page = printed(SampleTickets.twin("李 Oakes 🏌", "مضرب-7"), Paper.A4);

        readsWell(page);
        assertThat(page.text()).contains("\uFFFD Oakes \uFFFD", "Twin of \uFFFD\uFFFD\uFFFD\uFFFD-7",
            "stands for characters the printer has no letters for", "benchtwin job show 12", "player: U+674E, U+1F3CC;",
            "title: U+0645, U+0636, U+0631, U+0628;");
    }

    @ParameterizedTest
    @EnumSource(Paper.class)
    void theCodeIsReadBackFromThePrintedPage(Paper paper) throws Exception {
        byte[] pdf = TicketPage.pdf(SampleTickets.twin("N. Oakes", "OAKES-DR"), paper).bytes();
        try (PDDocument document = Loader.loadPDF(pdf)) {
            BufferedImage page = new PDFRenderer(document).renderImageWithDPI(0, 150, ImageType.GRAY);
            assertThat(readBack(page)).isEqualTo("job:12");
        }
    }

    private static String readBack(BufferedImage page) throws Exception {
        BufferedImage corner = page.getSubimage(page.getWidth() * 2 / 3, 0, page.getWidth() / 3, page.getHeight() / 5);
        try {
            return new QRCodeReader().decode(new BinaryBitmap(new HybridBinarizer(new RGBLuminanceSource(
                corner.getWidth(), corner.getHeight(), corner.getRGB(0, 0, corner.getWidth(), corner.getHeight(), null, 0,
                    corner.getWidth()))))).getText();
        } catch (NotFoundException none) {
            return "no code was found";
        }
    }

    /** Black on white: on a page without a sketch nothing has a colour. */
    @Test
    void itIsBlackAndWhite() throws Exception {
        try (PDDocument document = Loader.loadPDF(TicketPage.pdf(SampleTickets.set(5, "L. Wexcombe"), Paper.A4).bytes())) {
            BufferedImage page = new PDFRenderer(document).renderImageWithDPI(0, 40, ImageType.RGB);
            for (int rgb : page.getRGB(0, 0, page.getWidth(), page.getHeight(), null, 0, page.getWidth())) {
                assertThat((rgb >> 16) & 0xFF).isEqualTo((rgb >> 8) & 0xFF).isEqualTo(rgb & 0xFF);
            }
        }
    }

    @Test
    void theSameTicketGivesTheSameBytes() {
        Ticket ticket = SampleTickets.twin("N. Oakes", "OAKES-DR");

        assertThat(TicketPage.pdf(ticket, Paper.A4).bytes()).isEqualTo(TicketPage.pdf(ticket, Paper.A4).bytes());
    }

    /** Well-formed, so that nothing typed can have become markup; a browser has letters for what the printer lacks. */
    @Test
    void theBrowsersPageIsWellFormedAndEscaped() throws Exception {
        String html = new String(TicketPage.html(SampleTickets.twin("<script>alert(1)</script> 李", "a\"b'c&d"), Paper.A4).bytes(),
            StandardCharsets.UTF_8);

        DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
        factory.setFeature("http://apache.org/xml/features/nonvalidating/load-external-dtd", false);
        Document page = factory.newDocumentBuilder().parse(new InputSource(new StringReader(html)));
        assertThat(page.getElementsByTagName("script").getLength()).isZero();
        assertThat(page.getElementsByTagName("title").item(0).getTextContent())
            .isEqualTo("Job 12: Twin of a\"b'c&d for <script>alert(1)</script> 李");
        assertThat(page.getDocumentElement().getAttribute("lang")).isEqualTo("en");
        assertThat(page.getElementsByTagName("svg").getLength()).as("code and sketch").isEqualTo(2);
        assertThat(html).doesNotContain("\uFFFD");
    }
}
