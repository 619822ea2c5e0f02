package benchtwin.match;

import benchtwin.PublishedCheck;
import java.util.List;

/** The published values that chances are held to. */
public final class MatchChecks {

    private static final String NORMAL = "memory: any table of the normal distribution";
    private static final String SHEPPARD = "Sheppard 1899: 1/4 + asin(ρ)/(2π), at ρ = 1/2 exactly 1/3";

    private MatchChecks() {
    }

    private static double within(double sigmas) {
        return NormalBox.probability(new double[][] {{1}}, new double[] {-sigmas}, new double[] {sigmas});
    }

    /**
     * Every check.
     * @return in the order the page shows them
     */
    public static List<PublishedCheck> all() {
        double half = 0.5;
        double quadrant = NormalBox.probability(new double[][] {{1, half}, {half, 1}}, new double[] {0, 0},
            new double[] {40, 40});
        return List.of(
            new PublishedCheck("chance within one standard deviation", NORMAL, 0.6827, within(1), 0.5e-4,
                "four decimals"),
            new PublishedCheck("chance within two standard deviations", NORMAL, 0.9545, within(2), 0.5e-4,
                "four decimals"),
            new PublishedCheck("chance that two normals correlated by 1/2 are both positive", SHEPPARD, 1.0 / 3, quadrant,
                2e-3, "what the integration sequence is good for"));
    }
}
