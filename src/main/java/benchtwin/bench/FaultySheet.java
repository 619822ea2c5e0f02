package benchtwin.bench;

import benchtwin.stock.Fault;
import benchtwin.stock.TypedRows;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;

/**
 * A file with what is wrong, or odd, beside the rows it is about.
 * @param file       its name
 * @param ofTheWhole what is wrong with the file as a whole, or with its header
 * @param header     the names of its columns
 * @param rows       rows with a fault or a warning; of a short file all rows
 * @param left       how many rows are not shown
 */
public record FaultySheet(String file, List<String> ofTheWhole, List<String> header, List<Row> rows, int left) {

    private static final int SHORT = 40;
    private static final int MOST = 300;
    private static final int LONGEST_CELL = 120;

    /** What is to be said about a cell. */
    public enum Mark {
        /** Nothing. */
        NONE(""),
        /** It cannot be read. */
        FAULT("fault"),
        /** It can, but is unusual. */
        ODD("odd");

        private final String word;

        Mark(String word) {
            this.word = word;
        }

        /**
         * What stands before the cell.
         * @return a word; nothing where there is nothing to say
         */
        public String word() {
            return word;
        }
    }

    /**
     * One cell.
     * @param text as typed; a very long one is cut
     * @param mark whether something is said about it
     */
    public record Cell(String text, Mark mark) {
    }

    /**
     * One row.
     * @param line   where it starts
     * @param cells  its cells
     * @param faults what is wrong, the column first
     * @param odd    what is unusual, likewise
     */
    public record Row(long line, List<Cell> cells, List<String> faults, List<String> odd) {
    }

    /**
     * Whether something is said about a row.
     * @return false when every row that is shown is good
     */
    public boolean hasWords() {
        return rows.stream().anyMatch(row -> !row.faults().isEmpty() || !row.odd().isEmpty());
    }

    /**
     * Files with their faults and warnings.
     * @param files    the files, of which no two have one name
     * @param faults   what is wrong with them
     * @param warnings what is odd
     * @return a sheet for each file
     */
    public static List<FaultySheet> of(List<Path> files, List<Fault> faults, List<Fault> warnings) {
        return files.stream().map(file -> of(file, about(file, faults), about(file, warnings))).toList();
    }

    private static List<Fault> about(Path file, List<Fault> all) {
        return all.stream().filter(fault -> fault.file().equals(file.getFileName().toString())).toList();
    }

    private static FaultySheet of(Path file, List<Fault> faults, List<Fault> warnings) {
        Map<Long, List<Fault>> wrong = byLine(faults);
        Map<Long, List<Fault>> odd = byLine(warnings);
        TypedRows typed = TypedRows.of(file, line -> wrong.containsKey(line) || odd.containsKey(line), MOST);
        if (typed.rows().size() + typed.left() <= SHORT) {
            typed = TypedRows.of(file, line -> true, SHORT);
        }
        List<Row> rows = new ArrayList<>();
        for (TypedRows.TypedRow row : typed.rows()) {
            rows.add(row(typed, row, wrong.getOrDefault(row.line(), List.of()), odd.getOrDefault(row.line(), List.of())));
            wrong.remove(row.line());
            odd.remove(row.line());
        }
        List<String> whole = new ArrayList<>();
        wrong.values().forEach(left -> left.forEach(fault -> whole.add(fault.text())));
        odd.values().forEach(left -> left.forEach(fault -> whole.add("odd: " + fault.text())));
        return new FaultySheet(file.getFileName().toString(), whole, typed.header(), rows, typed.left());
    }

    private static Map<Long, List<Fault>> byLine(List<Fault> faults) {
        Map<Long, List<Fault>> byLine = new HashMap<>();
        faults.forEach(fault -> byLine.computeIfAbsent(fault.line(), line -> new ArrayList<>()).add(fault));
        return byLine;
    }

    private static Row row(TypedRows sheet, TypedRows.TypedRow row, List<Fault> faults, List<Fault> odd) {
        Mark[] marks = new Mark[row.cells().size()];
        odd.forEach(fault -> mark(marks, sheet.cell(fault), Mark.ODD));
        faults.forEach(fault -> mark(marks, sheet.cell(fault), Mark.FAULT));
        List<Cell> cells = new ArrayList<>();
        for (int i = 0; i < marks.length; i++) {
            String text = row.cells().get(i);
            cells.add(new Cell(text.length() > LONGEST_CELL ? text.substring(0, LONGEST_CELL) + "…" : text,
                marks[i] == null ? Mark.NONE : marks[i]));
        }
        return new Row(row.line(), cells, faults.stream().map(FaultySheet::said).toList(), odd.stream().map(FaultySheet::said).toList());
    }

    private static void mark(Mark[] marks, OptionalInt cell, Mark mark) {
        if (cell.isPresent() && cell.getAsInt() < marks.length) {
            marks[cell.getAsInt()] = mark;
        }
    }

    private static String said(Fault fault) {
        return fault.column().map(column -> "column " + column + ": ").orElse("") + fault.words();
    }
}
