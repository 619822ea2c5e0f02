package benchtwin.mechanics;

/**
 * The scale on a shaft's stiffness shape that makes the computed frequency equal the measured one in the condition in
 * which it was measured. Given as √scale, the factor on a unit-scale frequency.
 */
public final class Stiffness {

    private Stiffness() {
    }

    /**
     * From a raw shaft's own reading.
     * @param assembly an assembly whose shaft has a usable raw reading
     * @return √scale; NaN when there is none
     */
    public static double rootFromRaw(Assembly assembly) {
        if (assembly.shape().raw().isEmpty() || Double.isNaN(assembly.get(Input.SHAFT_CPM))) {
            return Double.NaN;
        }
        Assembly.RawCondition condition = assembly.shape().raw().get();
        double length = assembly.get(Input.SHAFT_LENGTH_MM);
        ShaftMass density =
            ShaftMass.of(length, assembly.get(Input.SHAFT_MASS_G), assembly.get(Input.SHAFT_BALANCE_MM));
        double fromU = length - condition.freeLengthMm();
        Beam beam = CutClub.beam(assembly, density, fromU, condition.freeLengthMm());
        double unit = beam.firstMode(TipBody.point(condition.tipMassG())).cpm();
        return bare(assembly.get(Input.SHAFT_CPM), condition.overGrip(), assembly) / unit;
    }

    /**
     * From a reading of the built club.
     * @param assembly  the club's parts
     * @param setup     how it was built and set when it was read
     * @param condition how it was read
     * @param cpm       what was read
     * @return √scale
     */
    public static double rootFromClub(Assembly assembly, Setup setup, FrequencyCondition condition, double cpm) {
        CutClub club = new CutClub(assembly, setup, condition.clampMm());
        double cg = club.headCgMm(ClubAngles.of(assembly, setup.aim()).lieDeg());
        return bare(cpm, condition.overGrip(), assembly) / club.unitMode(cg, setup.headAddedG()).cpm();
    }

    private static double bare(double cpm, boolean overGrip, Assembly assembly) {
        return overGrip ? cpm / assembly.get(Input.GRIP_FACTOR) : cpm;
    }
}
