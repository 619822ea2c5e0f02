package benchtwin.samples;

import benchtwin.bench.ChangeService;
import benchtwin.bench.ClubHistory;
import benchtwin.bench.ClubViews;
import benchtwin.bench.MatchService;
import benchtwin.bench.OpenBook;
import benchtwin.bench.StockViews;
import benchtwin.bench.StockImport;
import benchtwin.bench.Workshop;
import benchtwin.book.Book;
import benchtwin.book.BookCheck;
import benchtwin.book.ThingKind;
import benchtwin.club.Quantity;
import benchtwin.match.Keep;
import benchtwin.match.ShopSettings;
import benchtwin.match.Tolerances;
import benchtwin.stock.StockFiles;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * Measures what is done with a book of a season's size: the first time in a fresh program, and the middle one of several
 * after that, in milliseconds of the clock and of the thread's own work. Not a test. Arguments: a book that {@link SeasonBook}
 * made, how often, and names of what is measured; without names everything is, the slow ones among it once.
 */
public final class BookMeasure {

    private static final double MILLION = 1e6;

    /** Something measured. */
    @FunctionalInterface
    private interface Task {
        Object run() throws Exception;
    }

    private final Path file;
    private final int times;
    private final Set<String> names;

    private BookMeasure(Path file, int times, Set<String> names) {
        this.file = file;
        this.times = times;
        this.names = names;
    }

    /**
     * Prints a row for everything.
     * @param args book, how often, names
     * @throws Exception when something cannot be done
     */
    public static void main(String[] args) throws Exception {
        Path file = Path.of(args[0]);
        new BookMeasure(file, args.length > 1 ? Integer.parseInt(args[1]) : 9,
            Set.copyOf(Arrays.asList(args).subList(Math.min(2, args.length), args.length))).run();
    }

    private void run() throws Exception {
        System.out.printf(Locale.ROOT, "%s, %.0f MB%n", file, Files.size(file) / MILLION);
        System.out.printf("%-28s%18s%18s%n", "", "first", "then");
        OpenBook book = OpenBook.open(Optional.of(file), Optional.empty());
        Book plain = Book.open(file, Clock.systemUTC());
        String club = SeasonBook.FAVOURITE;
        measure("open", times, () -> Book.open(file, Clock.systemUTC()));
        measure("find", times, () -> plain.read(view -> view.find("h-000017")));
        measure("part", times, () -> StockViews.show(book, "H-000017"));
        measure("club", times, () -> ClubViews.show(book, club, ClubViews.When.NOW));
        measure("history", times, () -> ClubHistory.of(book, club));
        measure("words", times, () -> StockViews.list(book, new StockViews.Asked(List.of(), List.of("driver", "alder", "drawer"),
            false, false)));
        measure("list", times, () -> StockViews.list(book, new StockViews.Asked(List.of("shaft"), List.of(), true, false)));
        measure("heads", times, () -> plain.read(view -> view.states(ThingKind.HEAD)));
        measure("stock", times, () -> Workshop.of(book, Optional.empty(), false));
        measure("stock-about", times, () -> Workshop.about(book, club, Set.of(), Optional.empty(), false));
        measure("match", times, () -> MatchService.twinOf(Workshop.about(book, club, Set.of(), Optional.empty(), false), club,
            wish(Keep.SHAFT)));
        measure("match-keep-head", times, () -> MatchService.twinOf(Workshop.about(book, club, Set.of(), Optional.empty(), false),
            club, wish(Keep.HEAD)));
        measure("change", times, () -> ChangeService.ways(Workshop.about(book, club, Set.of(), Optional.empty(), true), club,
            new ChangeService.Wish(Map.of(Quantity.LOFT, new ChangeService.Amount(0.5, true)), Optional.empty(), Optional.empty(),
                Optional.empty(), false, 5, Tolerances.DEFAULT, ShopSettings.DEFAULT)));
        measure("import-again", Math.min(2, times), () -> StockImport.enter(book, StockImport.read(StockFiles.inFolder(
            file.resolveSibling(file.getFileName() + ".stock")), false)));
        measure("check", 1, () -> BookCheck.all(plain));
        Path copy = file.resolveSibling(file.getFileName() + ".copy");
        measure("backup", 1, () -> {
            Files.deleteIfExists(copy);
            plain.backUp(copy);
            return null;
        });
        Files.deleteIfExists(copy);
    }

    private static MatchService.Wish wish(Keep keep) {
        return new MatchService.Wish(keep, false, 5, Tolerances.DEFAULT, ShopSettings.DEFAULT, OptionalDouble.empty(), Map.of(), Set.of());
    }

    private void measure(String name, int runs, Task task) throws Exception {
        if (!names.isEmpty() && !names.contains(name)) {
            return;
        }
        double[] clock = new double[runs];
        double[] work = new double[runs];
        for (int i = 0; i < runs; i++) {
            long start = System.nanoTime();
            long worked = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
            task.run();
            clock[i] = (System.nanoTime() - start) / MILLION;
            work[i] = (ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - worked) / MILLION;
        }
        System.out.printf(Locale.ROOT, "%-28s%9.1f%9.1f%s%n", name, clock[0], work[0], runs == 1 ? ""
            : "%9.1f%9.1f".formatted(middle(clock), middle(work)));
    }

    private static double middle(double[] all) {
        double[] later = Arrays.copyOfRange(all, 1, all.length);
        Arrays.sort(later);
        return later[later.length / 2];
    }
}
