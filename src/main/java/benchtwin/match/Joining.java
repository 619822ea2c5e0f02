package benchtwin.match;

import benchtwin.club.Bore;
import benchtwin.club.Head;
import benchtwin.club.Shaft;
import benchtwin.club.ShaftMaterial;
import benchtwin.club.Sleeve;
import benchtwin.club.Step;
import benchtwin.club.StepKind;
import benchtwin.club.TipKind;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The steps that join a head, a sleeve and a shaft, in bench words. */
final class Joining {

    private final ShopSettings shop;

    Joining(ShopSettings shop) {
        this.shop = shop;
    }

    Step step(StepKind kind, String words) {
        return new Step(kind, words, shop.minutes().get(kind));
    }

    /** Pull a shaft out of what it is in. */
    Step pull(Shaft shaft, String from) {
        boolean steel = shaft.material() == ShaftMaterial.STEEL;
        return step(steel ? StepKind.PULL_STEEL : StepKind.PULL_GRAPHITE,
            "Mark shaft %s, then pull it from %s, straight and with the least heat.".formatted(shaft.tag(), from));
    }

    /** Pull the broken end of a shaft out of what it is in. */
    Step pullStub(Shaft shaft, String from) {
        boolean steel = shaft.material() == ShaftMaterial.STEEL;
        return step(steel ? StepKind.PULL_STEEL : StepKind.PULL_GRAPHITE,
            "Pull the broken end of shaft %s from %s.".formatted(shaft.tag(), from));
    }

    /** Screw a head on a sleeve that is on the shaft. */
    Step screwOn(Head head, Sleeve sleeve) {
        return step(StepKind.SWAP_HEAD, "Screw head %s on sleeve %s.".formatted(head.tag(), sleeve.name()));
    }

    /**
     * Bond a shaft into a head's bore.
     * @return the steps; empty when tip and bore cannot be joined
     */
    Optional<List<Step>> bondHead(Shaft shaft, Head head) {
        Bore bore = head.bore().orElseThrow();
        return bond(shaft, bore.diameterMm(), bore.kind(), "head " + head.tag());
    }

    /**
     * Bond a shaft into a sleeve.
     * @return the steps; empty when tip and bore cannot be joined
     */
    Optional<List<Step>> bondSleeve(Shaft shaft, Sleeve sleeve) {
        return bond(shaft, sleeve.boreMm(), TipKind.PARALLEL, "sleeve " + sleeve.name());
    }

    private Optional<List<Step>> bond(Shaft shaft, double boreMm, TipKind bore, String into) {
        TipFit.Fit fit = TipFit.of(shaft.tipMm(), shaft.tipKind(), boreMm, bore);
        if (!fit.fits()) {
            return Optional.empty();
        }
        List<Step> steps = new ArrayList<>();
        double play = Math.abs(boreMm - shaft.tipMm());
        fit.step().ifPresent(kind -> steps.add(step(kind, kind == StepKind.SHIM
            ? "Shim the tip: %.2f mm of play in the bore of %s.".formatted(play, into)
            : "Ream the bore of %s for the tip of shaft %s (%.2f mm).".formatted(into, shaft.tag(), shaft.tipMm()))));
        steps.add(step(StepKind.BOND, "Prepare, dry fit and bond shaft %s into %s, seated on the bottom."
            .formatted(shaft.tag(), into)));
        return Optional.of(steps);
    }
}
