package benchtwin.samples;

import static org.assertj.core.api.Assertions.assertThat;

import benchtwin.bench.BadInput;
import benchtwin.bench.OpenBook;
import benchtwin.bench.StockImport;
import benchtwin.stock.StockFiles;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.stream.Stream;

/** The sample workshop with its days put three years back, before any clock's today, so that what is entered now comes after them. */
public final class PastWorkshop {

    /** Rows of all its files. */
    public static final int ROWS = 726;
    private static final Path SAMPLES = Path.of("inventory-samples");
    private static final String BY = "Jo";

    private static Path folder;
    private static Path imported;

    private PastWorkshop() {
    }

    /** Its files. */
    public static synchronized Path folder() {
        if (folder == null) {
            try (Stream<Path> files = Files.list(SAMPLES)) {
                folder = Files.createTempDirectory("benchtwin-samples");
                folder.toFile().deleteOnExit();
                for (Path file : files.toList()) {
                    Path copy = folder.resolve(file.getFileName());
                    Files.writeString(copy, Files.readString(file).replaceAll("\\b2026-", "2023-").replaceAll("\\b2025-", "2022-"));
                    copy.toFile().deleteOnExit();
                }
            } catch (IOException failed) {
                throw new UncheckedIOException(failed);
            }
        }
        return folder;
    }

    /**
     * A book of its own with all of it in it.
     * @param file where the book is to lie; not there yet
     */
    public static void into(Path file) {
        try {
            Files.copy(imported(), file);
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }

    private static synchronized Path imported() throws IOException {
        if (imported == null) {
            Path file = Files.createTempDirectory("benchtwin").resolve("samples.book");
            try {
                StockImport.Imported all = StockImport.enter(OpenBook.open(Optional.of(file), Optional.of(BY)),
                    StockImport.read(StockFiles.inFolder(folder()), false));
                assertThat(all.added()).isEqualTo(ROWS);
            } catch (BadInput wrong) {
                throw new IllegalStateException(String.join("; ", wrong.messages()), wrong);
            }
            imported = file;
            imported.toFile().deleteOnExit();
        }
        return imported;
    }
}
