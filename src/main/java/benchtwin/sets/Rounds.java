package benchtwin.sets;

import java.util.function.BooleanSupplier;

/** A search that goes in rounds and has a plan after each: what finds plans inside the solver's run. */
interface Rounds {

    /**
     * Does one round.
     * @param stop asked now and then; once it says true the round may end early
     * @return whether there is more to do
     */
    boolean next(BooleanSupplier stop);

    /** The best plan so far, by slot, null for an empty one; null before there is any. */
    Option[] best();

    /** How many rounds have been done. */
    int done();

    /**
     * Hears of a plan that somebody else found.
     * @param better better than the best so far, by slot, null for an empty one
     */
    void accept(Option[] better);
}
