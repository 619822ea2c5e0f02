package benchtwin.picture;

/**
 * Something to look at, 1,200 px wide and as high as it needs. The same picture gives the same text every time on one
 * machine; between machines the places of letters differ with the fonts, and so may the height.
 */
public sealed interface Picture permits BendCountPicture, HeadSketchPicture, HistoryPicture, LadderPicture, ProfilePicture,
    SetPicture, SetSheet {

    /**
     * What to see.
     * @return one line, the heading of the picture
     */
    String title();

    /**
     * The table behind the picture, for who cannot see it.
     * @return one sentence for each thing shown, with every name and number
     */
    String inWords();

    /**
     * The picture as SVG; its {@code title} and {@code desc} are {@link #title} and {@link #inWords}.
     * @return one {@code svg} element without an XML declaration, so that it can stand in a page; to be stored as UTF-8
     * @throws IllegalStateException in plain words, when this machine has no font to measure text with
     */
    String svg();

    /**
     * The picture as a bitmap.
     * @return a PNG file
     * @throws IllegalStateException in plain words, when this machine has no font to write with
     */
    byte[] png();
}
