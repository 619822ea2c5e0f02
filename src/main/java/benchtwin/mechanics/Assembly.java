package benchtwin.mechanics;

import benchtwin.club.AngleReading;
import benchtwin.club.Category;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * A head, a shaft, a grip and perhaps a sleeve as the numbers a prediction needs, each with its uncertainty and origin.
 * Made by {@link Assembler}; changed only by copying.
 */
public final class Assembly {

    private final double[] values;
    private final Supplier<List<Factor>> findFactors;
    private final Shape shape;
    private List<Factor> factors;

    /**
     * What is not a number, or is exact.
     * @param category     of the head
     * @param reading      how its angles were read
     * @param cgAtGround   a putter without a measured centre of gravity: taken at the ground point
     * @param stiffness    stiffness shape of the raw shaft
     * @param tipCutMm     where the shaft as it lies starts on the raw shaft, mm from the raw tip
     * @param raw          the condition of the raw frequency reading, if there is a usable one
     * @param notes        what a reader should know of the inputs, in plain words
     */
    record Shape(Category category, AngleReading reading, boolean cgAtGround, StiffnessShape stiffness, double tipCutMm,
                 Optional<RawCondition> raw, List<String> notes) {
    }

    /**
     * The condition of a raw frequency reading.
     * @param clampMm      butt in the clamp, mm
     * @param freeLengthMm clamp face to tip, mm
     * @param tipMassG     mass on the tip, g
     * @param overGrip     whether the clamp closed over a grip
     */
    record RawCondition(double clampMm, double freeLengthMm, double tipMassG, boolean overGrip) {
    }

    Assembly(double[] values, Supplier<List<Factor>> findFactors, Shape shape) {
        this.values = values.clone();
        this.findFactors = findFactors;
        this.shape = shape;
    }

    /**
     * One number.
     * @param input which
     * @return its value, NaN when it is missing
     */
    public double get(Input input) {
        return values[input.ordinal()];
    }

    /**
     * Everything uncertain behind the numbers.
     * @return factors in input order
     */
    public List<Factor> factors() {
        if (factors == null) {
            factors = List.copyOf(findFactors.get());
        }
        return factors;
    }

    /**
     * How the head's angles were read.
     * @return soled, square or edge
     */
    public AngleReading reading() {
        return shape.reading();
    }

    /**
     * What a reader should know of the inputs.
     * @return sentences, possibly none
     */
    public List<String> notes() {
        return shape.notes();
    }

    Shape shape() {
        return shape;
    }

    /**
     * Whether the shaft's stiffness is known to grow from tip to butt all along, so that at one length a longer tip trim is
     * the stiffer one.
     * @return true for the default shape of a shaft that is thicker at its butt; false for a fitted profile
     */
    public boolean stiffensTowardButt() {
        return shape.stiffness() instanceof TaperedTube tube && tube.buttMm() >= tube.tipMm();
    }

    /**
     * The same with one factor moved.
     * @param factor which; its inputs all move together
     * @param by     how far, in the inputs' unit
     * @return a copy
     */
    public Assembly moved(Factor factor, double by) {
        double[] copy = values.clone();
        for (Input input : factor.inputs()) {
            copy[input.ordinal()] += by;
        }
        return new Assembly(copy, this::factors, shape);
    }
}
