package benchtwin.match;

import benchtwin.club.Bore;
import benchtwin.club.Head;
import benchtwin.club.Shaft;
import benchtwin.club.ShaftMaterial;
import benchtwin.club.Sleeve;
import benchtwin.club.StepKind;
import benchtwin.club.TipKind;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The steps that join a head, a sleeve and a shaft, in bench words. */
final class Joining {

    private Joining() {
    }

    /** Pull a shaft out of what it is in. */
    static Work pull(Shaft shaft, String from) {
        return Work.of(pullOf(shaft), "Mark shaft %s, then pull it from %s, straight and with the least heat.",
            shaft.tag(), from);
    }

    /** Pull the broken end of a shaft out of what it is in. */
    static Work pullStub(Shaft shaft, String from) {
        return Work.of(pullOf(shaft), "Pull the broken end of shaft %s from %s.", shaft.tag(), from);
    }

    private static StepKind pullOf(Shaft shaft) {
        return shaft.material() == ShaftMaterial.STEEL ? StepKind.PULL_STEEL : StepKind.PULL_GRAPHITE;
    }

    /** Screw a head on a sleeve that is on the shaft. */
    static Work screwOn(Head head, Sleeve sleeve) {
        return Work.of(StepKind.SWAP_HEAD, "Screw head %s on sleeve %s.", head.tag(), sleeve.name());
    }

    /**
     * Bond a shaft into a head's bore.
     * @return the steps; empty when tip and bore cannot be joined
     */
    static Optional<List<Work>> bondHead(Shaft shaft, Head head) {
        Bore bore = head.bore().orElseThrow();
        return bond(shaft, bore.diameterMm(), bore.kind(), "head " + head.tag());
    }

    /**
     * Bond a shaft into a sleeve.
     * @return the steps; empty when tip and bore cannot be joined
     */
    static Optional<List<Work>> bondSleeve(Shaft shaft, Sleeve sleeve) {
        return bond(shaft, sleeve.boreMm(), TipKind.PARALLEL, "sleeve " + sleeve.name());
    }

    private static Optional<List<Work>> bond(Shaft shaft, double boreMm, TipKind bore, String into) {
        TipFit.Fit fit = TipFit.of(shaft.tipMm(), shaft.tipKind(), boreMm, bore);
        if (!fit.fits()) {
            return Optional.empty();
        }
        List<Work> steps = new ArrayList<>();
        double play = Math.abs(boreMm - shaft.tipMm());
        fit.step().ifPresent(kind -> steps.add(kind == StepKind.SHIM
            ? Work.of(kind, "Shim the tip: %.2f mm of play in the bore of %s.", play, into)
            : Work.of(kind, "Ream the bore of %s for the tip of shaft %s (%.2f mm).", into, shaft.tag(), shaft.tipMm())));
        steps.add(Work.of(StepKind.BOND, "Prepare, dry fit and bond shaft %s into %s, seated on the bottom.",
            shaft.tag(), into));
        return Optional.of(steps);
    }
}
