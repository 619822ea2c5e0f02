package benchtwin.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The record file as a whole, as typed. */
class BookCareCommandTest {

    @TempDir
    private Path folder;

    @Test
    void aBackupIsPutBackAndTheBookBeforeIsKept() throws Exception {
        AtTheBook book = AtTheBook.samples(folder);
        Path copy = folder.resolve("thursday.book");
        assertThat(book.type("book backup " + copy).status()).isEqualTo(Main.DONE);
        assertThat(copy).exists();
        book.refused("book backup " + copy, copy + " is there already; name a file that is not");
        book.done("stock move H-110 --to van");
        String said = book.type("book restore " + copy).out().replace("\n", " ");
        assertThat(said).contains("is now as in", "The one before is kept as");
        assertThat(book.part("H-110").get("place").asText()).isEqualTo("driver drawer 1");
        try (var files = Files.list(folder)) {
            assertThat(files).anyMatch(file -> file.getFileName().toString().contains("before-restore"));
        }
        book.isClean();
        book.refused("book restore " + folder.resolve("nosuch"), folder.resolve("nosuch") + " is no file; expected a backup of a book");
    }

    @Test
    void whereTheBookLiesIsSaidWithoutMakingOne() {
        AtTheBook none = AtTheBook.none(folder);
        assertThat(none.type("book where").out().strip()).isEqualTo(none.book().toString());
        assertThat(none.type("book where --json").json().get("said").asText()).isEqualTo(none.book().toString());
        assertThat(none.book()).doesNotExist();
    }

    @Test
    void aFileThatIsNoBookIsNotTouched() throws Exception {
        AtTheBook none = AtTheBook.none(folder);
        Files.writeString(none.book(), "tag,model\n");
        Typed typed = none.type("stock list");
        assertThat(typed.err()).contains("is no book of this program, or a damaged one; name a book, or a file that is not there yet");
        assertThat(typed.status()).isEqualTo(Main.BAD_INPUT);
        assertThat(Files.readString(none.book())).isEqualTo("tag,model\n");
    }
}
