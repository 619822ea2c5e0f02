package benchtwin.picture;

/**
 * How far one frequency reading lies from what the fitted shaft would read.
 * @param freeLengthMm           from the tip to the clamp face, mm, above 0
 * @param residualCpm            read less fitted, cpm
 * @param standardUncertaintyCpm one standard deviation of the reading, cpm, 0 or more
 */
public record ReadingResidual(double freeLengthMm, double residualCpm, double standardUncertaintyCpm) {

    /**
     * Checks the numbers.
     * @throws IllegalArgumentException naming the number that cannot be
     */
    public ReadingResidual {
        Words.positive("a free length", freeLengthMm);
        if (!Double.isFinite(residualCpm)) {
            throw new IllegalArgumentException(
                "a residual of %s at %s mm is no number".formatted(residualCpm, freeLengthMm));
        }
        Words.notNegative("an uncertainty at a free length of %s mm".formatted(freeLengthMm), standardUncertaintyCpm);
    }

    /** Half the whisker, cpm. */
    double whiskerCpm() {
        return 2 * standardUncertaintyCpm;
    }
}
