package benchtwin.ticket;

import benchtwin.picture.HeadSketchPicture;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A head's sketch as a page shows it: so many millimetres wide, on white, written with the page's own letters. */
final class PaperSketch {

    private static final Pattern ROOT = Pattern.compile("^<svg[^>]*>");
    private static final Pattern BOX = Pattern.compile("viewBox=\"0 0 (\\d+) (\\d+)\"");
    private static final Pattern SIDE = Pattern.compile("(?<= )(width|height)=\"\\d+\"");
    private static final Pattern LETTERS = Pattern.compile("font-family=\"[^\"]*\"");
    /** The ground pictures are drawn on; printed it would be a grey veil. */
    private static final Pattern GROUND = Pattern.compile("rgb\\(251,250,247\\)");

    private PaperSketch() {
    }

    /**
     * The sketch.
     * @param picture the head
     * @param text    makes its words printable
     * @param widthMm how wide
     * @return one {@code svg} element
     */
    static String svg(HeadSketchPicture picture, PaperText text, double widthMm) {
        String svg = new HeadSketchPicture(text.show("head", picture.subject()), picture.category(), picture.reading(),
            picture.hand(), picture.before(), picture.after(), picture.sizes()).svg();
        Matcher root = ROOT.matcher(svg);
        Matcher box = BOX.matcher(svg);
        if (!root.find() || !box.find()) {
            throw new IllegalStateException("a sketch without its size");
        }
        double shape = Double.parseDouble(box.group(2)) / Double.parseDouble(box.group(1));
        String sized = SIDE.matcher(root.group()).replaceAll(side -> String.format(Locale.ROOT, "%s=\"%.1fmm\"", side.group(1),
            side.group(1).equals("width") ? widthMm : widthMm * shape));
        String lettered = LETTERS.matcher(sized).replaceFirst("font-family=\"&quot;" + Typeface.FAMILY + "&quot;, sans-serif\"");
        return lettered + GROUND.matcher(svg.substring(root.end())).replaceAll("white");
    }
}
