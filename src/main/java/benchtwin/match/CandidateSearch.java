package benchtwin.match;

/** The search for one candidate's plan of least cost; see {@link PlanSearch} for why nothing better is passed over. */
final class CandidateSearch {

    private final PlanSearch plans;
    private final Candidate candidate;
    private final CutSearch cuts;

    CandidateSearch(PlanSearch plans, Candidate candidate, double below) {
        this.plans = plans;
        this.candidate = candidate;
        this.cuts = new CutSearch(plans, candidate, below);
    }

    /** The best plan; null when none costs less than the bound. */
    FoundPlan run() {
        AngleOption guess = plans.angles.guess(candidate);
        if (guess != null) {
            cuts.tryAngle(guess);
        }
        for (AngleOption option : plans.angles.below(candidate, cuts.roomForAngles())) {
            if (option.cost() >= cuts.roomForAngles()) {
                break;
            }
            cuts.tryAngle(option);
        }
        return cuts.found();
    }

    /** The best plan with these angles; null when none costs less than the bound. */
    FoundPlan runAt(AngleOption option) {
        if (option.cost() < cuts.roomForAngles()) {
            cuts.tryAngle(option);
        }
        return cuts.found();
    }

    /** A good plan with these angles, not the best; null when none can be ready in time. */
    FoundPlan guessAt(AngleOption option) {
        cuts.guess(option);
        return cuts.found();
    }
}
