package benchtwin.book;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Arrays;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A book that is up to date is opened without what is only there to bring it up to date. */
class QuickOpeningTest {

    @TempDir
    private Path folder;

    /** Opens a book, looks one head up, and prints how many milliseconds that took; then again, warm. */
    static final class LookUp {

        private LookUp() {
        }

        public static void main(String[] args) throws BookProblem {
            for (int time = 0; time < 50; time++) {
                long start = System.nanoTime();
                Book book = Book.open(Path.of(args[0]), Clock.systemUTC());
                State state = book.read(view -> view.state(view.thing(ThingKind.HEAD, "h-014").orElseThrow()));
                if (time == 0 || time == 49) {
                    System.out.printf("%s, %.1f ms%n", state.fact("model").orElseThrow(), (System.nanoTime() - start) / 1e6);
                }
            }
        }
    }

    /** It is not even among the libraries here, so that using it anywhere on the way would fail. */
    @Test
    void theMigrationLibraryIsNotTouched() throws Exception {
        Book book = Books.in(folder);
        SampleBook.fill(book);
        String without = Arrays.stream(System.getProperty("java.class.path").split(File.pathSeparator))
            .filter(entry -> !entry.contains("flyway")).collect(Collectors.joining(File.pathSeparator));
        assertThat(without).isNotEqualTo(System.getProperty("java.class.path"));
        Process process = new ProcessBuilder(Path.of(System.getProperty("java.home"), "bin", "java").toString(), "-cp", without,
            LookUp.class.getName(), book.file().toString()).redirectErrorStream(true).start();
        String said = new String(process.getInputStream().readAllBytes());
        assertThat(said.lines().toList()).hasSize(2).allMatch(line -> line.matches("Sedge, [\\d.]+ ms"));
        assertThat(process.waitFor()).isZero();
    }
}
