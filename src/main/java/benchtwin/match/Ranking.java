package benchtwin.match;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The candidates of least cost, exactly, without planning them all: candidates are taken in order of a bound that their
 * cost cannot be below, and the search ends where the bound reaches the cost of the last one kept.
 */
final class Ranking {

    private static final Comparator<FoundPlan> ORDER =
        Comparator.comparingDouble(FoundPlan::cost).thenComparing(plan -> plan.candidate().key());

    private Ranking() {
    }

    /**
     * The best plans, one a head and shaft.
     * @param candidates in any order; several ways to join the same parts count as one
     * @param search     plans one candidate
     * @param most       how many are wanted
     * @return at most that many, least cost first, ties by tag
     */
    static List<FoundPlan> best(List<Candidate> candidates, PlanSearch search, int most) {
        return best(candidates, search, most, Double.POSITIVE_INFINITY);
    }

    /**
     * The same, only of plans below a cost.
     * @param below plans that cost this much or more are of no interest
     * @return at most that many, least cost first
     */
    static List<FoundPlan> best(List<Candidate> candidates, PlanSearch search, int most, double below) {
        record Bounded(Candidate candidate, double bound) {
        }
        List<Bounded> order = new ArrayList<>(candidates.size());
        for (Candidate candidate : candidates) {
            order.add(new Bounded(candidate, search.lowerBound(candidate)));
        }
        order.sort(Comparator.comparingDouble(Bounded::bound).thenComparing(b -> b.candidate().key()));
        Best best = new Best(most);
        for (Bounded next : order) {
            if (next.bound() > best.worst() || next.bound() >= below) {
                break;
            }
            best.offer(search.best(next.candidate(), Math.min(below, Math.nextUp(best.worst()))));
        }
        return best.inOrder();
    }

    /** Keeps the best few, one for each head and shaft. */
    static final class Best {

        private final int most;
        private final Map<String, FoundPlan> kept = new LinkedHashMap<>();
        private double worst = Double.POSITIVE_INFINITY;

        Best(int most) {
            this.most = most;
        }

        /** The cost to beat; infinite while there is room. */
        double worst() {
            return worst;
        }

        void offer(FoundPlan plan) {
            if (plan == null) {
                return;
            }
            String parts = plan.candidate().head().tag() + "\u0000" + plan.candidate().shaft().tag();
            FoundPlan known = kept.get(parts);
            if (known != null && ORDER.compare(known, plan) <= 0) {
                return;
            }
            kept.put(parts, plan);
            if (kept.size() > most) {
                List<FoundPlan> all = inOrder();
                FoundPlan last = all.get(all.size() - 1);
                kept.values().remove(last);
            }
            if (kept.size() == most) {
                List<FoundPlan> all = inOrder();
                worst = all.get(all.size() - 1).cost();
            }
        }

        List<FoundPlan> inOrder() {
            return kept.values().stream().sorted(ORDER).toList();
        }
    }
}
