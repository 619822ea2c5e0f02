package benchtwin.samples;

import benchtwin.club.Category;
import benchtwin.club.ShaftMaterial;
import benchtwin.club.TipKind;
import java.util.List;
import java.util.Set;

/**
 * A shaft model, as designed.
 * @param model           invented name, mass class and flex
 * @param material        graphite or steel
 * @param meantFor        the categories it is made for
 * @param tip             its tip
 * @param buttIn          butt diameter, in
 * @param balanceFraction balance point from the butt, as a share of the raw length
 * @param profile         stiffness of tip, middle and butt against a plain tapered tube
 * @param cuts            as sold: one for a parallel tip, one a number for a taper tip
 */
record ShaftLine(String model, ShaftMaterial material, Set<Category> meantFor, Tip tip, double buttIn,
                 double balanceFraction, Profile profile, List<Sold> cuts) {

    /**
     * A tip.
     * @param diameterIn its diameter, in
     * @param kind       parallel or taper
     * @param parallelIn length of the parallel tip as made, in, 0 for a taper tip
     */
    record Tip(double diameterIn, TipKind kind, double parallelIn) {
    }

    /**
     * Stiffness against a plain tapered tube's, straight between the three places.
     * @param tip    at the raw tip
     * @param middle half way
     * @param butt   at the raw butt
     */
    record Profile(double tip, double middle, double butt) {

        double at(double shareFromTip) {
            return shareFromTip < 0.5 ? tip + (middle - tip) * 2 * shareFromTip
                : middle + (butt - middle) * (2 * shareFromTip - 1);
        }
    }

    /**
     * A length as sold.
     * @param madeFor     the club number it was made for; empty for a parallel tip
     * @param rawLengthIn raw length, in
     * @param massG       mass of the raw shaft, g
     * @param cpm         frequency of the raw shaft in a 5 in clamp, with the tip mass of its kind
     * @param torqueDeg   twist of the raw shaft under 1 ft·lbf, degrees
     */
    record Sold(String madeFor, double rawLengthIn, double massG, double cpm, double torqueDeg) {
    }

    Sold sold(String madeFor) {
        return cuts.stream().filter(cut -> cut.madeFor().isEmpty() || cut.madeFor().equals(madeFor)).findFirst()
            .orElseThrow(() -> new IllegalArgumentException(model + " is not made for " + madeFor));
    }
}
