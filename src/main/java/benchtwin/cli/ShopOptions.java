package benchtwin.cli;

import benchtwin.bench.BadInput;
import benchtwin.bench.ShopTyped;
import benchtwin.match.ShopSettings;
import picocli.CommandLine.Option;

/** What the workshop can set, and its resin. */
final class ShopOptions {

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
            shop = shop.withCureMinutes(ShopTyped.cureMinutes("--cure-minutes", cureMinutes));
        }
        if (lengthStep != null) {
            shop = shop.withLengthStepMm(ShopTyped.stepMm("--length-step", lengthStep));
        }
        if (tipStep != null) {
            shop = shop.withTipTrimStepMm(ShopTyped.stepMm("--tip-step", tipStep));
        }
        return shop;
    }

    /** A length from an option, mm; null when the option was not given. */
    static Double mm(String option, String text) throws BadInput {
        return text == null ? null : (Double) ShopTyped.lengthMm(option, text);
    }
}
