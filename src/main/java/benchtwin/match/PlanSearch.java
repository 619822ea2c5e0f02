package benchtwin.match;

import benchtwin.club.AddedMasses;
import benchtwin.club.Target;
import benchtwin.club.Weight;
import java.util.List;

/**
 * Finds the plan of least cost for one candidate: exact over everything a person can set.
 *
 * <p>Angles depend on the setting or bend alone; length on the lie and the cuts; swing weight, mass and frequency on those
 * and on the mass at the head. So the ways to set the angles are taken in order of their own cost, for each the cuts whose
 * length can still pay, for each the masses whose swing weight and total mass can still pay, and only those left have
 * their frequency computed. Every part of the cost is 0 or more, so whatever is skipped costs at least as much as the best
 * plan kept.
 *
 * <p>Frequencies are bracketed before they are computed: λ = 1/ω² is convex in the mass at the head, so tangents at the
 * lightest and the heaviest mass lie below it and the chord between them above it (see {@link benchtwin.mechanics.Mode}).
 */
final class PlanSearch {

    final CostTerms terms;
    final TwinModel twin;
    final ShopSettings shop;
    final AddedMasses start;
    final Levers levers;
    final double mostReadyMinutes;
    final AngleOptions angles;
    final HeadMass.Table masses;
    final Cuts cuts;

    /**
     * @param target           what is wanted
     * @param twin             predicts new builds
     * @param shop             what a person can set and what it costs
     * @param drawer           weights in stock
     * @param start            what the club carries before the plan: tape under the grip and, where the club itself is
     *                         changed, what its head and tip already have
     * @param mostReadyMinutes plans that take longer are not considered; may be infinite
     * @param levers           what a plan may change
     */
    PlanSearch(Target target, TwinModel twin, ShopSettings shop, List<Weight> drawer, AddedMasses start,
               double mostReadyMinutes, Levers levers) {
        this.terms = new CostTerms(target, twin.carried());
        this.twin = twin;
        this.shop = shop;
        this.start = start;
        this.levers = levers;
        this.mostReadyMinutes = mostReadyMinutes;
        this.angles = new AngleOptions(terms, twin.loftIn(), shop, new SettingTable(), levers);
        this.masses = new HeadMass.Table(drawer, shop, start, levers.mass());
        this.cuts = new Cuts(shop, levers.mass() && start.tipWeightG() == 0 ? drawer : List.of(), levers.butt());
    }

    /**
     * A bound that no plan of a candidate costs less than, quickly.
     * @param candidate parts that fit
     * @return 0 or more
     */
    double lowerBound(Candidate candidate) {
        return candidate.joiningEffort(shop) + angles.lowerBound(candidate);
    }

    /**
     * The plan of least cost.
     * @param candidate parts that fit
     * @param below     plans that cost this much or more are of no interest; may be infinite
     * @return the plan; null when none costs less than {@code below}
     */
    FoundPlan best(Candidate candidate, double below) {
        return new CandidateSearch(this, candidate, below).run();
    }

    /**
     * The plan of least cost among those that set the angles the way that costs least by itself. The lie moves the length a
     * little, and the cuts make up for that; so this is seldom more than a trifle dearer than {@link #best}, and needs one
     * search of cuts and masses instead of one for every bend.
     * @param candidate parts that fit
     * @param below     plans that cost this much or more are of no interest; may be infinite
     * @return the plan; null when none costs less than {@code below}
     */
    FoundPlan bestWithAnglesApart(Candidate candidate, double below) {
        return new CandidateSearch(this, candidate, below).runAt(angles.cheapest(candidate));
    }

    /**
     * A good plan, quickly: trim, butt cut and mass each set for what it is there for. Not the best.
     * @param candidate parts that fit
     * @return a plan; null when none can be ready in time
     */
    FoundPlan guessWithAnglesApart(Candidate candidate) {
        return new CandidateSearch(this, candidate, Double.POSITIVE_INFINITY).guessAt(angles.cheapest(candidate));
    }

    /**
     * The same search with the target drawn toward other values: a square about the target and a square about the pull are
     * together one square about a value between them.
     * @param pulls what is drawn where, and how hard
     * @return a search whose costs count the pulls, but for a part that is the same for every plan
     */
    PlanSearch pulled(List<SlotPlans.Pull> pulls) {
        return new PlanSearch(this, terms.pulled(pulls));
    }

    private PlanSearch(PlanSearch other, CostTerms terms) {
        this.terms = terms;
        this.twin = other.twin;
        this.shop = other.shop;
        this.start = other.start;
        this.levers = other.levers;
        this.mostReadyMinutes = other.mostReadyMinutes;
        this.angles = new AngleOptions(terms, twin.loftIn(), shop, new SettingTable(), levers);
        this.masses = other.masses;
        this.cuts = other.cuts;
    }
}
