package benchtwin.match;

import benchtwin.club.Quantity;
import benchtwin.club.StepKind;
import benchtwin.mechanics.CutClub;
import benchtwin.mechanics.Input;
import benchtwin.mechanics.Setup;
import benchtwin.mechanics.SwingWeight;

/**
 * The tip trim of least cost for one shaft in one build. Every tip trim has one butt cut that makes the playing length
 * right; so the trims are a list, and the longer the trim the stiffer the club at that length. The list is searched by
 * halves for the wanted frequency, and from there outward for as long as the frequency alone leaves room for a lower cost.
 *
 * <p>Exact as far as a longer trim is stiffer, give or take {@link CutSearch#TRIM_SLACK_CPM}; a shaft whose measured
 * stiffness does not grow toward the butt has every trim tried.
 */
final class TrimSearch {

    private static final double ROUNDING = 1e-9;

    private final ShaftBuild build;
    private final Candidate candidate;
    private final AngleOption angle;
    private final double straightMm;
    private final double frequencyFactor;
    private final CutClub[] clubs;
    private final double[] cpm;
    private final int trims;

    TrimSearch(ShaftBuild build, Candidate candidate) {
        this.build = build;
        this.candidate = candidate;
        this.angle = build.angle(candidate);
        double clamp = build.twin().condition().clampMm();
        CutClub uncut = new CutClub(candidate.assembly(), FoundPlan.setup(Cuts.NONE, build.start(), 0, Setup.AS_READ), clamp);
        this.straightMm = uncut.lengthMm(angle.lieDeg());
        double root = build.twin().stiffnessRoot(candidate.assembly());
        this.frequencyFactor = build.twin().condition().overGrip()
            ? root * candidate.assembly().get(Input.GRIP_FACTOR) : root;
        this.trims = countTrims();
        this.clubs = new CutClub[trims];
        this.cpm = new double[trims];
    }

    private int countTrims() {
        double step = build.shop().tipTrimStepMm();
        double most = candidate.trimmable() ? Cuts.mostTipTrimMm(candidate) : 0;
        int count = (int) Math.floor(most / step + ROUNDING) + 1;
        double spare = straightMm - build.wantLengthMm() + build.shop().lengthStepMm() / 2;
        return spare < -ROUNDING ? 0 : Math.min(count, (int) Math.floor(spare / step + ROUNDING) + 1);
    }

    /** Whether the shaft is long enough at all. */
    boolean isLongEnough() {
        return trims > 0;
    }

    /** What the club would read with only the butt cut, cpm. */
    double untrimmedCpm() {
        return cpm(0) + build.carriedCpm();
    }

    private double buttCutMm(int trim) {
        double step = build.shop().lengthStepMm();
        double over = straightMm - trim * build.shop().tipTrimStepMm() - build.wantLengthMm();
        return Math.max(0, Math.round(over / step) * step);
    }

    private Cut cut(int trim) {
        double butt = buttCutMm(trim);
        boolean regrip = butt > 0 && !candidate.gripOff();
        ShopSettings shop = build.shop();
        double effort = (trim > 0 ? shop.effort(StepKind.TIP_TRIM) : 0)
            + (butt > 0 ? shop.effort(StepKind.BUTT_CUT) : 0) + (regrip ? shop.effort(StepKind.REGRIP) : 0);
        return new Cut(trim, trim * shop.tipTrimStepMm(), butt, 0, 0, null, regrip, effort);
    }

    private CutClub club(int trim) {
        if (clubs[trim] == null) {
            clubs[trim] = new CutClub(candidate.assembly(), FoundPlan.setup(cut(trim), build.start(), 0, Setup.AS_READ),
                build.twin().condition().clampMm());
        }
        return clubs[trim];
    }

    /** Modelled, nothing carried over. */
    private double cpm(int trim) {
        if (cpm[trim] == 0) {
            CutClub club = club(trim);
            cpm[trim] = club.unitMode(club.headCgMm(angle.lieDeg()), build.headMass().addedG()).cpm() * frequencyFactor;
        }
        return cpm[trim];
    }

    /**
     * The plan of least cost.
     * @param terms what is wanted
     * @return the plan; null when the shaft is too short
     */
    FoundPlan best(CostTerms terms) {
        if (trims == 0) {
            return null;
        }
        Best best = new Best(terms);
        best.offer(0);
        if (!candidate.assembly().stiffensTowardButt()) {
            for (int t = 1; t < trims; t++) {
                best.offer(t);
            }
            return best.plan();
        }
        int from = 0;
        int to = trims;
        double want = terms.want(Quantity.FREQUENCY);
        while (from < to) {
            int middle = (from + to) / 2;
            if (cpm(middle) >= want) {
                to = middle;
            } else {
                from = middle + 1;
            }
        }
        for (int t = Math.max(1, from); t < trims && best.isWorth(Math.max(want, cpm(t) - CutSearch.TRIM_SLACK_CPM)); t++) {
            best.offer(t);
        }
        for (int t = from - 1; t > 0 && best.isWorth(Math.min(want, cpm(t) + CutSearch.TRIM_SLACK_CPM)); t--) {
            best.offer(t);
        }
        return best.plan();
    }

    /** The best trim so far. */
    private final class Best {
        private final CostTerms terms;
        private final double joining;
        private int trim = -1;
        private double cost = Double.POSITIVE_INFINITY;

        Best(CostTerms terms) {
            this.terms = terms;
            this.joining = build.effort(candidate);
        }

        /** Whether a trim of this frequency or one further off could still cost less. */
        boolean isWorth(double nearestCpm) {
            return joining + build.shop().effort(StepKind.TIP_TRIM) + terms.of(Quantity.FREQUENCY, nearestCpm) < cost;
        }

        void offer(int t) {
            double sum = joining + cut(t).effort() + terms.of(Quantity.FREQUENCY, cpm(t)) + others(t);
            if (sum < cost) {
                cost = sum;
                trim = t;
            }
        }

        private double others(int t) {
            CutClub club = club(t);
            double cg = club.headCgMm(angle.lieDeg());
            double added = build.headMass().addedG();
            double mass = club.massG(added);
            return terms.of(Quantity.LENGTH, club.lengthMm(angle.lieDeg()))
                + terms.of(Quantity.SWING_WEIGHT, SwingWeight.points(mass, club.momentGMm(cg, added)))
                + terms.of(Quantity.SHAFT_MASS, club.shaftMassG()) + terms.of(Quantity.SHAFT_BALANCE, club.shaftBalanceMm())
                + (terms.counts(Quantity.TORQUE) ? terms.ofReadOrNot(Quantity.TORQUE, club.torqueDeg()) : 0);
        }

        FoundPlan plan() {
            Cut cut = cut(trim);
            return new FoundPlan(candidate, build.start(), angle, cut, build.headMass(), cost, build.readyMinutes(candidate, cut));
        }
    }
}
