package benchtwin.mechanics;

import benchtwin.PublishedCheck;
import benchtwin.measure.Units;
import java.util.ArrayList;
import java.util.List;

/** The published values that the mechanics are held to. */
public final class MechanicsChecks {

    private static final String THOMSON =
        "Thomson, Theory of Vibration with Applications, app. D, clamped-free beam";
    private static final String TIP_MASS = "Mathematical Problems in Engineering 2017, art. 1568019, table 1";
    private static final String APPLIED = "Applied Sciences 2019, 9(15), 2996, tables 1 and 2";
    private static final String MABIE = "Mabie and Rogers, JASA 51 (1972) 1771; structural benchmark SDLL09";
    private static final String SP811 = "NIST SP 811, appendix B";
    private static final double FOUR_DECIMALS = 0.5e-4;

    private MechanicsChecks() {
    }

    /** A uniform beam's first circular frequency over √(EI/(μL⁴)), with an end mass of a share of its own. */
    static double uniformBeam(double endMassShare) {
        double lengthMm = 1000;
        double densityGPerMm = 0.06;
        double stiffnessNm2 = 40;
        Beam beam = Beam.of(lengthMm, s -> stiffnessNm2, s -> densityGPerMm);
        Mode mode = beam.firstMode(TipBody.point(endMassShare * densityGPerMm * lengthMm));
        double unit = Math.sqrt(stiffnessNm2 / densityGPerMm);   // L = 1 m, g/mm = kg/m
        return 1 / Math.sqrt(mode.lambda()) / unit;
    }

    /** λ in f = λ/(2π)·(h1/L²)·√(E/12ρ) for a cantilever whose depth and width both run 4:1 to its free end. */
    static double doubleTaper() {
        double lengthMm = 1000;
        Beam beam = Beam.of(lengthMm, s -> Math.pow(1 - 0.75 * s / lengthMm, 4), s -> Math.pow(1 - 0.75 * s / lengthMm, 2));
        // at the clamp E·b·h³/12 = 1 N·m² and ρ·b·h = 1 kg/m, so h·√(E/12ρ) = 1 m²/s; the printed h1 is the free end's
        return 4 / Math.sqrt(beam.firstMode(TipBody.NONE).lambda());
    }

    /**
     * Every check.
     * @return in the order the page shows them
     */
    public static List<PublishedCheck> all() {
        List<PublishedCheck> checks = new ArrayList<>(beams());
        checks.addAll(StiffnessChecks.all());
        return List.copyOf(checks);
    }

    private static List<PublishedCheck> beams() {
        return List.of(
            new PublishedCheck("millimetres in an inch", SP811, 25.4, Units.MM_PER_INCH, 0, "exact"),
            new PublishedCheck("grams in an avoirdupois ounce", SP811, 28.349523125, Units.G_PER_OZ, 0, "exact"),
            new PublishedCheck("newton metres in a foot pound-force", SP811, 1.355818, Units.NM_PER_FT_LBF, 0.5e-6,
                "six decimals printed"),
            new PublishedCheck("uniform cantilever, (βL)², first mode", THOMSON, 3.5160, uniformBeam(0), FOUR_DECIMALS,
                "four decimals printed"),
            new PublishedCheck("uniform cantilever, end mass = beam mass, first mode", TIP_MASS, 1.557298,
                uniformBeam(1), 0.5e-6, "six decimals printed"),
            new PublishedCheck("uniform cantilever, end mass 0.2 of the beam's, ratio to the bare beam", APPLIED,
                14.56 / 19.64, uniformBeam(0.2) / uniformBeam(0), 0.005 * 14.56 / 19.64,
                "the printed pair is not exact (thin-beam theory gives 0.7431): half a per cent"),
            new PublishedCheck("cantilever tapering 4:1 in depth and width, λ1", MABIE, 23.289, doubleTaper(), 0.0005 * 23.289,
                "0.05 %, the accuracy asked of the beam"));
    }
}
