package benchtwin.stock;

/**
 * Keeps a spreadsheet from running the text of a CSV cell as a formula.
 *
 * <p>A spreadsheet takes a cell for a formula by its first character. Written, a text that would be taken for one gets an
 * apostrophe before it; read, the apostrophe comes off again. Exactly: take away all apostrophes a text starts with. If what
 * is left starts with {@code = + - @}, a tab, a carriage return or a line feed, or with the full-width form of one of those
 * four, and is no plain number, writing puts one apostrophe in front of the text and reading takes one away. Any other text
 * stays as it is, so that one which starts with an apostrophe itself comes back as well. A plain number is a sign if any,
 * digits, and perhaps a point or comma with more digits: {@code -0.5} stays a number that can be reckoned with.
 *
 * <p>Quotes and separators are the CSV writer's own affair. Source: OWASP, <i>CSV Injection</i> (the characters and the
 * apostrophe); the full-width forms: memory.
 */
public final class SafeCell {

    private static final char APOSTROPHE = '\'';
    private static final String STARTS_A_FORMULA = "=+-@\t\r\n\uFF1D\uFF0B\uFF0D\uFF20";

    private SafeCell() {
    }

    /**
     * A text as a cell.
     * @param text any text
     * @return what to write, before any quotes; {@link #read} gives the text back
     */
    public static String write(String text) {
        return isFormula(text) ? APOSTROPHE + text : text;
    }

    /**
     * What a cell says.
     * @param cell the cell, its quotes taken off
     * @return the text; the cell itself where nothing was put before it
     */
    public static String read(String cell) {
        return !cell.isEmpty() && cell.charAt(0) == APOSTROPHE && isFormula(cell) ? cell.substring(1) : cell;
    }

    private static boolean isFormula(String text) {
        int start = 0;
        while (start < text.length() && text.charAt(start) == APOSTROPHE) {
            start++;
        }
        return start < text.length() && STARTS_A_FORMULA.indexOf(text.charAt(start)) >= 0
            && !NumberText.isPlain(text.substring(start));
    }
}
