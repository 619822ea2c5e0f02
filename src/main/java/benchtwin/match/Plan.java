package benchtwin.match;

import benchtwin.club.Hazard;
import benchtwin.club.Step;
import benchtwin.club.Undo;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * The steps of one build, in working order.
 * @param steps        the steps
 * @param minutes      bench minutes of all of them
 * @param readyMinutes minutes until the club can be handed over: bench minutes and the longest cure or drying time
 */
public record Plan(List<Step> steps, double minutes, double readyMinutes) {

    public Plan {
        steps = List.copyOf(steps);
    }

    /**
     * Steps that can never be taken back.
     * @return how many
     */
    public int permanentSteps() {
        return (int) steps.stream().filter(step -> step.kind().undo() == Undo.NEVER).count();
    }

    /**
     * Whether everything can be taken back in a minute.
     * @return true when every step is undone freely
     */
    public boolean isUndoneFreely() {
        return steps.stream().allMatch(step -> step.kind().undo() == Undo.FREELY);
    }

    /**
     * What in it can hurt somebody.
     * @return hazards, in order of first appearance
     */
    public Set<Hazard> hazards() {
        return steps.stream().flatMap(step -> step.kind().hazard().stream())
            .collect(Collectors.toCollection(LinkedHashSet::new));
    }
}
