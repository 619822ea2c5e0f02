package benchtwin.match;

import benchtwin.club.AddedMasses;
import benchtwin.club.Quantity;
import benchtwin.club.Target;
import benchtwin.club.Wanted;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Finds the parts and plans nearest a favourite. */
public final class Match {

    private final MatchRequest request;
    private final Favourite favourite;
    private final TwinModel twin;
    private final List<String> notes;

    private Match(MatchRequest request) {
        this.request = request;
        this.notes = new ArrayList<>(request.favourite().notes());
        this.favourite = request.favourite();
        this.twin = new TwinModel(favourite.old(), request.keep(), favourite.condition(), favourite.reading());
    }

    /**
     * Runs a match.
     * @param request what is asked
     * @return the answer
     * @throws IllegalArgumentException when the part that is to be kept is not on record
     */
    public static MatchAnswer run(MatchRequest request) {
        if (request.keep() == Keep.SHAFT && request.favourite().shaft().isEmpty()) {
            throw new IllegalArgumentException("the shaft to keep is not on record");
        }
        if (request.keep() == Keep.HEAD && request.favourite().head().isEmpty()) {
            throw new IllegalArgumentException("the head to keep is not on record");
        }
        return new Match(request).run();
    }

    private MatchAnswer run() {
        Target target = usableTarget();
        notes.addAll(Consistency.doubts(twin.carried()));
        notes.addAll(Consistency.disagreement(twin.rawDisagreementCpm()));
        ShopSettings shop = request.shop();
        Screening screening = new Screening(favourite.withTarget(target), request.inventory(), request.otherModels());
        double due = request.mostReadyMinutes().orElse(Double.POSITIVE_INFINITY);
        PlanSearch inTime = search(target, due);
        PlanSearch anyTime = request.mostReadyMinutes().isPresent() ? search(target, Double.POSITIVE_INFINITY) : inTime;
        Screened screened;
        List<FoundPlan> results;
        List<FoundPlan> late = List.of();
        List<FoundPlan> promised;
        long considered;
        if (request.keep() == Keep.NONE) {
            PairSearch pairs = new PairSearch(request.inventory(), screening);
            screened = pairs.screened();
            results = pairs.best(inTime, request.top(), false);
            late = anyTime == inTime ? List.of() : pairs.best(anyTime, request.top(), false);
            promised = pairs.best(anyTime, request.top(), true);
            considered = pairs.considered();
        } else {
            screened = request.keep() == Keep.SHAFT ? screening.headsForTheOldShaft()
                : screening.shaftsForTheOldHead(false);
            results = Ranking.best(screened.fit(), inTime, request.top());
            late = anyTime == inTime ? List.of() : Ranking.best(screened.fit(), anyTime, request.top());
            promised = Ranking.best(screened.promised(), anyTime, request.top());
            considered = screened.fit().stream().map(c -> c.head().tag() + "\u0000" + c.shaft().tag()).distinct().count();
        }
        Explanation explanation = new Explanation(target, twin, shop, request.keep());
        List<Ranked> ranked = explanation.ranked(results);
        List<MatchAnswer.Below> below = below(explanation, results, late, promised);
        return new MatchAnswer(favourite.withTarget(target), request.keep(), ranked, below, screened.ruledOut(),
            considered, PastLimit.count(screened.fit(), target, twin), true, List.copyOf(notes), carried(target));
    }

    private PlanSearch search(Target target, double mostReadyMinutes) {
        return new PlanSearch(target, twin, request.shop(), request.inventory().weights(),
            start(), mostReadyMinutes, Levers.ALL);
    }

    /** What the part that is kept brings along: tape and hot melt come with a head, a tip weight with a shaft. */
    private AddedMasses start() {
        AddedMasses on = favourite.carried();
        return switch (request.keep()) {
            case SHAFT -> new AddedMasses(on.tapeLayers(), on.tipWeightG(), 0, 0);
            case HEAD -> new AddedMasses(on.tapeLayers(), 0, on.tapeG(), on.meltG());
            case BOTH -> on;
            case NONE -> new AddedMasses(on.tapeLayers(), 0, 0, 0);
        };
    }

    /** The target less what cannot be computed for any candidate. */
    private Target usableTarget() {
        Target target = favourite.target();
        if (request.keep() == Keep.SHAFT && target.of(Quantity.FREQUENCY).isPresent()) {
            boolean scaled = twin.isScaledByOldClub();
            boolean raw = favourite.shaft().orElseThrow().frequencies().stream()
                .anyMatch(f -> f.clampMm().isPresent() || f.freeLengthMm().isPresent());
            if (!scaled && !raw) {
                notes.add("no frequency of the old club's parts or shaft sets its stiffness, so the twin's frequency "
                    + "cannot be predicted: read the shaft to match it");
                return without(target, Quantity.FREQUENCY);
            }
        }
        if (request.keep() == Keep.SHAFT && target.of(Quantity.TORQUE).filter(w -> w.weight() > 0).isPresent()
            && favourite.shaft().orElseThrow().torqueDeg().isEmpty()) {
            notes.add("the shaft's torque was never read, so the twin's cannot be predicted: read it to match it");
            return without(target, Quantity.TORQUE);
        }
        boolean noMass = favourite.grip().flatMap(g -> g.massG()).isEmpty()
            || request.keep() == Keep.SHAFT && favourite.shaft().orElseThrow().massG().isEmpty();
        if (noMass) {
            notes.add("the mass of the grip or of the shaft is missing, so swing weight, frequency and total mass cannot be "
                + "predicted: weigh it to match them");
            return without(without(without(target, Quantity.SWING_WEIGHT), Quantity.TOTAL_MASS), Quantity.FREQUENCY);
        }
        return target;
    }

    private static Target without(Target target, Quantity quantity) {
        EnumMap<Quantity, Wanted> rest = new EnumMap<>(Quantity.class);
        rest.putAll(target.wanted());
        rest.remove(quantity);
        return new Target(target.reading(), rest);
    }

    private List<MatchAnswer.Below> below(Explanation explanation, List<FoundPlan> results, List<FoundPlan> late,
                                          List<FoundPlan> promised) {
        Set<String> shown = new HashSet<>();
        results.forEach(plan -> shown.add(plan.candidate().key()));
        List<MatchAnswer.Below> below = new ArrayList<>();
        for (FoundPlan plan : promised) {
            String whose = plan.candidate().head().keeping().reservedFor()
                .or(() -> plan.candidate().shaft().keeping().reservedFor()).orElse("another job");
            below.add(new MatchAnswer.Below(explanation.alone(plan), "promised to " + whose));
        }
        double due = request.mostReadyMinutes().orElse(Double.POSITIVE_INFINITY);
        for (FoundPlan plan : late) {
            if (plan.readyMinutes() > due && shown.add(plan.candidate().key())) {
                below.add(new MatchAnswer.Below(explanation.alone(plan), "cannot be ready in time"));
            }
        }
        return List.copyOf(below);
    }

    private Map<Quantity, Double> carried(Target target) {
        Map<Quantity, Double> carried = new EnumMap<>(Quantity.class);
        double[] values = twin.carried();
        for (Quantity quantity : target.wanted().keySet()) {
            if (values[quantity.ordinal()] != 0) {
                carried.put(quantity, values[quantity.ordinal()]);
            }
        }
        return carried;
    }
}
