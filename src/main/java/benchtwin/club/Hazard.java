package benchtwin.club;

/** What in a step can hurt somebody; each has its caution. */
public enum Hazard {
    /** Bending metal. */
    BEND("Bending: wear eye protection; support the head in the fixture made for it; never bend a cracked or unknown "
        + "head; stop at the limit. Castings can break without warning."),
    /** Heat on a hosel. */
    HEAT("Heat: too much ruins graphite, so pull straight with the least heat. Ventilate: resin fumes and solvents are "
        + "harmful, and solvents catch fire."),
    /** Cutting, grinding or reaming. */
    CUT("Cutting, reaming, grinding: carbon, titanium, lead and steel dusts each need the right mask. Titanium dust burns; "
        + "use water or extraction as the maker says."),
    /** Resin. */
    BOND("Bonding: wear gloves, resin sensitises skin. Nobody swings the club before the full cure at the resin maker's "
        + "time and temperature."),
    /** Solvent under a grip. */
    SOLVENT("Solvents: ventilate, keep flames and sparks away, wear gloves."),
    /** Lead tape. */
    LEAD("Lead tape: wash hands after handling it; never sand or burn it."),
    /** Hot glue. */
    HOT_MELT("Hot melt: it burns skin; wear gloves and let it cool before the club is moved.");

    /** What comes before every caution. */
    public static final String FIRST =
        "The maker's instructions and limits, local codes and licensed practice come first.";

    private final String caution;

    Hazard(String caution) {
        this.caution = caution;
    }

    /**
     * The caution to print where the work is.
     * @return one or more sentences
     */
    public String caution() {
        return caution;
    }
}
