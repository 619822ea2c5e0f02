package benchtwin.match;

import benchtwin.club.Head;
import benchtwin.club.Inventory;
import benchtwin.club.Shaft;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The best head and shaft together, for a backup from stock. A pair's cost cannot be below what the head's angles alone
 * cost, so heads are taken in the order of that bound and the search ends at the first that cannot beat the last pair kept.
 */
final class PairSearch {

    private final Favourite favourite;
    private final Inventory inventory;
    private final Screening screening;
    private final List<Head> heads = new ArrayList<>();
    private final List<Shaft> shafts = new ArrayList<>();
    private final Screened.Collector collector = new Screened.Collector();

    PairSearch(Favourite favourite, Inventory inventory, Screening screening) {
        this.favourite = favourite;
        this.inventory = inventory;
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

    long considered() {
        return heads.stream().filter(h -> !screening.isPromised(h.keeping().reservedFor())).count()
            * shafts.stream().filter(s -> !screening.isPromised(s.keeping().reservedFor())).count();
    }
    List<FoundPlan> best(PlanSearch search, int most, boolean promised) {
        return List.of();
    }
}
