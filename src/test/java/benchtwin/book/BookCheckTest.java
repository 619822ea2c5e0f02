package benchtwin.book;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Each kind of damage is done to a book of its own, and found. */
class BookCheckTest {

    private static final String GRIP = "{\"facts\":{\"condition\":\"cracked\",\"retired_why\":\"cracked\"},\"readings\":[],"
        + "\"promises\":[]}";

    @TempDir
    private Path folder;
    private Book book;

    @BeforeEach
    void aBook() throws BookProblem {
        book = Books.in(folder);
        SampleBook.fill(book);
    }

    private List<String> findings(String... statements) throws Exception {
        Damage.sql(book.file(), statements);
        return BookCheck.all(book).findings();
    }

    @Test
    void aCleanBookIsCountedAndHasNoFindings() throws BookProblem {
        assertThat(BookCheck.all(book)).isEqualTo(new BookCheck(9, 17, 8, List.of()));
    }

    @Test
    void aStateThatWasChangedByHandIsFound() throws Exception {
        assertThat(findings("UPDATE state SET standing = 'there' WHERE standing = 'retired'")).containsExactly(
            "grip G-2 stands as grip, there, nobody's, %s, and its events say grip, retired, nobody's, %s".formatted(GRIP, GRIP));
    }

    @Test
    void factsOfAStateThatWereChangedByHandAreFound() throws Exception {
        assertThat(findings("UPDATE state SET derived = replace(derived, 'cracked', 'sound') WHERE standing = 'retired'"))
            .singleElement().asString().startsWith("grip G-2 stands as grip, retired, nobody's, {\"facts\":{\"condition\":\"sound\"");
        assertThat(BookCheck.all(book).findings()).isEqualTo(book.read(BookCheck::derived).findings());
    }

    @Test
    void anOwnerThatWasChangedByHandIsFound() throws Exception {
        assertThat(findings("UPDATE state SET owner = 'nobody known' WHERE kind = 'job'")).singleElement().asString()
            .startsWith("job 1 stands as job, planned, nobody known, ").contains("its events say job, planned, Å. Brännström, ");
    }

    @Test
    void aStateThatIsMissingIsFound() throws Exception {
        assertThat(findings("DELETE FROM state WHERE standing = 'retired'")).containsExactly(
            "grip G-2 stands as nothing at all, and its events say grip, retired, nobody's, " + GRIP);
    }

    @Test
    void aStateOfNothingIsFound() throws Exception {
        assertThat(findings("INSERT INTO state SELECT 99, kind, standing, owner, derived FROM state WHERE standing = 'retired'"))
            .containsExactly("row 99 of table state refers to a row of table thing that is not there",
                "a state of thing 99, which is not there: grip, retired, nobody's, " + GRIP);
    }

    @Test
    void anEventOfAThingThatIsNotThereIsFound() throws Exception {
        assertThat(findings("INSERT INTO event (entry_id, thing_id, kind) VALUES (1, 99, 'moved')")).containsExactly(
            "row 18 of table event refers to a row of table thing that is not there");
    }

    @Test
    void anEntryThatWasCutOutIsFound() throws Exception {
        assertThat(findings("DROP TRIGGER note_kept", "DROP TRIGGER entry_kept", "DELETE FROM entry WHERE id = 1"))
            .contains("row 1 of table thing refers to a row of table entry that is not there",
                "row 1 of table note refers to a row of table entry that is not there");
    }

    @Test
    void anEventThatWasCutOutIsFoundInTheState() throws Exception {
        assertThat(findings("DROP TRIGGER event_kept", "DELETE FROM event WHERE kind = 'retired'")).singleElement().asString()
            .startsWith("grip G-2 stands as grip, retired").contains("its events say grip, there");
    }

    @Test
    void aReadingThatWasChangedIsFoundInTheState() throws Exception {
        assertThat(findings("DROP TRIGGER reading_stays", "UPDATE reading SET value = 9.4 WHERE value = 9.3")).singleElement()
            .asString().startsWith("head H-014 stands as ");
    }

    @Test
    void aCorrectionOfAnotherThingsReadingIsFound() throws Exception {
        assertThat(findings("INSERT INTO event (id, entry_id, thing_id, kind) SELECT 50, 1, id, 'corrected' FROM thing "
            + "WHERE tag = 'S-7'", "INSERT INTO reading (id, event_id, quantity, value, unit, corrects) "
            + "SELECT 60, 50, 'loft_deg', 1, 'degrees', id FROM reading WHERE value = 9.3")).first().asString()
            .startsWith("reading 60 corrects reading ").endsWith(", which is not an earlier one of the same");
    }

    @ParameterizedTest
    @ValueSource(strings = {"kind = 'melted'", "happened_at = 'yesterday'", "facts = '{\"count\": \"many\"}'", "facts = '[1]'"})
    void anEventThatMakesNoSenseIsNamedAndTheOthersAreCheckedAllTheSame(String change) throws Exception {
        List<String> findings = findings("DROP TRIGGER event_stays", "UPDATE event SET %s WHERE thing_id = (SELECT id FROM thing "
            .formatted(change) + "WHERE tag = 'W-10')", "UPDATE state SET standing = 'there' WHERE standing = 'retired'");
        assertThat(findings).hasSize(2).anyMatch(finding -> finding.startsWith("grip G-2 stands as grip, there"));
        assertThat(findings).anyMatch(finding -> finding.startsWith("weight W-10 "));
        assertThat(findings).allMatch(finding -> finding.lines().count() == 1);
    }

    @Test
    void aNoteThatIsNotFoundByItsWordsIsFound() throws Exception {
        assertThat(findings("DROP TRIGGER note_is_indexed", "INSERT INTO note (entry_id, thing_id, text) VALUES (1, 1, 'unseen')"))
            .containsExactly("note 2 is not found by its words");
        assertThat(book.read(view -> view.search("unseen", 10)).size()).isZero();
    }

    @Test
    void aNoteThatWasChangedAfterwardsIsFound() throws Exception {
        assertThat(findings("DROP TRIGGER note_stays", "UPDATE note SET text = 'likes it right' WHERE id = 1"))
            .containsExactly("note 1 is not found by its words");
    }

    @Test
    void aTagThatIsLookedUpAsSomethingElseIsFound() throws Exception {
        assertThat(findings("DROP TRIGGER thing_stays", "UPDATE thing SET folded = 'h-015' WHERE tag = 'H-014'"))
            .containsExactly("head H-014 is looked up as \"h-015\", and its tag says \"h-014\"");
    }

    @ParameterizedTest
    @ValueSource(strings = {"entry", "thing", "event", "reading", "note", "state", "event_by_thing", "thing_by_folded",
        "state_by_owner", "note_words_data", "sqlite_autoindex_reading_1"})
    void bytesThatAreWrongAreFoundWhereverTheyAre(String name) throws Exception {
        Damage.inside(book.file(), name);
        List<String> findings = BookCheck.all(book).findings();
        assertThat(findings).isNotEmpty().allMatch(finding -> finding.lines().count() == 1);
        assertThat(findings.get(0)).startsWith("file: ");
    }
}
