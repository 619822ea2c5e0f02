package benchtwin.match;

import benchtwin.club.Quantity;
import benchtwin.club.Target;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * The answer to a choice of shafts.
 * @param request      what was asked
 * @param target       what is wanted of the build; the swing weight is the one the old shaft would give it
 * @param reference    what the old shaft would measure in the new build, by quantity; empty for a target written out
 * @param headAddedG   mass at the head beside what its ports hold now, g; below 0 when a lighter weight goes in
 * @param headWork     how it is done, in bench words; empty when nothing is added
 * @param picks        the shafts picked, nearest first or softest rung first
 * @param belowTheLine shafts promised elsewhere that come near, with the reason
 * @param ruledOut     how many shafts were ruled out, by reason
 * @param considered   how many were considered
 * @param emptyRungs   rungs for which no shaft was left, cpm from the target
 * @param notes        what could not be carried over or was assumed
 */
public record ShaftAnswer(ShaftRequest request, Target target, Optional<Map<Quantity, Double>> reference,
                          double headAddedG, List<String> headWork, List<ShaftPick> picks,
                          List<MatchAnswer.Below> belowTheLine, Map<String, Integer> ruledOut, long considered,
                          List<Double> emptyRungs, List<String> notes) {

    /**
     * In how long a clamp the frequencies are read.
     * @return mm
     */
    public double clampMm() {
        return request.club().condition().clampMm();
    }

    /**
     * Whether the clamp closes over the grip.
     * @return false on the bare butt
     */
    public boolean readOverGrip() {
        return request.club().condition().overGrip();
    }

    /**
     * The picks as options in order of cost.
     * @return numbered from 1; none of a ladder, whose rungs have an order of their own
     */
    public List<Ranked> nearest() {
        return request.picking().pick() == Pick.LADDER ? List.of()
            : IntStream.range(0, picks.size()).mapToObj(k -> picks.get(k).option().withRank(k + 1)).toList();
    }

    /**
     * Whether anything is inside tolerance.
     * @return true when at least one pick is as stiff as wanted, within tolerance, and inside every other one that ranks
     */
    public boolean hasSuitable() {
        return picks.stream().anyMatch(pick -> pick.option().isWithinTolerance());
    }
}
