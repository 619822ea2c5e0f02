package benchtwin.club;

import benchtwin.measure.Reading;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * One shaft, as it lies in the drawer. Mass, balance point, torque and frequencies are those of the shaft as it lies:
 * a pulled shaft's trims only place it on the shape of the raw shaft. A sleeve or a grip on it is not part of them.
 * @param tag           its own tag
 * @param model         model name
 * @param material      graphite or steel
 * @param meantFor      the categories it is made for
 * @param madeForNumber for a taper shaft, the club number it was made for
 * @param rawLengthMm   length as made, before any cut, mm
 * @param massG         mass, g
 * @param balanceMm     balance point from the butt, mm
 * @param torqueDeg     twist under 1 ft·lbf, degrees
 * @param tipMm         tip diameter, mm
 * @param tipKind       parallel, taper or over-hosel
 * @param buttMm        butt diameter, mm
 * @param parallelTipMm length of the parallel tip as made, mm, 0 for a taper tip
 * @param tipCutMm      cut from the tip so far, mm
 * @param buttCutMm     cut from the butt so far, mm
 * @param frequencies   frequency readings
 * @param sleeveOn      the sleeve bonded to its tip
 * @param gripOn        the grip on it
 * @param orientation   how its markings lie
 * @param pulls         times it has been pulled
 * @param condition     new or pulled
 * @param keeping       for whom and where it is kept
 */
public record Shaft(String tag, String model, ShaftMaterial material, Set<Category> meantFor,
                    Optional<String> madeForNumber, double rawLengthMm, Optional<Reading> massG,
                    Optional<Reading> balanceMm, Optional<Reading> torqueDeg, double tipMm, TipKind tipKind,
                    double buttMm, double parallelTipMm, double tipCutMm, double buttCutMm,
                    List<FrequencyReading> frequencies, Optional<String> sleeveOn, Optional<String> gripOn,
                    Optional<String> orientation, int pulls, ShaftCondition condition, Keeping keeping) {

    public Shaft {
        meantFor = Set.copyOf(meantFor);
        frequencies = List.copyOf(frequencies);
        if (!(rawLengthMm > 0)) {
            throw new IllegalArgumentException("shaft %s: raw length %s mm is not above 0".formatted(tag, rawLengthMm));
        }
        if (!(tipCutMm >= 0 && buttCutMm >= 0 && tipCutMm + buttCutMm < rawLengthMm)) {
            throw new IllegalArgumentException("shaft %s: cuts of %.1f and %.1f mm do not fit a %.1f mm shaft"
                .formatted(tag, tipCutMm, buttCutMm, rawLengthMm));
        }
        if (!(parallelTipMm >= 0 && parallelTipMm < rawLengthMm)) {
            throw new IllegalArgumentException("shaft %s: parallel tip %.1f mm does not fit a %.1f mm shaft"
                .formatted(tag, parallelTipMm, rawLengthMm));
        }
        if (!(tipMm > 0 && buttMm > 0)) {
            throw new IllegalArgumentException("shaft %s: diameters must be above 0".formatted(tag));
        }
        if (balanceMm.isPresent() && !(balanceMm.get().value() > 0
            && balanceMm.get().value() < rawLengthMm - tipCutMm - buttCutMm)) {
            throw new IllegalArgumentException("shaft %s: balance point %.1f mm is past its tip"
                .formatted(tag, balanceMm.get().value()));
        }
    }

    /**
     * The same with other frequency readings.
     * @param others the readings
     * @return a copy
     */
    public Shaft withFrequencies(List<FrequencyReading> others) {
        return new Shaft(tag, model, material, meantFor, madeForNumber, rawLengthMm, massG, balanceMm, torqueDeg, tipMm,
            tipKind, buttMm, parallelTipMm, tipCutMm, buttCutMm, others, sleeveOn, gripOn, orientation, pulls, condition,
            keeping);
    }

    /**
     * Length as it lies.
     * @return raw length less both cuts, mm
     */
    public double lengthMm() {
        return rawLengthMm - tipCutMm - buttCutMm;
    }

    /**
     * Parallel tip that is left.
     * @return mm, 0 or more
     */
    public double parallelTipLeftMm() {
        return Math.max(0, parallelTipMm - tipCutMm);
    }
}
