package benchtwin.ticket;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import com.google.zxing.BinaryBitmap;
import com.google.zxing.LuminanceSource;
import com.google.zxing.RGBLuminanceSource;
import com.google.zxing.ReaderException;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.qrcode.QRCodeReader;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Sheets of labels opened with PDFBox: pages, where each letter stands, and codes read back by ZXing from a picture of the page. */
class LabelPageTest {

    private static final LocalDateTime MADE = LocalDateTime.of(2026, 5, 20, 0, 0);
    private static final int DPI = 300;
    private static final double MM_PER_PT = 25.4 / 72;

    private static Label label(int number) {
        return new Label("H-%03d".formatted(number), List.of("Reed driver, right", "loft 9.4°, lie 58.6° on 2026-05-20", "190 g",
            "driver drawer 1"));
    }

    private static List<Label> labels(int count) {
        return IntStream.rangeClosed(1, count).mapToObj(LabelPageTest::label).toList();
    }

    private static LabelPage.Print from(LabelSheet sheet, int from) {
        return new LabelPage.Print(sheet, from, false, 0, 0);
    }

    /** Columns and rows by the sheets' names, sizes as stationers give them: all of it must have room on the paper, and none overlap. */
    @ParameterizedTest
    @EnumSource(LabelSheet.class)
    void aSheetsLabelsLieOnThePaperBesideEachOther(LabelSheet sheet) {
        String[] grid = sheet.word().replaceAll(".*-", "").split("x");
        int columns = Integer.parseInt(grid[0]);
        assertThat(sheet.count()).isEqualTo(columns * Integer.parseInt(grid[1]));
        int last = sheet.count() - 1;
        double spareRight = sheet.paper().widthMm() - sheet.xMm(last) - sheet.widthMm();
        double spareDown = sheet.paper().heightMm() - sheet.yMm(last) - sheet.heightMm();
        assertThat(spareRight).as("right margin as the left").isCloseTo(sheet.xMm(0), within(0.15));
        assertThat(spareDown).as("lower margin as the upper").isCloseTo(sheet.yMm(0), within(0.15));
        assertThat(sheet.xMm(1)).isGreaterThanOrEqualTo(sheet.xMm(0) + sheet.widthMm());
        assertThat(sheet.yMm(columns)).isGreaterThanOrEqualTo(sheet.yMm(0) + sheet.heightMm());
    }

    @ParameterizedTest
    @EnumSource(LabelSheet.class)
    void everyLetterStandsInsideItsLabelAndOffTheCode(LabelSheet sheet) throws IOException {
        int from = sheet.count() - 2;
        LabelPage.File file = LabelPage.pdf(labels(5), from(sheet, from), MADE);
        assertThat(file.sheets()).isEqualTo(2);
        assertThat(file.next()).isEqualTo(3);
        for (int i = 0; i < 5; i++) {
            int place = (from - 1 + i) % sheet.count();
            double x = sheet.xMm(place);
            double y = sheet.yMm(place);
            String tag = label(i + 1).tag();
            List<TextPosition> inside = letters(file.bytes(), i < 3 ? 1 : 2).stream().filter(letter ->
                mm(letter.getXDirAdj()) >= x && mm(letter.getXDirAdj() + letter.getWidthDirAdj()) <= x + sheet.widthMm() * 0.6
                && mm(letter.getYDirAdj()) >= y && mm(letter.getYDirAdj()) <= y + sheet.heightMm()).toList();
            assertThat(said(inside)).as(sheet + " " + place).startsWith(tag + "Reeddriver,right");
        }
        int all = letters(file.bytes(), 1).size();
        long within = letters(file.bytes(), 1).stream().filter(letter -> IntStream.range(from - 1, sheet.count()).anyMatch(place ->
            mm(letter.getXDirAdj()) >= sheet.xMm(place)
            && mm(letter.getXDirAdj() + letter.getWidthDirAdj()) <= sheet.xMm(place) + sheet.widthMm() * 0.6
            && mm(letter.getYDirAdj()) >= sheet.yMm(place)
            && mm(letter.getYDirAdj()) <= sheet.yMm(place) + sheet.heightMm())).count();
        assertThat(within).as("letters in a label, of all").isEqualTo(all);
    }

    @ParameterizedTest
    @EnumSource(value = LabelSheet.class, names = {"A4_3X7", "A4_5X13", "LETTER_4X20"})
    void everyCodeTypesItsTag(LabelSheet sheet) throws IOException, ReaderException {
        List<Label> labels = new ArrayList<>(labels(sheet.count() - 1));
        labels.add(new Label("Щ-7/b", List.of()));
        LabelPage.File file = LabelPage.pdf(labels, from(sheet, 1), MADE);
        assertThat(file.sheets()).isEqualTo(1);
        assertThat(file.next()).as("used up").isEqualTo(sheet.count() + 1);
        BufferedImage page = picture(file.bytes());
        for (int i = 0; i < labels.size(); i += 7) {
            assertThat(read(page, sheet, i)).isEqualTo(labels.get(i).tag());
        }
        assertThat(read(page, sheet, sheet.count() - 1)).isEqualTo("Щ-7/b");
    }

    @Test
    void textThatHasNoRoomIsCutWhereOneSeesIt() {
        String longName = "Averylongmodelnamewithoutanyspace".repeat(3);
        Label tooMuch = new Label("H-1", List.of(longName, "and ".repeat(120).strip()));
        LabelPage.File file = LabelPage.pdf(List.of(tooMuch, label(2)), from(LabelSheet.A4_5X13, 1), MADE);
        PrintedText read = PrintedText.of(file.bytes());
        assertThat(read.text()).contains("Averylong").contains("…");
        assertThat(read.missing()).isEmpty();
        assertThat(file.remarks()).anySatisfy(remark -> assertThat(remark).startsWith("text was cut, three dots show where: H-1"));
        assertThat(file.remarks()).hasSize(1);
        String longTag = "A-TAG-THAT-IS-FAR-TOO-LONG-FOR-ANY-LABEL-OF-THIS-SIZE";
        LabelPage.File tag = LabelPage.pdf(List.of(new Label(longTag, List.of())), from(LabelSheet.A4_5X13, 1), MADE);
        assertThat(PrintedText.of(tag.bytes()).text().strip()).startsWith("A-TAG").endsWith("…");
    }

    /** A code of 60 letters is 37 modules and the quiet zone wide: on half an inch that is under a third of a millimetre a module. */
    @Test
    void aCodeTooFineToReadIsSaidSo() {
        Label longTag = new Label("x".repeat(60), List.of());
        assertThat(LabelPage.pdf(List.of(longTag), from(LabelSheet.LETTER_4X20, 1), MADE).remarks().get(0))
            .startsWith("the code is finer than the 0.33 mm a module that a phone reads without trouble: xxx")
            .contains(" mm)");
        assertThat(LabelPage.pdf(List.of(longTag), from(LabelSheet.A4_3X7, 1), MADE).remarks())
            .noneMatch(remark -> remark.contains("finer"));
    }

    @Test
    void lettersOfOtherScriptsAreReplacedAndNamedWhileTheCodeKeepsThem() throws IOException, ReaderException {
        Label chinese = new Label("中-4", List.of("木 driver"));
        LabelPage.File file = LabelPage.pdf(List.of(chinese), from(LabelSheet.A4_3X7, 1), MADE);
        assertThat(PrintedText.of(file.bytes()).text()).contains("\uFFFD-4").contains("\uFFFD driver");
        assertThat(file.remarks()).singleElement().asString().contains("U+4E2D").contains("U+6728");
        assertThat(read(picture(file.bytes()), LabelSheet.A4_3X7, 0)).isEqualTo("中-4");
    }

    @Test
    void outlinesShiftAndLetterPaper() throws IOException, ReaderException {
        LabelPage.Print trial = new LabelPage.Print(LabelSheet.LETTER_3X10, 1, true, 3, 2);
        LabelPage.File file = LabelPage.pdf(labels(1), trial, MADE);
        BufferedImage page = picture(file.bytes());
        assertThat(page.getWidth()).isCloseTo((int) (8.5 * DPI), within(1));
        assertThat(page.getHeight()).isCloseTo(11 * DPI, within(1));
        for (int place : new int[] {0, 17, 29}) {
            int x = px(LabelSheet.LETTER_3X10.xMm(place) + 3 + 0.1);
            int y = px(LabelSheet.LETTER_3X10.yMm(place) + 2 + 12);
            assertThat(IntStream.rangeClosed(-2, 2).anyMatch(off -> (page.getRGB(x + off, y) & 0xFF) < 128))
                .as("outline of label %d", place).isTrue();
        }
        assertThat(letters(file.bytes(), 1)).allMatch(letter -> mm(letter.getXDirAdj()) >= LabelSheet.LETTER_3X10.xMm(0) + 3);
        assertThatIllegalArgumentException().isThrownBy(() -> new LabelPage.Print(LabelSheet.LETTER_3X10, 31, false, 0, 0))
            .withMessage("label 31: the sheet has 30");
    }

    private static int px(double mm) {
        return (int) Math.round(mm / 25.4 * DPI);
    }

    private static double mm(double pt) {
        return pt * MM_PER_PT;
    }

    private static BufferedImage picture(byte[] pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            return new PDFRenderer(document).renderImageWithDPI(0, DPI);
        }
    }

    private static String read(BufferedImage page, LabelSheet sheet, int place) throws ReaderException {
        BufferedImage label = page.getSubimage(px(sheet.xMm(place)), px(sheet.yMm(place)), px(sheet.widthMm()) - 1, px(sheet.heightMm()) - 1);
        int[] pixels = label.getRGB(0, 0, label.getWidth(), label.getHeight(), null, 0, label.getWidth());
        LuminanceSource source = new RGBLuminanceSource(label.getWidth(), label.getHeight(), pixels);
        return new QRCodeReader().decode(new BinaryBitmap(new HybridBinarizer(source))).getText();
    }

    private static String said(List<TextPosition> letters) {
        StringBuilder said = new StringBuilder();
        letters.forEach(letter -> said.append(letter.getUnicode().strip()));
        return said.toString();
    }

    private static List<TextPosition> letters(byte[] pdf, int page) throws IOException {
        List<TextPosition> letters = new ArrayList<>();
        try (PDDocument document = Loader.loadPDF(pdf)) {
            PDFTextStripper stripper = new PDFTextStripper() {
                @Override
                protected void processTextPosition(TextPosition letter) {
                    if (!letter.getUnicode().isBlank()) {
                        letters.add(letter);
                    }
                }
            };
            stripper.setStartPage(page);
            stripper.setEndPage(page);
            stripper.getText(document);
        }
        return letters;
    }
}
