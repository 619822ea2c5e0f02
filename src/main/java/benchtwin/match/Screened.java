package benchtwin.match;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * What is left after everything that cannot fit was ruled out.
 * @param fit       candidates free to use
 * @param promised  candidates whose part is promised to somebody else
 * @param ruledOut  how many parts were ruled out, by reason
 */
record Screened(List<Candidate> fit, List<Candidate> promised, Map<String, Integer> ruledOut) {

    /** Collects them. */
    static final class Collector {
        private final List<Candidate> fit = new ArrayList<>();
        private final List<Candidate> promised = new ArrayList<>();
        private final Map<String, Integer> ruledOut = new TreeMap<>();

        void out(String reason) {
            ruledOut.merge(reason, 1, Integer::sum);
        }

        void in(List<Candidate> candidates, boolean isPromised) {
            (isPromised ? promised : fit).addAll(candidates);
        }

        Screened done() {
            return new Screened(List.copyOf(fit), List.copyOf(promised), ruledOut);
        }
    }
}
