package benchtwin.cli;

import static benchtwin.cli.AtTheBook.list;
import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Players and notes as typed, with names and texts as the world has them. */
class PlayerNoteCommandTest {

    @TempDir
    private Path folder;
    private AtTheBook book;

    @BeforeEach
    void anEmptyBook() {
        book = AtTheBook.none(folder);
    }

    @Test
    void aPlayerIsAddedListedShownAndDescribedAnew() {
        assertThat(book.done("player add \"R. Fenn\" --hand left --tolerance loft=0.2,length=1/16 --note \"likes it heavy\""))
            .isEqualTo("R. Fenn is in the book.\n");
        assertThat(book.done("player list")).isEqualTo("R. Fenn  left    0 clubs\n");
        assertThat(book.done("player show \"r. fenn\"")).isEqualTo("""
            R. Fenn, left-handed
            Tolerances  loft ±0.20°, length ±1.6 mm

            Note: likes it heavy
            """);
        book.done("player describe \"R. Fenn\" --hand right --tolerance loft=0.15");
        JsonNode json = book.json("player show \"R. Fenn\"");
        assertThat(json.get("hand").asText()).isEqualTo("right");
        assertThat(json.get("tolerances").get("loftDeg").asDouble()).isEqualTo(0.15);
        assertThat(json.get("tolerances").get("lengthMm").asDouble()).as("what was not named stays").isEqualTo(1.5875);
        book.done("job add repair --player \"R. Fenn\"");
        assertThat(book.done("player list")).contains("R. Fenn  right   0 clubs  job 1: repair, waiting");
    }

    @Test
    void whatCannotBeEnteredIsRefused() {
        book.done("player add \"R. Fenn\"");
        book.refused("player add \"R. Fenn\"", "player R. Fenn is in the book already");
        book.refused("player show \"R. Fern\"", "no player is called R. Fern in the book; nearest are R. Fenn");
        book.refused("player describe \"R. Fenn\"", "nothing to change: give --hand or --tolerance");
        book.refused("player add \"S. Moor\" --tolerance loft=0", "--tolerance: a tolerance of 0.00 for loft is not above 0");
        book.refused("note add \"S. Moor\" hello", "nothing in the book is called S. Moor; expected a tag, a name or a job's number, such "
            + "as job:12");
        assertThat(book.words("player", "add", "x".repeat(81)).err()).contains("cannot be the name of a player; expected 1 to 80 "
            + "characters on one line");
        assertThat(book.words("player", "add", " ").err()).contains("cannot be the name of a player");
        assertThat(book.type("player add \"S. Moor\" --hand both").err()).contains("expected one of", "left", "right");
    }

    @ParameterizedTest
    @ValueSource(strings = {"<script>alert(1)</script>", "'; DROP TABLE thing; --", "Å. Brännström-Ñúñez", "\u05d0\u05d1\u05d2 \u05d3",
        "Zo\u0308e \u200d", "\ud83c\udfcc\ufe0f\u200d\u2640\ufe0f", "=cmd|' /C calc'!A0", "-dash", "50%", "a\\b", "{\"json\": 1}",
        "%s %n %d"})
    void namesComeBackAsTheyWereTyped(String name) {
        Typed added = book.words("player", "add", "--", name);
        if (added.status() != Main.DONE) {
            added = Typed.run(java.util.List.of("player", "add", "--book", book.book().toString(), "--", name));
        }
        assertThat(added.status()).as(added.err()).isEqualTo(Main.DONE);
        assertThat(added.out()).contains(name);
        JsonNode shown = book.json("player list").get("players").get(0);
        assertThat(shown.get("name").asText()).isEqualTo(name);
        book.type("player list").fitsThePage();
        assertThat(book.type("player list --plain").out().chars()).allMatch(c -> c < 128);
        book.isClean();
    }

    @Test
    void controlCharactersCannotSteerATerminal() {
        Typed added = book.words("player", "add", "Bell\u0007 \u001b[31mRed");
        assertThat(added.status()).isEqualTo(Main.DONE);
        assertThat(added.out()).doesNotContain("\u001b", "\u0007");
        book.words("note", "add", "Bell [31mRed", "line one\nline\u001b[2J two");
        assertThat(book.type("note find line").out()).doesNotContain("\u001b").contains("line one line");
        assertThat(book.json("note find line").get("notes").get(0).get("text").asText()).as("lines are kept").startsWith("line one\nline");
    }

    @Test
    void aNoteOfTenThousandSmilesIsFoundAgain() {
        book.done("player add \"R. Fenn\"");
        String smiles = "\ud83d\ude00".repeat(9_990) + " grip slips";
        Typed noted = book.words("note", "add", "R. Fenn", smiles);
        assertThat(noted.status()).as(noted.err()).isEqualTo(Main.DONE);
        JsonNode found = book.json("note find slip").get("notes").get(0);
        assertThat(found.get("text").asText()).isEqualTo(smiles);
        assertThat(found.get("about").asText()).isEqualTo("player R. Fenn");
        assertThat(book.words("note", "add", "R. Fenn", "x".repeat(20_001)).err()).contains("has 20001 characters; expected 1 to 20000");
        assertThat(book.words("note", "add", "R. Fenn", " \t ").err()).contains("has 0 characters; expected 1 to 20000");
    }

    @Test
    void notesAreFoundByTheStartOfWordsAndWhateverIsAskedIsOnlyWords() {
        book.done("player add \"Å. Brännström\" --note \"likes the rib a touch left; über soft\"");
        book.done("job add repair --player \"Å. Brännström\"");
        assertThat(book.done("note add job:1 \"call before noon\"")).isEqualTo("Noted on job 1.\n");
        assertThat(book.done("note find rib uber")).contains("player Å. Brännström: likes the rib a touch left; über soft");
        assertThat(book.done("note find call")).contains("job 1: call before noon");
        assertThat(book.done("job show 1")).contains("Note: call before noon");
        Typed none = book.type("note find driver").fitsThePage();
        assertThat(none.out()).isEqualTo("No note has all of these words.\n");
        assertThat(none.status()).isEqualTo(Main.NOTHING_SUITABLE);
        assertThat(book.words("note", "find", "\" OR rib NEAR(").status()).as("no query language").isEqualTo(Main.NOTHING_SUITABLE);
        assertThat(book.type("note find rib --plain").out().chars()).allMatch(c -> c < 128);
    }

    @Test
    void aTagThatMayBeSeveralThingsHasToBeSaidWhich() {
        book.done("player add 12");
        for (int k = 0; k < 12; k++) {
            book.done("job add repair --player 12");
        }
        book.refused("note add 12 x", "12 may be player 12 or job 12; say which, such as player:12");
        assertThat(book.done("note add job:12 x")).isEqualTo("Noted on job 12.\n");
        assertThat(list(book.json("note find x").get("notes"))).hasSize(1);
    }
}
