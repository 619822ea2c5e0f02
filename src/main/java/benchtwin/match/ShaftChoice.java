package benchtwin.match;

import benchtwin.club.Quantity;
import benchtwin.club.Shaft;
import benchtwin.club.Step;
import benchtwin.club.Target;
import benchtwin.club.TipKind;
import benchtwin.club.Wanted;
import benchtwin.mechanics.MechanicsDefaults;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.stream.Stream;

/** Chooses shafts from the drawer for a build: the nearest, or a ladder to test. */
public final class ShaftChoice {

    private static final int BELOW_SHOWN = 3;
    private static final Comparator<FoundPlan> ORDER =
        Comparator.comparingDouble(FoundPlan::cost).thenComparing(plan -> plan.candidate().key());

    private final ShaftRequest request;
    private final ShaftBuild build;
    private final Screening screening;
    private final Map<String, Integer> ruledOut = new TreeMap<>();
    /** Every way to join every shaft that fits, shafts together. */
    private final List<List<TrimSearch>> free = new ArrayList<>();
    private final List<List<TrimSearch>> promised = new ArrayList<>();

    private ShaftChoice(ShaftRequest request) throws ShaftBuild.NoTarget {
        this.request = request;
        this.build = new ShaftBuild(request);
        this.screening = new Screening(request.club().around(request.head()).withTarget(build.target()),
            request.inventory(), !request.sameModel());
    }

    /** No target could be made of what was asked; the message says what is missing. */
    public static final class NothingToChooseFor extends Exception {
        private static final long serialVersionUID = 1;

        private final Quantity missing;

        NothingToChooseFor(Quantity missing, String message) {
            super(message);
            this.missing = missing;
        }

        /**
         * What is not known of the build.
         * @return length or frequency
         */
        public Quantity missing() {
            return missing;
        }
    }

    /**
     * Chooses.
     * @param request what is asked
     * @return the answer
     * @throws NothingToChooseFor when length or frequency of the build are not known
     */
    public static ShaftAnswer run(ShaftRequest request) throws NothingToChooseFor {
        try {
            return new ShaftChoice(request).run();
        } catch (ShaftBuild.NoTarget missing) {
            throw new NothingToChooseFor(missing.missing(), missing.getMessage());
        }
    }

    private ShaftAnswer run() {
        for (Shaft shaft : request.inventory().shafts()) {
            screen(shaft);
        }
        List<Double> empty = new ArrayList<>();
        List<ShaftPick> picks = request.picking().pick() == Pick.NEAREST ? nearest() : ladder(empty);
        List<String> notes = new ArrayList<>(request.club().notes());
        notes.addAll(build.notes());
        notes.addAll(takenElsewhere());
        double now = request.head().ports().stream().mapToDouble(p -> p.massG()).sum() + build.start().tapeG()
            + build.start().meltG();
        return new ShaftAnswer(request, build.target(), build.reference(), build.headMass().addedG() - now,
            new PlanWords(request.shop()).masses(build.headMass()).stream().map(Step::words).toList(), picks, below(),
            ruledOut, free.size(), List.copyOf(empty), List.copyOf(notes));
    }

    /** The head was named, so it is taken; but not without a word when somebody else has it. */
    private List<String> takenElsewhere() {
        String tag = request.head().tag();
        List<String> taken = new ArrayList<>();
        request.inventory().clubs().stream().filter(c -> !c.tag().equals(request.club().name()))
            .filter(c -> c.newest().head().equals(Optional.of(tag)))
            .forEach(c -> taken.add("head %s is built into club %s".formatted(tag, c.tag())));
        request.head().keeping().reservedFor().filter(who -> screening.isPromised(Optional.of(who)))
            .ifPresent(who -> taken.add("head %s is promised to %s".formatted(tag, who)));
        return taken;
    }

    private void screen(Shaft shaft) {
        Optional<String> reason = request.material().filter(m -> m != shaft.material()).isPresent()
            ? Optional.of(RuleOut.OTHER_MATERIAL.word()) : screening.whyNot(shaft);
        if (reason.isPresent()) {
            ruledOut.merge(reason.get(), 1, Integer::sum);
            return;
        }
        List<TrimSearch> ways = new ArrayList<>();
        boolean fits = false;
        for (Screening.Way way : screening.waysWithTipFree(request.head(), shaft)) {
            fits = true;
            TrimSearch search = new TrimSearch(build, screening.withGrip(request.head(), shaft, way,
                Stream.concat(build.freeing().stream(), way.steps().stream()).toList()));
            if (search.isLongEnough()) {
                ways.add(search);
            }
        }
        if (ways.isEmpty()) {
            ruledOut.merge(fits ? RuleOut.TOO_SHORT.word() : screening.noWay(request.head()), 1, Integer::sum);
            return;
        }
        (screening.isPromised(shaft.keeping().reservedFor()) ? promised : free).add(ways);
    }

    /** A plan and the search it came from. */
    private record Planned(FoundPlan plan, TrimSearch search) {
    }

    private static Optional<Planned> best(List<TrimSearch> ways, CostTerms terms) {
        return ways.stream().map(way -> new Planned(way.best(terms), way))
            .min(Comparator.comparing(Planned::plan, ORDER));
    }

    private List<Planned> inOrder(List<List<TrimSearch>> shafts, Target target) {
        CostTerms terms = new CostTerms(target, build.twin().carried());
        List<Planned> all = new ArrayList<>(shafts.size());
        shafts.forEach(ways -> best(ways, terms).ifPresent(all::add));
        all.sort(Comparator.comparing(Planned::plan, ORDER));
        return all;
    }

    private List<ShaftPick> nearest() {
        Map<String, Integer> ofModel = new HashMap<>();
        List<Planned> chosen = new ArrayList<>();
        for (Planned next : inOrder(free, build.target())) {
            if (chosen.size() == request.picking().top()) {
                break;
            }
            String model = next.plan().candidate().shaft().model();
            if (ofModel.merge(model, 1, Integer::sum) <= request.picking().perModel()) {
                chosen.add(next);
            }
        }
        List<Ranked> ranked = explanation(build.target()).ranked(chosen.stream().map(Planned::plan).toList());
        List<ShaftPick> picks = new ArrayList<>();
        for (int k = 0; k < chosen.size(); k++) {
            picks.add(pick(0, ranked.get(k), chosen.get(k)));
        }
        return List.copyOf(picks);
    }

    private List<ShaftPick> ladder(List<Double> empty) {
        List<Double> offsets = request.picking().offsetsCpm();
        List<List<Planned>> byRung = new ArrayList<>();
        List<List<Ladder.Choice>> choices = new ArrayList<>();
        for (double offset : offsets) {
            List<Planned> nearest = inOrder(free, rung(offset));
            nearest = nearest.subList(0, Math.min(nearest.size(), offsets.size()));
            byRung.add(nearest);
            choices.add(nearest.stream().map(p -> new Ladder.Choice(p.plan().candidate().shaft().tag(), p.plan().cost()))
                .toList());
        }
        List<Optional<String>> assigned = Ladder.assign(choices);
        List<ShaftPick> picks = new ArrayList<>();
        for (int k = 0; k < offsets.size(); k++) {
            double offset = offsets.get(k);
            if (assigned.get(k).isEmpty()) {
                empty.add(offset);
                continue;
            }
            String tag = assigned.get(k).get();
            Planned planned = byRung.get(k).stream().filter(p -> p.plan().candidate().shaft().tag().equals(tag))
                .findFirst().orElseThrow();
            picks.add(pick(offset, explanation(rung(offset)).alone(planned.plan()).withRank(picks.size() + 1), planned));
        }
        return List.copyOf(picks);
    }

    /** The target with its frequency moved to a rung. */
    private Target rung(double offsetCpm) {
        Map<Quantity, Wanted> wanted = new EnumMap<>(Quantity.class);
        wanted.putAll(build.target().wanted());
        wanted.computeIfPresent(Quantity.FREQUENCY,
            (q, w) -> new Wanted(w.value() + offsetCpm, w.tolerance(), w.weight()));
        return new Target(build.target().reading(), wanted);
    }

    private Explanation explanation(Target target) {
        return new Explanation(target, build.twin(), request.shop(), Keep.HEAD);
    }

    private ShaftPick pick(double offset, Ranked option, Planned planned) {
        Cut cut = planned.plan().cut();
        return new ShaftPick(offset, option, cut.tipTrimMm(), cut.buttCutMm(), planned.search().untrimmedCpm(),
            rawCpm(planned.plan().candidate().shaft()), marks(planned.plan().candidate()));
    }

    /** Readings come in many conditions; in one they compare. */
    private OptionalDouble rawCpm(Shaft shaft) {
        return shaft.lengthMm() > 2 * MechanicsDefaults.CLAMP_MM ? request.club().assemblies().stiffness(shaft)
            .carriedCpm(MechanicsDefaults.CLAMP_MM, MechanicsDefaults.RAW_TIP_MASS_G) : OptionalDouble.empty();
    }

    private List<String> marks(Candidate candidate) {
        Shaft shaft = candidate.shaft();
        List<String> marks = new ArrayList<>();
        Optional<String> number = request.head().number();
        if (shaft.tipKind() == TipKind.TAPER && shaft.madeForNumber().isPresent() && number.isPresent()
            && !shaft.madeForNumber().equals(number)) {
            marks.add("a taper shaft made for number %s, here in a %s: a choice, not a fault"
                .formatted(shaft.madeForNumber().get(), number.get()));
        }
        if (shaft.torqueDeg().isEmpty() && build.target().of(Quantity.TORQUE).filter(w -> w.weight() > 0).isPresent()) {
            marks.add("its torque was never read: counted as one tolerance off");
        }
        if (request.assumed().contains(shaft.tag())) {
            marks.add("its reading's clamp was never recorded and is assumed");
        }
        marks.addAll(candidate.assembly().notes());
        return List.copyOf(marks);
    }

    private List<MatchAnswer.Below> below() {
        Explanation explanation = explanation(build.target());
        return inOrder(promised, build.target()).stream().limit(BELOW_SHOWN).map(planned -> new MatchAnswer.Below(
            explanation.alone(planned.plan()),
            "promised to " + planned.plan().candidate().shaft().keeping().reservedFor().orElse("another job"))).toList();
    }
}
