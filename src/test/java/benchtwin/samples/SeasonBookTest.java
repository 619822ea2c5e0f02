package benchtwin.samples;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import benchtwin.bench.BadInput;
import benchtwin.bench.ChangeJson;
import benchtwin.bench.ChangeService;
import benchtwin.bench.ClubHistory;
import benchtwin.bench.MatchJson;
import benchtwin.bench.MatchService;
import benchtwin.bench.OpenBook;
import benchtwin.bench.StockExport;
import benchtwin.bench.StockImport;
import benchtwin.bench.Workshop;
import benchtwin.book.Book;
import benchtwin.book.BookCheck;
import benchtwin.book.ThingKind;
import benchtwin.club.Quantity;
import benchtwin.club.Timeline;
import benchtwin.match.Keep;
import benchtwin.match.MatchAnswer;
import benchtwin.match.Ranked;
import benchtwin.match.ShopSettings;
import benchtwin.match.Tolerances;
import benchtwin.stock.StockFiles;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A small season: that it is what was asked for, and that the same answers come out of the book whichever way it is read. */
class SeasonBookTest {

    private static final SeasonBook.Size SIZE = SeasonBook.Size.SMALL;

    @TempDir
    private static Path folder;
    private static Path file;
    private static Path stock;
    private static OpenBook book;

    @BeforeAll
    static void make() throws Exception {
        file = folder.resolve("season.book");
        stock = SeasonBook.make(SIZE, 3, file);
        book = OpenBook.open(Optional.of(file), Optional.empty());
    }

    @Test
    void thereIsAsMuchAsWasAskedForAndAllOfItIsInOrder() throws Exception {
        Book plain = Book.open(file, Clock.systemUTC());
        BookCheck check = BookCheck.all(plain);
        assertThat(check.findings()).isEmpty();
        assertThat(check.readings()).isEqualTo(SIZE.readings());
        assertThat(count(plain, ThingKind.PLAYER)).isEqualTo(SIZE.players());
        assertThat(count(plain, ThingKind.CLUB)).isEqualTo(SIZE.clubs());
        assertThat(Arrays.stream(ThingKind.values()).filter(ThingKind::isPart).mapToInt(kind -> count(plain, kind)).sum())
            .isEqualTo(SIZE.parts());
    }

    private static int count(Book plain, ThingKind kind) {
        try {
            return plain.read(view -> view.things(kind).size());
        } catch (Exception unreadable) {
            throw new IllegalStateException(unreadable);
        }
    }

    @Test
    void theFavouriteHasALongHistory() throws BadInput {
        Timeline history = ClubHistory.of(book, SeasonBook.FAVOURITE);
        assertThat(history.entries().stream().mapToInt(entry -> entry.values().size()).sum()).isGreaterThan(80);
    }

    @Test
    void itsStockSaysNothingNewTheSecondTime() throws BadInput {
        StockImport.Imported again = StockImport.enter(book, StockImport.read(StockFiles.inFolder(stock), false));
        assertThat(again.added()).isZero();
        assertThat(again.changed()).isZero();
        assertThat(again.same()).isGreaterThanOrEqualTo(SIZE.parts());
    }

    @ParameterizedTest(name = "{0}, keep {1}")
    @CsvSource({"P001-DR, SHAFT", "P001-DR, HEAD", "P001-DR, NONE", "P004-3W, SHAFT", "P001-7I, HEAD", "P004-PW, SHAFT",
        "p001-dr, SHAFT"})
    void aMatchFromPartOfTheBookIsTheMatchFromAllOfIt(String club, Keep keep) throws BadInput {
        MatchAnswer all = MatchService.twinOf(Workshop.of(book, Optional.empty(), false), club, wish(keep));
        MatchAnswer part = MatchService.twinOf(Workshop.about(book, club, Set.of(), Optional.empty(), false), club, wish(keep));
        assertThat(all.results()).isNotEmpty();
        assertThat(MatchJson.text(part)).isEqualTo(MatchJson.text(all));
    }

    @ParameterizedTest
    @ValueSource(strings = {"P001-DR", "P004-7I", "P001-9I"})
    void aChangeFromPartOfTheBookIsTheChangeFromAllOfIt(String club) throws BadInput {
        ChangeService.Wish wish = new ChangeService.Wish(Map.of(Quantity.SWING_WEIGHT, new ChangeService.Amount(1, true)),
            Optional.empty(), Optional.empty(), Optional.empty(), true, 8, Tolerances.DEFAULT, ShopSettings.DEFAULT);
        ChangeService.Answer all = ChangeService.ways(Workshop.of(book, Optional.empty(), true), club, wish);
        ChangeService.Answer part = ChangeService.ways(Workshop.about(book, club, Set.of(), Optional.empty(), true), club, wish);
        assertThat(all.change().ways()).isNotEmpty();
        assertThat(ChangeJson.text(part)).isEqualTo(ChangeJson.text(all));
    }

    /** Files know less of how sure a reading is, so that chances may differ; parts, plans and costs may not. */
    @Test
    void aMatchFromTheBookIsTheMatchFromTheFilesTakenOutOfIt() throws BadInput {
        StockFiles files = StockFiles.inFolder(StockExport.write(book, folder.resolve("taken-out")).get(0).getParent());
        MatchAnswer taken = MatchService.twinOf(Workshop.load(files, false), SeasonBook.FAVOURITE, wish(Keep.SHAFT));
        MatchAnswer kept = MatchService.twinOf(Workshop.about(book, SeasonBook.FAVOURITE, Set.of(), Optional.empty(), false),
            SeasonBook.FAVOURITE, wish(Keep.SHAFT));
        assertThat(kept.results()).hasSize(5);
        assertThat(chosen(kept)).isEqualTo(chosen(taken));
        assertThat(kept.ruledOut()).isEqualTo(taken.ruledOut());
    }

    private static List<String> chosen(MatchAnswer answer) {
        return answer.results().stream().map(SeasonBookTest::inShort).toList();
    }

    private static String inShort(Ranked option) {
        return "%s, cost %.9f, %s".formatted(option.head().tag(), option.cost(), option.plan());
    }

    @Test
    void aClubThatIsNotThereNamesTheNearestOfAllClubs() {
        assertThat(catchThrowableOfType(BadInput.class, () -> MatchService.twinOf(
            Workshop.about(book, "P001-DRX", Set.of(), Optional.empty(), false), "P001-DRX", wish(Keep.SHAFT))).messages())
            .singleElement().asString().startsWith("no club is tagged P001-DRX; nearest are P001-DR, ");
    }

    private static MatchService.Wish wish(Keep keep) {
        return new MatchService.Wish(keep, false, 5, Tolerances.DEFAULT, ShopSettings.DEFAULT, OptionalDouble.empty(), Map.of(), Set.of());
    }
}
