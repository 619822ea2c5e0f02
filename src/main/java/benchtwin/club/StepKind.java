package benchtwin.club;

import java.util.Optional;

/**
 * The kinds of step, with bench minutes and whether each can be undone. Minutes: memory, changeable per workshop. Time to
 * wait (cure, dry) is counted apart, because it runs beside other work.
 */
public enum StepKind implements Word {
    /** Turn a sleeve to another setting. */
    SLEEVE_SETTING("sleeve setting", 1, Undo.FREELY, Wait.NONE, null),
    /** Change a weight screw or insert. */
    WEIGHT_SCREW("weight screw", 1, Undo.FREELY, Wait.NONE, null),
    /** Screw another head on the same sleeve. */
    SWAP_HEAD("other head on the same sleeve", 2, Undo.FREELY, Wait.NONE, null),
    /** Lead tape on the head. */
    LEAD_TAPE("lead tape", 1, Undo.FREELY, Wait.NONE, Hazard.LEAD),
    /** Bend one angle of an iron. */
    BEND_IRON("bend one iron angle", 3, Undo.COSTS_METAL, Wait.NONE, Hazard.BEND),
    /** Bend a metal wood. */
    BEND_WOOD("bend a metal wood", 12, Undo.COSTS_METAL, Wait.NONE, Hazard.BEND),
    /** Hot melt into the head. */
    HOT_MELT("hot melt", 10, Undo.PARTLY, Wait.NONE, Hazard.HOT_MELT),
    /** Pull a graphite shaft. */
    PULL_GRAPHITE("pull a graphite shaft", 8, Undo.COSTS_A_PULL, Wait.NONE, Hazard.HEAT),
    /** Pull a steel shaft. */
    PULL_STEEL("pull a steel shaft", 4, Undo.COSTS_A_PULL, Wait.NONE, Hazard.HEAT),
    /** Prepare and bond a shaft. */
    BOND("prepare and bond", 10, Undo.COSTS_A_PULL, Wait.CURE, Hazard.BOND),
    /** A shim between tip and bore. */
    SHIM("shim", 10, Undo.COSTS_A_PULL, Wait.CURE, Hazard.BOND),
    /** Ream a bore. Its time is taken as a grind's. */
    REAM("ream the bore", 15, Undo.NEVER, Wait.NONE, Hazard.CUT),
    /** A weight in the tip, with the shaft out. */
    TIP_WEIGHT("tip weight", 10, Undo.COSTS_A_PULL, Wait.CURE, Hazard.BOND),
    /** Cut the tip. */
    TIP_TRIM("tip trim", 5, Undo.NEVER, Wait.NONE, Hazard.CUT),
    /** Cut the butt. */
    BUTT_CUT("butt cut", 5, Undo.NEVER, Wait.NONE, Hazard.CUT),
    /** Extend the butt. */
    EXTENSION("extension at the butt", 8, Undo.WITH_WORK, Wait.CURE, Hazard.BOND),
    /** Take off or put on a grip. */
    REGRIP("regrip", 5, Undo.GRIP_OFTEN_LOST, Wait.DRY, Hazard.SOLVENT);

    /** What has to be waited for after a step. */
    public enum Wait {
        /** Nothing. */
        NONE,
        /** Full cure of the resin. */
        CURE,
        /** Solvent to dry under a grip. */
        DRY
    }

    private final String word;
    private final double defaultMinutes;
    private final Undo undo;
    private final Wait wait;
    private final Hazard hazard;

    StepKind(String word, double defaultMinutes, Undo undo, Wait wait, Hazard hazard) {
        this.word = word;
        this.defaultMinutes = defaultMinutes;
        this.undo = undo;
        this.wait = wait;
        this.hazard = hazard;
    }

    @Override
    public String word() {
        return word;
    }

    /**
     * Bench minutes unless the workshop says otherwise.
     * @return minutes, above 0
     */
    public double defaultMinutes() {
        return defaultMinutes;
    }

    /**
     * Whether the step can be taken back.
     * @return never null
     */
    public Undo undo() {
        return undo;
    }

    /**
     * What has to be waited for afterwards.
     * @return never null
     */
    public Wait waitFor() {
        return wait;
    }

    /**
     * What in it can hurt somebody.
     * @return empty for a step that is harmless
     */
    public Optional<Hazard> hazard() {
        return Optional.ofNullable(hazard);
    }
}
