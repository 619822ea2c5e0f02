package benchtwin.rules;

import benchtwin.club.Category;
import benchtwin.club.LengthMethod;
import benchtwin.measure.Reading;
import benchtwin.mechanics.RulesLength;

/** A club's length as the rules take it, from how it was read or predicted. */
final class RulesLengths {

    /** How far the sole's centre may lie from the default, mm. Memory. */
    static final double SOLE_CENTRE_U_MM = 5;
    /** How far a sole's radius may be from the default, mm. Memory. */
    static final double SOLE_RADIUS_U_MM = 50;
    /**
     * What the published procedure may read less than the formula, mm: the hosel's radius (6 to 7 mm) times cot 60°, as the
     * hosel lies on the plane and not the axis. Our reading of the set-up, not checked against its drawing.
     */
    static final double READS_LESS_MM = 4;

    private RulesLengths() {
    }

    /**
     * A reading carried to the way the rules take it.
     * @param readAsWood whether its sole is a wood's
     * @param length     as read, mm
     * @param method     how
     * @param lie        its lie, degrees
     * @return mm
     */
    static RuledValue carried(boolean readAsWood, Reading length, LengthMethod method, Reading lie) {
        boolean byProcedure = method == LengthMethod.RULES60;
        double shorter = shorterByMm(lie.value(), readAsWood, 0, 0);
        double u = Math.hypot(length.standardUncertainty(),
            Math.hypot(lieMm(lie.value(), readAsWood, lie.standardUncertainty()), soleMm(lie.value(), readAsWood)));
        return byProcedure ? new RuledValue(length.value() + shorter, u, 0, words(length, method) + ", carried to the axis")
            : new RuledValue(length.value() - shorter, u, READS_LESS_MM, words(length, method) + ", carried to the 60° plane");
    }

    /** Whether a reading has to be carried, for which a lie is needed. */
    static boolean needsLie(Category category, LengthMethod method) {
        return (method == LengthMethod.RULES60) == (category == Category.PUTTER);
    }

    /** A reading that is the rules' own as it stands. */
    static RuledValue asRead(Reading length, LengthMethod method) {
        return new RuledValue(length.value(), length.standardUncertainty(), 0, words(length, method));
    }

    /**
     * From a prediction, which is by the procedure already but takes the sole's shape as known.
     * @param readAsWood whether its sole is a wood's
     * @param rulesMm    predicted, mm
     * @param lieDeg     predicted, degrees
     * @return mm
     */
    static RuledValue predicted(boolean readAsWood, Reading rulesMm, double lieDeg) {
        return new RuledValue(rulesMm.value(), Math.hypot(rulesMm.standardUncertainty(), soleMm(lieDeg, readAsWood)), READS_LESS_MM,
            "predicted");
    }

    private static String words(Reading length, LengthMethod method) {
        return RuledClub.read(length) + switch (method) {
            case AXIS -> " along the axis";
            case RULES60 -> " by the 60° procedure";
            case RULER -> " by the shop's ruler";
        };
    }

    private static double lieMm(double lieDeg, boolean wood, double uDeg) {
        return (shorterByMm(lieDeg + uDeg, wood, 0, 0) - shorterByMm(lieDeg - uDeg, wood, 0, 0)) / 2;
    }

    private static double soleMm(double lieDeg, boolean wood) {
        double ofCentre = shorterByMm(lieDeg, wood, SOLE_CENTRE_U_MM, 0) - shorterByMm(lieDeg, wood, 0, 0);
        double ofRadius = shorterByMm(lieDeg, wood, 0, SOLE_RADIUS_U_MM) - shorterByMm(lieDeg, wood, 0, 0);
        return Math.hypot(ofCentre, ofRadius);
    }

    private static double shorterByMm(double lieDeg, boolean wood, double centreOffMm, double radiusOffMm) {
        return RulesLength.shorterByMm(lieDeg, RulesLength.soleCentreMm(wood) + centreOffMm,
            RulesLength.SOLE_RADIUS_MM + radiusOffMm);
    }
}
