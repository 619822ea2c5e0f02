package benchtwin.match;

import benchtwin.bend.HoselLimits;
import benchtwin.club.Grip;
import benchtwin.club.Head;
import benchtwin.club.Shaft;
import benchtwin.club.Sleeve;
import benchtwin.mechanics.Assembly;
import benchtwin.mechanics.Assemblies;
import java.util.List;
import java.util.Optional;

/**
 * Parts that fit together, and what it takes to join them before anything is adjusted.
 * @param head     the head
 * @param shaft    the shaft
 * @param sleeve   the sleeve, for a sleeved head
 * @param grip     the grip
 * @param assembly the parts as numbers
 * @param limits   what the head's hosel has left
 * @param joining  steps that join the parts, in working order
 * @param tipFree  whether the shaft's tip is out of everything, so that it can be weighted
 * @param trimmable whether the tip may be cut: a shaft from the drawer with its tip free
 * @param settingNow the setting the sleeve on the shaft has now, if it stays; turning it there costs nothing
 * @param gripOff  whether the grip goes on anyway, so that a butt cut costs no regrip
 */
record Candidate(Head head, Shaft shaft, Optional<Sleeve> sleeve, Optional<Grip> grip, Assembly assembly,
                 HoselLimits limits, List<Work> joining, Optional<String> settingNow, boolean tipFree,
                 boolean trimmable, boolean gripOff) {

    Candidate {
        joining = List.copyOf(joining);
    }

    static Candidate of(Assemblies assemblies, Head head, Shaft shaft, Optional<Sleeve> sleeve, Optional<Grip> grip,
                        List<Work> joining, Optional<String> settingNow, boolean tipFree, boolean trimmable, boolean gripOff) {
        return new Candidate(head, shaft, sleeve, grip, assemblies.of(head, shaft, sleeve, grip), HoselLimits.of(head),
            joining, settingNow, tipFree, trimmable, gripOff);
    }

    /** What joining the parts costs, in squared tolerances. */
    double joiningEffort(ShopSettings shop) {
        double effort = 0;
        for (Work work : joining) {
            effort += shop.effort(work.kind());
        }
        return effort;
    }

    /** Deterministic name for ordering: head, then shaft, then sleeve. */
    String key() {
        return head.tag() + "\u0000" + shaft.tag() + "\u0000" + sleeve.map(Sleeve::name).orElse("");
    }
}
