package benchtwin.match;

import benchtwin.club.Quantity;
import benchtwin.club.Word;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/** A thing that can be changed about a club. */
public enum Lever implements Word {
    /** Turn its sleeve. */
    SETTING("sleeve setting", Quantity.LOFT, Quantity.LIE, Quantity.FACE),
    /** Bend its hosel. */
    BEND("bend", Quantity.LOFT, Quantity.LIE, Quantity.FACE),
    /** Weights, lead tape or hot melt at its head, or a weight in its tip. */
    WEIGHT("weight at the head", Quantity.SWING_WEIGHT, Quantity.TOTAL_MASS, Quantity.FREQUENCY),
    /** Layers of tape under its grip. */
    TAPE("tape under the grip", Quantity.SWING_WEIGHT, Quantity.TOTAL_MASS),
    /** Another grip. */
    GRIP("grip", Quantity.SWING_WEIGHT, Quantity.TOTAL_MASS),
    /** Cut or extend its butt. */
    BUTT("butt cut or extension", Quantity.LENGTH, Quantity.SWING_WEIGHT, Quantity.FREQUENCY),
    /** Pull its shaft and trim the tip. */
    TIP("tip trim", Quantity.FREQUENCY),
    /** Another head on its shaft. */
    HEAD("another head", Quantity.LOFT, Quantity.LIE, Quantity.FACE, Quantity.TOTAL_MASS),
    /** Another shaft in its head. */
    SHAFT("another shaft", Quantity.FREQUENCY, Quantity.LENGTH, Quantity.TOTAL_MASS);

    private final String word;
    private final Set<Quantity> usedFor;

    Lever(String word, Quantity... usedFor) {
        this.word = word;
        this.usedFor = EnumSet.copyOf(List.of(usedFor));
    }

    @Override
    public String word() {
        return word;
    }

    /**
     * Whether it is another part, not something done to the one there is.
     * @return true for another grip, head or shaft
     */
    public boolean isAPart() {
        return this == GRIP || this == HEAD || this == SHAFT;
    }

    /** Whether a technician would think of it for one of these. */
    boolean isUsedFor(Set<Quantity> asked) {
        return asked.stream().anyMatch(usedFor::contains);
    }
}
