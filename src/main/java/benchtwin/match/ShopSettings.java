package benchtwin.match;

import benchtwin.club.StepKind;
import benchtwin.club.Undo;
import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;

/**
 * What a workshop can set, and what its work costs in squared tolerances. All defaults: memory, changeable.
 * @param bendStepDeg        least change of an angle that a person can bend to, degrees
 * @param massStepG          least mass of tape or hot melt, g
 * @param lengthStepMm       least butt cut or extension, mm
 * @param tipTrimStepMm      step of tip trims, mm
 * @param tapeMaxG           most lead tape on a head, g
 * @param buttCutMaxMm       most that is cut from a trusted shaft's butt, mm
 * @param extensionMassG     mass of an extension, g
 * @param cureMinutes        full cure of the workshop's resin, minutes; as its maker says
 * @param dryMinutes         drying time under a grip, minutes
 * @param minutes            bench minutes of each kind of step
 * @param effortPerMinute    cost of a bench minute
 * @param effortPerPermanent cost of a step that cannot be undone
 * @param effortPerTiltDeg   cost of a degree of hosel tilt
 * @param effortPerGram      cost of a gram added
 */
public record ShopSettings(double bendStepDeg, double massStepG, double lengthStepMm, double tipTrimStepMm,
                           double tapeMaxG, double buttCutMaxMm, double extensionMassG, double cureMinutes,
                           double dryMinutes, Map<StepKind, Double> minutes, double effortPerMinute,
                           double effortPerPermanent, double effortPerTiltDeg, double effortPerGram) {

    /** The defaults. */
    public static final ShopSettings DEFAULT = new ShopSettings(0.1, 0.5, 1, 25.4 / 8, 6, 40, 5, 24 * 60, 2 * 60,
        Map.of(), 0.002, 0.05, 0.02, 0.005);

    public ShopSettings {
        EnumMap<StepKind, Double> all = new EnumMap<>(StepKind.class);
        for (StepKind kind : StepKind.values()) {
            all.put(kind, minutes.getOrDefault(kind, kind.defaultMinutes()));
        }
        minutes = Collections.unmodifiableMap(all);
        if (!(bendStepDeg > 0 && massStepG > 0 && lengthStepMm > 0 && tipTrimStepMm > 0)) {
            throw new IllegalArgumentException("the steps a person can set must be above 0");
        }
    }

    /**
     * The same with another resin.
     * @param fullCureMinutes full cure, minutes
     * @return a copy
     */
    public ShopSettings withCureMinutes(double fullCureMinutes) {
        return new ShopSettings(bendStepDeg, massStepG, lengthStepMm, tipTrimStepMm, tapeMaxG, buttCutMaxMm,
            extensionMassG, fullCureMinutes, dryMinutes, minutes, effortPerMinute, effortPerPermanent, effortPerTiltDeg,
            effortPerGram);
    }

    /**
     * The same with another step of length.
     * @param stepMm least butt cut or extension, mm, above 0
     * @return a copy
     */
    public ShopSettings withLengthStepMm(double stepMm) {
        return new ShopSettings(bendStepDeg, massStepG, stepMm, tipTrimStepMm, tapeMaxG, buttCutMaxMm, extensionMassG,
            cureMinutes, dryMinutes, minutes, effortPerMinute, effortPerPermanent, effortPerTiltDeg, effortPerGram);
    }

    /**
     * The same with another step of tip trims.
     * @param stepMm least tip trim, mm, above 0
     * @return a copy
     */
    public ShopSettings withTipTrimStepMm(double stepMm) {
        return new ShopSettings(bendStepDeg, massStepG, lengthStepMm, stepMm, tapeMaxG, buttCutMaxMm, extensionMassG,
            cureMinutes, dryMinutes, minutes, effortPerMinute, effortPerPermanent, effortPerTiltDeg, effortPerGram);
    }

    /**
     * Cost of a step's time and permanence.
     * @param kind which
     * @return squared tolerances
     */
    double effort(StepKind kind) {
        return effortPerMinute * minutes.get(kind)
            + (kind.undo() == Undo.NEVER ? effortPerPermanent : 0);
    }

    /**
     * Minutes to wait after a step.
     * @param kind which
     * @return minutes
     */
    double waitMinutes(StepKind kind) {
        return switch (kind.waitFor()) {
            case NONE -> 0;
            case CURE -> cureMinutes;
            case DRY -> dryMinutes;
        };
    }
}
