package benchtwin.sets;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Objects;
import org.optaplanner.core.api.score.director.ScoreDirector;
import org.optaplanner.core.impl.heuristic.move.AbstractMove;

/** Fills or empties some slots at once. */
final class PlanMove extends AbstractMove<SetProblem> {

    private final List<BuildSlot> slots;
    private final List<Option> with;

    /**
     * @param slots the slots
     * @param with  what fills each, null to empty it
     */
    private PlanMove(List<BuildSlot> slots, List<Option> with) {
        this.slots = slots;
        this.with = with;
    }

    /** Changes nothing, so it cannot be done. */
    static PlanMove none() {
        return new PlanMove(List.of(), List.of());
    }

    /** Fills the slots that the options are for. */
    static PlanMove filling(SetProblem problem, Option... options) {
        List<BuildSlot> slots = new ArrayList<>();
        for (Option option : options) {
            slots.add(problem.slots().get(option.slot()));
        }
        return new PlanMove(slots, List.of(options));
    }

    /** Re-plans groups: their slots are filled as their plans say, or emptied. */
    static PlanMove replanning(SetProblem problem, List<GroupPlan> plans) {
        List<BuildSlot> slots = new ArrayList<>();
        List<Option> with = new ArrayList<>();
        for (GroupPlan plan : plans) {
            for (int i = 0; i < plan.options().length; i++) {
                BuildSlot slot = problem.slots().get(plan.group().slots().get(i));
                if (!Objects.equals(slot.option(), plan.options()[i])) {
                    slots.add(slot);
                    with.add(plan.options()[i]);
                }
            }
        }
        return new PlanMove(slots, with);
    }

    @Override
    public boolean isMoveDoable(ScoreDirector<SetProblem> director) {
        for (int i = 0; i < slots.size(); i++) {
            if (!Objects.equals(slots.get(i).option(), with.get(i))) {
                return true;
            }
        }
        return false;
    }

    @Override
    protected PlanMove createUndoMove(ScoreDirector<SetProblem> director) {
        List<Option> before = new ArrayList<>();
        slots.forEach(slot -> before.add(slot.option()));
        return new PlanMove(slots, before);
    }

    @Override
    protected void doMoveOnGenuineVariables(ScoreDirector<SetProblem> director) {
        for (int i = 0; i < slots.size(); i++) {
            director.beforeVariableChanged(slots.get(i), BuildSlot.OPTION);
            slots.get(i).fill(with.get(i));
            director.afterVariableChanged(slots.get(i), BuildSlot.OPTION);
        }
    }

    @Override
    public Collection<?> getPlanningEntities() {
        return slots;
    }

    @Override
    public Collection<?> getPlanningValues() {
        return with;
    }

    @Override
    public String toString() {
        return slots + " to " + with;
    }
}
