package benchtwin.gauge;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/**
 * All gauges of a workshop for one quantity, joined by accepted offsets and reconciled.
 *
 * <p>Offsets A to B, B to C and A to C never close exactly. Weighted least squares over all links gives each gauge one
 * offset to the reference gauge, with a covariance, so that two gauges that share a link do not count its uncertainty
 * twice. Where the links contradict each other by more than their uncertainties, the covariance grows by the square of
 * the Birge ratio, as it does for one offset.
 *
 * <p>Links are taken as independent. Offsets worked out from the same readings are not: of three gauges that read the
 * same parts, two links say everything, and the third would make the result look better than it is. Give links that
 * share no readings.
 * <p>Source: published, Ghilani and Wolf, Adjustment Computations, chapter 12, where level nets are reconciled in this way;
 * see docs/accuracy.md.
 */
public final class GaugeNetwork {

    private final String quantity;
    private final String reference;
    private final List<Link> links;
    private final Map<String, Cluster> clusters = new HashMap<>();

    private GaugeNetwork(String quantity, String reference, List<Link> links) {
        this.quantity = quantity;
        this.reference = reference;
        this.links = List.copyOf(links);
    }

    /**
     * Reconciles the offsets between gauges.
     * @param quantity  the quantity
     * @param reference the gauge that readings are carried to
     * @param gauges    every gauge that reads the quantity; those that only links name are added
     * @param links     accepted offsets of this quantity, any number between two gauges
     * @return the network
     * @throws IllegalArgumentException when a link is of another quantity
     */
    public static GaugeNetwork of(String quantity, String reference, Collection<String> gauges, List<Link> links) {
        for (Link link : links) {
            if (!link.quantity().equals(quantity)) {
                throw new IllegalArgumentException("an offset of %s between %s and %s is none of %s"
                    .formatted(link.quantity(), link.gauge(), link.reference(), quantity));
            }
        }
        GaugeNetwork network = new GaugeNetwork(quantity, reference, links);
        Set<String> rest = new TreeSet<>(gauges);
        links.forEach(link -> rest.addAll(List.of(link.gauge(), link.reference())));
        network.join(reference, rest);
        while (!rest.isEmpty()) {
            network.join(rest.iterator().next(), rest);
        }
        return network;
    }

    /** Puts a gauge and all that hang together with it into a cluster, and takes them from the rest. */
    private void join(String first, Set<String> rest) {
        List<String> together = new ArrayList<>(List.of(first));
        for (int i = 0; i < together.size(); i++) {
            String gauge = together.get(i);
            Set<String> next = new TreeSet<>();
            for (Link link : links) {
                if (link.gauge().equals(gauge)) {
                    next.add(link.reference());
                } else if (link.reference().equals(gauge)) {
                    next.add(link.gauge());
                }
            }
            next.removeAll(together);
            together.addAll(next);
        }
        Cluster cluster = new Cluster(together, links.stream().filter(link -> together.contains(link.gauge())).toList());
        together.forEach(gauge -> clusters.put(gauge, cluster));
        together.forEach(rest::remove);
    }

    /**
     * The gauge that readings are carried to.
     * @return its name
     */
    public String reference() {
        return reference;
    }

    /**
     * Gauges that no chain of accepted offsets joins to the reference.
     * @return by name
     */
    public List<String> unconnected() {
        return clusters.keySet().stream().filter(gauge -> !connected(reference, gauge)).sorted().toList();
    }

    /**
     * How well the links agree that join gauges to the reference.
     * @return with as many degrees of freedom as there are links more than needed
     */
    public Agreement agreement() {
        return clusters.get(reference).agreement();
    }

    /**
     * What each accepted offset is off the reconciled ones; the largest, in uncertainties, is the one to read again.
     * @return one for each link, in the links' order
     */
    public List<Misfit> misfits() {
        return links.stream().map(link -> clusters.get(link.gauge()).misfit(link)).toList();
    }

    /**
     * A gauge's offset to the reference.
     * @param gauge the gauge
     * @return what it reads less what the reference reads; or why that is not known
     */
    public Finding<Estimate> offset(String gauge) {
        return connected(reference, gauge) ? Finding.of(clusters.get(reference).between(reference, gauge))
            : Finding.refused(notConnected(gauge));
    }

    /**
     * Carries a reading to the reference: subtracts its gauge's offset.
     * @param reading of this network's quantity
     * @return the value as it would stand there, or why it cannot be carried
     * @throws IllegalArgumentException when the reading is of another quantity
     */
    public Finding<Carried> carry(GaugeReading reading) {
        check(reading);
        if (!connected(reference, reading.gauge())) {
            return Finding.refused(notConnected(reading.gauge()));
        }
        Cluster cluster = clusters.get(reference);
        Estimate offset = cluster.between(reference, reading.gauge());
        return Finding.of(new Carried(new Estimate(reading.value() - offset.value(),
            Math.hypot(reading.standardUncertainty(), offset.standardUncertainty())),
            cluster.restsOn(reading.gauge(), reference)));
    }

    /**
     * How far two readings are apart. On one gauge its offset cancels, known or not; on two gauges the uncertainty of what
     * they differ by comes in once. They need not be joined to the reference, only to each other.
     * @param first  a reading of this network's quantity
     * @param second another, of the same thing later or of another thing
     * @return second less first, or why the two cannot be compared
     * @throws IllegalArgumentException when a reading is of another quantity
     */
    public Finding<Difference> difference(GaugeReading first, GaugeReading second) {
        check(first);
        check(second);
        double own = Math.hypot(first.standardUncertainty(), second.standardUncertainty());
        if (first.gauge().equals(second.gauge())) {
            return Finding.of(new Difference(second.value() - first.value(), own, List.of(first.gauge())));
        }
        if (!connected(first.gauge(), second.gauge())) {
            return Finding.refused(("no accepted offsets of %s join %s and %s: readings on one cannot be compared with"
                + " readings on the other").formatted(quantity, first.gauge(), second.gauge()));
        }
        Cluster cluster = clusters.get(first.gauge());
        Estimate offset = cluster.between(first.gauge(), second.gauge());
        return Finding.of(new Difference(second.value() - first.value() - offset.value(),
            Math.hypot(own, offset.standardUncertainty()), cluster.restsOn(first.gauge(), second.gauge())));
    }

    private boolean connected(String one, String other) {
        return clusters.containsKey(one) && clusters.get(one).gauges().contains(other);
    }

    private String notConnected(String gauge) {
        return "no accepted offsets of %s join %s to the reference %s: its readings can only be compared with its own"
            .formatted(quantity, gauge, reference);
    }

    private void check(GaugeReading reading) {
        if (!reading.quantity().equals(quantity)) {
            throw new IllegalArgumentException("a reading of %s in a network of gauges for %s"
                .formatted(reading.quantity(), quantity));
        }
    }
}
