package benchtwin.match;

import benchtwin.club.Quantity;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;

/**
 * The answer to a match.
 * @param favourite    what the twin is made of
 * @param keep         what it keeps
 * @param results      the nearest, least cost first
 * @param belowTheLine options that are promised elsewhere or cannot be ready in time, with the reason
 * @param ruledOut     how many parts were ruled out, by reason
 * @param considered   how many parts (for a backup: pairs) were considered
 * @param pastLimit    how many bendable heads would need more bend than their limit leaves
 * @param proven       that no plan on the grid a person can set costs less than those shown
 * @param notes        what could not be matched or was assumed
 * @param carried      what the model misses on the old club and is carried over
 */
public record MatchAnswer(Favourite favourite, Keep keep, List<Ranked> results, List<Below> belowTheLine,
                          Map<String, Integer> ruledOut, long considered, int pastLimit, boolean proven,
                          List<String> notes, Map<Quantity, Double> carried) {

    /**
     * An option below the line.
     * @param option the option
     * @param reason why it stands there
     */
    public record Below(Ranked option, String reason) {

        /**
         * Where it would stand if it were free.
         * @param results those that stand above the line, least cost first
         * @return the rank of the first of them it is nearer than; empty when it is nearer than none
         */
        public OptionalInt nearerThan(List<Ranked> results) {
            return results.stream().filter(result -> option.cost() < result.cost()).mapToInt(Ranked::rank).findFirst();
        }
    }

    /**
     * Whether anything is inside tolerance.
     * @return true when at least one result is
     */
    public boolean hasSuitable() {
        return results.stream().anyMatch(Ranked::isWithinTolerance);
    }

    /**
     * Whether the answer is a choice to try on the shaft: the leaders' every step can be undone freely.
     * @return true when there are at least two and the first three, as far as there are, are such
     */
    public boolean isToTry() {
        return results.size() > 1 && results.stream().limit(3).allMatch(r -> r.plan().isUndoneFreely());
    }

    /**
     * The same with more ruled out.
     * @param reason why
     * @param count  how many parts
     * @return a copy
     */
    public MatchAnswer alsoRuledOut(String reason, int count) {
        Map<String, Integer> all = new LinkedHashMap<>(ruledOut);
        all.merge(reason, count, Integer::sum);
        return new MatchAnswer(favourite, keep, results, belowTheLine, all, considered, pastLimit, proven, notes, carried);
    }

    MatchAnswer withResults(List<Ranked> others) {
        return new MatchAnswer(favourite, keep, others, belowTheLine, ruledOut, considered, pastLimit, proven, notes,
            carried);
    }
}
