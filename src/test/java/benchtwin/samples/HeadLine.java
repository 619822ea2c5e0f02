package benchtwin.samples;

import benchtwin.club.Adjust;
import benchtwin.club.AngleReading;
import benchtwin.club.Category;
import benchtwin.club.HeadMaterial;
import benchtwin.club.Port;
import benchtwin.club.TipKind;
import java.util.List;
import java.util.Optional;

/**
 * A head model in one category, as designed.
 * @param model       invented name
 * @param category    driver to putter
 * @param reading     how the shop reads its angles
 * @param material    of the hosel
 * @param fitting     how it takes a shaft
 * @param ports       its weight ports as sold
 * @param hotMeltMaxG room for hot melt, g
 * @param volumeCm3   volume, cm³; NaN where nobody would measure it
 * @param sizes       its lofts or numbers
 */
record HeadLine(String model, Category category, AngleReading reading, HeadMaterial material, Fitting fitting,
                List<Port> ports, double hotMeltMaxG, double volumeCm3, List<Size> sizes) {

    /**
     * One loft or number of the model, as designed.
     * @param number    its number; empty for a driver or putter, whose sizes differ by loft
     * @param loftDeg   loft in the line's reading, degrees
     * @param lieDeg    lie, degrees
     * @param faceDeg   soled face angle, degrees; NaN for an iron
     * @param bounceDeg bounce, degrees; NaN for a wood
     * @param massG     mass without its weights, g
     * @param offsetMm  offset, mm; NaN where it is not measured
     */
    record Size(String number, double loftDeg, double lieDeg, double faceDeg, double bounceDeg, double massG,
                double offsetMm) {

        static Size wood(String number, double loftDeg, double lieDeg, double faceDeg, double massG) {
            return new Size(number, loftDeg, lieDeg, faceDeg, Double.NaN, massG, Double.NaN);
        }

        static Size edge(String number, double loftDeg, double lieDeg, double bounceDeg, double massG, double offsetMm) {
            return new Size(number, loftDeg, lieDeg, Double.NaN, bounceDeg, massG, offsetMm);
        }
    }

    /**
     * How a head takes a shaft.
     * @param adjust     bend, sleeve or fixed
     * @param seat       the seat type of a sleeved head
     * @param boreIn     bore of any other, in
     * @param kind       the tip it takes
     * @param depthMm    bore depth, mm
     * @param toGroundMm seat or bottom of bore to the ground point, mm
     */
    record Fitting(Adjust adjust, Optional<String> seat, double boreIn, TipKind kind, double depthMm,
                   double toGroundMm) {

        static Fitting sleeved(String seat, double toGroundMm) {
            return new Fitting(Adjust.SLEEVE, Optional.of(seat), Double.NaN, TipKind.PARALLEL, Double.NaN, toGroundMm);
        }

        static Fitting bored(Adjust adjust, double boreIn, TipKind kind, double depthMm, double toGroundMm) {
            return new Fitting(adjust, Optional.empty(), boreIn, kind, depthMm, toGroundMm);
        }
    }

    /**
     * Finds a size.
     * @param name a number, or a driver's or putter's loft such as {@code 10.5}
     * @return the size
     */
    Size size(String name) {
        return sizes.stream()
            .filter(size -> size.number().isEmpty() ? size.loftDeg() == Double.parseDouble(name)
                : size.number().equals(name))
            .findFirst().orElseThrow(() -> new IllegalArgumentException(model + " has no " + name));
    }
}
