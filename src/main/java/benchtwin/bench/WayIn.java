package benchtwin.bench;

/** How somebody came to the bench. What they are told to do is said in the words of that way; all else is alike. */
public enum WayIn {
    /** By a command, with options. */
    LINE,
    /** By a page, with fields and buttons. */
    PAGES
}
