package benchtwin.web;

/** Entries of the navigation, in order. */
public enum Section {
    /** Today's jobs. */
    TODAY("Today", "/"),
    /** The players and their clubs. */
    PLAYERS("Players", "/players"),
    /** Plans of whole sets. */
    SETS("Sets", "/sets"),
    /** The parts. */
    STOCK("Stock", "/stock"),
    /** Bending. */
    BEND("Bend", "/bend"),
    /** None of them. */
    NONE("", "");

    private final String words;
    private final String path;

    Section(String words, String path) {
        this.words = words;
        this.path = path;
    }

    /**
     * What it is called.
     * @return as the navigation writes it
     */
    public String words() {
        return words;
    }

    /**
     * Where it begins.
     * @return a path
     */
    public String path() {
        return path;
    }
}
