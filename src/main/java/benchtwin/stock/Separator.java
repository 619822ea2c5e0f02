package benchtwin.stock;

import java.util.Arrays;

/** What stands between the cells of a file. */
enum Separator {
    COMMA(','),
    SEMICOLON(';'),
    TAB('\t');

    private final char mark;

    Separator(char mark) {
        this.mark = mark;
    }

    char mark() {
        return mark;
    }

    /** Whether a comma inside a number can only be a decimal comma. */
    boolean leavesCommaFree() {
        return this != COMMA;
    }

    /** The one the header line has most of, outside quotes; a comma when it has none. */
    static Separator of(String text) {
        int[] counts = new int[values().length];
        boolean quoted = false;
        boolean started = false;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c == '"') {
                quoted = !quoted;
            } else if (!quoted && (c == '\n' || c == '\r')) {
                if (started) {
                    break;
                }
                Arrays.fill(counts, 0);
            }
            started = started || !Character.isWhitespace(c);
            for (Separator separator : values()) {
                if (!quoted && c == separator.mark) {
                    counts[separator.ordinal()]++;
                }
            }
        }
        Separator most = COMMA;
        for (Separator separator : values()) {
            if (counts[separator.ordinal()] > counts[most.ordinal()]) {
                most = separator;
            }
        }
        return most;
    }
}
