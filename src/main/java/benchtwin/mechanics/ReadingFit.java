package benchtwin.mechanics;

/**
 * A condition in which a shaft was read, and what its fitted stiffness reads there.
 * @param freeLengthMm           clamp face to tip, mm
 * @param tipMassG               mass on the tip, g
 * @param overGrip               whether the clamp closed over a grip
 * @param readings               how many readings stand behind it
 * @param readCpm                what was read, their mean, cpm
 * @param standardUncertaintyCpm of what was read, cpm
 * @param computedCpm            what the fitted stiffness gives in this condition, cpm; NaN when the shaft was not weighed
 */
public record ReadingFit(double freeLengthMm, double tipMassG, boolean overGrip, int readings, double readCpm,
                         double standardUncertaintyCpm, double computedCpm) {

    /**
     * What the fit leaves over.
     * @return computed less read, cpm
     */
    public double residualCpm() {
        return computedCpm - readCpm;
    }
}
