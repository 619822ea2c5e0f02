package benchtwin.bench;

import benchtwin.club.Quantity;
import benchtwin.club.QuantityText;
import benchtwin.club.Step;
import benchtwin.club.StepKind;
import benchtwin.club.Target;
import benchtwin.club.Wanted;
import benchtwin.match.FirstTimeRight;
import benchtwin.match.Ranked;
import benchtwin.match.Workings;
import benchtwin.measure.Reading;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** How the numbers of an option came about: what it will measure, how far off that is, the chance, the time. */
public final class HowOption {

    /** What an address calls the distance from the target and the cost. */
    public static final String SCORE = "score";
    /** What an address calls the chance of first time right. */
    public static final String CHANCE = "chance";
    /** What an address calls the time until it is ready. */
    public static final String READY = "ready";
    /** Smaller shares of a variance are folded away. */
    private static final double LITTLE = 0.005;

    private final Ranked option;
    private final Target target;
    private final String name;

    private HowOption(Ranked option, Target target, String name) {
        this.option = option;
        this.target = target;
        this.name = name;
    }

    /**
     * How one of its numbers came about.
     * @param option the option
     * @param target what it is held against
     * @param name   what it is called
     * @param club   what the club is called that it is made of
     * @param of     a quantity's word, {@link #SCORE}, {@link #CHANCE} or {@link #READY}
     * @return the account
     * @throws BadInput when it has no such number
     */
    public static Account of(Ranked option, Target target, String name, String club, String of) throws BadInput {
        return of(option, target, name, club, of, Optional.empty());
    }

    /** The same, with where what is wanted comes from. */
    static Account of(Ranked option, Target target, String name, String club, String of, Optional<String> wantedFrom) throws BadInput {
        HowOption how = new HowOption(option, target, name);
        return switch (of) {
            case SCORE -> how.score();
            case CHANCE -> how.chance();
            case READY -> how.ready();
            default -> how.predicted(club, quantity(of), wantedFrom);
        };
    }

    /**
     * A quantity as an address names it.
     * @param word its word
     * @return the quantity
     * @throws BadInput when it is none
     */
    static Quantity quantity(String word) throws BadInput {
        return Arrays.stream(Quantity.values()).filter(one -> one.word().equals(word)).findFirst()
            .orElseThrow(() -> new BadInput("\"%s\" is not a quantity".formatted(word)));
    }

    private Account predicted(String club, Quantity quantity, Optional<String> wantedFrom) throws BadInput {
        HowComputed how = HowComputed.of(option, club, quantity);
        Account.Teller tell = Account.tell("How the %s of %s was computed".formatted(QuantityText.name(quantity), name),
            QuantityText.value(quantity, how.value()), "± " + QuantityText.size(quantity, how.u()));
        if (how.read()) {
            tell.say("Read on the shaft, and not computed%s.".formatted(how.predicted().isPresent()
                ? "; what was predicted is " + QuantityText.value(quantity, how.predicted().getAsDouble()) : ""));
        }
        tell.say("± is one standard uncertainty, before the reading that judges the finished club%s.".formatted(how.judgingU() > 0
            ? ", which is good to " + QuantityText.size(quantity, how.judgingU()) : ""));
        target.of(quantity).ifPresent(wanted -> tell.say(wanted(quantity, how.value(), wanted, wantedFrom)));
        tell.law(how.formula(), how.conditions().toArray(String[]::new));
        if (how.restsOnDefault()) {
            tell.warn("A default stands in for a measurement below.");
        }
        inputs(tell, how);
        tell.points("What is done to the club, and what each does to this number:",
            how.doings().stream().map(doing -> doing.what() + ": " + HowText.moves(quantity, doing.moves())).toList());
        how.carried().ifPresent(carried -> tell.say("Carried over from the old club: it measured %s, the model says %s, so %s is added.".formatted(
            HowText.number(carried.measured().value(), quantity.unit()), HowText.number(carried.modelled(), quantity.unit()),
            HowText.moves(quantity, carried.amount()))));
        how.old().ifPresent(old -> tell.say(measured(quantity, old)));
        return tell.law(Formula.UNCERTAINTY).done();
    }

    static String wanted(Quantity quantity, double value, Wanted wanted, Optional<String> from) {
        return "Wanted: %s%s; off by %s, where the tolerance is %s.".formatted(QuantityText.value(quantity, wanted.value()),
            from.map(words -> " (" + words + ")").orElse(""), QuantityText.difference(quantity, value - wanted.value()),
            QuantityText.size(quantity, wanted.tolerance()));
    }

    private static String measured(Quantity quantity, Reading old) {
        String taken = HowText.taken(old);
        return "The old club measured %s ± %s%s.".formatted(QuantityText.value(quantity, old.value()),
            QuantityText.size(quantity, old.standardUncertainty()), taken.isEmpty() ? "" : ", read " + taken);
    }

    private static void inputs(Account.Teller tell, HowComputed how) {
        List<String> columns = List.of("What", "Value#", "±#", "From", "Its ± moves it by#", "Share of the ±#");
        List<Workings.Influence> little = how.influences().stream().filter(one -> one.share() < LITTLE && one.u() > 0).toList();
        if (how.influences().isEmpty()) {
            tell.say("Nothing that is known to be uncertain goes into it.");
        }
        tell.table("What went in", columns, how.influences().stream().filter(one -> !little.contains(one)).map(one -> input(how, one)).toList());
        tell.table("%d more that hardly move it, or cancel against the old club".formatted(little.size()), columns,
            little.stream().map(one -> input(how, one)).toList(), true);
    }

    private static List<String> input(HowComputed how, Workings.Influence one) {
        return List.of(one.what(), one.value().isPresent() ? HowText.number(one.value().getAsDouble(), one.unit()) : "",
            one.u() == 0 ? "exact" : HowText.number(one.u(), one.unit()), one.origin().word(),
            one.u() == 0 ? "" : HowText.moves(how.quantity(), one.moves()), HowText.share(one.share()));
    }

    private Account score() {
        List<List<String>> rows = new ArrayList<>();
        double weights = 0;
        for (Map.Entry<Quantity, Wanted> one : target.wanted().entrySet()) {
            weights += one.getValue().weight();
        }
        for (Map.Entry<Quantity, Double> term : option.terms().entrySet()) {
            Quantity quantity = term.getKey();
            Wanted wanted = target.of(quantity).orElseThrow();
            Double off = option.difference().get(quantity);
            rows.add(List.of(QuantityText.name(quantity), off == null ? "not measured: counts as one tolerance" : QuantityText.difference(quantity, off),
                QuantityText.size(quantity, wanted.tolerance()), HowText.fixed(wanted.weight(), 2), HowText.fixed(term.getValue(), 3)));
        }
        rows.add(List.of("work", "", "", "", HowText.fixed(option.effort(), 3)));
        return Account.tell("How %s was ranked".formatted(name), "miss %s tol, cost %s".formatted(HowText.fixed(option.miss(), 2), HowText.fixed(option.cost(), 3)), "")
            .table("What adds up to the cost", List.of("Quantity", "Off by#", "Tolerance#", "Weight#", "Share of miss²#"), rows)
            .say("A share is weight × (off / tolerance)² over the sum of the weights, %s. Miss² is the sum of the shares, %s; work is added to it."
                .formatted(HowText.fixed(weights, 2), HowText.fixed(option.miss() * option.miss(), 3)))
            .law(Formula.MISS).done();
    }

    private Account chance() {
        FirstTimeRight chance = option.firstTimeRight();
        List<List<String>> alone = new ArrayList<>();
        for (Map.Entry<Quantity, Wanted> one : target.wanted().entrySet()) {
            Quantity quantity = one.getKey();
            OptionalDouble inside = option.workings().chance(quantity, one.getValue());
            if (inside.isPresent() && option.workings().judgingU(quantity) > 0 && one.getValue().weight() > 0) {
                double off = option.workings().predicted(quantity).getAsDouble() - one.getValue().value();
                alone.add(List.of(QuantityText.name(quantity), QuantityText.difference(quantity, off),
                    QuantityText.size(quantity, one.getValue().tolerance()), HowText.fine(quantity, option.uncertainty().getOrDefault(quantity, 0.0)),
                    HowText.fine(quantity, option.workings().judgingU(quantity)), HowText.fine(quantity, option.workings().readU(quantity)),
                    OptionWords.chance(inside.getAsDouble())));
            }
        }
        List<List<String>> groups = new ArrayList<>();
        chance.byGroup().forEach((group, value) -> groups.add(List.of(group, OptionWords.chance(value),
            OptionWords.chance(chance.best().getOrDefault(group, Double.NaN)))));
        return Account.tell("The chance that %s is right the first time".formatted(name), OptionWords.chance(chance.all()), "")
            .say(OptionWords.firstTimeRight(chance))
            .table("Each quantity by itself", List.of("Quantity", "Off by#", "Tolerance#", "± predicted#", "± of the reading#", "Both#", "Inside#"), alone)
            .table("Group by group", List.of("Group", "Inside#", "Best with these gauges#"), groups)
            .law(Formula.CHANCE, "swing weight stays out of the chance of everything, since a last touch of tape sets it").done();
    }

    private Account ready() {
        List<List<String>> rows = new ArrayList<>();
        for (Step step : option.plan().steps()) {
            rows.add(List.of(step.words(), OptionWords.time(step.minutes()), waits(step.kind()), Account.DEFAULT));
        }
        double waiting = option.plan().readyMinutes() - option.plan().minutes();
        return Account.tell("When %s is ready".formatted(name), OptionWords.time(option.plan().readyMinutes()), "")
            .say(OptionWords.time(option.plan().minutes()) + " at the bench" + (waiting > 0
                ? ", then the longest wait, %s.".formatted(OptionWords.time(waiting)) : "; nothing to wait for."))
            .table("Step by step", List.of("Step", "At the bench#", "Then", "From"), rows)
            .law(Formula.READY).done();
    }

    static String waits(StepKind kind) {
        return switch (kind.waitFor()) {
            case CURE -> "cures";
            case DRY -> "dries";
            case NONE -> "";
        };
    }
}
