package benchtwin.picture;

/** A picture of one player's set in one quantity. */
public sealed interface SetPicture extends Picture permits FrequencyLinePicture, SwingPicture, LoftGapPicture {

    /**
     * Whose set.
     * @return one line
     */
    String player();

    /**
     * What to see, without the player: the quantity and how many clubs are in tolerance.
     * @return part of a sentence, for instance {@code swing weight across the set, 12 of 13 clubs in tolerance}
     */
    String finding();

    @Override
    default String title() {
        return player() + ": " + finding();
    }

    @Override
    default String svg() {
        Fonts.require();
        return SvgSheet.text(this, SetSheetDrawing.alone(this));
    }

    @Override
    default byte[] png() {
        Fonts.require();
        return PngSheet.bytes(SetSheetDrawing.alone(this));
    }
}
