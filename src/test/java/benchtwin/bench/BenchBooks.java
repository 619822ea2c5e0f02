package benchtwin.bench;

import static org.assertj.core.api.Assertions.assertThat;

import benchtwin.book.BookTable;
import benchtwin.samples.TestClock;
import benchtwin.stock.StockFiles;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;

/** Books for tests of the services, at a time after the sample workshop's last day. */
final class BenchBooks {

    static final Path SAMPLES = Path.of("inventory-samples");
    private static final Instant START = Instant.parse("2026-06-01T08:00:00Z");
    private static Path imported;

    private BenchBooks() {
    }

    /** An empty book. */
    static OpenBook empty(Path folder) throws BadInput {
        return OpenBook.open(folder.resolve("test.book"), Optional.of("Jo"), TestClock.ticking(START));
    }

    /** A book of one's own with the sample workshop in it. */
    static OpenBook samples(Path folder) throws BadInput {
        Path file = folder.resolve("samples.book");
        try {
            Files.copy(imported(), file);
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
        return OpenBook.open(file, Optional.of("Jo"), TestClock.ticking(START));
    }

    private static synchronized Path imported() throws BadInput {
        if (imported == null) {
            try {
                imported = Files.createTempDirectory("benchtwin").resolve("imported.book");
            } catch (IOException failed) {
                throw new UncheckedIOException(failed);
            }
            imported.toFile().deleteOnExit();
            imported.getParent().toFile().deleteOnExit();
            OpenBook book = OpenBook.open(imported, Optional.of("Jo"), TestClock.ticking(START));
            StockImport.Imported all = take(book, SAMPLES);
            assertThat(all.changed()).isZero();
            assertThat(imported.resolveSibling("imported.book-wal")).as("all is in the one file").doesNotExist();
        }
        return imported;
    }

    /** Imports a folder. */
    static StockImport.Imported take(OpenBook book, Path folder) throws BadInput {
        return StockImport.enter(book, StockImport.read(StockFiles.inFolder(folder), false));
    }

    /** Imports one file of a folder that was written for it. */
    static StockImport.Imported take(OpenBook book, Path folder, String file, String... lines) throws BadInput {
        return take(book, sheet(folder, file, lines));
    }

    /** A folder with one file in it. */
    static Path sheet(Path folder, String file, String... lines) {
        try {
            Path fresh = Files.createTempDirectory(folder, "sheet");
            Files.writeString(fresh.resolve(file), String.join("\n", lines) + "\n");
            return fresh;
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }

    /** One of the sample files with its lines changed, alone in a folder. */
    static Path changed(Path folder, String file, UnaryOperator<List<String>> change) {
        try {
            List<String> lines = change.apply(new ArrayList<>(Files.readAllLines(SAMPLES.resolve(file))));
            return sheet(folder, file, lines.toArray(String[]::new));
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }

    /** One cell, found by the row's first cell and the column's name, written anew. */
    static UnaryOperator<List<String>> cell(String tag, String column, String value) {
        return lines -> {
            int at = List.of(lines.get(0).split(",", -1)).indexOf(column);
            assertThat(at).as(column).isNotNegative();
            boolean found = false;
            for (int k = 1; k < lines.size(); k++) {
                String[] cells = lines.get(k).split(",", -1);
                if (cells[0].equals(tag)) {
                    cells[at] = value;
                    lines.set(k, String.join(",", cells));
                    found = true;
                }
            }
            assertThat(found).as(tag).isTrue();
            return lines;
        };
    }

    /** Everything that was entered, table by table. */
    static Map<String, List<List<Optional<String>>>> everything(OpenBook book) throws BadInput {
        Map<String, List<List<Optional<String>>>> tables = new LinkedHashMap<>();
        book.read(BookTable::all).forEach(table -> tables.put(table.name(), table.rows()));
        return tables;
    }

    /** Holds a book to being whole. */
    static void isClean(OpenBook book) throws BadInput {
        assertThat(BookCare.check(book).findings()).isEmpty();
        assertThat(StockViews.audit(book).findings()).isEmpty();
    }

    static StockViews.Part part(OpenBook book, String tag) throws BadInput {
        return StockViews.show(book, tag).part();
    }

    /** What is read of a part now, of one quantity. */
    static double reading(OpenBook book, String tag, String quantity) throws BadInput {
        return part(book, tag).readings().stream().filter(one -> one.quantity().equals(quantity)).findFirst().orElseThrow().value();
    }
}
