package benchtwin.bench;

import benchtwin.measure.LengthText;
import java.util.OptionalDouble;

/** What a workshop sets for a plan, as it is typed in an option or in a field of a page. */
public final class ShopTyped {

    private static final double TWO_WEEKS_MINUTES = 14 * 24 * 60;
    private static final double LEAST_STEP_MM = 0.1;
    private static final double MOST_STEP_MM = 25.4;

    private ShopTyped() {
    }

    /**
     * The full cure of a resin.
     * @param called  what it was typed into
     * @param minutes as typed
     * @return minutes
     * @throws BadInput when it is below 0 or over two weeks
     */
    public static double cureMinutes(String called, double minutes) throws BadInput {
        if (!(minutes >= 0 && minutes <= TWO_WEEKS_MINUTES)) {
            throw new BadInput("%s %s: expected 0 to 20160 minutes (two weeks)".formatted(called, minutes));
        }
        return minutes;
    }

    /**
     * The least cut that is made.
     * @param called what it was typed into
     * @param text   as typed
     * @return mm
     * @throws BadInput when it is no length from 0.1 mm to 1 in
     */
    public static double stepMm(String called, String text) throws BadInput {
        OptionalDouble step = LengthText.parseMm(text);
        if (step.isEmpty() || !(step.getAsDouble() >= LEAST_STEP_MM && step.getAsDouble() <= MOST_STEP_MM)) {
            throw new BadInput("%s \"%s\": expected a length from 0.1 mm to 1 in, such as 1/16 or 1 mm".formatted(called, text));
        }
        return step.getAsDouble();
    }

    /**
     * A length of any kind.
     * @param called what it was typed into
     * @param text   as typed
     * @return mm
     * @throws BadInput when it is no length
     */
    public static double lengthMm(String called, String text) throws BadInput {
        OptionalDouble value = LengthText.parseMm(text);
        if (value.isEmpty()) {
            throw new BadInput("%s \"%s\" is not a length; expected inches such as 45.25 or 45 1/4, or millimetres such as 1149 mm"
                .formatted(called, text));
        }
        return value.getAsDouble();
    }
}
