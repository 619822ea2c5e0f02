package benchtwin.cli;

import benchtwin.club.Step;
import benchtwin.club.StepKind;
import benchtwin.match.Ranked;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * A plan on one line: {@code lie 0.6° flat; tip 12.7 mm, butt 9 mm; +1.5 g tape}. Bonding and gripping go without saying,
 * and so does screwing on a head that has a sleeve, which is named.
 */
final class PlanInShort {

    private static final Set<StepKind> UNSAID = EnumSet.of(StepKind.BOND, StepKind.SWAP_HEAD);
    private static final List<Set<StepKind>> TOGETHER = List.of(
        EnumSet.of(StepKind.PULL_GRAPHITE, StepKind.PULL_STEEL, StepKind.REAM, StepKind.SHIM),
        EnumSet.of(StepKind.SLEEVE_SETTING, StepKind.BEND_IRON, StepKind.BEND_WOOD),
        EnumSet.of(StepKind.TIP_TRIM, StepKind.BUTT_CUT, StepKind.EXTENSION),
        EnumSet.of(StepKind.WEIGHT_SCREW, StepKind.LEAD_TAPE, StepKind.HOT_MELT, StepKind.TIP_WEIGHT),
        EnumSet.of(StepKind.REGRIP));

    private PlanInShort() {
    }

    static String of(Ranked option) {
        List<Step> steps = option.plan().steps();
        List<String> parts = new ArrayList<>();
        boolean bonded = steps.stream().anyMatch(step -> step.kind() == StepKind.BOND);
        option.sleeve().ifPresent(sleeve -> parts.add((bonded ? "sleeve " : "stays on its sleeve ") + sleeve.name()));
        for (Set<StepKind> group : TOGETHER) {
            String words = steps.stream().filter(step -> group.contains(step.kind()) && isSaid(step)).map(PlanInShort::words)
                .map(text -> text.replace(' ', Page.NO_BREAK)).collect(Collectors.joining(", "));
            if (!words.isEmpty()) {
                parts.add(words);
            }
        }
        return parts.isEmpty() ? "as they are" : String.join("; ", parts);
    }

    private static String words(Step step) {
        boolean pull = step.kind() == StepKind.PULL_GRAPHITE || step.kind() == StepKind.PULL_STEEL;
        return pull ? "pull the shaft" : step.inShort();
    }

    /** Mounting a grip is not said; taking one off for it is. */
    private static boolean isSaid(Step step) {
        return !UNSAID.contains(step.kind())
            && !(step.kind() == StepKind.REGRIP && step.inShort().equals(StepKind.REGRIP.word()));
    }
}
