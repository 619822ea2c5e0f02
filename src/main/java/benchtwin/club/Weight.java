package benchtwin.club;

/**
 * Weights of one kind in the drawer.
 * @param tag     its own tag
 * @param port    the port type it fits; {@code tip} for a tip weight
 * @param massG   mass of one, g, 0 or more
 * @param count   how many there are
 * @param keeping where they are kept
 */
public record Weight(String tag, String port, double massG, int count, Keeping keeping) {

    /** The port word of a tip weight. */
    public static final String TIP = "tip";

    public Weight {
        if (!(massG >= 0) || count < 0) {
            throw new IllegalArgumentException("weight %s: %d of %s g".formatted(tag, count, massG));
        }
    }
}
