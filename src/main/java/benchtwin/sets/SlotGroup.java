package benchtwin.sets;

import java.util.List;
import java.util.stream.IntStream;

/**
 * Clubs that are to be alike.
 * @param slots      the slots, at least one
 * @param sameModels whether they must share head model and shaft model
 * @param weights    by residual: what a squared thousandth of a tolerance about the group's mean costs, millionths of a
 *                   squared tolerance, 0 or more
 * @param modelCost  what every head model and every shaft model beyond the first costs where they only prefer to share,
 *                   millionths of a squared tolerance
 */
record SlotGroup(List<Integer> slots, boolean sameModels, long[] weights, long modelCost) {

    SlotGroup {
        slots = List.copyOf(slots);
        if (slots.isEmpty() || weights.length != Residual.COUNT) {
            throw new IllegalArgumentException("a group has slots and a weight for each residual");
        }
        weights = weights.clone();
    }

    /** The residuals whose spread costs something; none in a group of one. */
    int[] spreadKinds() {
        return slots.size() < 2 ? new int[0] : IntStream.range(0, weights.length).filter(k -> weights[k] > 0).toArray();
    }

    /**
     * What a spread costs: weight times the sum of squares about the mean, rounded down.
     * @param weight a weight
     * @param count  how many values
     * @param sum    their sum
     * @param square sum of their squares
     * @return millionths of a squared tolerance
     */
    static long spread(long weight, long count, long sum, long square) {
        return count < 2 ? 0 : weight * (count * square - sum * sum) / count;
    }
}
