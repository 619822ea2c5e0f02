package benchtwin.match;

import benchtwin.club.Grip;
import benchtwin.club.Quantity;
import benchtwin.club.Target;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;

/** Plans a club with everything that can be changed about it, and with every set of the levers. */
final class ChangeSearch {

    /** More layers of tape than this are not put under a grip. Memory. */
    static final int MOST_LAYERS = 5;
    private static final int HEADS_AND_SHAFTS = 2;
    private static final int ANGLES = 1;
    private static final int MASS = 2;
    private static final int BUTT = 4;

    private final ChangeRequest request;
    private final Target target;
    private final Target searched;
    private final ChangeParts parts;
    private final boolean gripReaches;
    private final PlanWords words;
    private final List<FoundWay> found = new ArrayList<>();
    private final Set<List<Object>> seen = new HashSet<>();

    /**
     * @param request     what is asked
     * @param target      what ways are judged by
     * @param searched    the same, held as tight as it is searched
     * @param parts       what the changed club can consist of
     * @param gripReaches whether the grip asked for, or one of its mass, is there
     */
    ChangeSearch(ChangeRequest request, Target target, Target searched, ChangeParts parts, boolean gripReaches) {
        this.request = request;
        this.target = target;
        this.searched = searched;
        this.parts = parts;
        this.gripReaches = gripReaches;
        this.words = new PlanWords(request.shop());
    }

    /**
     * Plans everything.
     * @param wishedGrips grips that are asked for; without one every free grip takes part
     * @return plans, each once
     */
    List<FoundWay> run(List<Grip> wishedGrips) {
        if (request.asksForAGrip()) {
            wishedGrips.forEach(grip -> all(base -> parts.regripped(base, grip)));
            return found;
        }
        all(UnaryOperator.identity());
        plan(parts.grips(parts.freeGrips()), 1);
        for (int layers = 0; layers <= MOST_LAYERS; layers++) {
            if (layers != request.club().tapeLayers()) {
                plan(parts.tape(layers), 1);
            }
        }
        return found;
    }

    private void all(UnaryOperator<ChangeParts.Base> grip) {
        plan(grip.apply(parts.own()), 1);
        plan(grip.apply(parts.tipOut()), 1);
        plan(grip.apply(parts.heads()), HEADS_AND_SHAFTS);
        plan(grip.apply(parts.shafts()), HEADS_AND_SHAFTS);
    }

    private TwinModel twin(Keep keep) {
        return Change.twin(request.club(), keep);
    }

    /** Plans a base with every set of levers. */
    private void plan(ChangeParts.Base base, int most) {
        if (base.candidates().isEmpty()) {
            return;
        }
        // every set of levers holds what a smaller one may do, so its plans are only of interest below what that one costs
        double[] reached = new double[1 << 3];
        Arrays.fill(reached, Double.POSITIVE_INFINITY);
        List<Boolean> butts = butts(base);
        for (int set = 0; set < reached.length; set++) {
            boolean angles = (set & ANGLES) != 0;
            boolean mass = (set & MASS) != 0;
            boolean butt = (set & BUTT) != 0;
            double below = Double.POSITIVE_INFINITY;
            for (int part = 0; part < set; part++) {
                below = (part & set) == part ? Math.min(below, reached[part]) : below;
            }
            if (!butts.contains(butt) || angles && !anglesMatter(base)) {
                reached[set] = below;
                continue;
            }
            // a new head has to be set somehow
            Levers levers = new Levers(angles || base.lever() == Lever.HEAD, angles, mass, butt);
            PlanSearch search = new PlanSearch(searched, twin(base.keep()), request.shop(),
                request.inventory().weights(), base.start(), Double.POSITIVE_INFINITY, levers);
            List<FoundPlan> plans = Ranking.best(base.candidates(), search, most, below);
            plans.forEach(plan -> keep(base, plan));
            reached[set] = plans.size() < most ? below : Math.min(below, plans.get(plans.size() - 1).cost());
        }
    }

    /** Angles are touched only where they are asked for, or come with a new head: nobody bends a lie for swing weight. */
    private boolean anglesMatter(ChangeParts.Base base) {
        return base.lever() == Lever.HEAD || Lever.BEND.isUsedFor(request.wished().keySet());
    }

    /** A new shaft has to be cut to length; else the butt is touched only where that is a way to what is asked. */
    private List<Boolean> butts(ChangeParts.Base base) {
        if (base.lever() == Lever.SHAFT) {
            return List.of(true);
        }
        return base.lever() == Lever.HEAD || Lever.BUTT.isUsedFor(request.wished().keySet()) ? List.of(false, true)
            : List.of(false);
    }

    private void keep(ChangeParts.Base base, FoundPlan plan) {
        Set<Lever> changed = changed(base, plan);
        List<Object> identity = List.of(changed, plan.candidate().key(), plan.candidate().grip().map(Grip::tag),
            plan.start().tapeLayers(), plan.setup());
        if (changed.isEmpty() || base.lever() == Lever.TIP && !changed.contains(Lever.TIP) || !seen.add(identity)) {
            return;
        }
        double[] after = twin(base.keep()).predict(plan.candidate().assembly(), plan.setup());
        Map<Quantity, Double> missing = new EnumMap<>(Quantity.class);
        for (Quantity quantity : request.wished().keySet()) {
            double d = target.of(quantity).orElseThrow().deviation(after[quantity.ordinal()]);
            if (!(Math.abs(d) <= 1)) {
                missing.put(quantity, after[quantity.ordinal()] - request.wished().get(quantity));
            }
        }
        found.add(new FoundWay(changed, plan, base, words.of(plan).steps().size(),
            Math.sqrt(CostTerms.missSquared(target, after)), missing, missing.isEmpty() && gripReaches));
    }

    private Set<Lever> changed(ChangeParts.Base base, FoundPlan plan) {
        Set<Lever> changed = EnumSet.noneOf(Lever.class);
        if (base.lever() != null && base.lever() != Lever.TIP) {
            changed.add(base.lever());
        }
        if (request.asksForAGrip()) {
            changed.add(Lever.GRIP);
        }
        AngleOption angle = plan.angle();
        boolean turned = angle.setting() != null
            && !plan.candidate().settingNow().equals(Optional.of(angle.setting()));
        if (turned && base.lever() != Lever.HEAD) {
            changed.add(Lever.SETTING);
        }
        if (angle.lieSteps() != 0 || angle.turnSteps() != 0) {
            changed.add(Lever.BEND);
        }
        if (!plan.mass().isAsItIs() || plan.cut().tipWeight() != null) {
            changed.add(Lever.WEIGHT);
        }
        Cut cut = plan.cut();
        if (base.lever() != Lever.SHAFT) {
            if (cut.buttCutMm() > 0 || cut.extensionMm() > 0) {
                changed.add(Lever.BUTT);
            }
            if (cut.tipTrimMm() > 0) {
                changed.add(Lever.TIP);
            }
        }
        return changed;
    }
}
