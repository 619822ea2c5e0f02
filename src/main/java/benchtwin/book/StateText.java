package benchtwin.book;

import java.util.Locale;
import java.util.Map;

/**
 * How a thing stands, as the file has it. Only so much of it is read as is asked for: of thousands of things a question mostly
 * needs to know what they are, and of few what they measure.
 */
public final class StateText {

    private final Thing thing;
    private final Standing standing;
    private final String derived;
    private Map<String, String> facts;

    StateText(Thing thing, Standing standing, String derived) {
        this.thing = thing;
        this.standing = standing;
        this.derived = derived;
    }

    /**
     * The thing.
     * @return whose state this is
     */
    public Thing thing() {
        return thing;
    }

    /**
     * How it stands.
     * @return the standing
     */
    public Standing standing() {
        return standing;
    }

    /**
     * What is known of it, its readings aside.
     * @return by name
     */
    public Map<String, String> facts() {
        if (facts == null) {
            facts = StateJson.facts(derived);
        }
        return facts;
    }

    /**
     * Whether anybody was promised it.
     * @return true when its state has a promise
     */
    public boolean isPromised() {
        return !derived.contains(StateJson.NO_PROMISES);
    }

    /**
     * Whether it was read at all.
     * @param quantity a quantity, its unit at the end
     * @param times    how often at least
     * @return true when its state may have so many readings of it; false when it has fewer
     */
    public boolean mayHaveRead(String quantity, int times) {
        String mark = StateJson.ofQuantity(quantity);
        int found = 0;
        for (int at = derived.indexOf(mark); at >= 0 && found < times; at = derived.indexOf(mark, at + 1)) {
            found++;
        }
        return found >= times;
    }

    /**
     * Whether a word may be in its tag or anywhere in its state; capitals do not count.
     * @param word any text
     * @return false when it is in neither; true also for one that only stands among what is not shown, or needs a closer look
     */
    public boolean says(String word) {
        String asked = word.toLowerCase(Locale.ROOT);
        boolean escaped = asked.chars().anyMatch(c -> c == '"' || c == '\\' || c < ' ');
        return escaped || thing.tag().toLowerCase(Locale.ROOT).contains(asked) || derived.toLowerCase(Locale.ROOT).contains(asked);
    }

    /**
     * All of it.
     * @return the state
     */
    public State state() {
        return StateJson.read(standing, derived);
    }

    /**
     * All of it.
     * @return the thing and its state
     */
    public StateOf whole() {
        return new StateOf(thing, state());
    }
}
