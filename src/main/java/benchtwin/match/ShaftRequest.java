package benchtwin.match;

import benchtwin.club.Head;
import benchtwin.club.Inventory;
import benchtwin.club.Quantity;
import benchtwin.club.ShaftMaterial;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * What is asked of a choice of shafts.
 * @param club       the club whose stiffness is carried over, or a target written out; its length is what the build gets
 *                   unless {@code written} says otherwise
 * @param head       the head of the new build
 * @param inventory  the stock
 * @param shop       what the workshop can set and what it costs
 * @param tolerances tolerances and weights
 * @param written    values written out, which take the place of those carried over; lengths along the axis, mm
 * @param headAddedG mass at the head's centre of gravity beside what its ports hold, g; empty: what brings the swing weight
 *                   back with the old shaft, as far as the head can take it
 * @param material   the only material wanted, if one is
 * @param sameModel  whether only shafts of the old shaft's model are wanted
 * @param assumed    tags of shafts of which a reading's clamp is only assumed
 * @param picking    how many are picked and how
 */
public record ShaftRequest(Favourite club, Head head, Inventory inventory, ShopSettings shop, Tolerances tolerances,
                           Map<Quantity, Double> written, OptionalDouble headAddedG, Optional<ShaftMaterial> material,
                           boolean sameModel, Set<String> assumed, Picking picking) {

    /** What a shaft is wanted for, in showing order: the target of a choice of shafts names these. */
    public static final List<Quantity> QUALITIES = List.of(Quantity.LENGTH, Quantity.SWING_WEIGHT, Quantity.FREQUENCY,
        Quantity.TORQUE, Quantity.SHAFT_MASS, Quantity.SHAFT_BALANCE);

    /** Weights among the nearest, where a job sets none: stiffness first. Ours. */
    private static final Map<Quantity, Double> NEAREST_WEIGHTS = Map.of(Quantity.SWING_WEIGHT, 0.0, Quantity.SHAFT_MASS, 0.5,
        Quantity.TORQUE, 0.25, Quantity.SHAFT_BALANCE, 0.25);
    /** Weights on a ladder, where a job sets none: everything but stiffness is to stay the same. Ours. */
    private static final Map<Quantity, Double> LADDER_WEIGHTS = Map.of(Quantity.SWING_WEIGHT, 0.5, Quantity.SHAFT_MASS, 0.5,
        Quantity.TORQUE, 0.5, Quantity.SHAFT_BALANCE, 0.5);

    /**
     * The tolerances with the weights a choice of shafts has by default.
     * @return frequency and length at 1, the rest below
     */
    public Tolerances weighted() {
        return tolerances.withDefaultWeights(weights(picking.pick()));
    }

    /**
     * The weight of a quantity where a job sets none.
     * @param pick     nearest or ladder
     * @param quantity one of the qualities
     * @return 0 or more
     */
    public static double usualWeight(Pick pick, Quantity quantity) {
        return weights(pick).getOrDefault(quantity, quantity.defaultWeight());
    }

    private static Map<Quantity, Double> weights(Pick pick) {
        return pick == Pick.LADDER ? LADDER_WEIGHTS : NEAREST_WEIGHTS;
    }

    /**
     * How many are picked and how.
     * @param pick     nearest or ladder
     * @param top      how many of the nearest, 1 or more
     * @param perModel at most so many of one model among the nearest, 1 or more
     * @param stepCpm  distance between rungs, cpm, above 0
     * @param rungs    how many rungs, 1 or more; an odd number has one on the target
     */
    public record Picking(Pick pick, int top, int perModel, double stepCpm, int rungs) {

        public Picking {
            if (top < 1 || perModel < 1 || rungs < 1 || !(stepCpm > 0)) {
                throw new IllegalArgumentException("at least one shaft, one of a model, one rung and a step above 0");
            }
        }

        /**
         * Where the rungs stand.
         * @return cpm from the target, softest first
         */
        public List<Double> offsetsCpm() {
            return IntStream.range(0, rungs).mapToObj(k -> (k - (rungs - 1) / 2.0) * stepCpm).toList();
        }
    }

    public ShaftRequest {
        written = Map.copyOf(written);
        assumed = Set.copyOf(assumed);
    }
}
