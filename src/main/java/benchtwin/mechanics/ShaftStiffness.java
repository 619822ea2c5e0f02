package benchtwin.mechanics;

import benchtwin.club.FrequencyReading;
import benchtwin.club.Shaft;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What a shaft's own frequency readings say of its stiffness.
 *
 * <p>Readings without clamp and free length are left out and named. Those in one condition are combined. One or two free
 * lengths scale the default shape; three or more fit the shaft its own profile ({@link ProfileFit}), if the shaft was
 * weighed. The result is one reading, in the condition of the longest free length, that stands for them all. Immutable.
 */
public final class ShaftStiffness {

    /** Free lengths nearer than this tell nothing apart, mm. Ours. */
    private static final double DISTINCT_MM = 5;
    private static final int LEAST_FOR_PROFILE = 3;
    /** A reading so many standard deviations from what the others say is to be taken again. Ours. */
    private static final double DOUBTFUL = 3;

    private final Shaft shaft;
    private final GripFactor grip;
    private final List<CombinedReading> readings;
    private final TaperedTube tube;
    private final ProfileFit fit;
    private final CombinedReading anchor;
    private final List<String> notes;

    private ShaftStiffness(Shaft shaft, List<FrequencyReading> from, GripFactor grip) {
        this.shaft = shaft;
        this.grip = grip;
        tube = new TaperedTube(shaft.tipMm(), shaft.buttMm(), shaft.parallelTipMm(), shaft.rawLengthMm());
        List<String> found = new ArrayList<>(0);
        readings = joinable(CombinedReading.of(shaft, from, found), found);
        if (readings.size() <= 1) {
            fit = null;
            anchor = readings.isEmpty() ? null : readings.get(0);
        } else {
            LyingShaft plain = LyingShaft.of(shaft, tube);
            LevelFit level = LevelFit.of(plain, readings, grip);
            int lengths = freeLengths();
            fit = lengths < LEAST_FOR_PROFILE ? null : ProfileFit.fitted(plain, readings, level.root(), lengths, grip);
            anchor = fit == null ? anchor(plain, level) : anchor(fit);
        }
        if (fit != null) {
            found.add("shaft %s: stiffness profile fitted to its readings at %d free lengths"
                .formatted(shaft.tag(), fit.knotMm().length));
            doubt(found);
        }
        notes = List.copyOf(found);
    }

    /** All of them, or the longest alone where there is no mass to compute the others with. */
    private List<CombinedReading> joinable(List<CombinedReading> usable, List<String> found) {
        if (usable.size() <= 1 || shaft.massG().isPresent()) {
            return List.copyOf(usable);
        }
        CombinedReading only = longest(usable);
        found.add("shaft %s: without its mass its readings cannot be joined; only the one at %.0f mm is used"
            .formatted(shaft.tag(), only.freeLengthMm()));
        return List.of(only);
    }

    private CombinedReading anchor(LyingShaft plain, LevelFit level) {
        CombinedReading where = longest(readings);
        double cpm = level.root() * plain.unitCpm(where.freeLengthMm(), where.tipMassG()) * (allOverGrip() ? grip.value() : 1);
        return at(where, cpm, cpm * level.relativeUncertainty());
    }

    private CombinedReading anchor(ProfileFit profile) {
        CombinedReading where = longest(readings);
        return at(where, profile.cpm(where.freeLengthMm(), where.tipMassG(), allOverGrip()),
            profile.uncertaintyCpm(where.freeLengthMm(), where.tipMassG(), allOverGrip()));
    }

    private CombinedReading at(CombinedReading where, double cpm, double u) {
        return new CombinedReading(where.freeLengthMm(), where.tipMassG(), allOverGrip(), cpm, u, where.count());
    }

    /** Then the grip factor is left to be applied where it is shared with what else was read over a grip. */
    private boolean allOverGrip() {
        return readings.stream().allMatch(CombinedReading::overGrip);
    }

    /** Names the reading that fits the others worst, if it does badly: a wrong one drags its neighbours along. */
    private void doubt(List<String> found) {
        double worst = DOUBTFUL;
        String sentence = null;
        for (CombinedReading reading : readings) {
            double[] away = fit.fromTheOthers(reading);
            if (away[1] > worst) {
                worst = away[1];
                sentence = "shaft %s: its reading at %.0f mm lies %.1f cpm from what the others say; read it again"
                    .formatted(shaft.tag(), reading.freeLengthMm(), away[0]);
            }
        }
        if (sentence != null) {
            found.add(sentence);
        }
    }

    /**
     * Works out a shaft's stiffness.
     * @param shaft  the shaft
     * @param factor how the machine reads over a grip
     * @return what its readings say; nothing, if none can be used
     */
    public static ShaftStiffness of(Shaft shaft, GripFactor factor) {
        return new ShaftStiffness(shaft, shaft.frequencies(), factor);
    }

    /** What some of a shaft's readings say. */
    static ShaftStiffness of(Shaft shaft, List<FrequencyReading> from, GripFactor factor) {
        return new ShaftStiffness(shaft, from, factor);
    }

    /** The longest free length, on a bare butt if there is a choice. */
    private static CombinedReading longest(List<CombinedReading> readings) {
        CombinedReading best = readings.get(0);
        for (CombinedReading reading : readings) {
            double longer = reading.freeLengthMm() - best.freeLengthMm();
            if (longer > DISTINCT_MM || longer > -DISTINCT_MM && best.overGrip() && !reading.overGrip()) {
                best = reading;
            }
        }
        return best;
    }

    private int freeLengths() {
        double[] sorted = readings.stream().mapToDouble(CombinedReading::freeLengthMm).sorted().toArray();
        int count = 1;
        double last = sorted[0];
        for (double length : sorted) {
            if (length - last >= DISTINCT_MM) {
                count++;
                last = length;
            }
        }
        return count;
    }

    /**
     * Whether any reading could be used.
     * @return false when the stiffness is unknown
     */
    public boolean isKnown() {
        return anchor != null;
    }

    /**
     * The readings that were used, one for each condition, and what the fit makes of them.
     * @return in the order of the record; empty when none could be used
     */
    public List<ReadingFit> readings() {
        return readings.stream().map(r -> new ReadingFit(r.freeLengthMm(), r.tipMassG(), r.overGrip(), r.count(), r.cpm(),
            r.standardUncertaintyCpm(), readings.size() == 1 ? r.cpm() : computedCpm(r))).toList();
    }

    private double computedCpm(CombinedReading reading) {
        double bare = root() * lying().unitCpm(reading.freeLengthMm(), reading.tipMassG());
        return reading.overGrip() ? bare * grip.value() : bare;
    }

    /**
     * The shaft's own profile.
     * @return present when it was read at three or more free lengths
     */
    public Optional<StiffnessProfile> profile() {
        return Optional.ofNullable(fit).map(f -> new StiffnessProfile(f, lying()));
    }

    /**
     * What a reader should know of the readings.
     * @return sentences, possibly none
     */
    public List<String> notes() {
        return notes;
    }

    /**
     * What the shaft as it lies would read on its bare butt in a common condition.
     * @param clampMm  butt in the clamp, mm, above 0 and below the shaft's length
     * @param tipMassG mass on the tip, g, 0 or more
     * @return cpm; empty when the stiffness is unknown, or the shaft was not weighed and was read otherwise
     * @throws IllegalArgumentException when the clamp leaves no shaft free
     */
    public OptionalDouble carriedCpm(double clampMm, double tipMassG) {
        double free = freeMm(clampMm, tipMassG);
        if (anchor == null) {
            return OptionalDouble.empty();
        }
        double bareAnchor = anchor.cpm() / (anchor.overGrip() ? grip.value() : 1);
        if (anchor.freeLengthMm() == free && anchor.tipMassG() == tipMassG) {
            return OptionalDouble.of(bareAnchor);
        }
        return known(root() * lying().unitCpm(free, tipMassG));
    }

    /**
     * How sure {@link #carriedCpm} is: the readings' uncertainty carried along, the grip factor's for a reading over a grip,
     * and what the shape between the two conditions may be wrong by.
     * @param clampMm  butt in the clamp, mm, above 0 and below the shaft's length
     * @param tipMassG mass on the tip, g, 0 or more
     * @return standard uncertainty, cpm; empty when the frequency is, or the shaft was not weighed
     * @throws IllegalArgumentException when the clamp leaves no shaft free
     */
    public OptionalDouble carriedUncertaintyCpm(double clampMm, double tipMassG) {
        double free = freeMm(clampMm, tipMassG);
        if (anchor == null || shaft.massG().isEmpty()) {
            return OptionalDouble.empty();
        }
        ProfileFit basis = fit != null ? fit
            : ProfileFit.assumed(lying(), List.of(anchor), root(), LEAST_FOR_PROFILE, grip);
        return known(basis.uncertaintyCpm(free, tipMassG, false));
    }

    private double freeMm(double clampMm, double tipMassG) {
        if (!(clampMm > 0 && clampMm < shaft.lengthMm() && tipMassG >= 0)) {
            throw new IllegalArgumentException("shaft %s of %.0f mm cannot be read in a clamp of %s mm with %s g on its tip"
                .formatted(shaft.tag(), shaft.lengthMm(), clampMm, tipMassG));
        }
        return shaft.lengthMm() - clampMm;
    }

    private static OptionalDouble known(double value) {
        return Double.isNaN(value) ? OptionalDouble.empty() : OptionalDouble.of(value);
    }

    private LyingShaft lying() {
        return LyingShaft.of(shaft, shape());
    }

    /** √scale on the shape, bare. */
    private double root() {
        return fit != null ? fit.root() : anchor.cpm() / (anchor.overGrip() ? grip.value() : 1)
            / lying().unitCpm(anchor.freeLengthMm(), anchor.tipMassG());
    }

    /** The shape to use, of the raw shaft. */
    StiffnessShape shape() {
        return fit != null ? fit.shape() : tube;
    }

    /** The one reading that stands for all. */
    Optional<CombinedReading> anchor() {
        return Optional.ofNullable(anchor);
    }
}
