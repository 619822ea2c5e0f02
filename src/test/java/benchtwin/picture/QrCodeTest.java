package benchtwin.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.google.zxing.BinaryBitmap;
import com.google.zxing.RGBLuminanceSource;
import com.google.zxing.ReaderException;
import com.google.zxing.Result;
import com.google.zxing.ResultMetadataType;
import com.google.zxing.common.GlobalHistogramBinarizer;
import com.google.zxing.qrcode.QRCodeReader;
import java.util.Arrays;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Codes read back by ZXing's own reader from a bitmap. */
class QrCodeTest {

    private static final int PX_PER_MODULE = 5;
    private static final Pattern RUN = Pattern.compile("M(\\d+) (\\d+)h(\\d+)v1h-\\d+z");

    @ParameterizedTest
    @ValueSource(strings = {"H-014", "h-014", "S-0001", "7", "OAKES-DR", "job 12", "Тверь-3", "Ærø 7", "中-4",
        "a tag of sixty letters, which is a good deal more than anybody writes"})
    void saysWhatWasPutIn(String text) throws ReaderException {
        QrCode code = QrCode.of(text);
        assertThat(read(bitmap(code)).getText()).isEqualTo(text);
        assertThat(code.text()).isEqualTo(text);
    }

    /** The drawing holds the same modules as the matrix, read off its path. */
    @Test
    void theDrawingHoldsTheSameModules() {
        QrCode code = QrCode.of("H-014 <&>");
        String svg = code.svg(12.5);
        ParsedSvg parsed = new ParsedSvg(svg);
        assertThat(parsed.root().getAttribute("width")).isEqualTo("12.5mm");
        assertThat(parsed.words("title")).isEqualTo("code: H-014 <&>");
        boolean[][] drawn = new boolean[code.sideModules()][code.sideModules()];
        Matcher runs = RUN.matcher(svg);
        while (runs.find()) {
            int column = Integer.parseInt(runs.group(1));
            Arrays.fill(drawn[Integer.parseInt(runs.group(2))], column, column + Integer.parseInt(runs.group(3)), true);
        }
        for (int row = 0; row < code.sideModules(); row++) {
            for (int column = 0; column < code.sideModules(); column++) {
                assertThat(drawn[row][column]).as("%d, %d", column, row).isEqualTo(code.isBlack(column, row));
            }
        }
    }

    /** ISO/IEC 18004, as ZXing's tables have it: version 1 is 21 modules wide and holds 10 capitals and digits at level H. */
    @Test
    void aShortTagMakesTheSmallestCodeWithTheMostCorrection() throws ReaderException {
        QrCode code = QrCode.of("H-014");
        assertThat(code.sideModules()).isEqualTo(21 + 2 * 4);
        assertThat(level(code)).isEqualTo("H");
        QrCode longer = QrCode.of("OAKES-DR-2ND");
        assertThat(longer.sideModules()).isEqualTo(21 + 2 * 4);
        assertThat(level(longer)).as("twelve do not fit at level H").isEqualTo("Q");
    }

    /** Level Q mends about a quarter of the code: 5 modules of 21 each way are a seventeenth of it, 13 of 21 are more than a third. */
    @Test
    void aBlotDoesNotMatterUntilItCoversTooMuch() throws ReaderException {
        QrCode code = QrCode.of("OAKES-DR-2ND");
        assertThat(read(blotted(code, 5)).getText()).isEqualTo("OAKES-DR-2ND");
        assertThatThrownBy(() -> read(blotted(code, 13))).isInstanceOf(ReaderException.class);
    }

    @Test
    void theQuietZoneIsWhite() {
        QrCode code = QrCode.of("H-014");
        int side = code.sideModules();
        for (int i = 0; i < side; i++) {
            for (int k = 0; k < QrCode.QUIET_MODULES; k++) {
                assertThat(code.isBlack(i, k) || code.isBlack(k, i) || code.isBlack(i, side - 1 - k)
                    || code.isBlack(side - 1 - k, i)).isFalse();
            }
        }
        assertThat(code.isBlack(QrCode.QUIET_MODULES, QrCode.QUIET_MODULES)).as("the finder's corner").isTrue();
    }

    @Test
    void whatNoCodeCanSayIsRefused() {
        assertThatIllegalArgumentException().isThrownBy(() -> QrCode.of("")).withMessage("a code needs something to say");
        assertThatIllegalArgumentException().isThrownBy(() -> QrCode.of("x".repeat(5000)))
            .withMessage("a text of 5000 letters is too long for one code");
        assertThat(QrCode.of("x".repeat(1600)).sideModules()).as("too long for level H").isEqualTo(177 + 2 * 4);
        assertThatIllegalArgumentException().isThrownBy(() -> QrCode.of("x").svg(0));
    }

    private static String level(QrCode code) throws ReaderException {
        return (String) read(bitmap(code)).getResultMetadata().get(ResultMetadataType.ERROR_CORRECTION_LEVEL);
    }

    private static boolean[][] blotted(QrCode code, int modules) {
        boolean[][] black = bitmap(code);
        int from = (code.sideModules() - modules) / 2 * PX_PER_MODULE;
        for (int y = from; y < from + modules * PX_PER_MODULE; y++) {
            Arrays.fill(black[y], from, from + modules * PX_PER_MODULE, true);
        }
        return black;
    }

    private static boolean[][] bitmap(QrCode code) {
        int side = code.sideModules() * PX_PER_MODULE;
        boolean[][] black = new boolean[side][side];
        for (int y = 0; y < side; y++) {
            for (int x = 0; x < side; x++) {
                black[y][x] = code.isBlack(x / PX_PER_MODULE, y / PX_PER_MODULE);
            }
        }
        return black;
    }

    private static Result read(boolean[][] black) throws ReaderException {
        int side = black.length;
        int[] pixels = new int[side * side];
        for (int i = 0; i < pixels.length; i++) {
            pixels[i] = black[i / side][i % side] ? 0 : 0xFFFFFF;
        }
        return new QRCodeReader().decode(new BinaryBitmap(new GlobalHistogramBinarizer(new RGBLuminanceSource(side, side, pixels))));
    }
}
