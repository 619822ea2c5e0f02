package benchtwin.sets;

/** One solver a group, and the centres its last good plan had, where the next search starts. */
final class Solvers {

    private final SetModel model;
    private final GroupBound[] groups;
    private final double[][] centres;

    Solvers(SetModel model, Workers workers) {
        this.model = model;
        groups = new GroupBound[model.groups().size()];
        centres = new double[groups.length][];
        workers.each(groups.length, g -> {
            groups[g] = new GroupBound(model, new GroupSolver(model, model.groups().get(g)));
            centres[g] = groups[g].middle();
        });
    }

    /** The same solvers with centres of their own, for a search that runs between the rounds of another. */
    Solvers(Solvers other) {
        model = other.model;
        groups = other.groups;
        centres = new double[groups.length][];
        for (int g = 0; g < groups.length; g++) {
            centres[g] = groups[g].middle();
        }
    }

    /** How often groups have been solved: a measure of work that is the same on every machine. */
    long solves() {
        long sum = 0;
        for (GroupBound group : groups) {
            sum += group.solver().solves();
        }
        return sum;
    }

    SetModel model() {
        return model;
    }

    int count() {
        return groups.length;
    }

    GroupBound group(int g) {
        return groups[g];
    }

    /** The next searches of a group start from the centres of this plan. */
    void startFrom(int g, GroupPlan plan) {
        centres[g] = plan.centres(centres[g]);
    }

    /** A good plan of a group, from where its last one was. */
    GroupPlan quick(int g, Prices prices) {
        return groups[g].quick(prices, centres[g]);
    }

    /** A good plan of a group, from where its last one was, and from another plan, which may be null, where that is better. */
    GroupPlan quick(int g, Prices prices, GroupPlan other) {
        GroupPlan first = quick(g, prices);
        if (other == null || groups[g].isSingle() || other.value(model, prices) >= first.value(model, prices)) {
            return first;
        }
        GroupPlan second = groups[g].quick(prices, other.centres(centres[g]));
        return second.value(model, prices) < first.value(model, prices) ? second : first;
    }
}
