package benchtwin.sets;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BooleanSupplier;
import org.optaplanner.core.api.domain.solution.PlanningEntityCollectionProperty;
import org.optaplanner.core.api.domain.solution.PlanningScore;
import org.optaplanner.core.api.domain.solution.PlanningSolution;
import org.optaplanner.core.api.domain.solution.ProblemFactCollectionProperty;
import org.optaplanner.core.api.domain.solution.ProblemFactProperty;
import org.optaplanner.core.api.score.buildin.hardmediumsoftlong.HardMediumSoftLongScore;

/** The sets to be planned, and a plan of them: what the solver works on. */
@PlanningSolution
final class SetProblem {

    @ProblemFactProperty
    private SetModel model;
    @ProblemFactCollectionProperty
    private List<SlotGroup> groups;
    @PlanningEntityCollectionProperty
    private List<BuildSlot> slots;
    @PlanningScore
    private HardMediumSoftLongScore score;
    private BooleanSupplier stop;
    private boolean roundsOver;

    /** For the solver, which clones. */
    SetProblem() {
    }

    /**
     * Nothing planned yet. Slots are offered only what the pins allow.
     * @param model the problem
     * @param pins  choices fixed by hand
     */
    static SetProblem of(SetModel model, Pins pins) {
        SetProblem problem = new SetProblem();
        problem.model = pins.within(model);
        problem.groups = model.groups();
        problem.stop = () -> false;
        problem.slots = new ArrayList<>();
        for (int slot = 0; slot < model.slots(); slot++) {
            problem.slots.add(new BuildSlot(slot, problem.model, pins));
        }
        return problem;
    }

    /** The problem, its options only those the pins allow. */
    SetModel model() {
        return model;
    }

    List<BuildSlot> slots() {
        return slots;
    }

    /** A search for a plan of this, and of its clones, ends once this says true. */
    void stopWhen(BooleanSupplier asked) {
        stop = asked;
    }

    boolean isToStop() {
        return stop.getAsBoolean();
    }

    /** Nothing is left to do in rounds. */
    void endRounds() {
        roundsOver = true;
    }

    boolean areRoundsOver() {
        return roundsOver;
    }

    /** What the plan is worth; null before it has been scored. */
    HardMediumSoftLongScore score() {
        return score;
    }

    /**
     * Takes over a plan.
     * @param plan by slot; null for an empty one
     * @return this
     */
    SetProblem take(Option[] plan) {
        for (BuildSlot slot : slots) {
            slot.fill(plan[slot.index()]);
        }
        return this;
    }

    /** The plan, by slot; null for an empty one. */
    Option[] plan() {
        Option[] plan = new Option[slots.size()];
        for (BuildSlot slot : slots) {
            plan[slot.index()] = slot.option();
        }
        return plan;
    }
}
