package benchtwin.bench;

import benchtwin.book.BookEntry;
import benchtwin.book.BookProblem;
import benchtwin.book.SheetOrigin;
import benchtwin.book.ThingKind;
import benchtwin.stock.InventoryReader;
import benchtwin.stock.SheetRead;
import benchtwin.stock.SheetRow;
import benchtwin.stock.StockFiles;
import benchtwin.stock.StockKind;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
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
     * Reads files into the book.
     * @param book     the book
     * @param files    the files
     * @param goodRows whether the good rows are taken when others have faults
     * @return what came of it
     * @throws BadInput with every fault, when a file is bad and the good rows were not asked for
     */
    public static Imported run(OpenBook book, StockFiles files, boolean goodRows) throws BadInput {
        SheetRead read = InventoryReader.readSheets(files, goodRows);
        Workshop workshop = Workshop.of(read.read());
        List<SheetRow> rows = read.rows().stream().sorted(Comparator.comparingInt((SheetRow row) -> ORDER.indexOf(row.kind()))
            .thenComparing(row -> row.cell("measured_on").orElse(""))).toList();
        String what = "stock import " + String.join(" ", files.byKind().values().stream()
            .map(file -> file.getFileName().toString()).toList());
        return book.write(what, entry -> enter(entry, rows, workshop.remarks()));
    }

    private static Imported enter(BookEntry entry, List<SheetRow> rows, List<String> remarks) throws BookProblem {
        Map<ThingKind, Map<String, Map<String, SheetOrigin>>> before = new EnumMap<>(ThingKind.class);
        Map<String, Integer> alike = new HashMap<>();
        List<String> changes = new ArrayList<>();
        List<String> said = new ArrayList<>(remarks);
        Set<String> fresh = new HashSet<>();
        int added = 0;
        int same = 0;
        for (SheetRow row : rows) {
            ThingKind kind = ImportedRow.kind(row);
            Map<String, Map<String, SheetOrigin>> known = before.computeIfAbsent(kind, entry::sheets);
            SheetOrigin origin = new SheetOrigin(key(row, alike), cells(row));
            SheetOrigin last = known.getOrDefault(row.tag(), Map.of()).get(origin.key());
            if (origin.equals(last)) {
                same++;
                continue;
            }
            ImportedRow.Came came = new ImportedRow(entry, row, origin, last, said).enter();
            if (came.isNew()) {
                fresh.add(kind.word() + row.tag());
            }
            if (fresh.contains(kind.word() + row.tag())) {
                added++;
            } else {
                came.change().ifPresent(changes::add);
            }
        }
        return new Imported(added, rows.size() - same - added, same, changes, said);
    }

    /** What tells a row from the other rows of its part; equal further frequencies are numbered. */
    private static String key(SheetRow row, Map<String, Integer> alike) {
        String rest = row.kind() == StockKind.FREQUENCIES ? " " + row.cells()
            : row.key().size() > 1 ? " " + row.key().get(1) : "";
        String key = row.kind().word() + rest;
        int number = row.kind() == StockKind.FREQUENCIES ? alike.merge(row.tag() + key, 1, Integer::sum) : 1;
        return number > 1 ? key + " #" + number : key;
    }

    private static Map<String, String> cells(SheetRow row) {
        Map<String, String> cells = new LinkedHashMap<>(row.cells());
        row.extra().forEach((name, text) -> cells.put(ImportedRow.EXTRA + name, text));
        return cells;
    }
}
