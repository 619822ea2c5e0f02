package benchtwin.bend;

import benchtwin.club.HeadMaterial;

/**
 * What is believed of a metal's springback before any bend of it: got = gain · asked − loss. Values: memory; the losses agree
 * with {@link ElasticRecovery} at an ask of 2° on a 13 mm hosel.
 * @param gain       mean of the gain, without unit
 * @param gainSpread its standard deviation
 * @param lossDeg    mean of the loss, degrees of tilt
 * @param lossSpreadDeg its standard deviation
 */
public record SpringbackPrior(double gain, double gainSpread, double lossDeg, double lossSpreadDeg) {

    private static final double GAIN = 0.9;
    private static final double GAIN_SPREAD = 0.12;
    private static final double LEAST_LOSS_SPREAD_DEG = 0.25;

    public SpringbackPrior {
        if (!(gainSpread > 0) || !(lossSpreadDeg > 0)) {
            throw new IllegalArgumentException("a prior without spread leaves nothing to learn");
        }
    }

    /**
     * The prior of a material.
     * @param material what the hosel is made of
     * @return that of unknown metal where the material has none of its own
     */
    public static SpringbackPrior of(HeadMaterial material) {
        double loss = lossDeg(material);
        return new SpringbackPrior(GAIN, GAIN_SPREAD, loss, Math.max(LEAST_LOSS_SPREAD_DEG, loss / 2));
    }

    private static double lossDeg(HeadMaterial material) {
        return switch (material) {
            case CARBON_STEEL -> 0.35;
            case STAINLESS_431 -> 0.65;
            case STAINLESS_17_4 -> 1.05;
            case TITANIUM -> 1.35;
            case STAINLESS_SOFT, HOLLOW, ALUMINIUM, ZINC, UNKNOWN -> 0.3;
        };
    }
}
