package benchtwin.stock;

import java.util.Optional;

/**
 * One thing wrong, or unusual, in a file: where it is, what was found and what was expected there.
 * @param file     the file as the user knows it, mostly its bare name
 * @param line     the physical line its row starts on, from 1; 0 when the whole file is meant
 * @param column   the column, if it lies in one
 * @param value    what the cell holds, as typed, if a cell is meant
 * @param problem  what is wrong with it, such as {@code is not a number}
 * @param expected what should stand there
 */
public record Fault(String file, long line, Optional<String> column, Optional<String> value, String problem,
                    String expected) {

    static final int SHOWN_CHARACTERS = 60;

    /**
     * The whole message, for instance
     * {@code shafts.csv line 14, column tip_mm: "0.335 taper" is not a number; expected millimetres, such as 8.5}.
     * @return one line; a long value is cut short and its line breaks shown as spaces
     */
    public String text() {
        StringBuilder text = new StringBuilder(file);
        if (line > 0) {
            text.append(" line ").append(line);
        }
        column.ifPresent(name -> text.append(", column ").append(name));
        return text.append(": ").append(words()).toString();
    }

    /**
     * The message without its place, for where the row stands beside it.
     * @return for instance {@code "0.335 taper" is not a number; expected millimetres, such as 8.5}
     */
    public String words() {
        return value.map(found -> shown(found) + " ").orElse("") + problem + "; expected " + expected;
    }

    /** A plain number stands as it is; anything else in quotes, so that its ends can be seen. */
    private static String shown(String found) {
        String onOneLine = found.replaceAll("\\p{Cntrl}", " ");
        String cut = onOneLine.length() > SHOWN_CHARACTERS
            ? onOneLine.substring(0, SHOWN_CHARACTERS) + "…" : onOneLine;
        return NumberText.isPlain(cut) ? cut : '"' + cut + '"';
    }
}
