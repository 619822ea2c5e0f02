package benchtwin.bench;

import benchtwin.club.Quantity;
import benchtwin.club.QuantityText;
import benchtwin.match.FirstTimeRight;
import benchtwin.match.Keep;
import benchtwin.match.MatchAnswer;
import benchtwin.match.Ranked;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** How an option is spoken of, on a terminal and on a page alike. */
public final class OptionWords {

    private static final double MINUTES_AN_HOUR = 60;
    private static final String ALL = "all";
    private static final String NO_PLACE = "place not recorded";

    private OptionWords() {
    }

    /**
     * Minutes, in hours where that reads better.
     * @param minutes 0 or more
     * @return {@code 23 min}, {@code 24 h 18 min}, with spaces that do not break
     */
    public static String time(double minutes) {
        long whole = Math.round(minutes);
        if (whole < 2 * MINUTES_AN_HOUR) {
            return whole + "\u00a0min";
        }
        long rest = whole % (long) MINUTES_AN_HOUR;
        return whole / (long) MINUTES_AN_HOUR + "\u00a0h" + (rest == 0 ? "" : "\u00a0" + rest + "\u00a0min");
    }

    /**
     * A chance.
     * @param chance 0 to 1
     * @return with two decimals
     */
    public static String chance(double chance) {
        return String.format(Locale.ROOT, "%.2f", chance);
    }

    /**
     * What an option is called: the part that is looked for.
     * @param keep   what the twin keeps
     * @param option the option
     * @return a tag, or two
     */
    public static String name(Keep keep, Ranked option) {
        return switch (keep) {
            case SHAFT -> option.head().tag();
            case HEAD, BOTH -> option.shaft().tag();
            case NONE -> option.head().tag() + " with " + option.shaft().tag();
        };
    }

    /**
     * Where the part that is looked for lies.
     * @param keep   what the twin keeps
     * @param option the option
     * @return a place, or two
     */
    public static String place(Keep keep, Ranked option) {
        String head = option.head().keeping().place().orElse(NO_PLACE);
        String shaft = option.shaft().keeping().place().orElse(NO_PLACE);
        return switch (keep) {
            case SHAFT -> head;
            case HEAD, BOTH -> shaft;
            case NONE -> head + " and " + shaft;
        };
    }

    /**
     * What lies beyond its tolerance.
     * @param option the option
     * @return each with its difference; empty when nothing does
     */
    public static Optional<String> outOfTolerance(Ranked option) {
        return option.outOfTolerance().isEmpty() ? Optional.empty() : Optional.of(option.outOfTolerance().stream()
            .map(q -> QuantityText.name(q) + " " + QuantityText.difference(q, option.difference().get(q)))
            .collect(Collectors.joining(", ")));
    }

    /**
     * The chance of measuring inside tolerance the first time.
     * @param chance the chance
     * @return sentences
     */
    public static String firstTimeRight(FirstTimeRight chance) {
        String groups = chance.byGroup().entrySet().stream()
            .map(e -> e.getKey() + " " + chance(e.getValue())).collect(Collectors.joining(", "));
        return "Right the first time: %s, swing weight aside, which a last touch of tape sets (%s). These gauges allow %s at best.%s".formatted(
            chance(chance.all()), groups, chance(chance.best().get(ALL)),
            chance.measureNext().map(next -> " To be surer, %s: %s.".formatted(next.what(), chance(next.raisesTo()))).orElse(""));
    }

    /**
     * Which defaults it rests on.
     * @param option the option
     * @return a sentence; empty when it rests on none that is felt
     */
    public static Optional<String> defaults(Ranked option) {
        return option.defaultsUsed().isEmpty() ? Optional.empty()
            : Optional.of("Rests on a default: " + String.join("; ", option.defaultsUsed()) + ". Measure it to be surer.");
    }

    /**
     * What it ties with.
     * @param option the option
     * @return a sentence; empty when it ties with nothing
     */
    public static Optional<String> tie(Ranked option) {
        return option.tiedWith().isEmpty() ? Optional.empty() : Optional.of("A tie with " + String.join(", ", option.tiedWith())
            + ": what was measured cannot tell them apart.");
    }

    /**
     * How many were considered, and how many were ruled out and why.
     * @param answer the answer
     * @return sentences
     */
    public static String considered(MatchAnswer answer) {
        String what = switch (answer.keep()) {
            case SHAFT -> "heads";
            case HEAD, BOTH -> "shafts";
            case NONE -> "pairs";
        };
        return "Considered %d %s%s.%s%s".formatted(answer.considered(), what,
            answer.proven() ? "; proven: no plan a person can set costs less" : "; not proven", ruledOut(answer.ruledOut()),
            answer.pastLimit() == 0 ? "" : " %d would need a bend past the limit.".formatted(answer.pastLimit()));
    }

    /**
     * How many were ruled out and why.
     * @param byReason how many, by reason
     * @return a sentence with a blank before it; empty when none was
     */
    public static String ruledOut(Map<String, Integer> byReason) {
        return byReason.isEmpty() ? "" : " Ruled out: " + byReason.entrySet().stream().map(e -> e.getValue() + " " + e.getKey())
            .collect(Collectors.joining(", ")) + ".";
    }

    /**
     * What is wanted, quantity by quantity.
     * @param answer the answer
     * @return a sentence
     */
    public static String wanted(MatchAnswer answer) {
        return "Wanted: " + answer.favourite().target().wanted().entrySet().stream().filter(e -> e.getValue().weight() > 0)
            .map(e -> QuantityText.name(e.getKey()) + " " + QuantityText.value(e.getKey(), e.getValue().value()))
            .collect(Collectors.joining(", ")) + " (angles read " + answer.favourite().target().reading().word() + ").";
    }

    /**
     * What the nearest misses, where nothing is inside tolerance.
     * @param answer an answer with results
     * @return a sentence
     */
    public static String nothingInside(MatchAnswer answer) {
        Ranked first = answer.results().get(0);
        return "Nothing in stock is inside tolerance; the nearest misses " + first.outOfTolerance().stream()
            .map(q -> QuantityText.name(q) + " by " + beyond(answer, first, q)).collect(Collectors.joining(" and ")) + ".";
    }

    /** How far past its tolerance a quantity is. */
    private static String beyond(MatchAnswer answer, Ranked option, Quantity quantity) {
        double off = option.difference().get(quantity);
        double tolerance = answer.favourite().target().of(quantity).orElseThrow().tolerance();
        return QuantityText.difference(quantity, Math.abs(off) - tolerance).replace("+", "");
    }
}
