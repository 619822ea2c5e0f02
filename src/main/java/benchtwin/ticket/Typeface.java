package benchtwin.ticket;

import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FSFontUseCase;
import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.HorizontalMetricsTable;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;

/**
 * The letters pages are printed with, regular and bold; they come with the program, and what is used of them goes into every PDF.
 * Digits are all of one width.
 */
final class Typeface {

    /** As style sheets and drawings name it. */
    static final String FAMILY = "DejaVu Sans";
    private static final int REGULAR_WEIGHT = 400;
    private static final int BOLD_WEIGHT = 700;
    private static final String REGULAR = "DejaVuSans.ttf";
    private static final String BOLD = "DejaVuSans-Bold.ttf";
    private static final Set<FSFontUseCase> TEXT_AND_DRAWINGS = EnumSet.of(FSFontUseCase.DOCUMENT, FSFontUseCase.SVG);

    private Typeface() {
    }

    /**
     * Whether there is a letter for it, in both weights.
     * @param codePoint a Unicode code point
     * @return false where only an empty box could be printed
     */
    static boolean has(int codePoint) {
        return Letters.OF_BOTH.stream().allMatch(letters -> letters.glyphs().getGlyphId(codePoint) != 0);
    }

    /**
     * How wide a text is printed; letters are set side by side, without kerning.
     * @param text printable text
     * @param bold in which weight
     * @return in parts of the letters' size
     */
    static double widthEm(String text, boolean bold) {
        return Letters.OF_BOTH.get(bold ? 1 : 0).widthEm(text);
    }

    static void useIn(PdfRendererBuilder builder) {
        builder.useFont(() -> file(REGULAR), FAMILY, REGULAR_WEIGHT, FontStyle.NORMAL, true, TEXT_AND_DRAWINGS);
        builder.useFont(() -> file(BOLD), FAMILY, BOLD_WEIGHT, FontStyle.NORMAL, true, TEXT_AND_DRAWINGS);
    }

    private static InputStream file(String name) {
        return Typeface.class.getResourceAsStream(name);
    }

    /** Which letters there are, and how wide each is; read when the first page is made. */
    private record Letters(CmapLookup glyphs, HorizontalMetricsTable widths, double unitsPerEm) {

        static final List<Letters> OF_BOTH = List.of(of(REGULAR), of(BOLD));

        double widthEm(String text) {
            return text.codePoints().mapToDouble(letter -> widths.getAdvanceWidth(glyphs.getGlyphId(letter))).sum() / unitsPerEm;
        }

        private static Letters of(String name) {
            try (InputStream file = file(name);
                 TrueTypeFont font = new TTFParser().parse(new RandomAccessReadBuffer(file))) {
                return new Letters(font.getUnicodeCmapLookup(), font.getHorizontalMetrics(), font.getUnitsPerEm());
            } catch (IOException missing) {
                throw new UncheckedIOException(missing);
            }
        }
    }
}
