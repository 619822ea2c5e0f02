package benchtwin.bench;

import benchtwin.club.AngleReading;
import benchtwin.club.Quantity;
import java.util.List;

/**
 * How a quantity is computed, in words, with the marks of {@code docs/handbook.md}.
 * @param name    what the formula is called
 * @param text    what it says
 * @param sources where each piece comes from: the piece and its mark, {@code published}, {@code common practice}, {@code memory},
 *                {@code geometry} or {@code ours}
 * @param section of the handbook
 */
public record Formula(String name, String text, List<String> sources, String section) {

    /** How uncertainties go through. */
    public static final Formula UNCERTAINTY = new Formula("Uncertainty to first order",
        "u² is the sum of (what one standard uncertainty of each thing moves)². What old club and new build share is moved in both at "
            + "once.", List.of("published: JCGM 100:2008, 5.1 and 5.2"), "7");
    /** How far off an option is. */
    public static final Formula MISS = new Formula("Miss and cost",
        "miss² is the weighted mean of (difference / tolerance)²; cost is miss² and effort; the least cost stands first.",
        List.of("ours: the miss and the weights", "memory: effort of a minute, a permanent step, a degree of tilt, a gram"), "7");
    /** The chance of first time right. */
    public static final Formula CHANCE = new Formula("Chance of reading inside tolerance",
        "The probability that a normal density with the prediction's covariance, and that of the readings that will judge the club, gives "
            + "inside every tolerance at once.",
        List.of("published: JCGM 106:2012, conformance probability", "published: Genz, J. Comput. Graph. Stat. 1 (1992) 141"), "7");
    /** How long work takes. */
    public static final Formula READY = new Formula("Time until ready",
        "Bench minutes of every step, and the longest cure or drying time once.", List.of("memory: minutes of a step, cure, drying"), "10");

    /** Several readings of one sitting. */
    static final Formula MEAN = new Formula("Mean of a sitting",
        "The newest sitting counts. Readings in one condition at one sitting are their mean; its ± is that of one over the root of how many.",
        List.of("published: NIST/SEMATECH e-Handbook of Statistical Methods, 2.4.4"), "13");
    /** Whether two values differ. */
    static final Formula DIFFERENCE = new Formula("Difference of two readings",
        "Second less first; u² = u² of the first + u² of the second + u² of what their gauges read apart. Beyond 2 u it is more than "
            + "measuring explains.", List.of("published: JCGM 100:2008, 5.1 and 6.3.3, the factor of two"), "13");
    /** A reading on another gauge. */
    static final Formula CARRIED = new Formula("A reading carried to another gauge",
        "The reading less what its gauge reads more than the other, from the offsets that were accepted, all of them reconciled at once.",
        List.of("published: Ghilani and Wolf, Adjustment Computations, chapter 12"), "13");
    /** A length by the 60-degree procedure, along the axis. */
    static final Formula AXIS_LENGTH = new Formula("From the 60° plane to the axis",
        "The length on the 60° plane and what the plane takes off at the sole, by the lie.",
        List.of("published: procedure for the measurement of club length, rev. 1.1, 2007", "geometry", "memory: sole centre and radius"), "3");
    /** A wood's loft read square, as it would be soled. */
    static final Formula SOLED_LOFT = new Formula("From a square loft to a soled one",
        "The face normal turned about the shaft axis until the sole lies flat, by face angle and lie.", List.of("geometry"), "1");
    /** A shaft's frequency where all are compared. */
    static final Formula RAW_FREQUENCY = new Formula("A shaft's frequency in the common condition",
        "The stiffness is scaled until the beam reads what was read, where it was read; the same beam is then clamped as all are.",
        List.of("published: Thomson, Theory of Vibration with Applications, app. D, the beam", "memory: stiffness goes with the diameter cubed",
            "common practice: clamp and tip mass"), "6");
    /** What a plan of sets costs. */
    static final Formula SET_COST = new Formula("Cost of a plan of sets",
        "Every club's miss² and effort; for each group a price a club times the squares of how far, in tolerances, its clubs are from their "
            + "mean; a price for each head and shaft model beyond the first.",
        List.of("ours: the prices", "memory: effort of a minute, a permanent step, a degree of tilt, a gram"), "7");
    /** What is proven of it. */
    static final Formula SET_PROOF = new Formula("What no choice of parts undercuts",
        "Every part is given a price. What the groups cost at the least under the prices, less the sum of the prices, is a bound on any "
            + "plan that uses no part twice. A group's least is itself proven: inside a box of means its cost is nowhere below the corners, "
            + "and boxes are split until bound and plan meet. The gap is (cost − bound) / cost.",
        List.of("published: Lagrangian relaxation, textbook", "ours: the boxes, derived in the handbook"), "7");
    /** What another part would bring. */
    static final Formula PRICE = new Formula("Price of a contested part",
        "In the proof every part has a price. That of a part several clubs want is about what another like it would take off the plan; "
            + "below 0.05 it is not named. A part that a club is left out for has none: it builds that club.",
        List.of("ours: what is named", "published: Lagrangian relaxation, textbook"), "7");
    /** What decisions cost. */
    static final Formula DECIDED = new Formula("What locked parts cost",
        "The cost of the plan less that of one searched for without them, in a part of the time; 0 where that one is no better.",
        List.of("ours"), "7");
    /** What to ask of the next bend. */
    static final Formula NEXT_BEND = new Formula("The ask with the best chance",
        "Got = share kept × asked − constant lost, with scatter: a Bayesian linear regression on every bend of this model this way, begun from "
            + "what such metal does. Of the asks on a grid of 0.05° the one most likely to end within tolerance, if it is safe enough.",
        List.of("memory: priors by metal, scatter", "ours: the share of cases that may pass the far end", "published: Bayesian regression, textbook"), "8");
    /** What a hosel still stands. */
    static final Formula HOSEL = new Formula("What a hosel has left",
        "The limit of its metal over a head's life, less every tilt that way, bending back included. Where what was bent is not recorded, the net "
            + "change since the head was made stands in.", List.of("memory: limits by metal"), "8");
    /** When a reading is asked about. */
    static final Formula ODD = new Formula("A reading that may be a slip",
        "It is asked about when it is farther from the last one than a club that was left alone ever is, and than five standard "
            + "uncertainties of a difference. A club not read before is held to what such clubs usually measure.",
        List.of("ours: both limits"), "12");

    public Formula {
        sources = List.copyOf(sources);
    }

    /**
     * The formula of a quantity.
     * @param quantity which
     * @param reading  how the angles are read
     * @param overGrip whether a frequency is read over the grip
     * @return name, words, sources
     */
    static Formula of(Quantity quantity, AngleReading reading, boolean overGrip) {
        return switch (quantity) {
            case LOFT -> loft(reading);
            case LIE -> new Formula("Lie after a tilt of the hosel", reading.isWood()
                ? "The angle between the tilted shaft axis and the ground."
                : "The angle of the tilted shaft axis in the upright plane, leading edge square.", List.of("geometry"), "4");
            case FACE -> new Formula("Face angle after a tilt of the hosel",
                "The angle as read, less the turn that points the tilted shaft at the player again.", List.of("geometry"), "4");
            case BOUNCE -> new Formula("Bounce after a tilt of the hosel", "The bounce as read, and the turn of the loft, one for one.",
                List.of("common practice: one for one", "geometry: the turn"), "4");
            case LENGTH -> new Formula("Playing length along the axis",
                "Cap, extension, cut shaft from butt to tip, bottom of the bore to the ground; a bend moves the ground point.",
                List.of("geometry", "memory: bend point, cap where it was not measured"), "3");
            case RULES_LENGTH -> new Formula("Length by the 60-degree procedure",
                "The playing length less what the plane at 60° takes off at the sole.",
                List.of("published: procedure for the measurement of club length, rev. 1.1, 2007", "memory: sole centre and radius"), "3");
            case SWING_WEIGHT -> new Formula("Swing weight", "Points = (moment about 14 in from the butt, in oz·in, less 161.0) / 1.75; the moment is "
                + "the sum of every part's mass times its distance.", List.of("common practice: the scale", "published: NIST SP 811, the units"), "5");
            case MOMENT_12_INCH -> new Formula("Moment about 12 in", "The sum of every part's mass times its distance from 12 in.",
                List.of("common practice", "published: NIST SP 811, the units"), "5");
            case TOTAL_MASS -> new Formula("Total mass", "The sum of every part's mass.", List.of("geometry"), "5");
            case BALANCE_POINT -> new Formula("Balance point", "The sum of mass times distance from the cap, over the mass.",
                List.of("geometry"), "5");
            case BUTT_INERTIA -> new Formula("Moment of inertia about the butt",
                "The sum of mass times distance squared, the shaft's own, the head's transverse inertia.", List.of("geometry"), "5");
            case FREQUENCY -> frequency(overGrip);
            case TORQUE -> new Formula("Torque of the trimmed shaft",
                "The torque as read, scaled by the twist of what is left from clamp to tip.", List.of("ours: torsion follows bending"), "6");
            case SHAFT_MASS -> new Formula("Mass of the trimmed shaft", "The density fitted to mass and balance point, over what is left.",
                List.of("ours: density grows evenly along the shaft"), "5");
            case SHAFT_BALANCE -> new Formula("Balance point of the trimmed shaft",
                "From the density fitted to mass and balance point, over what is left.",
                List.of("ours: density grows evenly along the shaft"), "5");
            case OFFSET -> new Formula("Offset after a bend", "The offset as recorded, less bend point times the sine of the turn.",
                List.of("geometry", "memory: bend point"), "4");
        };
    }

    private static Formula loft(AngleReading reading) {
        return switch (reading) {
            case SOLED -> new Formula("Soled loft", "The loft as read on the flat sole; a tilt of the hosel leaves it.", List.of("geometry"), "4");
            case SQUARE -> new Formula("Loft with the face square",
                "The face normal turned about the shaft axis until the face points at the target.", List.of("geometry"), "1");
            case EDGE -> new Formula("Loft after a tilt of the hosel", "The loft as read, and the turn of the leading edge held square.",
                List.of("geometry"), "4");
        };
    }

    private static Formula frequency(boolean overGrip) {
        List<String> always = List.of("published: Thomson, Theory of Vibration with Applications, app. D, the beam",
            "memory: stiffness goes with the diameter cubed");
        return new Formula("First mode of a clamped shaft with the head as a rigid body",
            "The stiffness is scaled until the model gives the frequency that was read, in the condition it was read in."
                + (overGrip ? " A reading over the grip is the bare one times the grip factor." : ""),
            overGrip ? List.of(always.get(0), always.get(1), "memory: grip factor, until own pairs teach it") : always, "6");
    }
}
