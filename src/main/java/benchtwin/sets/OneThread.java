package benchtwin.sets;

import java.math.BigDecimal;
import org.ojalgo.optimisation.integer.IntegerStrategy;

/** How the library's mixed-integer solver is to search. */
final class OneThread {

    private OneThread() {
    }

    /**
     * On one thread, so that the same problem gives the same answer; and without Gomory cuts: with them the solver was seen to
     * call a problem infeasible to which a solution was known, and an answer best that was not; without, never.
     */
    static IntegerStrategy withoutCuts() {
        return IntegerStrategy.newConfigurable().withParallelism(() -> 1).withGMICutConfiguration(
            new IntegerStrategy.GMICutConfiguration().withFractionality(0.5).withViolation(BigDecimal.ZERO));
    }
}
