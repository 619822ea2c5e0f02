package benchtwin.bench;

import benchtwin.club.AngleReading;
import benchtwin.club.Head;
import benchtwin.club.HeadAngles;
import benchtwin.club.Quantity;
import java.util.EnumMap;
import java.util.Map;

/** What a head from the drawer reads before anything is done to it. */
public final class HeadBefore {

    private HeadBefore() {
    }

    /**
     * Its angles.
     * @param head    the head
     * @param reading in which reading they are wanted
     * @return by quantity; without those that were not read, and without the loft when it was read otherwise
     */
    public static Map<Quantity, Double> angles(Head head, AngleReading reading) {
        HeadAngles read = head.angles();
        Map<Quantity, Double> angles = new EnumMap<>(Quantity.class);
        if (read.reading() == reading) {
            read.loftDeg().ifPresent(loft -> angles.put(Quantity.LOFT, loft.value()));
        }
        read.lieDeg().ifPresent(lie -> angles.put(Quantity.LIE, lie.value()));
        read.faceDeg().ifPresent(face -> angles.put(Quantity.FACE, face.value()));
        read.bounceDeg().ifPresent(bounce -> angles.put(Quantity.BOUNCE, bounce.value()));
        return angles;
    }
}
