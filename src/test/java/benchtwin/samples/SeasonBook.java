package benchtwin.samples;

import benchtwin.bench.BadInput;
import benchtwin.bench.ClockedBook;
import benchtwin.bench.StockImport;
import benchtwin.book.Author;
import benchtwin.book.Book;
import benchtwin.book.BookProblem;
import benchtwin.stock.InventoryReader;
import benchtwin.stock.SheetRow;
import benchtwin.stock.StockFiles;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * A made-up book after a season: the stock of a workshop, and a year in which its players' clubs came to the bench again and
 * again. Everything in it was entered as the program enters it. The same size and seed give the same things and readings.
 * <p>{@code main} takes the size, the seed and the file; the stock's own files go into a folder beside it.
 */
public final class SeasonBook {

    /** The club that came most often: a driver of the model the drawers hold most of, with a sleeve. */
    public static final String FAVOURITE = "P001-DR";
    static final LocalDate FIRST_DAY = LocalDate.of(2025, 6, 2);
    private static final String BY = "Jo";

    /**
     * How much there is in it.
     * @param players  players
     * @param clubs    their clubs, at least one each
     * @param parts    parts of every kind, those in clubs included
     * @param readings readings of clubs and parts
     */
    public record Size(int players, int clubs, int parts, int readings) {

        /** A season of a whole tour. */
        public static final Size SEASON = new Size(300, 6_000, 20_000, 500_000);
        /** Enough of everything for a test. */
        public static final Size SMALL = new Size(6, 60, 500, 6_000);

        /** @throws IllegalArgumentException when there is not enough of something for a book of this kind */
        public Size {
            if (players < 1 || clubs < players || parts < 300 || parts < 3 * SeasonStock.clubsWithParts(clubs, parts) + 200
                || readings < 6 * parts + 10 * clubs) {
                throw new IllegalArgumentException("no season has " + players + " players, " + clubs + " clubs, " + parts
                    + " parts and " + readings + " readings");
            }
        }

        /**
         * A size by its name, or a part of a season: {@code season}, {@code small}, {@code 1/10}.
         * @param text as typed
         * @return the size
         * @throws IllegalArgumentException for anything else
         */
        public static Size of(String text) {
            return switch (text) {
                case "season" -> SEASON;
                case "small" -> SMALL;
                default -> {
                    int part = Integer.parseInt(text.replaceFirst("^1/", ""));
                    yield new Size(SEASON.players / part, SEASON.clubs / part, SEASON.parts / part, SEASON.readings / part);
                }
            };
        }
    }

    private SeasonBook() {
    }

    /**
     * Writes a book.
     * @param args size, seed, file
     * @throws IOException when the stock's files cannot be written
     * @throws BadInput    when the stock cannot be imported
     * @throws BookProblem when the book cannot be written
     */
    public static void main(String[] args) throws IOException, BadInput, BookProblem {
        long start = System.nanoTime();
        make(Size.of(args[0]), Long.parseLong(args[1]), Path.of(args[2]));
        System.out.printf(Locale.ROOT, "%s made in %.1f s%n", args[2], (System.nanoTime() - start) / 1e9);
    }

    /**
     * Makes a book that is not there yet.
     * @param size how much there is in it
     * @param seed same size and seed, same book but for the build that wrote it
     * @param file where
     * @return the folder with the files its stock came from
     * @throws IOException when the stock's files cannot be written
     * @throws BadInput    when the stock cannot be imported
     * @throws BookProblem when the book cannot be written
     */
    public static Path make(Size size, long seed, Path file) throws IOException, BadInput, BookProblem {
        Draw draw = new Draw(seed);
        TestClock clock = TestClock.at(evening(FIRST_DAY));
        SeasonStock stock = new SeasonStock(draw.of("stock"), size);
        Path folder = file.resolveSibling(file.getFileName() + ".stock");
        stock.write(folder);
        StockFiles files = StockFiles.inFolder(folder);
        StockImport.enter(ClockedBook.open(file, BY, clock), StockImport.read(files, false));
        int read = InventoryReader.readSheets(files, false).rows().stream().map(SheetRow::readings).mapToInt(List::size)
            .sum();
        Book book = Book.open(file, clock);
        new SeasonYear(draw.of("year"), stock, book, new Author(Optional.of(BY), "season"), clock)
            .run(size.readings() - read);
        return folder;
    }

    /** Half past seven in the evening of a day. */
    static Instant evening(LocalDate day) {
        return day.atTime(LocalTime.of(19, 30)).toInstant(ZoneOffset.UTC);
    }
}
