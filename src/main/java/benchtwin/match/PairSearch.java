package benchtwin.match;

import benchtwin.club.Head;
import benchtwin.club.Inventory;
import benchtwin.club.Shaft;
import benchtwin.club.TipKind;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * The best head and shaft together, for a backup from stock, exactly and without trying every pair.
 *
 * <p>Shafts that join to a head in the same way (same tip, sleeve and grip on) form a lot. What a head's angles and the
 * joining cost bounds every pair of the head and the lot from below, so heads and lots are taken in the order of that bound,
 * and the search ends at the first that cannot beat the last pair kept.
 */
final class PairSearch {

    private final Screening screening;
    private final List<Head> heads = new ArrayList<>();
    private final List<Shaft> shafts = new ArrayList<>();
    private final Screened.Collector collector = new Screened.Collector();

    PairSearch(Inventory inventory, Screening screening) {
        this.screening = screening;
        for (Head head : inventory.heads()) {
            screening.whyNot(head).ifPresentOrElse(why -> collector.out("head: " + why), () -> heads.add(head));
        }
        for (Shaft shaft : inventory.shafts()) {
            screening.whyNot(shaft).ifPresentOrElse(why -> collector.out("shaft: " + why), () -> shafts.add(shaft));
        }
    }

    Screened screened() {
        return collector.done();
    }

    private boolean isPromised(Head head) {
        return screening.isPromised(head.keeping().reservedFor());
    }

    private boolean isPromised(Shaft shaft) {
        return screening.isPromised(shaft.keeping().reservedFor());
    }

    /** How many pairs of free parts there are. */
    long considered() {
        return heads.stream().filter(h -> !isPromised(h)).count() * shafts.stream().filter(s -> !isPromised(s)).count();
    }

    /** What decides how a shaft joins a head, besides the head. */
    private record Lot(double tipMm, TipKind tipKind, Optional<String> sleeveOn, Optional<String> gripOn) {

        static Lot of(Shaft shaft) {
            return new Lot(shaft.tipMm(), shaft.tipKind(), shaft.sleeveOn(), shaft.gripOn());
        }
    }

    /** A head, a lot and what no pair of them costs less than. */
    private record Bounded(Head head, List<Shaft> lot, double bound) {
    }

    /**
     * The best pairs.
     * @param search   plans one pair
     * @param most     how many are wanted
     * @param promised whether pairs with a promised part are wanted, instead of those without
     * @return least cost first
     */
    List<FoundPlan> best(PlanSearch search, int most, boolean promised) {
        Collection<List<Shaft>> all = lots(shaft -> true);
        Collection<List<Shaft>> ofOneKind = lots(shaft -> isPromised(shaft) == promised);
        List<Bounded> order = new ArrayList<>();
        for (Head head : heads) {
            // with a promised head every pair is one with a promised part
            Collection<List<Shaft>> lots = !isPromised(head) ? ofOneKind : promised ? all : List.of();
            lots.forEach(lot -> bound(search, head, lot).ifPresent(order::add));
        }
        order.sort(Comparator.comparingDouble(Bounded::bound).thenComparing(b -> b.head().tag())
            .thenComparing(b -> b.lot().get(0).tag()));
        Ranking.Best best = new Ranking.Best(most);
        for (Bounded next : order) {
            if (next.bound() > best.worst()) {
                break;
            }
            for (Shaft shaft : next.lot()) {
                for (Candidate candidate : candidates(next.head(), shaft)) {
                    best.offer(search.best(candidate, Math.nextUp(best.worst())));
                }
            }
        }
        return best.inOrder();
    }

    private Collection<List<Shaft>> lots(Predicate<Shaft> which) {
        Map<Lot, List<Shaft>> lots = new LinkedHashMap<>();
        shafts.stream().filter(which).forEach(shaft -> lots.computeIfAbsent(Lot.of(shaft), lot -> new ArrayList<>()).add(shaft));
        return lots.values();
    }

    private Optional<Bounded> bound(PlanSearch search, Head head, List<Shaft> lot) {
        return candidates(head, lot.get(0)).stream().map(search::lowerBound).min(Comparator.naturalOrder())
            .map(bound -> new Bounded(head, lot, bound));
    }

    private List<Candidate> candidates(Head head, Shaft shaft) {
        List<Candidate> candidates = new ArrayList<>();
        for (Screening.Way way : screening.ways(head, shaft, Optional.empty())) {
            candidates.add(screening.withGrip(head, shaft, way, way.steps()));
        }
        return candidates;
    }
}
