package benchtwin.book;

import java.sql.SQLException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.PreparedBatch;

/**
 * One table of the book as it stands in the file, for taking the whole of it elsewhere. What is derived is not among them.
 * @param name    its name
 * @param columns its columns' names
 * @param rows    one a row, empty where nothing is written
 */
public record BookTable(String name, List<String> columns, List<List<Optional<String>>> rows) {

    /** In an order in which each refers only to those before it. */
    public static final List<String> NAMES = List.of("entry", "thing", "event", "reading", "note");
    static final String DOES_NOT_FIT = "what was read does not fit together: ";
    private static final int AT_ONCE = 1000;

    public BookTable {
        columns = List.copyOf(columns);
        rows = Collections.unmodifiableList(new ArrayList<>(rows));
    }

    /**
     * All that was entered.
     * @param view the book
     * @return the tables, in the order of {@link #NAMES}
     */
    public static List<BookTable> all(BookView view) {
        return NAMES.stream().map(name -> read(view.handle(), name)).toList();
    }

    private static BookTable read(Handle handle, String name) {
        List<String> columns = columns(handle, name);
        List<List<Optional<String>>> rows = handle.createQuery("SELECT * FROM %s ORDER BY id".formatted(name))
            .map((row, context) -> {
                List<Optional<String>> cells = new ArrayList<>(columns.size());
                for (int column = 1; column <= columns.size(); column++) {
                    cells.add(Optional.ofNullable(row.getObject(column)).map(BookTable::text));
                }
                return cells;
            }).list();
        return new BookTable(name, columns, rows);
    }

    /** The database itself writes a number with two digits too few to come back the same. */
    private static String text(Object cell) {
        return cell instanceof Double number ? Double.toString(number) : cell.toString();
    }

    private static List<String> columns(Handle handle, String name) {
        return handle.createQuery("SELECT name FROM pragma_table_info(:table) ORDER BY cid").bind("table", name)
            .mapTo(String.class).list();
    }

    /**
     * Fills an empty book.
     * @param book   a book nothing was entered in
     * @param tables all of {@link #NAMES}
     * @throws BookProblem when it is not empty, a table or column is missing or not known, or the rows do not fit together;
     *                     then nothing is kept
     */
    public static void fill(Book book, List<BookTable> tables) throws BookProblem {
        book.fill(handle -> {
            if (handle.createQuery("SELECT count(*) FROM entry").mapTo(Integer.class).one() > 0) {
                throw new BookProblem("the book %s is not empty; name a new one with --book".formatted(book.file()));
            }
            Map<String, BookTable> byName = new LinkedHashMap<>();
            tables.forEach(table -> byName.put(table.name(), table));
            for (String name : NAMES) {
                BookTable table = byName.get(name);
                if (table == null) {
                    throw new BookProblem("the table %s is missing; expected %s".formatted(name, String.join(", ", NAMES)));
                }
                insert(handle, table);
            }
            BookView view = new BookView(handle);
            States.putMissing(view);
            refuseAstray(view);
            view.close();
        });
    }

    private static void refuseAstray(BookView view) throws BookProblem {
        try {
            List<String> astray = BookCheck.astray(view);
            if (!astray.isEmpty()) {
                throw new BookProblem(DOES_NOT_FIT + astray.get(0));
            }
        } catch (SQLException failed) {
            throw new BookProblem(DOES_NOT_FIT + failed.getMessage(), failed);
        }
    }

    private static void insert(Handle handle, BookTable table) throws BookProblem {
        List<String> known = columns(handle, table.name());
        if (!known.equals(table.columns())) {
            throw new BookProblem("the table %s has the columns %s; expected %s".formatted(table.name(),
                String.join(", ", table.columns()), String.join(", ", known)));
        }
        Set<String> numbers = Set.copyOf(handle.createQuery("SELECT name FROM pragma_table_info(:table) WHERE type = 'REAL'")
            .bind("table", table.name()).mapTo(String.class).list());
        String marks = String.join(", ", Collections.nCopies(known.size(), "?"));
        String insert = "INSERT INTO %s VALUES (%s)".formatted(table.name(), marks);
        for (int from = 0; from < table.rows().size(); from += AT_ONCE) {
            try (var batch = handle.prepareBatch(insert)) {
                for (List<Optional<String>> row : table.rows().subList(from, Math.min(from + AT_ONCE, table.rows().size()))) {
                    if (row.size() != known.size()) {
                        throw new BookProblem("a row of the table %s has %d cells; expected %d".formatted(table.name(), row.size(),
                            known.size()));
                    }
                    for (int column = 0; column < known.size(); column++) {
                        bind(batch, column, cell(known, row, column), numbers.contains(known.get(column)));
                    }
                    batch.add();
                }
                batch.execute();
            }
        }
    }

    /** How a tag is looked up is worked out from the tag, as when it was entered. */
    private static Optional<String> cell(List<String> columns, List<Optional<String>> row, int column) {
        return columns.get(column).equals("folded") ? row.get(columns.indexOf("tag")).map(Folded::of) : row.get(column);
    }

    /** The database would keep a text that is no number as a text, in a column of numbers too. */
    private static void bind(PreparedBatch batch, int column, Optional<String> cell, boolean number) throws BookProblem {
        if (number && cell.isPresent()) {
            try {
                batch.bind(column, Double.parseDouble(cell.get()));
            } catch (NumberFormatException noNumber) {
                throw new BookProblem("\"%s\" is not a number".formatted(TypedText.shown(cell.get())), noNumber);
            }
        } else {
            batch.bind(column, cell.orElse(null));
        }
    }
}
