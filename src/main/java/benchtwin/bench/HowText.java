package benchtwin.bench;

import benchtwin.club.Quantity;
import benchtwin.measure.Reading;
import benchtwin.measure.Taken;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** How the numbers behind a number are written: a digit more than the number itself. */
public final class HowText {

    private HowText() {
    }

    /**
     * A value that went in.
     * @param value in the unit
     * @param unit  as a screen writes it; empty for a ratio
     * @return text
     */
    static String number(double value, String unit) {
        String text = fixed(value, switch (unit) {
            case "" -> 4;
            case "g·cm²", "kg·cm²" -> 0;
            default -> 2;
        });
        return text + (unit.isEmpty() || unit.equals("°") ? unit : " " + unit);
    }

    /**
     * A value with as many decimals as it is worth.
     * @param value    the value
     * @param decimals 0 or more
     * @return text
     */
    public static String fixed(double value, int decimals) {
        return String.format(Locale.ROOT, "%." + decimals + "f", value).replace('-', '−');
    }

    /**
     * A value whose unit stands in its name.
     * @param value the value
     * @return text with two decimals
     */
    public static String plain(double value) {
        return fixed(value, 2);
    }

    /**
     * What a number is moved by.
     * @param quantity of the number
     * @param moves    in its unit
     * @return text with a sign
     */
    static String moves(Quantity quantity, double moves) {
        String text = String.format(Locale.ROOT, "%+.3f", moves).replace('-', '−');
        return text + (quantity.unit().equals("°") ? "°" : " " + quantity.unit());
    }

    /**
     * A share.
     * @param share 0 to 1
     * @return per cent
     */
    static String share(double share) {
        return share == 0 ? "" : share < 0.005 ? "under 1 %" : String.format(Locale.ROOT, "%.0f %%", 100 * share);
    }

    /**
     * When, with what and by whom a value was read.
     * @param reading the reading
     * @return words; empty when nothing of it is recorded
     */
    static String taken(Reading reading) {
        Taken taken = reading.taken();
        List<String> words = new ArrayList<>();
        taken.on().ifPresent(day -> words.add("on " + day));
        taken.gauge().ifPresent(gauge -> words.add("on gauge " + gauge));
        taken.by().ifPresent(by -> words.add("by " + by));
        return String.join(", ", words);
    }

    /** An uncertainty that others are added to: a digit more than a bench writes. */
    static String fine(Quantity quantity, double size) {
        return String.format(Locale.ROOT, "%.3f", size) + (quantity.unit().equals("°") ? "°" : " " + quantity.unit());
    }
}
