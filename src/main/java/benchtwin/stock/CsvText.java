package benchtwin.stock;

import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** Writes tables as the text of a CSV file: commas, quotes where a cell needs them, no cell a formula. */
final class CsvText {

    private static final String NEEDS_QUOTES = ",;\t\"\r\n";

    private CsvText() {
    }

    /** The header and the rows, each given as its filled cells by column. */
    static String table(Collection<String> header, List<Map<String, String>> rows) {
        StringBuilder text = new StringBuilder();
        line(text, header);
        rows.forEach(row -> line(text, header.stream().map(column -> row.getOrDefault(column, "")).toList()));
        return text.toString();
    }

    static void line(StringBuilder text, Collection<String> cells) {
        text.append(cells.stream().map(cell -> quoted(SafeCell.write(cell))).collect(Collectors.joining(","))).append('\n');
    }

    /** Semicolons too, for spreadsheets that part cells there; and spaces at an end, which readers would take off. */
    private static String quoted(String cell) {
        boolean needed = !cell.isEmpty() && (isSpace(cell.charAt(0)) || isSpace(cell.charAt(cell.length() - 1)));
        for (int i = 0; i < cell.length() && !needed; i++) {
            needed = NEEDS_QUOTES.indexOf(cell.charAt(i)) >= 0;
        }
        return needed ? '"' + cell.replace("\"", "\"\"") + '"' : cell;
    }

    private static boolean isSpace(char c) {
        return Character.isWhitespace(c) || Character.isSpaceChar(c);
    }
}
