package benchtwin.bend;

import benchtwin.club.Adjust;
import benchtwin.club.Head;
import benchtwin.club.HeadCondition;
import benchtwin.club.HeadMaterial;
import java.util.Optional;

/**
 * Why a head is not bent.
 * @param reason   in words, after the head's tag
 * @param answered whether somebody may answer for bending it all the same
 */
public record BendRefusal(String reason, boolean answered) {

    /**
     * What speaks against bending a head.
     * @param head any head
     * @return empty for one that may be bent as far as its limit
     */
    public static Optional<BendRefusal> of(Head head) {
        if (head.condition() == HeadCondition.CRACKED) {
            return never("is cracked: it goes out of play and out of the drawer");
        }
        if (head.adjust() == Adjust.SLEEVE) {
            return never("takes a sleeve: its angles are set with that, and its hosel is never bent");
        }
        if (head.material() == HeadMaterial.ZINC || head.material() == HeadMaterial.ALUMINIUM) {
            return never("is made of %s, which breaks before it bends".formatted(head.material().word()));
        }
        if (head.adjust() == Adjust.FIXED) {
            return never("is recorded as one that is not bent");
        }
        return head.material() == HeadMaterial.UNKNOWN
            ? Optional.of(new BendRefusal("is of a metal that nobody has put down", true)) : Optional.empty();
    }

    private static Optional<BendRefusal> never(String reason) {
        return Optional.of(new BendRefusal(reason, false));
    }
}
