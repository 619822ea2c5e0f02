package benchtwin.match;

import benchtwin.club.AngleReading;
import benchtwin.club.Quantity;
import benchtwin.measure.Reading;
import benchtwin.mechanics.Assembly;
import benchtwin.mechanics.ClubModel;
import benchtwin.mechanics.FrequencyCondition;
import benchtwin.mechanics.Setup;
import benchtwin.mechanics.Stiffness;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Predicts a new build against the club it replaces: differences, not absolutes. What the model misses on the old club
 * (measured less modelled length, swing weight, frequency, total mass) is carried over to the new one; the length by the
 * 60-degree procedure misses what the length along the axis does.
 *
 * <p>Frequency is corrected once. Where the shaft stays, its stiffness is scaled to the newest reading of the built club,
 * and there is nothing left to carry; where it does not, the new shaft's own raw reading scales it and the old club's miss
 * is carried over, if the old shaft has a raw reading too. Where the head stays, its angles are carried over as well.
 */
final class TwinModel {

    private static final List<Quantity> CARRIED =
        List.of(Quantity.LENGTH, Quantity.SWING_WEIGHT, Quantity.TOTAL_MASS);
    private static final List<Quantity> CARRIED_WITH_THE_HEAD =
        List.of(Quantity.LOFT, Quantity.LIE, Quantity.FACE, Quantity.BOUNCE);

    private final Optional<OldClub> old;
    private final Keep keep;
    private final FrequencyCondition condition;
    private final AngleReading loftIn;

    /**
     * @param old       the old club; empty for a target written out
     * @param keep      what the new build keeps of the old club
     * @param condition how the new club's frequency will be read
     * @param loftIn    in which reading a wood's loft is wanted
     */
    TwinModel(Optional<OldClub> old, Keep keep, FrequencyCondition condition, AngleReading loftIn) {
        this.old = old;
        this.keep = keep;
        this.condition = condition;
        this.loftIn = loftIn;
    }

    Optional<OldClub> old() {
        return old;
    }

    FrequencyCondition condition() {
        return condition;
    }

    AngleReading loftIn() {
        return loftIn;
    }

    /**
     * √ of the scale on the new build's shaft.
     * @param fresh the new build's parts
     * @return NaN when no reading sets it
     */
    double stiffnessRoot(Assembly fresh) {
        return stiffnessRoot(fresh, old);
    }

    private double stiffnessRoot(Assembly fresh, Optional<OldClub> from) {
        if (isScaledByOldClub(from)) {
            OldClub club = from.get();
            return Stiffness.rootFromClub(club.assembly(), club.setup(), club.condition(),
                club.measured().get(Quantity.FREQUENCY).value());
        }
        return Stiffness.rootFromRaw(fresh);
    }

    private boolean isScaledByOldClub(Optional<OldClub> from) {
        return keep.keepsShaft() && from.isPresent() && from.get().measured().containsKey(Quantity.FREQUENCY);
    }

    /**
     * Whether the frequency rests on the built club's own reading.
     * @return false where a raw shaft reading sets the scale
     */
    boolean isScaledByOldClub() {
        return isScaledByOldClub(old);
    }

    /**
     * How far the kept shaft's raw reading and the built club's reading disagree about its stiffness.
     * @return what the raw reading would make the old club read, less what it read, cpm; NaN where one of the two is missing
     */
    double rawDisagreementCpm() {
        if (!isScaledByOldClub()) {
            return Double.NaN;
        }
        OldClub club = old.get();
        double read = club.measured().get(Quantity.FREQUENCY).value();
        return read * (Stiffness.rootFromRaw(club.assembly()) / stiffnessRoot(club.assembly()) - 1);
    }

    /**
     * What is carried over, by quantity.
     * @return measured less modelled, 0 where either is missing
     */
    double[] carried() {
        return carried(old);
    }

    private double[] carried(Optional<OldClub> from) {
        double[] carry = new double[Quantity.values().length];
        if (from.isEmpty()) {
            return carry;
        }
        OldClub club = from.get();
        boolean frequencyToo = !isScaledByOldClub(from);
        double root = frequencyToo ? Stiffness.rootFromRaw(club.assembly()) : Double.NaN;
        double[] modelled = ClubModel.predict(club.assembly(), club.setup(), club.condition(), root, loftIn);
        for (Quantity quantity : CARRIED) {
            carry(carry, club, modelled, quantity);
        }
        carry[Quantity.RULES_LENGTH.ordinal()] = carry[Quantity.LENGTH.ordinal()];
        if (frequencyToo) {
            carry(carry, club, modelled, Quantity.FREQUENCY);
        }
        if (keep.keepsHead()) {
            for (Quantity angle : CARRIED_WITH_THE_HEAD) {
                carry(carry, club, modelled, angle);
            }
        }
        return carry;
    }

    private static void carry(double[] carry, OldClub club, double[] modelled, Quantity quantity) {
        Reading measured = club.measured().get(quantity);
        double model = modelled[quantity.ordinal()];
        if (measured != null && !Double.isNaN(model)) {
            carry[quantity.ordinal()] = measured.value() - model;
        }
    }

    /**
     * Values by quantity as a map.
     * @param values by ordinal, NaN where missing
     * @return those that are not missing
     */
    static Map<Quantity, Double> known(double[] values) {
        Map<Quantity, Double> map = new EnumMap<>(Quantity.class);
        for (Quantity quantity : Quantity.values()) {
            if (!Double.isNaN(values[quantity.ordinal()])) {
                map.put(quantity, values[quantity.ordinal()]);
            }
        }
        return map;
    }

    /**
     * Predicts the new build, what is carried over included.
     * @param fresh its parts
     * @param setup its plan
     * @return values by quantity, NaN where an input is missing
     */
    double[] predict(Assembly fresh, Setup setup) {
        return predict(fresh, setup, old);
    }

    /**
     * The same with an old club whose inputs were moved: for the propagation of uncertainty, where both builds must move
     * together.
     */
    double[] predict(Assembly fresh, Setup setup, Optional<OldClub> from) {
        double[] out = ClubModel.predict(fresh, setup, condition, stiffnessRoot(fresh, from), loftIn);
        double[] carry = carried(from);
        for (int q = 0; q < out.length; q++) {
            out[q] += carry[q];
        }
        return out;
    }
}
