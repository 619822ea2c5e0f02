package benchtwin.bench;

import benchtwin.club.Inventory;
import benchtwin.club.Shaft;
import benchtwin.mechanics.GripFactor;
import benchtwin.mechanics.GripFactors;
import benchtwin.mechanics.MechanicsDefaults;
import benchtwin.mechanics.Origin;
import benchtwin.mechanics.ReadingFit;
import benchtwin.mechanics.ShaftStiffness;
import benchtwin.mechanics.StiffnessProfile;
import benchtwin.picture.Picture;
import benchtwin.picture.ProfilePicture;
import benchtwin.picture.ReadingResidual;
import benchtwin.picture.StiffnessPoint;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/** What a shaft's own readings say of its stiffness along it. */
public final class ProfileService {

    /** Said of a shaft that has no profile of its own. */
    public static final String NO_PROFILE = "A profile of its own takes readings at three or more free lengths; until then it has the "
        + "default shape, scaled to what was read.";
    private static final double PICTURE_STEP_MM = 5;

    private ProfileService() {
    }

    /**
     * A condition in which the shaft was read.
     * @param freeLengthMm clamp face to tip, mm
     * @param tipMassG     mass on the tip, g
     * @param overGrip     whether the clamp closed over a grip
     * @param readings     how many readings stand behind it
     * @param readCpm      what was read, cpm
     * @param uCpm         its standard uncertainty, cpm
     * @param computedCpm  what the fitted stiffness gives there, cpm; NaN without the shaft's mass
     */
    public record ReadingLine(double freeLengthMm, double tipMassG, boolean overGrip, int readings, double readCpm,
                              double uCpm, double computedCpm) {

        /**
         * What the reading is off the fit.
         * @return read less fitted, cpm; empty where the shaft was not weighed and so nothing is computed
         */
        public OptionalDouble offCpm() {
            return Double.isNaN(computedCpm) ? OptionalDouble.empty() : OptionalDouble.of(readCpm - computedCpm);
        }
    }

    /**
     * The fitted stiffness at one place.
     * @param fromTipMm    place, mm from the tip of the shaft as it lies
     * @param stiffnessNm2 EI, N·m²
     * @param uNm2         its standard uncertainty, N·m²
     * @param factor       on the default shape
     */
    public record KnotLine(double fromTipMm, double stiffnessNm2, double uNm2, double factor) {
    }

    /**
     * A shaft's stiffness.
     * @param shaft    the shaft
     * @param readings what it was read at; empty when no reading could be used
     * @param knots    its own profile; empty with fewer than three free lengths
     * @param rawCpm   what it would read bare in the usual clamp with the usual tip mass, cpm
     * @param rawUCpm  standard uncertainty of that, cpm
     * @param grip     how readings over a grip were taken, in words
     * @param notes    what a reader should know
     * @param picture  the profile; empty without one
     */
    public record Answer(Shaft shaft, List<ReadingLine> readings, List<KnotLine> knots, OptionalDouble rawCpm,
                         OptionalDouble rawUCpm, String grip, List<String> notes, Optional<Picture> picture) {
    }

    /**
     * Works out one shaft.
     * @param workshop      the stock
     * @param tag           the shaft's tag
     * @param assumeClampMm the clamp in which readings without one are taken to have been read, mm
     * @return its readings, and its profile if there are enough of them
     * @throws BadInput when the shaft is not on record
     */
    public static Answer of(Workshop workshop, String tag, OptionalDouble assumeClampMm) throws BadInput {
        Inventory stock = workshop.inventory();
        List<String> notes = new ArrayList<>();
        Shaft shaft = workshop.shaft(tag);
        if (assumeClampMm.isPresent()) {
            AssumedClamp.Assumed assumed = AssumedClamp.of(stock, assumeClampMm.getAsDouble());
            shaft = assumed.inventory().shaft(shaft.tag()).orElseThrow();
            if (assumed.marked().contains(shaft.tag())) {
                notes.add("the clamp of a reading was never recorded and is assumed");
            }
        }
        Optional<String> gauge = shaft.frequencies().stream().flatMap(f -> f.cpm().taken().gauge().stream()).findFirst();
        GripFactor factor = GripFactors.learn(stock.shafts()).of(gauge);
        ShaftStiffness stiffness = ShaftStiffness.of(shaft, factor);
        notes.addAll(stiffness.notes());
        boolean comparable = shaft.lengthMm() > 2 * MechanicsDefaults.CLAMP_MM;
        return new Answer(shaft, stiffness.readings().stream().map(ProfileService::line).toList(), knots(stiffness),
            comparable ? stiffness.carriedCpm(MechanicsDefaults.CLAMP_MM, MechanicsDefaults.RAW_TIP_MASS_G)
                : OptionalDouble.empty(),
            comparable ? stiffness.carriedUncertaintyCpm(MechanicsDefaults.CLAMP_MM, MechanicsDefaults.RAW_TIP_MASS_G)
                : OptionalDouble.empty(),
            words(factor), List.copyOf(notes), picture(shaft, stiffness));
    }

    private static String words(GripFactor factor) {
        return String.format(Locale.ROOT, "%s: %.4f ± %.4f, %s", factor.label(), factor.value(), factor.standardUncertainty(),
            factor.origin() == Origin.DEFAULT ? "a default" : "learned from %d shafts read both ways".formatted(factor.pairs()));
    }

    private static ReadingLine line(ReadingFit fit) {
        return new ReadingLine(fit.freeLengthMm(), fit.tipMassG(), fit.overGrip(), fit.readings(), fit.readCpm(),
            fit.standardUncertaintyCpm(), fit.computedCpm());
    }

    private static List<KnotLine> knots(ShaftStiffness stiffness) {
        return stiffness.profile().map(profile -> profile.knots().stream().map(knot -> new KnotLine(knot.fromTipMm(),
            profile.stiffnessNm2(knot.fromTipMm()), profile.standardUncertaintyNm2(knot.fromTipMm()), knot.factor()))
            .toList()).orElse(List.of());
    }

    private static Optional<Picture> picture(Shaft shaft, ShaftStiffness stiffness) {
        return stiffness.profile().map(profile -> {
            List<StiffnessPoint> fitted = new ArrayList<>();
            List<StiffnessPoint> usual = new ArrayList<>();
            int steps = (int) Math.ceil(profile.lengthMm() / PICTURE_STEP_MM);
            for (int k = 0; k <= steps; k++) {
                add(profile, Math.min(profile.lengthMm(), k * PICTURE_STEP_MM), fitted, usual);
            }
            List<StiffnessPoint> knots = profile.knots().stream()
                .map(knot -> StiffnessPoint.of(knot.fromTipMm(), profile.stiffnessNm2(knot.fromTipMm()))).toList();
            List<ReadingResidual> residuals = stiffness.readings().stream().map(r -> new ReadingResidual(r.freeLengthMm(),
                -r.residualCpm(), r.standardUncertaintyCpm())).toList();
            double worst = stiffness.readings().stream().mapToDouble(r -> Math.abs(r.residualCpm())).max().orElse(0);
            return new ProfilePicture(String.format(Locale.ROOT,
                "Stiffness along shaft %s: %d readings fitted within %.1f cpm", shaft.tag(), residuals.size(), worst),
                fitted, knots, usual, residuals);
        });
    }

    private static void add(StiffnessProfile profile, double place, List<StiffnessPoint> fitted,
                            List<StiffnessPoint> usual) {
        fitted.add(new StiffnessPoint(place, profile.stiffnessNm2(place),
            OptionalDouble.of(profile.standardUncertaintyNm2(place))));
        usual.add(StiffnessPoint.of(place, profile.defaultStiffnessNm2(place)));
    }
}
