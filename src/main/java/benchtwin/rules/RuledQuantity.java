package benchtwin.rules;

import benchtwin.club.Word;

/** What the published limits are about, in the order in which it is shown. */
public enum RuledQuantity implements Word {
    /** Length by the 60-degree procedure, mm; a putter's along the axis to the sole. */
    LENGTH("length", "mm", 1, "read its length"),
    /** Volume of a wood's head, cm³. */
    VOLUME("volume", "cm³", 0, "read its volume by what it displaces in water"),
    /** Inertia of a wood's head about the vertical axis through its centre of gravity, g·cm². */
    VERTICAL_INERTIA("vertical inertia", "g·cm²", 0, "read its inertia about the vertical axis"),
    /** A wood's head from heel to toe, mm. */
    HEEL_TO_TOE("heel to toe", "mm", 1, "measure from heel to toe with the head soled at its lie"),
    /** A wood's head, heel to toe less face to back, mm. */
    HEEL_TO_TOE_OVER_FACE_TO_BACK("heel to toe over depth", "mm", 1,
        "measure heel to toe and face to back with the head soled at its lie"),
    /** A wood's head from the sole to the top of the crown, mm. */
    SOLE_TO_CROWN("sole to crown", "mm", 2, "measure from the sole to the top of the crown"),
    /** Characteristic time of a wood's face by the pendulum test, µs. */
    CHARACTERISTIC_TIME("characteristic time", "µs", 0, "read its characteristic time by the pendulum test"),
    /** Loft of a putter, degrees. */
    PUTTER_LOFT("putter's loft", "°", 2, "read its loft"),
    /** How far a putter's shaft leans from the vertical, degrees: 90 less its lie. */
    SHAFT_OFF_VERTICAL("shaft off vertical", "°", 2, "read its lie"),
    /** A putter's neck, from its top to the sole along the axis, mm. */
    PUTTER_NECK("putter's neck", "mm", 1, "measure its neck along the axis, from its top to the sole");

    private final String word;
    private final String unit;
    private final int decimals;
    private final String howToMeasure;

    RuledQuantity(String word, String unit, int decimals, String howToMeasure) {
        this.word = word;
        this.unit = unit;
        this.decimals = decimals;
        this.howToMeasure = howToMeasure;
    }

    @Override
    public String word() {
        return word;
    }

    /**
     * The unit of its values.
     * @return as a screen writes it
     */
    public String unit() {
        return unit;
    }

    /** Whether it is measured on a head alone. */
    boolean isOfHead() {
        return this != LENGTH && this != PUTTER_LOFT && this != SHAFT_OFF_VERTICAL;
    }

    /**
     * How many decimals its values are shown with.
     * @return 0 or more
     */
    public int decimals() {
        return decimals;
    }

    /**
     * What to do where it was never measured.
     * @return a sentence in the imperative, without capital and stop
     */
    public String howToMeasure() {
        return howToMeasure;
    }
}
