package benchtwin.bench;

import benchtwin.book.BookEntry;
import benchtwin.book.BookProblem;
import benchtwin.book.SheetOrigin;
import benchtwin.stock.InventoryReader;
import benchtwin.stock.SheetRead;
import benchtwin.stock.SheetRow;
import benchtwin.stock.StockFiles;
import benchtwin.stock.StockKind;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * Takes stock files into the book: all of them, or nothing. A row that says what it said the last time changes nothing; of
 * one that says something else, only what is new is entered, readings beside the old ones.
 */
public final class StockImport {

    /** Parts before what is made of them, and before what is further said of them. */
    private static final List<StockKind> ORDER = List.of(StockKind.SLEEVES, StockKind.SLEEVE_SETTINGS, StockKind.GRIPS,
        StockKind.WEIGHTS, StockKind.HEADS, StockKind.SHAFTS, StockKind.FREQUENCIES, StockKind.CLUBS);

    /**
     * What came of it.
     * @param added   rows of things the book did not know
     * @param changed rows that said something new
     * @param same    rows that said what they said before
     * @param changes what was new, one line each
     * @param remarks warnings, and what could not be taken over
     */
    public record Imported(int added, int changed, int same, List<String> changes, List<String> remarks) {

        public Imported {
            changes = List.copyOf(changes);
            remarks = List.copyOf(remarks);
        }
    }

    private StockImport() {
    }

    /**
     * What was read of stock files, before any of it is in the book.
     * @param what    which files, in words
     * @param rows    the good rows, parts before what is made of them
     * @param remarks warnings and what was left out
     */
    public record Read(String what, List<SheetRow> rows, List<String> remarks) {

        public Read {
            rows = List.copyOf(rows);
            remarks = List.copyOf(remarks);
        }
    }

    /**
     * Reads the files.
     * @param files    the files
     * @param goodRows whether the good rows are taken when others have faults
     * @return their rows
     * @throws BadInput with every fault, when a file is bad and the good rows were not asked for
     */
    public static Read read(StockFiles files, boolean goodRows) throws BadInput {
        SheetRead read = InventoryReader.readSheets(files, goodRows);
        Workshop workshop = Workshop.of(read.read(), WayIn.LINE);
        List<SheetRow> rows = read.rows().stream().sorted(Comparator.comparingInt((SheetRow row) -> ORDER.indexOf(row.kind()))
            .thenComparing(row -> row.cell("measured_on").orElse(""))).toList();
        return new Read(String.join(" ", files.byKind().values().stream().map(file -> file.getFileName().toString()).toList()),
            rows, workshop.remarks());
    }

    /**
     * Enters what was read. Rows that all say what they said before leave no trace.
     * @param book the book
     * @param read what was read
     * @return what came of it
     * @throws BadInput when the book cannot be read or written
     */
    public static Imported enter(OpenBook book, Read read) throws BadInput {
        boolean news = book.read(view -> {
            ImportedRows known = new ImportedRows(view);
            return read.rows().stream().anyMatch(row -> !known.isAsBefore(row));
        });
        return news ? book.write("stock import " + read.what(), entry -> enter(entry, read))
            : new Imported(0, 0, read.rows().size(), List.of(), read.remarks());
    }

    /**
     * What entering would come to. The book is left as it is.
     * @param book the book
     * @param read what was read
     * @return what would come of it
     * @throws BadInput when the book cannot be read or written
     */
    public static Imported foresee(OpenBook book, Read read) throws BadInput {
        List<Imported> came = new ArrayList<>();
        try {
            book.write("stock import", entry -> {
                came.add(enter(entry, read));
                throw new BookProblem("only looked at");
            });
        } catch (BadInput undone) {
            if (came.isEmpty()) {
                throw undone;
            }
        }
        return came.get(0);
    }

    /**
     * Enters what was read, if it comes to what was shown before.
     * @param book     the book
     * @param read     what was read
     * @param foreseen what it was to come to
     * @return the same
     * @throws BadInput when the book has changed so that something else would come of it; then nothing is entered
     */
    public static Imported enter(OpenBook book, Read read, Imported foreseen) throws BadInput {
        if (foreseen.added() + foreseen.changed() == 0) {
            return enter(book, read);
        }
        return book.write("stock import " + read.what(), entry -> {
            Imported came = enter(entry, read);
            if (!came.equals(foreseen)) {
                throw new BookProblem("somebody entered something meanwhile, and this import would change something else now than was "
                    + "shown; look at it again");
            }
            return came;
        });
    }

    private static Imported enter(BookEntry entry, Read read) throws BookProblem {
        ImportedRows known = new ImportedRows(entry);
        FilledColumns filled = new FilledColumns(read.rows());
        List<String> changes = new ArrayList<>();
        List<String> said = new ArrayList<>(read.remarks());
        Set<String> fresh = new HashSet<>();
        int added = 0;
        int same = 0;
        for (SheetRow row : read.rows()) {
            SheetOrigin origin = known.origin(row);
            SheetOrigin last = known.last(row, origin);
            if (origin.equals(last)) {
                same++;
                continue;
            }
            ImportedRow.Came came = new ImportedRow(entry, row, origin, last, filled, said).enter();
            String thing = ImportedRow.kind(row).word() + row.tag();
            if (came.isNew()) {
                fresh.add(thing);
            }
            if (fresh.contains(thing)) {
                added++;
            } else {
                came.change().ifPresent(changes::add);
            }
        }
        return new Imported(added, read.rows().size() - same - added, same, changes, said);
    }
}
