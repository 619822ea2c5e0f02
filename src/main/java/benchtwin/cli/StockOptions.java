package benchtwin.cli;

import benchtwin.bench.BadInput;
import benchtwin.bench.Workshop;
import benchtwin.stock.StockFiles;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
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
    @Option(names = "--good-rows", order = 19, description = "take the good rows of a file that has bad ones")
    private boolean goodRows;

    /** Reads the stock, or says what is wrong with it. */
    Workshop load() throws BadInput {
        return Workshop.load(files(Optional.empty()), goodRows);
    }

    /**
     * The files that were named.
     * @param named a folder named without an option
     */
    StockFiles files(Optional<Path> named) throws BadInput {
        StockFiles inFolder = NOTHING;
        if (named.isPresent()) {
            folder = named.get();
        }
        if (folder != null) {
            if (!Files.isDirectory(folder)) {
                throw new BadInput("--stock %s is not a folder".formatted(folder));
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
                : "--stock %s holds none of the files it should, such as heads.csv".formatted(folder));
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
