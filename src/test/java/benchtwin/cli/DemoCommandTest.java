package benchtwin.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DemoCommandTest {

    private static final Path SAMPLES = Path.of("inventory-samples");

    @TempDir
    private Path folder;
    private final ByteArrayOutputStream out = new ByteArrayOutputStream();
    private final ByteArrayOutputStream err = new ByteArrayOutputStream();

    private int run(String... args) {
        return Main.run(new PrintStream(out, true, StandardCharsets.UTF_8), new PrintStream(err, true, StandardCharsets.UTF_8), args);
    }

    private String said() {
        return out.toString(StandardCharsets.UTF_8);
    }

    @Test
    void theProgramCarriesTheVeryFilesOfTheSampleWorkshop() throws IOException {
        Path into = folder.resolve("new");
        assertThat(run("demo", "--only-commands", "--into", into.toString())).isZero();
        try (Stream<Path> files = Files.list(SAMPLES)) {
            List<Path> all = files.toList();
            assertThat(all).isNotEmpty().allSatisfy(file ->
                assertThat(into.resolve("inventory-samples").resolve(file.getFileName())).hasSameBinaryContentAs(file));
        }
        assertThat(into.resolve("demo.book")).doesNotExist();
    }

    @Test
    void aCrackedDriverGoesFromTheFilesToTheHandOver() {
        assertThat(run("demo", "--into", folder.resolve("new").toString())).as(err.toString(StandardCharsets.UTF_8)).isZero();
        assertThat(said()).contains("$ benchtwin match --club OAKES-DR", "Promised to job 1", "Two clubs from stock at once, proven the best",
            "$ benchtwin job done 1", "no choice of parts among");
        assertThat(folder.resolve("new/ticket.pdf")).isNotEmptyFile();
        out.reset();
        assertThat(run("job", "show", "1", "--book", folder.resolve("new/demo.book").toString())).isZero();
        assertThat(said()).contains("OAKES-DR", "handed over");
    }

    @Test
    void aFolderThatHoldsOneAlreadyIsLeftAsItIs() {
        String into = folder.toString();
        assertThat(run("demo", "--only-commands", "--into", into)).isZero();
        assertThat(run("demo", "--only-commands", "--into", into)).isEqualTo(2);
        assertThat(err.toString(StandardCharsets.UTF_8)).contains("something of that name is there already); name a new folder");
    }
}
