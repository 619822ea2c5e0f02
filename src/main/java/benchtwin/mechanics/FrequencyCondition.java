package benchtwin.mechanics;

/**
 * How a club's frequency is read.
 * @param clampMm  butt in the clamp, mm
 * @param overGrip whether the clamp closes over the grip
 */
public record FrequencyCondition(double clampMm, boolean overGrip) {

    /** The standard clamp on a bare butt. */
    public static final FrequencyCondition BARE = new FrequencyCondition(MechanicsDefaults.CLAMP_MM, false);

    public FrequencyCondition {
        if (!(clampMm > 0)) {
            throw new IllegalArgumentException("a clamp of %s mm is not above 0".formatted(clampMm));
        }
    }
}
