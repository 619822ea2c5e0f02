package benchtwin.bend;

import benchtwin.club.Quantity;
import benchtwin.club.Word;
import benchtwin.mechanics.HoselTilt;

/** The four ways a hosel tilts. Each uses its own metal and springs back in its own way. */
public enum BendDirection implements Word {
    /** Lie up. */
    UPRIGHT("upright", true, 1),
    /** Lie down. */
    FLAT("flat", true, -1),
    /** The butt toward the target: an iron gets weaker, a wood closes. */
    FORWARD("forward", false, 1),
    /** The butt away from the target: an iron gets stronger, a wood opens. */
    BACK("back", false, -1);

    private final String word;
    private final boolean lie;
    private final int sign;

    BendDirection(String word, boolean lie, int sign) {
        this.word = word;
        this.lie = lie;
        this.sign = sign;
    }

    @Override
    public String word() {
        return word;
    }

    /**
     * Whether it moves the lie.
     * @return true for upright and flat
     */
    public boolean isLie() {
        return lie;
    }

    /**
     * The direction with this name.
     * @param lie  whether the lie is to move
     * @param more whether upright (or forward) rather than flat (or back)
     * @return never null
     */
    public static BendDirection of(boolean lie, boolean more) {
        if (lie) {
            return more ? UPRIGHT : FLAT;
        }
        return more ? FORWARD : BACK;
    }

    /**
     * So much of a tilt as goes this way.
     * @param tilt any tilt
     * @return degrees; below 0 for one that goes the other way
     */
    public double part(HoselTilt tilt) {
        return sign * (lie ? tilt.uprightDeg() : tilt.forwardDeg());
    }

    /**
     * A tilt this way and no other.
     * @param deg how far, degrees
     * @return the tilt
     */
    public HoselTilt tilt(double deg) {
        return lie ? new HoselTilt(sign * deg, 0) : new HoselTilt(0, sign * deg);
    }

    /**
     * The same as the bench calls it, by what it does to the angle that is read.
     * @param wood whether the head is read as a wood
     * @return upright, flat, weak, strong, closed or open
     */
    public String benchWord(boolean wood) {
        return switch (this) {
            case UPRIGHT, FLAT -> word;
            case FORWARD -> wood ? "closed" : "weak";
            case BACK -> wood ? "open" : "strong";
        };
    }

    /**
     * The angle it is asked for and read in.
     * @param wood whether the head is read as a wood
     * @return lie, face or loft
     */
    public Quantity quantity(boolean wood) {
        if (lie) {
            return Quantity.LIE;
        }
        return wood ? Quantity.FACE : Quantity.LOFT;
    }
}
