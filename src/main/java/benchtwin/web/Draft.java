package benchtwin.web;

import java.util.List;
import java.util.Map;

/**
 * A form as a page shows it: empty at first, else as it was sent, with what has to be said about it.
 * @param seen      the last entry of what its page was made from
 * @param typed     what was typed, by field
 * @param messages  what is wrong with it
 * @param changes   what others entered meanwhile
 * @param questions what is odd about it and may still be so
 * @param answer    what goes back when it is so
 */
public record Draft(long seen, Map<String, String> typed, List<String> messages, List<String> changes, List<String> questions,
                    String answer) {

    static Draft empty(long seen) {
        return new Draft(seen, Map.of(), List.of(), List.of(), List.of(), "");
    }

    /**
     * What was typed into a field.
     * @param field its name
     * @return empty where nothing was
     */
    public String typed(String field) {
        return typed.getOrDefault(field, "");
    }

    /**
     * The same, with something else at first.
     * @param field its name
     * @param first what stands there before anything is typed
     * @return what the field shows
     */
    public String typed(String field, String first) {
        return typed.isEmpty() ? first : typed(field);
    }
}
