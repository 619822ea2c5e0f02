package benchtwin.match;

import benchtwin.bend.HoselLimits;
import benchtwin.club.Adjust;
import benchtwin.club.Quantity;
import benchtwin.club.Target;
import benchtwin.mechanics.ClubAngles;
import benchtwin.mechanics.HoselTilt;
import benchtwin.mechanics.Input;
import benchtwin.mechanics.Setup;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Counts heads that could be bent to the wanted angles, did their limits leave room for it. */
final class PastLimit {

    private PastLimit() {
    }

    static int count(List<Candidate> candidates, Target target, TwinModel twin) {
        double[] carried = twin.carried();
        Set<String> heads = new HashSet<>();
        for (Candidate candidate : candidates) {
            if (isPast(candidate, target, carried)) {
                heads.add(candidate.head().tag());
            }
        }
        return heads.size();
    }

    /** The bend needed is to the near edge of each tolerance, not to its middle. */
    private static boolean isPast(Candidate candidate, Target target, double[] carried) {
        HoselLimits limits = candidate.limits();
        double lie = candidate.assembly().get(Input.HEAD_LIE_DEG);
        if (candidate.sleeve().isPresent() || HoselLimits.lifeLimitDeg(candidate.head().material()) == 0
            || candidate.head().adjust() != Adjust.BEND || Double.isNaN(lie)) {
            return false;
        }
        ClubAngles now = ClubAngles.of(candidate.assembly(), Setup.AS_READ);
        double lieChange = needed(target, carried, Quantity.LIE, now.lieDeg());
        double turn = candidate.head().isWood() ? -needed(target, carried, Quantity.FACE, now.faceDeg())
            : needed(target, carried, Quantity.LOFT, now.loftDeg());
        HoselTilt tilt = candidate.head().isWood() ? HoselTilt.forWood(lie, lie + lieChange, turn)
            : HoselTilt.forIron(lie, lie + lieChange, turn);
        return !limits.allow(tilt);
    }

    private static double needed(Target target, double[] carried, Quantity quantity, double now) {
        return target.of(quantity).filter(w -> w.weight() > 0).map(wanted -> {
            double off = wanted.value() - carried[quantity.ordinal()] - now;
            return Math.signum(off) * Math.max(0, Math.abs(off) - wanted.tolerance());
        }).orElse(0.0);
    }
}
