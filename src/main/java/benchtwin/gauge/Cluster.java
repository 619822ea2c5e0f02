package benchtwin.gauge;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.QRDecomposition;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;

/**
 * Gauges that hang together by links, with each one's offset to the first of them by weighted least squares.
 *
 * <p>Link l says x(gauge) − x(reference) = o with uncertainty u; x(first) = 0. Each equation is divided by its u. With P
 * the pseudo-inverse of what stands on the left, x = P (o/u) and the covariance of x is P Pᵀ, times the square of the
 * Birge ratio where that is above 1.
 */
final class Cluster {

    /** Weights below this are rounding: a link with such a weight does not carry the comparison. */
    private static final double NO_WEIGHT = 1e-9;

    private final List<String> gauges;
    private final List<Link> links;
    private final RealMatrix toOffsets;
    private final RealVector offsets;
    private final Agreement agreement;

    /** The gauges, the first of them being where offsets count from, and links that join all of them. */
    Cluster(List<String> gauges, List<Link> links) {
        this.gauges = List.copyOf(gauges);
        this.links = List.copyOf(links);
        if (links.isEmpty()) {
            toOffsets = null;
            offsets = null;
            agreement = new Agreement(0, 0);
            return;
        }
        toOffsets = new QRDecomposition(equations()).getSolver().getInverse();
        offsets = toOffsets.operate(MatrixUtils.createRealVector(
            links.stream().mapToDouble(link -> link.offset() / link.standardUncertainty()).toArray()));
        double chiSquared = links.stream().mapToDouble(link -> Math.pow(misfit(link).inUncertainties(), 2)).sum();
        agreement = new Agreement(chiSquared, links.size() - (gauges.size() - 1));
    }

    private RealMatrix equations() {
        RealMatrix equations = MatrixUtils.createRealMatrix(links.size(), gauges.size() - 1);
        for (int row = 0; row < links.size(); row++) {
            Link link = links.get(row);
            equations.setRow(row, difference(link.reference(), link.gauge(), 1 / link.standardUncertainty()));
        }
        return equations;
    }

    /** The row that takes the second gauge's offset less the first's, so many times. */
    private double[] difference(String from, String to, double times) {
        double[] row = new double[gauges.size() - 1];
        add(row, to, times);
        add(row, from, -times);
        return row;
    }

    private void add(double[] row, String gauge, double times) {
        int place = gauges.indexOf(gauge) - 1;
        if (place >= 0) {
            row[place] += times;
        }
    }

    List<String> gauges() {
        return gauges;
    }

    Agreement agreement() {
        return agreement;
    }

    Misfit misfit(Link link) {
        double[] row = difference(link.reference(), link.gauge(), 1);
        return new Misfit(link, link.offset() - MatrixUtils.createRealVector(row).dotProduct(offsets));
    }

    /** What the second gauge reads less what the first reads. */
    Estimate between(String from, String to) {
        if (from.equals(to)) {
            return new Estimate(0, 0);
        }
        RealVector row = MatrixUtils.createRealVector(difference(from, to, 1));
        return new Estimate(row.dotProduct(offsets), weights(row).getNorm() * agreement.enlargement());
    }

    private RealVector weights(RealVector row) {
        return toOffsets.preMultiply(row);
    }

    /** The two gauges, then every other that a link with a say in their difference touches, by name. */
    List<String> restsOn(String from, String to) {
        List<String> names = new ArrayList<>(from.equals(to) ? List.of(from) : List.of(from, to));
        if (from.equals(to)) {
            return names;
        }
        RealVector weights = weights(MatrixUtils.createRealVector(difference(from, to, 1)));
        Set<String> others = new TreeSet<>();
        for (int i = 0; i < links.size(); i++) {
            if (Math.abs(weights.getEntry(i)) / links.get(i).standardUncertainty() > NO_WEIGHT) {
                others.add(links.get(i).gauge());
                others.add(links.get(i).reference());
            }
        }
        names.forEach(others::remove);
        names.addAll(others);
        return names;
    }
}
