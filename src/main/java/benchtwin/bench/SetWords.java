package benchtwin.bench;

import benchtwin.sets.OrderLine;
import benchtwin.sets.PlanScore;
import benchtwin.sets.PlayerSet;
import benchtwin.sets.SetAnswer;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;

/** What is said of a plan of sets, alike on the command line and on the pages. */
public final class SetWords {

    /** A smaller gain is written as none. */
    private static final double LEAST_GAIN = 0.005;
    private static final int LISTED = 10;
    private static final int LISTED_TO_BUILD = 6;

    private SetWords() {
    }

    /**
     * What a workshop lead asks first.
     * @param plan the plan
     * @return one sentence
     */
    public static String opening(SetAnswer plan) {
        int built = plan.score().clubs() - plan.score().unbuilt();
        int out = plan.players().stream().mapToInt(PlayerSet::outOfTolerance).sum();
        return "%s: %d of %d clubs built from stock, %s.".formatted(plan.players().size() == 1
            ? "A set for " + plan.players().get(0).player() : "Sets for %d players".formatted(plan.players().size()), built,
            plan.score().clubs(), out == 0 ? "all inside tolerance" : out + " of them out of tolerance");
    }

    /**
     * Clubs that are left out.
     * @param plan the plan
     * @return by player; empty when all are built
     */
    public static Optional<String> notBuilt(SetAnswer plan) {
        String left = plan.players().stream().filter(set -> set.unbuilt() > 0).map(set -> set.player() + " "
            + set.clubs().stream().filter(club -> club.build().isEmpty()).map(club -> club.wanted().club())
                .collect(Collectors.joining(", "))).collect(Collectors.joining("; "));
        return Optional.of(left).filter(text -> !text.isEmpty());
    }

    /**
     * How good it is, and how good it could be.
     * @param score of a plan
     * @return one sentence
     */
    public static String score(PlanScore score) {
        return "%d of %d clubs built; cost %s squared tolerances; %s; %s, seed %d%s.".formatted(score.clubs() - score.unbuilt(),
            score.clubs(), fixed(score.cost(), 2), proof(score), score.rounds() == 1 ? "1 round" : score.rounds() + " rounds",
            score.seed(), score.jointGain() >= LEAST_GAIN ? "; planning groups jointly took off another " + fixed(score.jointGain(), 2) : "");
    }

    private static String proof(PlanScore score) {
        OptionalDouble gap = score.gapPercent();
        String among = "of parts among the %,d pairs worked out".formatted(score.options());
        if (gap.isEmpty()) {
            return "how near that is to the best choice was not shown";
        }
        return gap.getAsDouble() == 0 ? "proven: no choice %s costs less".formatted(among)
            : "proven within %s %% of the best choice %s".formatted(percent(gap.getAsDouble()), among);
    }

    /**
     * A proven gap, rounded up: a proof may say less than it shows, never more.
     * @param gap per cent
     * @return without the sign
     */
    public static String percent(double gap) {
        double scale = gap < 1 ? 100 : 10;
        return fixed(Math.ceil(gap * scale) / scale, gap < 1 ? 2 : 1);
    }

    /**
     * Parts worth ordering: those that build a club first, but not only those, as a contested part is worth a look too.
     * @param plan the plan
     * @return a line each, most useful first
     */
    public static List<String> order(SetAnswer plan) {
        List<OrderLine> lines = new ArrayList<>(plan.order().stream().filter(line -> Double.isInfinite(line.gain()))
            .limit(LISTED_TO_BUILD).toList());
        plan.order().stream().filter(line -> !Double.isInfinite(line.gain())).limit(LISTED - lines.size()).forEach(lines::add);
        plan.order().stream().filter(line -> !lines.contains(line)).limit(LISTED - lines.size()).forEach(lines::add);
        return lines.stream().map(line -> "%s, for %s: %s.".formatted(line.part(), line.forWhom(), Double.isInfinite(line.gain())
            ? "builds a club that cannot be built now" : "takes off about %s".formatted(fixed(line.gain(), 2)))).toList();
    }

    /**
     * What parts that were decided beforehand cost.
     * @param plan the plan
     * @return one sentence; empty without such parts
     */
    public static Optional<String> pinCost(SetAnswer plan) {
        if (plan.pinCost().isEmpty()) {
            return Optional.empty();
        }
        double cost = plan.pinCost().getAsDouble();
        return Optional.of(Double.isInfinite(cost) ? "The pins leave a club out that could be built without them."
            : "The pins together cost %s squared tolerances.".formatted(fixed(cost, 2)));
    }

    /**
     * How a plan compares with one before.
     * @param before how good that was
     * @param now    how good this one is
     * @return one sentence
     */
    public static String change(PlanScore before, PlanScore now) {
        if (now.unbuilt() != before.unbuilt()) {
            int more = now.unbuilt() - before.unbuilt();
            return "%d club%s %s than in the plan before.".formatted(Math.abs(more), Math.abs(more) == 1 ? "" : "s",
                more > 0 ? "fewer can be built" : "more can be built");
        }
        double more = now.cost() - now.jointGain() - before.cost() + before.jointGain();
        String text = fixed(Math.abs(more), 2);
        return Double.parseDouble(text) == 0 ? "It costs the same as the plan before."
            : "It costs %s squared tolerances %s than the plan before.".formatted(text, more > 0 ? "more" : "less");
    }

    private static String fixed(double value, int decimals) {
        return String.format(Locale.ROOT, "%." + decimals + "f", value);
    }
}
