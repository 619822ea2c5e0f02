package benchtwin.picture;

import benchtwin.club.Category;
import benchtwin.club.Quantity;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;

/**
 * One angle of a head before and after.
 * @param angle    which
 * @param beforeDeg before, degrees, where it was measured
 * @param afterDeg  after, degrees, where it is known
 * @param standInDeg what is drawn when neither is known, degrees
 */
record AngleChange(Quantity angle, OptionalDouble beforeDeg, OptionalDouble afterDeg, double standInDeg) {

    /** Less than this is no change, degrees: it would be written as 0. */
    private static final double NOTHING_DEG = 0.005;

    /** Every angle a head of its kind has, in showing order. */
    static List<AngleChange> of(HeadSketchPicture picture) {
        List<Quantity> angles = new ArrayList<>(List.of(Quantity.LOFT, Quantity.LIE));
        if (picture.reading().isWood()) {
            angles.add(Quantity.FACE);
        } else if (picture.category() != Category.PUTTER) {
            angles.add(Quantity.BOUNCE);
        }
        return angles.stream().map(angle -> new AngleChange(angle, picture.before().of(angle), picture.after().of(angle),
            standInDeg(angle, picture.category()))).toList();
    }

    boolean isMeasured() {
        return beforeDeg.isPresent() || afterDeg.isPresent();
    }

    /** The angle as it ends, or what stands in for it, degrees. */
    double drawnDeg() {
        return afterDeg.orElse(beforeDeg.orElse(standInDeg));
    }

    /** The angle as it was, or what stands in for it, degrees. */
    double drawnBeforeDeg() {
        return beforeDeg.orElse(drawnDeg());
    }

    double differenceDeg() {
        return drawnDeg() - drawnBeforeDeg();
    }

    boolean isChanged() {
        return Math.abs(differenceDeg()) >= NOTHING_DEG;
    }

    /** For instance {@code 0.6° upright}. */
    String differenceText() {
        return degrees(Math.abs(differenceDeg())) + " " + direction();
    }

    /** Which way it changes, in the trade's word. */
    private String direction() {
        boolean more = differenceDeg() > 0;
        return switch (angle) {
            case LOFT -> more ? "weak" : "strong";
            case LIE -> more ? "upright" : "flat";
            case FACE -> more ? "open" : "closed";
            default -> more ? "more" : "less";
        };
    }

    /** Two decimals only where the second is not 0: {@code 58.6°}, {@code 58.65°}. */
    static String degrees(double deg) {
        String text = Words.fixed(deg, 2);
        return (text.endsWith("0") ? text.substring(0, text.length() - 1) : text) + "°";
    }

    String name() {
        return angle.word();
    }

    /** The name at the head of a column. */
    String capitalName() {
        return name().substring(0, 1).toUpperCase(Locale.ROOT) + name().substring(1);
    }

    /** Middling angles, for a sketch of what was never measured. Memory. */
    private static double standInDeg(Quantity angle, Category category) {
        return switch (angle) {
            case LOFT -> switch (category) {
                case DRIVER -> 10;
                case FAIRWAY -> 16;
                case HYBRID -> 21;
                case IRON -> 33;
                case WEDGE -> 54;
                case PUTTER -> 3;
            };
            case LIE -> switch (category) {
                case DRIVER, FAIRWAY -> 58;
                case HYBRID -> 59;
                case IRON -> 62;
                case WEDGE -> 64;
                case PUTTER -> 70;
            };
            case FACE -> 0;
            default -> category == Category.WEDGE ? 10 : 5;
        };
    }
}
