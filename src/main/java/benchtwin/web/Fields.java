package benchtwin.web;

import benchtwin.bench.BadInput;
import io.javalin.http.Context;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The fields of a page that asks something in its address: what was typed into each, and what is wrong with it. Every fault is said at
 * once, beside its field, and nothing typed is lost.
 */
public final class Fields {

    private final Form form;
    private final Map<String, String> wrong = new LinkedHashMap<>();

    private Fields(Form form) {
        this.form = form;
    }

    /** Reads one field. */
    @FunctionalInterface
    interface Reader<T> {
        T read(Form form) throws BadInput;
    }

    static Fields of(Context ctx) {
        return new Fields(Form.query(ctx));
    }

    /**
     * Reads a field.
     * @param name    of the field, where a message is shown
     * @param instead what stands for it while it cannot be read
     * @param reader  reads it
     */
    <T> T at(String name, T instead, Reader<T> reader) {
        wrong.putIfAbsent(name, "");
        try {
            return reader.read(form);
        } catch (BadInput bad) {
            refuse(name, String.join("; ", bad.messages()));
            return instead;
        }
    }

    /** A whole number from 1 up. */
    int whole(String name, String called, int usual, int most) {
        return at(name, usual, typed -> {
            double value = typed.number(name, called).orElse((double) usual);
            if (!(value >= 1 && value <= most && value == Math.rint(value))) {
                throw new BadInput("%s: expected 1 to %d".formatted(called, most));
            }
            return (int) value;
        });
    }

    /** Says of a field that it cannot stand. */
    void refuse(String name, String words) {
        wrong.merge(name, words, (before, more) -> before.isEmpty() ? more : before);
    }

    Form form() {
        return form;
    }

    /** Whether any field cannot be read. */
    boolean isWrong() {
        return !messages().isEmpty();
    }

    /**
     * Whether any of some fields cannot be read.
     * @param beginnings what the fields' names begin with
     * @return true where a message stands beside one
     */
    public boolean isWrong(List<String> beginnings) {
        return wrong.entrySet().stream().anyMatch(one -> !one.getValue().isEmpty() && beginnings.stream().anyMatch(one.getKey()::startsWith));
    }

    /** What is wrong, field by field in their order. */
    List<String> messages() {
        return wrong.values().stream().filter(words -> !words.isEmpty()).distinct().toList();
    }

    /**
     * What is wrong with a field.
     * @param name of the field
     * @return empty for nothing
     */
    public String wrong(String name) {
        return wrong.getOrDefault(name, "");
    }

    /**
     * The fields that can be wrong.
     * @return their names
     */
    public List<String> names() {
        return List.copyOf(wrong.keySet());
    }

    /**
     * A field as it was typed.
     * @param name of the field
     * @return empty when it was not filled in
     */
    public String text(String name) {
        return form.text(name).orElse("");
    }

    /**
     * Whether a box is ticked.
     * @param name of the field
     * @return true when it is
     */
    public boolean isTicked(String name) {
        return form.isTicked(name);
    }
}
