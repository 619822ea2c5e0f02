package benchtwin.mechanics;

/**
 * The default stiffness shape: outer diameter constant over the parallel tip, then linear to the butt; stiffness as the
 * cube of the diameter, as for a wall thin against it. Source: memory, a default; thin-tube second moment π·r³·t is
 * textbook.
 * @param tipMm         tip diameter, mm
 * @param buttMm        butt diameter, mm
 * @param parallelTipMm parallel tip of the raw shaft, mm, 0 for a taper tip
 * @param rawLengthMm   length of the raw shaft, mm, above the parallel tip
 */
record TaperedTube(double tipMm, double buttMm, double parallelTipMm, double rawLengthMm) implements StiffnessShape {

    @Override
    public double at(double z) {
        double ratio = (tipMm + (buttMm - tipMm) * Math.max(0, z - parallelTipMm) / (rawLengthMm - parallelTipMm)) / buttMm;
        return ratio * ratio * ratio;
    }

    @Override
    public double[] cornersMm() {
        return new double[] {parallelTipMm};
    }
}
