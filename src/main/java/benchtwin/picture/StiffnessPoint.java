package benchtwin.picture;

import java.util.OptionalDouble;

/**
 * Bending stiffness at one place along a shaft; between two of them it runs straight.
 * @param fromTipMm              from the tip of the shaft as it lies, mm, 0 or more
 * @param stiffnessNm2           EI, N·m², above 0
 * @param standardUncertaintyNm2 one standard deviation, N·m², if known
 */
public record StiffnessPoint(double fromTipMm, double stiffnessNm2, OptionalDouble standardUncertaintyNm2) {

    /**
     * Checks the numbers.
     * @throws IllegalArgumentException naming the number that cannot be
     */
    public StiffnessPoint {
        Words.notNegative("a place along the shaft", fromTipMm);
        Words.positive("a stiffness at %s mm from the tip".formatted(fromTipMm), stiffnessNm2);
        if (standardUncertaintyNm2.isPresent()) {
            Words.notNegative("an uncertainty at %s mm from the tip".formatted(fromTipMm),
                standardUncertaintyNm2.getAsDouble());
        }
    }

    /**
     * A point nobody gives an uncertainty for.
     * @param fromTipMm    from the tip of the shaft as it lies, mm
     * @param stiffnessNm2 EI, N·m²
     * @return the point
     */
    public static StiffnessPoint of(double fromTipMm, double stiffnessNm2) {
        return new StiffnessPoint(fromTipMm, stiffnessNm2, OptionalDouble.empty());
    }
}
