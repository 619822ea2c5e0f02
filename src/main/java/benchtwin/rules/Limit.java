package benchtwin.rules;

import static benchtwin.rules.LimitScope.ALL_BUT_PUTTERS;
import static benchtwin.rules.LimitScope.EVERY_CLUB;
import static benchtwin.rules.LimitScope.PUTTERS;
import static benchtwin.rules.LimitScope.WOODS;

import benchtwin.club.Category;
import benchtwin.club.Word;
import benchtwin.measure.Units;
import java.util.Arrays;
import java.util.List;

/**
 * Every equipment limit the program knows, with its source. The figures are published unless their source says memory.
 *
 * <p>An allowance is what the published test adds to its limit before it turns a head away. A club is judged with it, and
 * what it is against the limit alone is shown beside that.
 */
public enum Limit implements Word {
    /** At least 18 in, every club. */
    LENGTH_LEAST("length-least", RuledQuantity.LENGTH, Side.LEAST, Units.mm(18), 0, EVERY_CLUB, Source.LENGTH),
    /** At most 48 in, putters excepted. */
    LENGTH_MOST("length-most", RuledQuantity.LENGTH, Side.MOST, Units.mm(48), 0, ALL_BUT_PUTTERS, Source.LENGTH),
    /** At most 46 in where the local rule is in force, putters excepted. */
    LENGTH_MOST_LOCAL("length-most-local", RuledQuantity.LENGTH, Side.MOST, Units.mm(46), 0, ALL_BUT_PUTTERS,
        Source.LOCAL_LENGTH),
    /** At most 460 cm³, and 10 allowed. */
    VOLUME_MOST("volume-most", RuledQuantity.VOLUME, Side.MOST, 460, 10, WOODS, Source.WOOD_HEAD),
    /** At most 5900 g·cm², and 100 allowed. */
    INERTIA_MOST("vertical-inertia-most", RuledQuantity.VERTICAL_INERTIA, Side.MOST, 5900, 100, WOODS, Source.WOOD_HEAD),
    /** At most 127 mm. */
    HEEL_TO_TOE_MOST("heel-to-toe-most", RuledQuantity.HEEL_TO_TOE, Side.MOST, 127, 0, WOODS, Source.WOOD_HEAD),
    /** Longer from heel to toe than from face to back: equal is not enough. */
    LONGER_THAN_DEEP("longer-than-deep", RuledQuantity.HEEL_TO_TOE_OVER_FACE_TO_BACK, Side.ABOVE, 0, 0, WOODS,
        Source.WOOD_HEAD),
    /** At most 71.12 mm (2.8 in). */
    SOLE_TO_CROWN_MOST("sole-to-crown-most", RuledQuantity.SOLE_TO_CROWN, Side.MOST, 71.12, 0, WOODS, Source.WOOD_HEAD),
    /** At most 239 µs, and 18 allowed. */
    CHARACTERISTIC_TIME_MOST("characteristic-time-most", RuledQuantity.CHARACTERISTIC_TIME, Side.MOST, 239, 18, WOODS,
        Source.PENDULUM),
    /** At least −15°. */
    PUTTER_LOFT_LEAST("putter-loft-least", RuledQuantity.PUTTER_LOFT, Side.LEAST, -15, 0, PUTTERS, Source.PUTTER),
    /** At most 10°. */
    PUTTER_LOFT_MOST("putter-loft-most", RuledQuantity.PUTTER_LOFT, Side.MOST, 10, 0, PUTTERS, Source.PUTTER),
    /** At least 10° off the vertical. */
    SHAFT_OFF_VERTICAL_LEAST("shaft-off-vertical-least", RuledQuantity.SHAFT_OFF_VERTICAL, Side.LEAST, 10, 0, PUTTERS,
        Source.PUTTER),
    /** At most 127 mm. */
    PUTTER_NECK_MOST("putter-neck-most", RuledQuantity.PUTTER_NECK, Side.MOST, 127, 0, PUTTERS, Source.PUTTER);

    /** On which side of the limit a club has to be. */
    public enum Side implements Word {
        /** At the limit or below. */
        MOST("at most"),
        /** At the limit or above. */
        LEAST("at least"),
        /** Above the limit. */
        ABOVE("above");

        private final String word;

        Side(String word) {
            this.word = word;
        }

        @Override
        public String word() {
            return word;
        }
    }

    /** Where the figures come from, with its mark. */
    public enum Source {
        /** Length. */
        LENGTH("Equipment Rules Part 2, 1c; procedure for the measurement of club length, rev. 1.1, 2007", true),
        /** The local rule on length. */
        LOCAL_LENGTH("Model Local Rule G-10", true),
        /** A wood's head. */
        WOOD_HEAD("Equipment Rules Part 2, 4b", true),
        /** The pendulum test. */
        PENDULUM("pendulum test protocol of the governing bodies", false),
        /** A putter. */
        PUTTER("Equipment Rules Part 2, 1a, 1d and 2c", true);

        private final String title;
        private final boolean published;

        Source(String title, boolean published) {
            this.title = title;
            this.published = published;
        }

        /**
         * The document.
         * @return its name and clause
         */
        public String title() {
            return title;
        }

        /**
         * How the figure got here.
         * @return {@code published}, or {@code memory}: recalled and not looked up
         */
        public String mark() {
            return published ? "published" : "memory";
        }
    }

    private final String word;
    private final RuledQuantity quantity;
    private final Side side;
    private final double value;
    private final double allowance;
    private final LimitScope scope;
    private final Source source;

    Limit(String word, RuledQuantity quantity, Side side, double value, double allowance, LimitScope scope, Source source) {
        this.word = word;
        this.quantity = quantity;
        this.side = side;
        this.value = value;
        this.allowance = allowance;
        this.scope = scope;
        this.source = source;
    }

    /**
     * The limits a club is held against.
     * @param category   the club's
     * @param readAsWood whether its angles are read as a wood's
     * @return in showing order
     */
    public static List<Limit> of(Category category, boolean readAsWood) {
        return Arrays.stream(values()).filter(limit -> limit.scope.covers(category, readAsWood)).toList();
    }

    @Override
    public String word() {
        return word;
    }

    /**
     * What it limits.
     * @return a quantity
     */
    public RuledQuantity quantity() {
        return quantity;
    }

    /**
     * On which side of it a club has to be.
     * @return at most, at least or above
     */
    public Side side() {
        return side;
    }

    /**
     * The limit alone.
     * @return in the quantity's unit
     */
    public double value() {
        return value;
    }

    /**
     * What the published test adds to it.
     * @return in the quantity's unit, 0 for none
     */
    public double allowance() {
        return allowance;
    }

    /**
     * Whether it holds only where a committee put the local rule into force.
     * @return true for the local rule on length
     */
    public boolean isLocal() {
        return source == Source.LOCAL_LENGTH;
    }

    /**
     * Where its figures come from.
     * @return document and mark
     */
    public Source source() {
        return source;
    }

    /**
     * How far inside a value is.
     * @param measured in the quantity's unit
     * @return the distance to the limit alone; below 0 outside
     */
    public double margin(double measured) {
        return side == Side.MOST ? value - measured : measured - value;
    }
}
