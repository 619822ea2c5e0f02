package benchtwin.cli;

import static org.assertj.core.api.Assertions.assertThat;

import benchtwin.samples.PastWorkshop;
import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.StreamSupport;

/** Commands typed at a book of one's own. */
final class AtTheBook {

    private final Path book;

    /** Any file, there or not. */
    AtTheBook(Path book) {
        this.book = book;
    }

    /** A book that is not there yet. */
    static AtTheBook none(Path folder) {
        return new AtTheBook(folder.resolve("new.book"));
    }

    /** A book with the sample workshop in it. */
    static AtTheBook samples(Path folder) {
        Path file = folder.resolve("samples.book");
        PastWorkshop.into(file);
        return new AtTheBook(file);
    }

    /** A book with the sample workshop's files read in today, nothing in it having happened. */
    static AtTheBook imported(Path folder) {
        try {
            Path copy = folder.resolve("workshop.book");
            Files.copy(Imported.BOOK, copy);
            return new AtTheBook(copy);
        } catch (IOException refused) {
            throw new UncheckedIOException(refused);
        }
    }

    /** Made when it is first asked for, and copied for each who asks. */
    private static final class Imported {

        static final Path BOOK = make();

        private static Path make() {
            try {
                Path folder = Files.createTempDirectory("samples");
                AtTheBook typed = new AtTheBook(folder.resolve("first.book"));
                typed.done("stock", "import", Typed.STOCK);
                Path copy = folder.resolve("samples.book");
                typed.done("book", "backup", copy.toString());
                for (Path file : new Path[] {typed.book, copy, folder}) {
                    file.toFile().deleteOnExit();
                }
                return copy;
            } catch (IOException refused) {
                throw new UncheckedIOException(refused);
            }
        }
    }

    /** The sample workshop's files. */
    static Path workshop() {
        return PastWorkshop.folder();
    }

    Path book() {
        return book;
    }

    /** Types a line; double quotes hold words with spaces together. */
    Typed type(String line) {
        return words(Typed.words(line).toArray(String[]::new));
    }

    /** Types words as they are. */
    Typed words(String... words) {
        List<String> all = new ArrayList<>(List.of(words));
        all.addAll(List.of("--book", book.toString(), "--by", "Jo"));
        return Typed.run(all);
    }

    /** Types words that must do. */
    Typed done(String... words) {
        Typed typed = words(words);
        assertThat(typed.status()).as(typed.err()).isEqualTo(Main.DONE);
        return typed;
    }

    /** Types a line that must do. */
    String done(String line) {
        Typed typed = type(line).fitsThePage();
        assertThat(typed.status()).as(line + ": " + typed.err()).isEqualTo(Main.DONE);
        assertThat(typed.err()).as(line).isEmpty();
        return typed.out();
    }

    /** Types a line that cannot be done, and is told why in one line; nothing is entered by it. */
    void refused(String line, String message) {
        long before = entries();
        Typed typed = type(line);
        assertThat(typed.err().strip()).as(line).isEqualTo("benchtwin: " + message);
        assertThat(typed.status()).as(line).isEqualTo(Main.BAD_INPUT);
        assertThat(entries()).as("nothing is kept of: " + line).isEqualTo(before);
    }

    private long entries() {
        if (!Files.exists(book)) {
            return 0;
        }
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + book);
             Statement statement = connection.createStatement();
             ResultSet rows = statement.executeQuery("SELECT count(*) FROM entry")) {
            rows.next();
            return rows.getLong(1);
        } catch (SQLException broken) {
            throw new IllegalStateException(broken);
        }
    }

    JsonNode json(String line) {
        Typed typed = type(line + " --json");
        assertThat(typed.err()).as(line).isEmpty();
        return typed.json();
    }

    /** How a part stands. */
    JsonNode part(String tag) {
        return json("stock show " + tag);
    }

    JsonNode club(String tag) {
        return json("club show " + tag);
    }

    /** The value of a quantity of a club; null where it is not known. */
    Double value(String tag, String quantity, String name) {
        return list(club(tag).get("measures")).stream().filter(one -> one.get("quantity").asText().equals(quantity))
            .map(one -> one.get(name).asDouble()).findFirst().orElse(null);
    }

    /** Holds the book to being whole: the file, what refers to what, and every state as its events say. */
    void isClean() {
        assertThat(done("book check")).contains("all in order");
    }

    static List<JsonNode> list(JsonNode array) {
        return StreamSupport.stream(array.spliterator(), false).toList();
    }
}
