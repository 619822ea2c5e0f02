package benchtwin.bench;

import java.util.ArrayList;
import java.util.List;

/** What was asked cannot be done as it stands; the messages say what, where and what was expected. */
public class BadInput extends Exception {

    private static final long serialVersionUID = 1;

    private final transient List<String> messages;

    /**
     * @param messages one line each, for people
     */
    public BadInput(List<String> messages) {
        super(String.join("; ", messages));
        this.messages = List.copyOf(messages);
    }

    /**
     * @param message one line, for people
     */
    public BadInput(String message) {
        this(List.of(message));
    }

    /**
     * What to tell the user.
     * @return one line each
     */
    public final List<String> messages() {
        return messages;
    }

    /**
     * Both at once.
     * @param other what else cannot be done
     * @return the messages of this one that the other has not, then the other's
     */
    public final BadInput and(BadInput other) {
        List<String> both = new ArrayList<>(messages);
        both.removeAll(other.messages);
        both.addAll(other.messages);
        return new BadInput(both);
    }
}
