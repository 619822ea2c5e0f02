package benchtwin.club;

/** Where a mass is added to a club. */
public enum MassPlace implements Word {
    /** A weight in a port of the head: counted at the head's centre of gravity. */
    PORT("port"),
    /** Lead tape on the head: counted at the head's centre of gravity. */
    HEAD_TAPE("lead tape"),
    /** Hot melt inside the head: counted at the head's centre of gravity. */
    HOT_MELT("hot melt"),
    /** A weight in the tip of the shaft: counted at half the insertion. */
    TIP("tip weight"),
    /** Tape under the grip: counted at half the grip. */
    GRIP_TAPE("grip tape"),
    /** A weight or plug at the butt end. */
    BUTT("butt weight");

    private final String word;

    MassPlace(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }
}
