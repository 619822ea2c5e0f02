package benchtwin.match;

import benchtwin.club.AddedMasses;
import benchtwin.club.Port;
import benchtwin.club.StepKind;
import benchtwin.club.Weight;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * The masses a head can be given: weights in its ports, lead tape, hot melt. All count at the head's centre of gravity, so
 * only their sum matters to the club; for each sum the way that costs least is kept, which makes the split unique.
 *
 * <p>Between tape and hot melt the order is: tape alone while it holds; then hot melt alone while there is room; then tape
 * at its most and hot melt for the rest.
 */
final class HeadMass {

    /** Masses nearer than this are the same mass, g. */
    private static final double SAME_G = 0.01;

    private HeadMass() {
    }

    /**
     * One way to a mass.
     * @param addedG  what is at the head in all, ports included, g
     * @param effort  cost in squared tolerances
     * @param ports   what is in each port
     * @param tapeG   lead tape put on, g; below 0 when some is taken off
     * @param meltG   hot melt put in, g
     * @param minutes bench minutes
     */
    record Option(double addedG, double effort, List<PortChoice> ports, double tapeG, double meltG, double minutes) {

        /** Whether nothing is done. */
        boolean isAsItIs() {
            return tapeG == 0 && meltG == 0 && ports.stream().noneMatch(PortChoice::isChanged);
        }
    }

    /**
     * What goes into a port.
     * @param port   as it is now
     * @param weight the weight that replaces it; null when it stays
     */
    record PortChoice(Port port, Weight weight) {

        double massG() {
            return weight == null ? port.massG() : weight.massG();
        }

        boolean isChanged() {
            return weight != null;
        }
    }

    /**
     * Every mass that can be reached, lightest first.
     * @param ports    the head's ports
     * @param meltMaxG room for hot melt, g
     * @param drawer   weights in stock
     * @param shop     what a person can set and what it costs
     * @param start    tape and hot melt that are there already; tape can come off, hot melt stays
     * @return one option for each mass; the masses the head has now among them
     */
    static List<Option> all(List<Port> ports, double meltMaxG, List<Weight> drawer, ShopSettings shop,
                            AddedMasses start) {
        List<Option> fillings = new ArrayList<>();
        List<List<PortChoice>> portWays = portWays(ports, drawer);
        for (List<PortChoice> way : portWays) {
            double inPorts = way.stream().mapToDouble(PortChoice::massG).sum();
            double heavier = way.stream().mapToDouble(c -> Math.max(0, c.massG() - c.port().massG())).sum();
            long changed = way.stream().filter(PortChoice::isChanged).count();
            double effort = changed * shop.effort(StepKind.WEIGHT_SCREW) + heavier * shop.effortPerGram();
            double minutes = changed * shop.minutes().get(StepKind.WEIGHT_SCREW);
            addFillings(fillings, way, new Option(inPorts, effort, way, 0, 0, minutes), meltMaxG, shop, start);
        }
        return cheapestOfEachMass(fillings);
    }

    private static void addFillings(List<Option> out, List<PortChoice> way, Option ports, double meltMaxG,
                                    ShopSettings shop, AddedMasses start) {
        double step = shop.massStepG();
        double tapeRoom = Math.max(0, shop.tapeMaxG() - start.tapeG());
        double meltRoom = Math.max(0, meltMaxG - start.meltG());
        int least = -(int) Math.floor(start.tapeG() / step + SAME_G);
        int most = (int) Math.floor((tapeRoom + meltRoom) / step + SAME_G);
        for (int k = least; k <= most; k++) {
            double grams = k * step;
            double tape;
            double melt;
            if (grams <= tapeRoom + SAME_G) {
                tape = grams;
                melt = 0;
            } else if (grams <= meltRoom + SAME_G) {
                tape = 0;
                melt = grams;
            } else {
                tape = Math.floor(tapeRoom / step + SAME_G) * step;
                melt = grams - tape;
                if (melt > meltRoom + SAME_G) {
                    continue;
                }
            }
            double cost = ports.effort() + Math.max(0, grams) * shop.effortPerGram()
                + (tape != 0 ? shop.effort(StepKind.LEAD_TAPE) : 0) + (melt > 0 ? shop.effort(StepKind.HOT_MELT) : 0);
            double time = ports.minutes() + (tape != 0 ? shop.minutes().get(StepKind.LEAD_TAPE) : 0)
                + (melt > 0 ? shop.minutes().get(StepKind.HOT_MELT) : 0);
            out.add(new Option(ports.addedG() + start.tapeG() + start.meltG() + grams, cost, way, tape, melt, time));
        }
    }

    private static List<Option> cheapestOfEachMass(List<Option> options) {
        options.sort(Comparator.comparingDouble(Option::addedG).thenComparingDouble(Option::effort));
        List<Option> kept = new ArrayList<>();
        for (Option option : options) {
            Option last = kept.isEmpty() ? null : kept.get(kept.size() - 1);
            if (last == null || option.addedG() - last.addedG() > SAME_G) {
                kept.add(option);
            } else if (option.effort() < last.effort()) {
                kept.set(kept.size() - 1, option);
            }
        }
        return List.copyOf(kept);
    }

    private static List<List<PortChoice>> portWays(List<Port> ports, List<Weight> drawer) {
        List<List<PortChoice>> ways = List.of(List.of());
        for (Port port : ports) {
            List<List<PortChoice>> longer = new ArrayList<>();
            for (List<PortChoice> way : ways) {
                longer.add(with(way, new PortChoice(port, null)));
                for (Weight weight : drawer) {
                    boolean another = Math.abs(weight.massG() - port.massG()) > SAME_G;
                    if (weight.port().equals(port.type()) && another && left(weight, way) > 0) {
                        longer.add(with(way, new PortChoice(port, weight)));
                    }
                }
            }
            ways = longer;
        }
        return ways;
    }

    private static int left(Weight weight, List<PortChoice> way) {
        int used = (int) way.stream().filter(c -> weight.equals(c.weight())).count();
        return weight.count() - used;
    }

    private static List<PortChoice> with(List<PortChoice> way, PortChoice choice) {
        List<PortChoice> longer = new ArrayList<>(way);
        longer.add(choice);
        return List.copyOf(longer);
    }

    /** The masses of heads with the same ports and room, worked out once. Not thread-safe. */
    static final class Table {

        private record Key(List<Port> ports, double meltMaxG) {
        }

        private final List<Weight> drawer;
        private final ShopSettings shop;
        private final AddedMasses start;
        private final boolean mayChange;
        private final Map<Key, List<Option>> options = new HashMap<>();

        /**
         * @param drawer    weights in stock
         * @param shop      what a person can set and what it costs
         * @param start     tape and hot melt that are there already
         * @param mayChange whether anything may be done; else each head has one option, as it is
         */
        Table(List<Weight> drawer, ShopSettings shop, AddedMasses start, boolean mayChange) {
            this.drawer = List.copyOf(drawer);
            this.shop = shop;
            this.start = start;
            this.mayChange = mayChange;
        }

        List<Option> of(List<Port> ports, double meltMaxG) {
            return options.computeIfAbsent(new Key(ports, meltMaxG), k -> {
                List<Option> all = all(k.ports(), k.meltMaxG(), drawer, shop, start);
                return mayChange ? all : all.stream().filter(Option::isAsItIs).limit(1).toList();
            });
        }
    }
}
