package benchtwin.bench;

import benchtwin.club.Line;
import benchtwin.club.LinePer;
import benchtwin.club.Quantity;
import benchtwin.club.QuantityText;
import benchtwin.club.SetTargets;
import benchtwin.club.Target;
import benchtwin.club.Wanted;
import benchtwin.club.WantedClub;
import benchtwin.match.Ranked;
import benchtwin.sets.Alikeness;
import benchtwin.sets.ClubOfSet;
import benchtwin.sets.CostLine;
import benchtwin.sets.PlanProgress;
import benchtwin.sets.PlanScore;
import benchtwin.sets.Unbuilt;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/** How the numbers of a plan of sets came about: a club's, a group's, the cost of all of it, and what is proven of that. */
public final class HowSet {

    /** What an address calls the cost of all of it. */
    public static final String COST = "cost";
    /** What an address calls how far it may be from the best. */
    public static final String GAP = "gap";

    /** What an address calls what ordered parts would bring. */
    public static final String ORDER = "order";
    /** What an address calls what locked parts cost. */
    public static final String PINS = "pins";

    private HowSet() {
    }

    /**
     * A number of one club; of one that is left out, a number of what would stand in for it.
     * @param answer the plan
     * @param name   the club, as {@link SetChoices#name} calls it
     * @param of     a quantity's word, or what {@link HowOption} calls it
     * @return the account
     * @throws BadInput when the plan has no such number
     */
    public static Account ofClub(SetService.Answer answer, String name, String of) throws BadInput {
        ClubOfSet club = SetChoices.clubs(answer).stream().filter(one -> SetChoices.name(one).equals(name)).findFirst()
            .orElseThrow(() -> new BadInput("no club called \"%s\" is in this plan".formatted(name)));
        Ranked build = club.build().or(() -> club.unbuilt().flatMap(Unbuilt::substitute)).orElseThrow(() -> new BadInput(
            "%s is not built, and nothing would stand in for it".formatted(name)));
        SetTargets targets = answer.request().targets();
        Optional<String> from = Optional.empty();
        for (Line line : targets.linesOf(club.wanted())) {
            if (line.quantity().word().equals(of)) {
                from = whence(targets, line, club.wanted());
            }
        }
        String called = "%s of %s".formatted(club.wanted().club(), club.wanted().player());
        return HowOption.of(build, club.target().orElseThrow(), called, called, of, from);
    }

    /** What a line says of a club, unless the club's own row names the value. */
    private static Optional<String> whence(SetTargets targets, Line line, WantedClub club) {
        boolean own = club.target().flatMap(target -> target.of(line.quantity())).isPresent();
        OptionalDouble value = targets.valueAt(line, club);
        return own || value.isEmpty() ? Optional.empty() : Optional.of(line.isConstant()
            ? "line %s, the same at every club".formatted(line.name())
            : "line %s: %s at %s, %s for %s".formatted(line.name(), QuantityText.value(line.quantity(), line.anchorValue()), line.anchorClub(),
                QuantityText.difference(line.quantity(), line.slope()), line.per() == LinePer.INCH ? "each inch shorter" : "each club after it"));
    }

    /**
     * What all of it costs.
     * @param answer the plan
     * @param before how good the plan was that this one came after, if there was one
     * @return the account
     */
    public static Account cost(SetService.Answer answer, Optional<PlanScore> before) {
        PlanScore score = answer.plan().score();
        List<CostLine> lines = answer.plan().why();
        double sum = lines.stream().mapToDouble(CostLine::cost).sum();
        Account.Teller tell = Account.tell("How the cost of the plan comes about", HowText.fixed(score.cost(), 2) + " squared tolerances", "");
        before.ifPresent(one -> tell.say("The plan before cost %s, less %s: against that, %s − %s.".formatted(HowText.fixed(one.cost(), 3),
            HowText.fixed(one.jointGain(), 3), HowText.fixed(score.cost() - score.jointGain(), 3), HowText.fixed(one.cost() - one.jointGain(), 3))));
        return tell
            .say("The parts as chosen cost %s. Then the clubs of each group were planned once more, jointly, which took off %s: what is left is the sum below."
                .formatted(HowText.fixed(score.cost(), 3), HowText.fixed(score.jointGain(), 3)))
            .table("What it adds up from: %s".formatted(HowText.fixed(sum, 3)), List.of("Player and group", "Rule", "Squared tolerances#"),
                lines.stream().map(line -> List.of(line.player() + ", " + line.group(), line.rule(), HowText.fixed(line.cost(), 3))).toList())
            .law(Formula.SET_COST, prices(answer.request().alikeness())).done();
    }

    /**
     * What ordered parts would bring.
     * @param answer the plan
     * @return the account
     */
    public static Account order(SetService.Answer answer) {
        return Account.tell("What is worth ordering, and why", "%d parts".formatted(answer.plan().order().size()), "")
            .table("Part by part", List.of("Part", "For", "Takes off about#"), answer.plan().order().stream().map(line -> List.of(line.part(),
                line.forWhom(), Double.isInfinite(line.gain()) ? "builds it" : HowText.fixed(line.gain(), 3))).toList())
            .law(Formula.PRICE).done();
    }

    /**
     * What locked parts cost.
     * @param answer the plan
     * @return the account
     * @throws BadInput when no part was locked
     */
    public static Account pins(SetService.Answer answer) throws BadInput {
        OptionalDouble cost = answer.plan().pinCost();
        if (cost.isEmpty()) {
            throw new BadInput("no part of this plan was locked");
        }
        double all = answer.plan().score().cost();
        Account.Teller tell = Account.tell("What the locked parts cost", Double.isInfinite(cost.getAsDouble()) ? "a club"
            : HowText.fixed(cost.getAsDouble(), 3) + " squared tolerances", "");
        if (!Double.isInfinite(cost.getAsDouble())) {
            tell.say("With them the plan costs %s; without them one was found for %s.".formatted(HowText.fixed(all, 3),
                HowText.fixed(all - cost.getAsDouble(), 3)));
        }
        return tell.table("Locked", List.of("Club", "Head", "Shaft"), answer.request().pins().stream().map(pin -> List.of(pin.player() + ", "
            + pin.club(), pin.head().orElse(""), pin.shaft().orElse(""))).toList()).law(Formula.DECIDED).done();
    }

    private static String prices(Alikeness prices) {
        return String.format(Locale.ROOT, "%.2f for frequency, %.2f for swing weight or inertia, %.2f for the raw shaft's mass, %.2f a further model",
            prices.frequency(), prices.swing(), prices.shaftMass(), prices.model());
    }

    /**
     * What is proven of a plan.
     * @param answer the plan
     * @param steps  how it got better
     * @return the account
     */
    public static Account gap(SetService.Answer answer, List<PlanProgress> steps) {
        PlanScore score = answer.plan().score();
        Account.Teller tell = Account.tell("What is proven of the plan", proven(score.gapPercent()), "");
        if (score.bound().isPresent()) {
            String gap = score.gapPercent().getAsDouble() == 0 ? "" : ", so it can be bettered by at most (%1$s − %2$s) / %1$s = %3$s %%";
            tell.say(("The plan costs %1$s; nothing below %2$s is possible" + gap + ".").formatted(HowText.fixed(score.cost(), 4),
                HowText.fixed(score.bound().getAsDouble(), 4), SetWords.percent(score.gapPercent().getAsDouble())));
        } else {
            tell.say("The search ended before it was shown how little the plan can cost, or that no more clubs can be built.");
        }
        tell.say(("It holds of every plan that builds as much from the %,d pairs of head and shaft that were worked out, of %,d that fit. "
            + "The rest looked dearer by a rough cost. Planning groups jointly afterwards, worth %s, is outside of the proof.").formatted(
                score.options(), score.pairs(), HowText.fixed(score.jointGain(), 3)));
        return steps(tell, steps).law(Formula.SET_PROOF, "seed %d, %d rounds".formatted(score.seed(), score.rounds())).done();
    }

    /**
     * What is proven of a plan that is still searched for.
     * @param now where the search stands
     * @return the account
     */
    public static Account searching(SetRun.Now now) {
        Account.Teller tell = Account.tell("What cost and gap are, as the search stands",
            now.last().map(last -> proven(last.gapPercent())).orElse("no plan yet"), "");
        return steps(tell, now.steps()).law(Formula.SET_COST).law(Formula.SET_PROOF).done();
    }

    private static Account.Teller steps(Account.Teller tell, List<PlanProgress> steps) {
        List<List<String>> rows = new ArrayList<>();
        for (PlanProgress step : steps) {
            rows.add(List.of(HowText.fixed(step.seconds(), 1) + " s", Integer.toString(step.rounds()), Integer.toString(step.unbuilt()),
                HowText.fixed(step.cost(), 3), step.gapPercent().isEmpty() ? "not shown"
                    : HowText.fixed(step.cost() * (1 - step.gapPercent().getAsDouble() / 100), 3), proven(step.gapPercent())));
        }
        return tell.table("How plan and proof came on", List.of("After", "Round#", "Left out#", "Cost#", "No plan below#", "So"), rows, true);
    }

    private static String proven(OptionalDouble gap) {
        return gap.isEmpty() ? "not proven" : gap.getAsDouble() == 0 ? "proven: none of them costs less"
            : "at most %s %% from the best".formatted(SetWords.percent(gap.getAsDouble()));
    }

    /**
     * What the clubs of one group cost, rule by rule.
     * @param answer the plan
     * @param player whose
     * @param group  the group, or the club where it stands alone
     * @return the account
     * @throws BadInput when the plan has no such group
     */
    public static Account group(SetService.Answer answer, String player, String group) throws BadInput {
        List<ClubOfSet> clubs = SetChoices.clubs(answer).stream().filter(club -> club.build().isPresent() && club.wanted().player().equals(player)
            && club.wanted().group().orElse(club.wanted().club()).equals(group)).toList();
        if (clubs.isEmpty()) {
            throw new BadInput("this plan builds no club of \"%s\" for %s".formatted(group, player));
        }
        List<CostLine> lines = answer.plan().why().stream().filter(line -> line.player().equals(player) && line.group().equals(group)).toList();
        return Account.tell("What %s of %s cost".formatted(group, player), HowText.fixed(lines.stream().mapToDouble(CostLine::cost).sum(), 3)
                + " squared tolerances", "")
            .table("Rule by rule", List.of("Rule", "Squared tolerances#"), lines.stream().map(line -> List.of(line.rule(),
                HowText.fixed(line.cost(), 3))).toList())
            .table("Club by club", List.of("Club", "Miss²#", "Effort#", "Frequency off, tol#", "Swing off, tol#", "Raw shaft#", "Head model", "Shaft model"),
                clubs.stream().map(club -> row(club, club.build().orElseThrow())).toList())
            .say("Distance is the sum of miss², work the sum of effort. What is unlike is its price times the sum of squares about the mean of its column; "
                + "a raw shaft's tolerance is %s.".formatted(QuantityText.size(Quantity.SHAFT_MASS, Quantity.SHAFT_MASS.defaultTolerance())))
            .law(Formula.SET_COST, prices(answer.request().alikeness())).done();
    }

    private static List<String> row(ClubOfSet club, Ranked build) {
        Target target = club.target().orElseThrow();
        Quantity swing = target.of(Quantity.BUTT_INERTIA).filter(wanted -> wanted.weight() > 0).isPresent() ? Quantity.BUTT_INERTIA
            : Quantity.SWING_WEIGHT;
        return List.of(club.wanted().club(), HowText.fixed(build.miss() * build.miss(), 4), HowText.fixed(build.effort(), 4),
            off(target, build, Quantity.FREQUENCY), off(target, build, swing),
            build.shaft().massG().map(mass -> QuantityText.value(Quantity.SHAFT_MASS, mass.value())).orElse("not weighed"),
            build.head().model(), build.shaft().model());
    }

    private static String off(Target target, Ranked build, Quantity quantity) {
        Optional<Wanted> wanted = target.of(quantity);
        return wanted.isEmpty() || !build.predicted().containsKey(quantity) ? ""
            : HowText.fixed(wanted.get().deviation(build.predicted().get(quantity)), 3);
    }
}
