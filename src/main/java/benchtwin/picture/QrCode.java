package benchtwin.picture;

import benchtwin.measure.PlainNumber;
import com.google.zxing.EncodeHintType;
import com.google.zxing.WriterException;
import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import com.google.zxing.qrcode.encoder.ByteMatrix;
import com.google.zxing.qrcode.encoder.Encoder;
import com.google.zxing.qrcode.encoder.QRCode;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Map;

/**
 * A square code that a phone or a scanner reads back as text. Glue, dust and scratches are expected of a workshop: a quarter of
 * it may be lost, and as much as the standard allows, three tenths, where that makes it no larger. Published: ISO/IEC 18004,
 * levels Q and H and a quiet zone of 4 modules; levels and sizes as the ZXing library has them.
 */
public final class QrCode {

    /** The bare border a reader needs, modules. Published: ISO/IEC 18004. */
    public static final int QUIET_MODULES = 4;

    private final String text;
    private final ByteMatrix modules;

    private QrCode(String text, ByteMatrix modules) {
        this.text = text;
        this.modules = modules;
    }

    /**
     * Encodes a text as it stands, so that a scanner that types what it reads types just that.
     * @param text what it says, not empty
     * @return the code
     * @throws IllegalArgumentException when the text is empty or too long for one code (about 1,600 letters)
     */
    public static QrCode of(String text) {
        if (text.isEmpty()) {
            throw new IllegalArgumentException("a code needs something to say");
        }
        QRCode quarter = encoded(text, ErrorCorrectionLevel.Q);
        return new QrCode(text, noLarger(text, quarter).getMatrix());
    }

    private static QRCode noLarger(String text, QRCode quarter) {
        try {
            QRCode most = encoded(text, ErrorCorrectionLevel.H);
            return most.getVersion().getVersionNumber() == quarter.getVersion().getVersionNumber() ? most : quarter;
        } catch (IllegalArgumentException tooLongForMore) {
            return quarter;
        }
    }

    private static QRCode encoded(String text, ErrorCorrectionLevel level) {
        try {
            // naming the alphabet puts a mark into the code that old scanners type as well, so only where it must be
            boolean plain = StandardCharsets.ISO_8859_1.newEncoder().canEncode(text);
            return Encoder.encode(text, level, plain ? Map.of() : Map.of(EncodeHintType.CHARACTER_SET, "UTF-8"));
        } catch (WriterException tooLong) {
            throw new IllegalArgumentException("a text of %d letters is too long for one code".formatted(text.length()), tooLong);
        }
    }

    /**
     * What it says.
     * @return the text
     */
    public String text() {
        return text;
    }

    /**
     * Its side with the quiet zone.
     * @return modules
     */
    public int sideModules() {
        return modules.getWidth() + 2 * QUIET_MODULES;
    }

    /**
     * One module.
     * @param column from the left, 0 in the quiet zone's corner
     * @param row    from the top
     * @return whether it is black
     */
    public boolean isBlack(int column, int row) {
        int x = column - QUIET_MODULES;
        int y = row - QUIET_MODULES;
        return x >= 0 && y >= 0 && x < modules.getWidth() && y < modules.getHeight() && modules.get(x, y) == 1;
    }

    /**
     * Draws it, black on white whatever it stands on, quiet zone included. Runs of modules are drawn as one: printers leave hair
     * lines between squares that only touch.
     * @param sideMm its side with the quiet zone, mm, above 0
     * @return one {@code svg} element without an XML declaration; its {@code title} is the text
     */
    public String svg(double sideMm) {
        Words.positive("the side of a code, mm,", sideMm);
        int side = sideModules();
        StringBuilder path = new StringBuilder();
        for (int row = 0; row < side; row++) {
            for (int column = 0; column < side; column++) {
                int from = column;
                while (isBlack(column, row)) {
                    column++;
                }
                if (column > from) {
                    int wide = column - from;
                    path.append('M').append(from).append(' ').append(row).append('h').append(wide).append("v1h-").append(wide).append('z');
                }
            }
        }
        return String.format(Locale.ROOT, "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"%1$smm\" height=\"%1$smm\" "
            + "viewBox=\"0 0 %2$d %2$d\" role=\"img\" shape-rendering=\"crispEdges\"><title>%3$s</title>"
            + "<rect width=\"%2$d\" height=\"%2$d\" fill=\"#ffffff\"/><path fill=\"#000000\" d=\"%4$s\"/></svg>",
            PlainNumber.text(sideMm), side, escaped(Words.printable("code: " + text)), path);
    }

    private static String escaped(String words) {
        return words.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
    }
}
