package benchtwin.club;

import benchtwin.measure.Reading;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;

/**
 * One type of adjustable sleeve: bonded to the shaft, screwed into the head.
 * @param name          its name; shafts and clubs refer to it
 * @param fits          the seat types it fits
 * @param hand          the hand it is made for; empty when it serves both
 * @param boreMm        its own bore diameter, mm
 * @param boreDepthMm   how far a shaft goes in, mm
 * @param stopToSeatMm  bottom of its bore to its seat on the head, along the axis, mm, positive toward the ground
 * @param massG         mass with its screw, g
 * @param turnsShaft    whether turning it turns the shaft, and so grip and markings
 * @param rings         its rings, the outer (nearest the grip) first; empty when only a measured table is known
 * @param measured      measured settings, which override the geometry; empty when there are none
 * @param count         how many are in the drawer, if counted
 * @param keeping       where they are kept
 */
public record Sleeve(String name, Set<String> fits, Optional<Hand> hand, double boreMm, Optional<Reading> boreDepthMm,
                     Optional<Reading> stopToSeatMm, Optional<Reading> massG, boolean turnsShaft, List<Ring> rings,
                     List<MeasuredSetting> measured, OptionalInt count, Keeping keeping) {

    public Sleeve {
        fits = Set.copyOf(fits);
        rings = List.copyOf(rings);
        measured = List.copyOf(measured);
        if (rings.size() > 2) {
            throw new IllegalArgumentException("sleeve %s: %d rings; one or two are known".formatted(name, rings.size()));
        }
        if (!(boreMm > 0)) {
            throw new IllegalArgumentException("sleeve %s: a bore of %s mm".formatted(name, boreMm));
        }
    }

    /**
     * Whether a head takes this sleeve.
     * @param head any head
     * @return true when the seat type and the hand agree
     */
    public boolean fits(Head head) {
        return head.seat().isPresent() && fits.contains(head.seat().get().fit())
            && (hand.isEmpty() || hand.get() == head.hand());
    }
}
