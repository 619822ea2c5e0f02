package benchtwin.club;

/** A thing with one fixed word for it in files, on screen and in JSON. */
public interface Word {

    /**
     * The word as files and screens write it, lower case.
     * @return never empty
     */
    String word();
}
