package benchtwin.web;

import static benchtwin.web.FormFiller.words;
import static org.assertj.core.api.Assertions.assertThat;

import benchtwin.bench.BookCare;
import benchtwin.bench.BookCopies;
import benchtwin.bench.OpenBook;
import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;

/** The book is copied and checked from its page. */
class BookPagesTest {

    @RegisterExtension
    static final WebBook PAGES = new WebBook();

    private final FormFiller kim = new FormFiller(PAGES);
    private final Visit visit = new Visit(PAGES);

    @Test
    void aCopyIsMadeListedCheckedAndTakenAway() throws Exception {
        BookCopies copies = new BookCopies(PAGES.book());
        assertThat(words(kim.open("/book"))).contains("To put a copy back").contains("--book \"" + PAGES.book().file().toAbsolutePath() + '"');
        HttpResponse<String> made = kim.send("/book/copies");
        BookCopies.Copy copy = copies.all().get(0);
        assertThat(words(made)).contains("Copied to " + copies.folder().resolve(copy.name())).contains("Last copied " + copy.made());

        long files = files(copies);
        BookCare.Check book = BookCare.check(PAGES.book());
        assertThat(words(kim.open("/book/check"))).contains("All is in order").contains("%d things, %d events, %d readings.".formatted(
            book.things(), book.events(), book.readings()));
        assertThat(words(kim.open("/book/copies/%s/check".formatted(copy.name())))).contains("All is in order").contains(
            "%d things".formatted(book.things()));
        assertThat(files(copies)).as("the check left nothing beside it").isEqualTo(files);

        HttpResponse<byte[]> taken = visit.bytes("/book/copies/" + copy.name());
        assertThat(taken.headers().firstValue("Content-Disposition")).contains("attachment; filename=\"%s\"".formatted(copy.name()));
        assertThat(new String(taken.body(), 0, 15, StandardCharsets.US_ASCII)).isEqualTo("SQLite format 3");
        Path elsewhere = Files.write(Files.createTempDirectory("benchtwin-taken").resolve("taken.book"), taken.body());
        assertThat(BookCare.check(OpenBook.open(Optional.of(elsewhere), Optional.empty()))).isEqualTo(book);
    }

    @Test
    void onlyCopiesAreGivenOut() {
        for (String name : new String[] {"samples.book", "..%2Fsamples.book", "..", "none", "samples-2026-05-20-180400.book"}) {
            HttpResponse<String> refused = kim.open("/book/copies/" + name);
            assertThat(refused.statusCode()).as(name).isIn(400, 404);
            assertThat(refused.body()).doesNotContain("SQLite format").doesNotContain("Exception");
        }
        assertThat(kim.open("/book/copies/none/check").statusCode()).isEqualTo(400);
    }

    @Test
    void aDamagedCopyIsSaidToBeOne() throws Exception {
        kim.open("/book");
        BookCopies copies = new BookCopies(PAGES.book());
        Files.createDirectories(copies.folder());
        Path damaged = copies.folder().resolve("samples-2020-01-01-000000.book");
        Files.writeString(damaged, "this was a book once, before the stick got wet. ".repeat(40));
        HttpResponse<String> told = kim.open("/book/copies/" + damaged.getFileName() + "/check");
        assertThat(told.statusCode()).isEqualTo(400);
        assertThat(words(told)).contains("is no book of this program, or a damaged one").contains(damaged.toString())
            .doesNotContain("benchtwin-copy");
        Files.delete(damaged);
    }

    @Test
    void whatCannotBeWrittenIsSaid() throws Exception {
        kim.open("/book");
        BookCopies copies = new BookCopies(PAGES.book());
        kim.send("/book/copies");
        Path aside = copies.folder().resolveSibling("aside");
        Files.move(copies.folder(), aside);
        Files.writeString(copies.folder(), "in the way");
        HttpResponse<String> refused = kim.send("/book/copies");
        assertThat(refused.statusCode()).isEqualTo(400);
        assertThat(words(refused)).contains("no copy was made: the folder " + copies.folder() + " cannot be made");
        Files.delete(copies.folder());
        Files.move(aside, copies.folder());
    }

    private static long files(BookCopies copies) throws IOException {
        try (Stream<Path> files = Files.list(copies.folder())) {
            return files.count();
        }
    }
}
