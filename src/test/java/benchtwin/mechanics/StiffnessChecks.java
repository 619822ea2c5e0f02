package benchtwin.mechanics;

import benchtwin.PublishedCheck;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** What stiffness and frequency of whole shafts and clubs are held to: exact solutions, and figures worked another way. */
final class StiffnessChecks {

    private static final String EXACT = "closed solution of the uniform cantilever with a rigid end body, solved in the test";
    private static final String RITZ = "handbook, section 6: worked apart from the program by Rayleigh–Ritz";
    private static final String ASKED = "0.05 %, the accuracy asked of the beam";
    private static final double SHARE = 0.0005;
    private static final double STIFFNESS_NM2 = 40;
    private static final double FREE = ReadShafts.LENGTH_MM - 127;

    private StiffnessChecks() {
    }

    private static double exact(double freeMm) {
        return UniformCantilever.cpm(STIFFNESS_NM2, ReadShafts.MASS_G / ReadShafts.LENGTH_MM, freeMm,
            TipBody.point(ReadShafts.TIP_MASS_G));
    }

    /** Stiffness found for a uniform tube from exact readings at some free lengths. */
    private static double found(double fromTipMm, double... freeMm) {
        return ShaftStiffness.of(ReadShafts.shaft(12, 12, 0, 0.5, Arrays.stream(freeMm)
            .mapToObj(free -> ReadShafts.bare(exact(free), free)).toList()), GripFactor.DEFAULT).profile().orElseThrow()
            .stiffnessNm2(fromTipMm);
    }

    private static double trimmed(double tipTrimMm, double buttCutMm) {
        Assembly club = Assembler.of(Samples.driver(), ReadShafts.shaft(12, 12, 0, 0.5,
            List.of(ReadShafts.bare(exact(FREE), FREE))), Optional.empty(), Optional.of(Samples.grip()));
        return raw(club, tipTrimMm, buttCutMm, ReadShafts.TIP_MASS_G);
    }

    /** To a millionth: what is left beyond it is rounding, and not the same on every machine. */
    private static double rounded(double value) {
        return Math.rint(value * 1e6) / 1e6;
    }

    private static double raw(Assembly club, double tipTrimMm, double buttCutMm, double tipMassG) {
        double length = club.get(Input.SHAFT_LENGTH_MM);
        ShaftMass mass = ShaftMass.of(length, club.get(Input.SHAFT_MASS_G), club.get(Input.SHAFT_BALANCE_MM));
        return CutClub.beam(club, mass, buttCutMm + 127, length - tipTrimMm - buttCutMm - 127)
            .firstMode(TipBody.point(tipMassG)).cpm() * Stiffness.rootFromRaw(club);
    }

    /** The handbook's driver of 1114 mm of shaft, with more at the head and farther along. */
    private static double club(double tipTrimMm, double buttCutMm, double addedG, double fartherMm, double inertiaGCm2) {
        Assembly driver = moved(moved(Samples.driverClub(), Input.CG_ALONG_MM, fartherMm),
            Input.TRANSVERSE_INERTIA_G_CM2, inertiaGCm2);
        double butt = ReadShafts.LENGTH_MM - 1114 + buttCutMm;
        CutClub cut = new CutClub(driver, new Setup(tipTrimMm, butt, 0, 0, 1, 0, 0, Setup.AS_READ), 127);
        return cut.unitMode(cut.headCgMm(58), addedG).cpm() * Stiffness.rootFromRaw(driver);
    }

    private static Assembly moved(Assembly club, Input input, double by) {
        return club.moved(new Factor("moved", "moved", List.of(input), 0, 0, 0, Origin.DEFAULT), by);
    }

    private static double changed(double tipTrimMm, double buttCutMm, double addedG, double fartherMm, double inertia) {
        return club(tipTrimMm, buttCutMm, addedG, fartherMm, inertia) - club(0, 0, 0, 0, 0);
    }

    static List<PublishedCheck> all() {
        double[] four = {FREE, 965.2, 889, 812.8};
        Assembly driver = Samples.driverClub();
        return List.of(
            new PublishedCheck("uniform tube read at four free lengths, stiffness found 200 mm from the tip, N·m²", EXACT,
                STIFFNESS_NM2, rounded(found(200, four)), SHARE * STIFFNESS_NM2, ASKED),
            new PublishedCheck("… 900 mm from the tip", EXACT, STIFFNESS_NM2, rounded(found(900, four)),
                SHARE * STIFFNESS_NM2, ASKED),
            new PublishedCheck("uniform tube, 25.4 mm off the tip, raw, cpm", EXACT, rounded(exact(FREE - 25.4)), rounded(trimmed(25.4, 0)),
                SHARE * exact(FREE - 25.4), ASKED),
            new PublishedCheck("uniform tube, 25.4 mm off the tip and 50.8 mm off the butt, raw, cpm", EXACT,
                rounded(exact(FREE - 76.2)), rounded(trimmed(25.4, 50.8)), SHARE * exact(FREE - 76.2), ASKED),
            worked("driver shaft of 255 cpm, 25.4 mm off the tip, raw, change in cpm", 11.5, 0.05,
                raw(driver, 25.4, 0, 205) - 255),
            worked("… 25.4 mm off the butt", 6.5, 0.05, raw(driver, 0, 25.4, 205) - 255),
            worked("… 1 g more on the tip", -0.59, 0.005, raw(driver, 0, 0, 206) - 255),
            worked("the same shaft at 1114 mm in a driver, bare, cpm", 258.7, 0.05, club(0, 0, 0, 0, 0)),
            worked("… 25.4 mm off the tip, change in cpm", 12.0, 0.05, changed(25.4, 0, 0, 0, 0)),
            worked("… 25.4 mm off the butt", 6.7, 0.05, changed(0, 25.4, 0, 0, 0)),
            worked("… 1 g more at the head", -0.61, 0.005, changed(0, 0, 1, 0, 0)),
            worked("… head's centre of gravity 3 mm farther along", -1.25, 0.005, changed(0, 0, 0, 3, 0)),
            worked("… transverse inertia of 3000 g·cm²", -0.54, 0.005, changed(0, 0, 0, 0, 3000)));
    }

    private static PublishedCheck worked(String what, double printed, double tolerance, double ours) {
        return new PublishedCheck(what, RITZ, printed, ours, tolerance, "half a unit in the last digit given");
    }
}
