package benchtwin.picture;

import java.util.OptionalDouble;
import java.util.stream.Stream;

/**
 * What else of a head, and of the club it is on, goes into its sketch; what was not measured is empty.
 * @param cgToeMm        centre of gravity toward the toe from the ground point, mm
 * @param cgUpMm         centre of gravity above the ground, mm
 * @param offsetMm       hosel's front back to the leading edge, mm
 * @param hoselMm        ground point to the top of the hosel, along the axis, mm, above 0
 * @param volumeCm3      volume, cm³, above 0
 * @param lengthBeforeMm playing length before, mm, above 0
 * @param lengthAfterMm  playing length afterwards, mm, above 0
 */
public record SketchSizes(OptionalDouble cgToeMm, OptionalDouble cgUpMm, OptionalDouble offsetMm, OptionalDouble hoselMm,
                          OptionalDouble volumeCm3, OptionalDouble lengthBeforeMm, OptionalDouble lengthAfterMm) {

    /** Nothing measured. */
    public static final SketchSizes UNMEASURED = new SketchSizes(OptionalDouble.empty(), OptionalDouble.empty(),
        OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty(),
        OptionalDouble.empty());

    /**
     * Checks the numbers.
     * @throws IllegalArgumentException naming the one that cannot be
     */
    public SketchSizes {
        Stream.of(cgToeMm, cgUpMm, offsetMm).flatMapToDouble(OptionalDouble::stream).forEach(mm -> {
            if (!Double.isFinite(mm)) {
                throw new IllegalArgumentException("a place of %s mm is not a number".formatted(mm));
            }
        });
        hoselMm.ifPresent(mm -> Words.positive("a hosel", mm));
        volumeCm3.ifPresent(cm3 -> Words.positive("a volume", cm3));
        lengthBeforeMm.ifPresent(mm -> Words.positive("a length", mm));
        lengthAfterMm.ifPresent(mm -> Words.positive("a length", mm));
    }

    /** Whether the centre of gravity can be drawn. */
    boolean hasCentre() {
        return cgToeMm.isPresent() && cgUpMm.isPresent();
    }
}
