package benchtwin.cli;

import benchtwin.bench.BadInput;
import benchtwin.match.ShopSettings;
import benchtwin.measure.LengthText;
import java.util.OptionalDouble;
import picocli.CommandLine.Option;

/** What the workshop can set, and its resin. */
final class ShopOptions {

    private static final double TWO_WEEKS_MINUTES = 14 * 24 * 60;
    private static final double LEAST_STEP_MM = 0.1;
    private static final double MOST_STEP_MM = 25.4;

    @Option(names = "--cure-minutes", paramLabel = "N", order = 26,
        description = "full cure of your resin as its maker states; default 1440 (from memory)")
    private Double cureMinutes;
    @Option(names = "--length-step", paramLabel = "STEP", order = 27,
        description = "least butt cut or extension, such as 1/16 or 1 mm; default 1 mm")
    private String lengthStep;
    @Option(names = "--tip-step", paramLabel = "STEP", order = 27,
        description = "least tip trim, such as 1/4 or 5 mm; default 1/8 in")
    private String tipStep;

    /** The settings these options make. */
    ShopSettings settings() throws BadInput {
        ShopSettings shop = ShopSettings.DEFAULT;
        if (cureMinutes != null) {
            if (!(cureMinutes >= 0 && cureMinutes <= TWO_WEEKS_MINUTES)) {
                throw new BadInput("--cure-minutes %s: expected 0 to 20160 (two weeks)".formatted(cureMinutes));
            }
            shop = shop.withCureMinutes(cureMinutes);
        }
        if (lengthStep != null) {
            shop = shop.withLengthStepMm(step("--length-step", lengthStep));
        }
        if (tipStep != null) {
            shop = shop.withTipTrimStepMm(step("--tip-step", tipStep));
        }
        return shop;
    }

    private static double step(String option, String text) throws BadInput {
        OptionalDouble step = LengthText.parseMm(text);
        if (step.isEmpty() || !(step.getAsDouble() >= LEAST_STEP_MM && step.getAsDouble() <= MOST_STEP_MM)) {
            throw new BadInput("%s \"%s\": expected a length from 0.1 mm to 1 in, such as 1/16 or 1 mm".formatted(option,
                text));
        }
        return step.getAsDouble();
    }

    /** A length from an option, mm; null when the option was not given. */
    static Double mm(String option, String text) throws BadInput {
        if (text == null) {
            return null;
        }
        OptionalDouble value = LengthText.parseMm(text);
        if (value.isEmpty()) {
            throw new BadInput("%s \"%s\" is not a length; expected inches such as 45.25 or 45 1/4, or millimetres such as "
                .formatted(option, text) + "1149 mm");
        }
        return value.getAsDouble();
    }
}
