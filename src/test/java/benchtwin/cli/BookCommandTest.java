package benchtwin.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** {@code benchtwin book} and the files a whole book is taken out into. */
class BookCommandTest {

    private static final List<String> TABLES = List.of("entry.csv", "thing.csv", "event.csv", "reading.csv", "note.csv");

    @TempDir
    private Path folder;
    private AtTheBook book;

    @BeforeEach
    void fillABook() {
        book = AtTheBook.imported(folder);
        book.done("player", "add", "=HYPERLINK(\"x\")", "--note", "@SUM(A1)\nsecond line, with \"quotes\" and 🏌️");
        book.done("job", "add", "twin", "--club", "OAKES-DR", "--due", "2026-05-21 9:20", "--note", "-1 day");
        book.done("job", "plan", "1", "--pick", "1");
        book.done("club", "record", "QUILLBY-7I", "loft=34.2", "loft=34.4", "--gauge", "+bench", "--found");
    }

    @Test
    void aBookOfTheCsvFilesOrOfTheJsonFileSaysTheSameToTheByte() throws IOException {
        book.done("book", "export", out("csv").toString());
        book.done("book", "export", folder.resolve("all.json").toString());
        AtTheBook fromCsv = new AtTheBook(folder.resolve("a.book"));
        AtTheBook fromJson = new AtTheBook(folder.resolve("b.book"));
        fromCsv.done("book", "import", out("csv").toString());
        fromJson.done("book", "import", folder.resolve("all.json").toString());
        fromCsv.done("book", "export", out("csv2").toString());
        fromJson.done("book", "export", out("csv3").toString());
        for (String table : TABLES) {
            assertThat(out("csv2").resolve(table)).hasSameBinaryContentAs(out("csv").resolve(table));
            assertThat(out("csv3").resolve(table)).hasSameBinaryContentAs(out("csv").resolve(table));
        }
        fromCsv.done("book", "check");
        assertThat(fromCsv.done("match", "--club", "TOLVER-DR", "--json").out())
            .isEqualTo(book.done("match", "--club", "TOLVER-DR", "--json").out());
    }

    @Test
    void noCellOfTheCsvFilesRunsAsAFormula() throws IOException {
        book.done("book", "export", out("csv").toString());
        String all = "";
        for (String table : TABLES) {
            all += Files.readString(out("csv").resolve(table));
        }
        assertThat(all).contains("'@SUM(A1)", "'=HYPERLINK", "'+bench").doesNotContainPattern("[,\\n]\"?[=+@]");
    }

    @Test
    void aBookIsOnlyMadeWhereNothingIs() throws IOException {
        book.done("book", "export", out("csv").toString());
        assertThat(book.words("book", "export", out("csv").toString()).err()).contains("is there already");
        assertThat(book.words("book", "import", out("csv").toString()).err()).contains("is not empty; name a new one with --book");
        AtTheBook other = new AtTheBook(folder.resolve("c.book"));
        assertThat(other.words("book", "import", folder.resolve("nowhere").toString()).err()).contains("is not there; expected what");
        Files.delete(out("csv").resolve("reading.csv"));
        assertThat(other.words("book", "import", out("csv").toString()).err()).contains("reading.csv is missing");
    }

    @Test
    void aTableThatWasTamperedWithIsRefusedWholly() throws IOException {
        book.done("book", "export", out("csv").toString());
        Path events = out("csv").resolve("event.csv");
        Files.writeString(events, Files.readString(events).replaceFirst("\\n1,1,1,", "\n1,1,999999,"));
        AtTheBook other = new AtTheBook(folder.resolve("c.book"));
        Typed refused = other.words("book", "import", out("csv").toString());
        assertThat(refused.status()).isEqualTo(Main.BAD_INPUT);
        assertThat(refused.err()).contains("what was read does not fit together");
        assertThat(other.done("player", "list").out()).contains("No players yet");
        Files.writeString(events, "id,entry_id\n1\n");
        assertThat(other.words("book", "import", out("csv").toString()).err()).contains("event.csv line 2: has 1 cells; expected 2");
        Files.writeString(folder.resolve("bad.json"), "{\"format\": \"something else\"}");
        assertThat(other.words("book", "import", folder.resolve("bad.json").toString()).err()).contains("is no exported book");
        Files.writeString(folder.resolve("bad2.json"), "{\n\"format\": ");
        assertThat(other.words("book", "import", folder.resolve("bad2.json").toString()).err()).contains("is no JSON: line 2");
    }

    @Test
    void theStockAsItStandsIsFilesAMatchReads() {
        book.done("stock", "export", out("stock").toString());
        for (String asked : List.of("match --club HARKWELL-DR --keep head", "change --club WEXCOMBE-7I loft=-1",
            "shafts --club TOLVER-DR --head H-014")) {
            Typed files = Typed.on(out("stock"), asked + " --json");
            Typed kept = book.words((asked + " --json").split(" "));
            assertThat(files.out()).as(asked).isEqualTo(kept.out());
        }
        assertThat(book.words("stock", "export", out("stock").toString()).err()).contains("is there already");
    }

    @Test
    void aBackupPutBackIsTheBookAgain() {
        Path copy = folder.resolve("thursday.book");
        book.done("book", "backup", copy.toString());
        book.done("stock", "retire", "H-110", "--cracked");
        assertThat(book.done("stock", "show", "H-110").out()).contains("retired");
        assertThat(book.done("book", "restore", copy.toString()).out()).contains("The one before is kept as");
        assertThat(book.done("stock", "show", "H-110").out()).contains("promised to job 1");
        assertThat(book.words("book", "backup", copy.toString()).err()).contains("is there already");
        assertThat(book.words("book", "restore", Typed.STOCK + "/heads.csv").status()).isEqualTo(Main.BAD_INPUT);
        assertThat(book.done("stock", "show", "H-110").out()).contains("promised to job 1");
    }

    private Path out(String name) {
        return folder.resolve(name);
    }
}
