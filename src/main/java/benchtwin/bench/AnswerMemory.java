package benchtwin.bench;

import java.util.LinkedHashMap;
import java.util.Map;

/**
 * The last answers by what was asked, for as long as the stock they were worked out from is the newest. Safe for several
 * threads: two that ask the same at once may both work it out.
 * @param <A> an answer that nobody changes
 */
public final class AnswerMemory<A> {

    /** So many answers are kept: a bench looks at a few clubs, each with a few tolerances tried. */
    private static final int KEPT = 24;

    private Workshop workshop;
    private final Map<Object, A> answers = new LinkedHashMap<>(KEPT, 0.75f, true) {
        private static final long serialVersionUID = 1;

        @Override
        protected boolean removeEldestEntry(Map.Entry<Object, A> eldest) {
            return size() > KEPT;
        }
    };

    /**
     * How an answer is worked out.
     * @param <A> the answer
     */
    @FunctionalInterface
    public interface Asks<A> {

        /**
         * Works it out.
         * @return the answer
         * @throws BadInput when it cannot be
         */
        A answer() throws BadInput;
    }

    /**
     * The answer, remembered or worked out.
     * @param newest the stock it is worked out from, the very object
     * @param asked  what is asked, with an equals of its own
     * @param asks   works it out
     * @return the answer
     * @throws BadInput when it cannot be worked out; that is not remembered
     */
    public A of(Workshop newest, Object asked, Asks<A> asks) throws BadInput {
        synchronized (answers) {
            if (workshop != newest) {
                answers.clear();
                workshop = newest;
            }
            A known = answers.get(asked);
            if (known != null) {
                return known;
            }
        }
        A fresh = asks.answer();
        synchronized (answers) {
            if (workshop == newest) {
                answers.put(asked, fresh);
            }
        }
        return fresh;
    }
}
