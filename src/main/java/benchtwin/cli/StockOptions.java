package benchtwin.cli;

import benchtwin.bench.BadInput;
import benchtwin.bench.OpenBook;
import benchtwin.bench.PlayerBook;
import benchtwin.bench.Workshop;
import benchtwin.club.Quantity;
import benchtwin.stock.StockFiles;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Which files the stock is read from. */
final class StockOptions {

    private static final StockFiles NOTHING = StockFiles.of(Map.of());

    @Option(names = "--stock", paramLabel = "DIR", order = 10,
        description = "folder with heads.csv, shafts.csv, grips.csv, sleeves.csv, weights.csv, clubs.csv; a file named "
            + "below takes the place of the one in it")
    private Path folder;
    @Option(names = "--heads", paramLabel = "FILE", order = 11, description = "heads")
    private Path heads;
    @Option(names = "--shafts", paramLabel = "FILE", order = 12, description = "shafts")
    private Path shafts;
    @Option(names = "--grips", paramLabel = "FILE", order = 13, description = "grips")
    private Path grips;
    @Option(names = "--sleeves", paramLabel = "FILE", order = 14, description = "adjustable sleeves")
    private Path sleeves;
    @Option(names = "--weights", paramLabel = "FILE", order = 15, description = "weights")
    private Path weights;
    @Option(names = "--clubs", paramLabel = "FILE", order = 16, description = "players' recorded clubs")
    private Path clubs;
    @Option(names = "--sleeve-settings", paramLabel = "FILE", order = 17, description = "measured sleeve settings")
    private Path sleeveSettings;
    @Option(names = "--frequencies", paramLabel = "FILE", order = 18, description = "further shaft readings")
    private Path frequencies;
    @Mixin
    private BookOptions bookOptions;
    private OpenBook opened;
    @Option(names = "--good-rows", order = 19, description = "take the good rows of a file that has bad ones")
    private boolean goodRows;

    /** Reads the stock from the files that were named, else from the book. */
    Workshop load() throws BadInput {
        return load(Optional.empty(), false);
    }

    /**
     * The same.
     * @param forJob  a job of the book that is planned
     * @param asFound whether the book's clubs are taken as they measure now, not as they should
     */
    Workshop load(Optional<String> forJob, boolean asFound) throws BadInput {
        if (isFromFiles()) {
            if (bookOptions.file().isPresent()) {
                throw new BadInput("the stock is in the files that were named or in the book: leave out --book, or the files");
            }
            return Workshop.load(files(Optional.empty()), goodRows);
        }
        return Workshop.of(book(), forJob, asFound);
    }

    /**
     * The same as far as a question about one club goes.
     * @param club    the club's tag; null where none is named
     * @param parts   tags of further parts the question names
     * @param forJob  a job of the book that is planned
     * @param asFound whether the book's clubs are taken as they measure now, not as they should
     */
    Workshop loadAbout(String club, Set<String> parts, Optional<String> forJob, boolean asFound) throws BadInput {
        return club == null || isFromFiles() ? load(forJob, asFound) : Workshop.about(book(), club, parts, forJob, asFound);
    }

    /** Whether files were named. */
    boolean isFromFiles() {
        return Stream.of(folder, heads, shafts, grips, sleeves, weights, clubs, sleeveSettings, frequencies)
            .anyMatch(Objects::nonNull);
    }

    /** The book the stock is in. */
    OpenBook book() throws BadInput {
        if (opened == null) {
            opened = bookOptions.ifThere().orElseThrow(() -> new BadInput("no stock was named, and there is no book yet: give a "
                + "folder with --stock DIR, or read one into the book with benchtwin stock import DIR"));
        }
        return opened;
    }

    /** Tolerances the player of one of the book's clubs prefers; none where the stock is in files. */
    Map<Quantity, Double> preferred(String club) throws BadInput {
        return club == null || isFromFiles() ? Map.of() : PlayerBook.tolerancesFor(book(), club);
    }

    /** The book, made where there is none. */
    OpenBook openBook() throws BadInput {
        return bookOptions.open();
    }

    /**
     * The files that were named.
     * @param named a folder named without an option
     */
    StockFiles files(Optional<Path> named) throws BadInput {
        StockFiles inFolder = NOTHING;
        if (named.isPresent() && folder != null) {
            throw new BadInput("two folders, %s and --stock %s: leave one out".formatted(named.get(), folder));
        }
        String called = named.isPresent() ? "" : "--stock ";
        if (named.isPresent()) {
            folder = named.get();
        }
        if (folder != null) {
            if (!Files.isDirectory(folder)) {
                throw new BadInput(called + (Files.exists(folder) ? "%s is a file, not a folder; name a file by what is in it, such as "
                    + "--heads %<s" : "%s is not a folder").formatted(folder));
            }
            inFolder = StockFiles.inFolder(folder);
        }
        StockFiles files = new StockFiles(or(heads, inFolder.heads()), or(shafts, inFolder.shafts()),
            or(grips, inFolder.grips()), or(sleeves, inFolder.sleeves()), or(weights, inFolder.weights()),
            or(clubs, inFolder.clubs()), or(sleeveSettings, inFolder.sleeveSettings()),
            or(frequencies, inFolder.frequencies()));
        if (files.equals(NOTHING)) {
            throw new BadInput(folder == null
                ? "no stock was named: give its folder with --stock DIR, or files with --heads, --shafts and so on"
                : called + "%s holds none of the files it should, such as heads.csv".formatted(folder));
        }
        return files;
    }

    /** A file of the stock's folder, where there is a folder and the file is in it. */
    Optional<Path> inFolder(String fileName) {
        return Optional.ofNullable(folder).map(dir -> dir.resolve(fileName)).filter(Files::exists);
    }

    /** Whether the good rows of files with bad ones are taken. */
    boolean isGoodRows() {
        return goodRows;
    }

    private static Optional<Path> or(Path named, Optional<Path> inFolder) {
        return named != null ? Optional.of(named) : inFolder;
    }
}
