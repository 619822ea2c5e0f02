package benchtwin.bench;

import benchtwin.book.Standing;
import benchtwin.book.State;
import benchtwin.book.StateOf;
import benchtwin.book.Thing;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * As much of a part as a list needs to choose it and to count it.
 * @param part     the part
 * @param standing how it stands
 * @param free     how many of it can still be promised
 * @param promised how many are
 * @param what     category, number, hand and model, as far as they are known
 * @param words    its tag and all that is said of it, in small letters, a line each
 */
record PartLine(Thing part, Standing standing, int free, int promised, String what, String words) {

    static PartLine of(StateOf part) {
        State state = part.state();
        List<String> said = new ArrayList<>(List.of(part.thing().tag()));
        said.addAll(state.facts().values());
        state.club().ifPresent(said::add);
        state.promises().forEach(promise -> said.add(promise.text()));
        return new PartLine(part.thing(), state.standing(), free(state), state.promised(),
            StockViews.what(part.thing().kind().isCounted(), state.facts()), String.join("\n", said).toLowerCase(Locale.ROOT));
    }

    /** A kind that nobody counted is taken as one that is not used up. */
    private static int free(State state) {
        return state.standing() == Standing.THERE ? Math.max(0, state.count() - state.promised()) : 0;
    }

    /** Whether a question is about it, its kind aside. */
    boolean isAsked(StockViews.Asked asked) {
        return (asked.retired() || standing != Standing.RETIRED) && (!asked.free() || free > 0)
            && asked.words().stream().allMatch(word -> words.contains(word.toLowerCase(Locale.ROOT)));
    }
}
