package benchtwin.match;

/**
 * What a plan may change, apart from its parts. What it may not stays as it is.
 * @param settings turn a sleeve
 * @param bends    bend a hosel
 * @param mass     weights, tape and hot melt at the head, a weight in a tip that is out
 * @param butt     cut or extend the butt
 */
record Levers(boolean settings, boolean bends, boolean mass, boolean butt) {

    /** Everything. */
    static final Levers ALL = new Levers(true, true, true, true);
}
