package benchtwin.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** Commands typed with one book. */
final class InBook {

    private final Path book;

    InBook(Path book) {
        this.book = book;
    }

    /** A book with the sample workshop in it; read in once, and copied for each who asks. */
    static InBook withSamples(Path folder) {
        try {
            Path copy = folder.resolve("workshop.book");
            Files.copy(Samples.BOOK, copy);
            return new InBook(copy);
        } catch (IOException refused) {
            throw new UncheckedIOException(refused);
        }
    }

    /** Made when it is first asked for. */
    private static final class Samples {

        static final Path BOOK = make();

        private static Path make() {
            try {
                Path folder = Files.createTempDirectory("samples");
                InBook typed = new InBook(folder.resolve("first.book"));
                assertThat(typed.type("stock", "import", Typed.STOCK).status()).isEqualTo(Main.DONE);
                Path copy = folder.resolve("samples.book");
                assertThat(typed.type("book", "backup", copy.toString()).status()).isEqualTo(Main.DONE);
                for (Path file : new Path[] {typed.file(), copy, folder}) {
                    file.toFile().deleteOnExit();
                }
                return copy;
            } catch (IOException refused) {
                throw new UncheckedIOException(refused);
            }
        }
    }

    /** Types words, the book added; no stack trace may come back. */
    Typed type(String... words) {
        List<String> all = new ArrayList<>(List.of(words));
        all.addAll(List.of("--book", book.toString()));
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        int status = Main.run(new PrintStream(out, true, StandardCharsets.UTF_8),
            new PrintStream(err, true, StandardCharsets.UTF_8), all.toArray(String[]::new));
        Typed typed = new Typed(status, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
        assertThat(typed.out() + typed.err()).as("a technician reads no stack trace").doesNotContain("\tat ", "Exception",
            "fault of the program");
        return typed;
    }

    /** Types words that must do what they say. */
    Typed done(String... words) {
        Typed typed = type(words);
        assertThat(typed.status()).as(typed.err()).isEqualTo(Main.DONE);
        return typed;
    }

    Path file() {
        return book;
    }
}
