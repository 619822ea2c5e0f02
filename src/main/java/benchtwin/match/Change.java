package benchtwin.match;

import benchtwin.club.Grip;
import benchtwin.club.Quantity;
import benchtwin.club.Target;
import benchtwin.club.Wanted;
import benchtwin.mechanics.Setup;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;

/**
 * Finds every way to change a recorded club so that it measures what is asked.
 *
 * <p>The club, the club with its tip out, with another grip, head or shaft are each planned exactly, with every set of the
 * further levers (angles, mass at the head, butt). What is asked is held ten times as tight as it is judged, so that it
 * comes before what should only stay as it is. What was left as it is costs as it moves: a way that drags less along has a
 * smaller miss.
 */
public final class Change {

    /** How much tighter than its tolerance a quantity asked for is searched. Ours. */
    private static final double ASKED_TIGHTER = 10;
    /** A way that changes more must lower the miss to this share to be worth showing, or bring it inside tolerance. Ours. */
    private static final double WORTH_ANOTHER = 0.75;
    /** And by more than this, tolerances. Ours. */
    private static final double HARDLY_NEARER = 0.02;
    /** Something that is not usually done for it is named when it leaves less than this of the distance, squared. Ours. */
    private static final double WORTH_SAYING = 0.7;
    /** More layers of tape than this are not put under a grip. Memory. */
    static final int MOST_LAYERS = 5;
    private static final int HEADS_AND_SHAFTS = 2;
    private static final int GRIPS_TRIED = 3;

    private final ChangeRequest request;
    private final Favourite club;
    private final OldClub old;
    private final Map<Quantity, Double> now;
    private final Target target;
    private final Target searched;
    private final ChangeParts parts;
    private final PlanWords words;
    private final List<Found> found = new ArrayList<>();
    /** Whether the grip asked for, or one of its mass, is there. */
    private boolean gripReaches = true;
    private final Set<List<Object>> seen = new HashSet<>();

    private Change(ChangeRequest request) throws CannotChange {
        this.request = request;
        this.club = request.club();
        this.now = now(club);
        this.old = club.old().orElseThrow();
        for (Quantity quantity : request.wished().keySet()) {
            if (!now.containsKey(quantity)) {
                throw new CannotChange("the %s of %s was never read and cannot be worked out from its parts: read it first"
                    .formatted(quantity.word().replace('-', ' '), club.name()));
            }
        }
        this.target = target(1);
        this.searched = target(ASKED_TIGHTER);
        this.words = new PlanWords(request.shop());
        this.parts = new ChangeParts(request, target, club.carried());
    }

    /** The club cannot be changed as asked; the message says why. */
    public static final class CannotChange extends Exception {
        private static final long serialVersionUID = 1;

        CannotChange(String message) {
            super(message);
        }
    }

    /**
     * Finds the ways.
     * @param request what is asked
     * @return the answer
     * @throws CannotChange when the club's parts are not on record, or what is asked for was never read and cannot be
     *                      worked out
     */
    public static ChangeAnswer run(ChangeRequest request) throws CannotChange {
        return new Change(request).run();
    }

    /**
     * What a club measures now.
     * @param club the club with its last sound readings
     * @return what was read, and what is worked out from its parts where nothing was
     * @throws CannotChange when its parts are not on record
     */
    public static Map<Quantity, Double> now(Favourite club) throws CannotChange {
        OldClub old = club.old().orElseThrow(() -> new CannotChange(
            "the parts of %s are not all on record, and a change can only start from what the club is made of: %s"
                .formatted(club.name(), String.join("; ", club.notes()))));
        double[] values = new TwinModel(club.old(), Keep.BOTH, club.condition(), club.reading())
            .predict(old.assembly(), old.setup());
        Map<Quantity, Double> map = new EnumMap<>(Quantity.class);
        for (Quantity quantity : Quantity.values()) {
            if (!Double.isNaN(values[quantity.ordinal()])) {
                map.put(quantity, values[quantity.ordinal()]);
            }
        }
        return map;
    }

    /** What is asked at its new value, everything else that was read where it is. */
    private Target target(double tighter) {
        EnumMap<Quantity, Wanted> wanted = new EnumMap<>(Quantity.class);
        club.target().wanted().forEach((quantity, w) ->
            wanted.put(quantity, new Wanted(now.getOrDefault(quantity, w.value()), w.tolerance(), w.weight())));
        request.wished().forEach((quantity, value) -> {
            Wanted usual = request.tolerances().wanted(quantity, value);
            wanted.put(quantity, new Wanted(value, usual.tolerance() / tighter, Math.max(1, usual.weight())));
        });
        return new Target(club.reading(), wanted);
    }

    private TwinModel twin(Keep keep) {
        return new TwinModel(club.old(), keep, club.condition(), club.reading());
    }

    /** A plan with what it changes and how far off it leaves things. */
    private record Found(Set<Lever> changed, FoundPlan plan, ChangeParts.Base base, int steps, double miss,
                         Map<Quantity, Double> missing, boolean reaches) {

        /** Whether another changes no more things than this and drags nearly as little along. */
        boolean isNeedlessBeside(Found other) {
            boolean nearEnough = other.miss() * WORTH_ANOTHER <= miss && (other.miss() <= 1 || miss > 1)
                || other.miss() <= miss + HARDLY_NEARER;
            return !other.changed().equals(changed) && changed.containsAll(other.changed()) && nearEnough;
        }
    }

    private ChangeAnswer run() {
        List<Grip> wishedGrips = wishedGrips();
        if (request.asksForAGrip()) {
            wishedGrips.forEach(grip -> search(base -> parts.regripped(base, grip)));
        } else {
            search(base -> base);
            plan(parts.grips(parts.freeGrips()), 1);
            for (int layers = 0; layers <= MOST_LAYERS; layers++) {
                if (layers != club.tapeLayers()) {
                    plan(parts.tape(layers), 1);
                }
            }
        }
        boolean alreadySo = !request.asksForAGrip() && request.wished().entrySet().stream()
            .allMatch(e -> Math.abs(target.of(e.getKey()).orElseThrow().deviation(now.get(e.getKey()))) <= 1e-9);
        List<Found> reaching = worthShowing();
        List<Way> ways = new ArrayList<>();
        for (Found one : reaching.subList(0, Math.min(reaching.size(), request.top()))) {
            ways.add(way(one, ways.size() + 1));
        }
        return new ChangeAnswer(request, target, now, measured(), List.copyOf(ways), reaching.size() - ways.size(),
            shortfalls(reaching, wishedGrips), alreadySo, club.notes());
    }

    private Set<Quantity> measured() {
        Set<Quantity> measured = EnumSet.noneOf(Quantity.class);
        measured.addAll(old.measured().keySet());
        return measured;
    }

    /** The base with a wished grip on, or itself. */
    private interface WithGrip {
        ChangeParts.Base of(ChangeParts.Base base);
    }

    private void search(WithGrip grip) {
        plan(grip.of(parts.own()), 1);
        plan(grip.of(parts.tipOut()), 1);
        plan(grip.of(parts.heads()), HEADS_AND_SHAFTS);
        plan(grip.of(parts.shafts()), HEADS_AND_SHAFTS);
    }

    private List<Grip> wishedGrips() {
        if (request.grip().isPresent()) {
            return List.of(request.grip().get());
        }
        OptionalDouble mass = request.gripMassG();
        if (mass.isEmpty()) {
            return List.of();
        }
        List<Grip> nearest = parts.freeGrips().stream().sorted(Comparator.comparingDouble(this::off)).limit(GRIPS_TRIED)
            .toList();
        List<Grip> right = nearest.stream().filter(g -> off(g) <= ChangeRequest.GRIP_TOLERANCE_G).toList();
        gripReaches = !right.isEmpty();
        return gripReaches ? right : nearest.stream().limit(1).toList();
    }

    private double off(Grip grip) {
        return Math.abs(grip.massG().orElseThrow().value() - request.gripMassG().getAsDouble());
    }

    /** Plans a base with every set of levers. */
    private void plan(ChangeParts.Base base, int most) {
        if (base.candidates().isEmpty()) {
            return;
        }
        List<Boolean> butts = butts(base);
        for (boolean angles : new boolean[] {false, true}) {
            for (boolean mass : new boolean[] {false, true}) {
                for (boolean butt : butts) {
                    // a new head has to be set somehow
                    Levers levers = new Levers(angles || base.lever() == Lever.HEAD, angles, mass, butt);
                    PlanSearch search = new PlanSearch(searched, twin(base.keep()), request.shop(),
                        request.inventory().weights(), base.start(), Double.POSITIVE_INFINITY, levers);
                    Ranking.best(base.candidates(), search, most).forEach(plan -> keep(base, plan));
                }
            }
        }
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
        Setup setup = plan.setup();
        double[] after = twin(base.keep()).predict(plan.candidate().assembly(), setup);
        Map<Quantity, Double> missing = new EnumMap<>(Quantity.class);
        for (Quantity quantity : request.wished().keySet()) {
            double d = target.of(quantity).orElseThrow().deviation(after[quantity.ordinal()]);
            if (!(Math.abs(d) <= 1)) {
                missing.put(quantity, after[quantity.ordinal()] - request.wished().get(quantity));
            }
        }
        found.add(new Found(changed, plan, base, words.of(plan).steps().size(),
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
        if (base.lever() != Lever.HEAD && angle.setting() != null && !plan.candidate().settingNow().equals(Optional.of(angle.setting()))) {
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

    /** Each step changes one thing, so the fewest things changed are the fewest steps. */
    private static final Comparator<Found> ORDER = Comparator.comparingInt(Found::steps)
        .thenComparingDouble(Found::miss).thenComparingDouble(f -> f.plan().cost())
        .thenComparing(f -> f.plan().candidate().key());

    /** Ways that reach what is asked, less those that change more than another and are hardly nearer for it. */
    private List<Found> worthShowing() {
        List<Found> reaching = found.stream().filter(Found::reaches).sorted(ORDER).toList();
        List<Found> kept = new ArrayList<>();
        for (Found next : reaching) {
            boolean needless = reaching.stream().anyMatch(next::isNeedlessBeside);
            long alike = kept.stream().filter(f -> f.changed().equals(next.changed())).count();
            if (!needless && alike < alike(next.changed())) {
                kept.add(next);
            }
        }
        return kept;
    }

    /** One plan is enough where the club's own parts stay; of heads, shafts and grips a second is worth seeing. */
    private static int alike(Set<Lever> changed) {
        return changed.contains(Lever.HEAD) || changed.contains(Lever.SHAFT) || changed.contains(Lever.GRIP) ? 2 : 1;
    }

    private Way way(Found one, int rank) {
        Explanation explanation = new Explanation(target, asked(), twin(one.base().keep()), request.shop(), one.base().keep());
        return new Way(one.changed(), explanation.alone(one.plan()).withRank(rank), one.plan().candidate().grip(),
            one.plan().start().tapeLayers());
    }

    /** What was asked alone; everything where only a grip was. */
    private Target asked() {
        EnumMap<Quantity, Wanted> wanted = new EnumMap<>(Quantity.class);
        wanted.putAll(target.wanted());
        if (!request.wished().isEmpty()) {
            wanted.keySet().retainAll(request.wished().keySet());
        }
        return new Target(target.reading(), wanted);
    }

    private List<ChangeAnswer.Shortfall> shortfalls(List<Found> reaching, List<Grip> wishedGrips) {
        Set<Lever> useful = EnumSet.noneOf(Lever.class);
        reaching.forEach(f -> useful.addAll(f.changed()));
        List<ChangeAnswer.Shortfall> list = new ArrayList<>();
        WhyNot whyNot = new WhyNot(parts, request, now, wishedGrips);
        Set<Lever> levers = new TreeSet<>(List.of(Lever.values()));
        levers.removeAll(useful);
        for (Lever lever : levers) {
            Optional<Found> nearest = found.stream().filter(f -> isAlone(f, lever))
                .min(Comparator.comparingDouble(this::askedMiss).thenComparing(ORDER));
            boolean asked = lever == Lever.GRIP && request.asksForAGrip();
            boolean comesNearer = nearest.isPresent() && askedMiss(nearest.get()) < askedMissNow() * WORTH_SAYING;
            if (asked || lever.isUsedFor(request.wished().keySet()) || comesNearer) {
                boolean shown = comesNearer || asked;
                list.add(new ChangeAnswer.Shortfall(lever, nearest.filter(f -> shown).map(f -> way(f, 0)),
                    nearest.map(Found::missing).orElse(Map.of()), whyNot.text(lever)));
            }
        }
        return List.copyOf(list);
    }

    /** Whether a plan changes this and nothing else, a wished grip aside. */
    private boolean isAlone(Found one, Lever lever) {
        Set<Lever> alone = EnumSet.of(lever);
        if (request.asksForAGrip()) {
            alone.add(Lever.GRIP);
        }
        return one.changed().equals(alone);
    }

    private double askedMiss(Found one) {
        return one.missing().entrySet().stream()
            .mapToDouble(e -> square(e.getValue() / target.of(e.getKey()).orElseThrow().tolerance())).sum();
    }

    private double askedMissNow() {
        return request.wished().keySet().stream()
            .mapToDouble(q -> square(target.of(q).orElseThrow().deviation(now.get(q)))).sum();
    }

    private static double square(double value) {
        return value * value;
    }
}
