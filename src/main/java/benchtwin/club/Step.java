package benchtwin.club;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * One step of a plan.
 * @param kind    what kind it is
 * @param words   what to do, in bench words
 * @param inShort the same for a narrow column, such as {@code tip 12.7 mm}: no capital, no full stop
 * @param minutes bench minutes
 * @param amounts how much of what, named with its unit: {@code tipCutMm}, {@code tapeG}, {@code uprightDeg}
 * @param parts   tags of weights that go in by it
 */
public record Step(StepKind kind, String words, String inShort, double minutes, Map<String, Double> amounts,
                   List<String> parts) {

    public Step {
        amounts = Collections.unmodifiableMap(new LinkedHashMap<>(amounts));
        parts = List.copyOf(parts);
    }

    /**
     * A step whose kind says it all in short.
     * @param kind    what kind it is
     * @param words   what to do, in bench words
     * @param minutes bench minutes
     */
    public Step(StepKind kind, String words, double minutes) {
        this(kind, words, kind.word(), minutes, Map.of(), List.of());
    }

    /**
     * The same with a weight that goes in by it.
     * @param tag the weight's tag
     * @return a copy
     */
    public Step using(String tag) {
        return new Step(kind, words, inShort, minutes, amounts, List.of(tag));
    }
}
