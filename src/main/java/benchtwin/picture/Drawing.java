package benchtwin.picture;

/** A picture laid out, ready to be drawn on any sheet. */
interface Drawing {

    /** Height it needs, px. */
    int heightPx();

    /** Draws everything but the paper. */
    void draw(Sheet sheet);
}
