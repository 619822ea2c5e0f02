package benchtwin.stock;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * Which files make up one workshop's stock; each is optional.
 * @param heads          heads
 * @param shafts         shafts
 * @param grips          grips
 * @param sleeves        sleeve types
 * @param weights        weights in the drawer
 * @param clubs          players' recorded clubs
 * @param sleeveSettings measured sleeve settings
 * @param frequencies    further frequency readings of shafts
 */
public record StockFiles(Optional<Path> heads, Optional<Path> shafts, Optional<Path> grips, Optional<Path> sleeves,
                         Optional<Path> weights, Optional<Path> clubs, Optional<Path> sleeveSettings,
                         Optional<Path> frequencies) {

    /**
     * The files of a folder that carry the usual names ({@code heads.csv} and so on).
     * @param folder any path; one that is no folder holds none of them
     * @return those that are there, whatever state they are in
     */
    public static StockFiles inFolder(Path folder) {
        Map<StockKind, Path> found = new EnumMap<>(StockKind.class);
        for (StockKind kind : StockKind.values()) {
            Path path = folder.resolve(kind.fileName());
            if (kind.isStock() && Files.exists(path)) {
                found.put(kind, path);
            }
        }
        return of(found);
    }

    /**
     * Files by kind.
     * @param paths at most one a kind
     * @return those given
     */
    public static StockFiles of(Map<StockKind, Path> paths) {
        return new StockFiles(
            Optional.ofNullable(paths.get(StockKind.HEADS)), Optional.ofNullable(paths.get(StockKind.SHAFTS)),
            Optional.ofNullable(paths.get(StockKind.GRIPS)), Optional.ofNullable(paths.get(StockKind.SLEEVES)),
            Optional.ofNullable(paths.get(StockKind.WEIGHTS)), Optional.ofNullable(paths.get(StockKind.CLUBS)),
            Optional.ofNullable(paths.get(StockKind.SLEEVE_SETTINGS)),
            Optional.ofNullable(paths.get(StockKind.FREQUENCIES)));
    }

    /**
     * The files given, by kind.
     * @return in the order of {@link StockKind}
     */
    public Map<StockKind, Path> byKind() {
        Map<StockKind, Path> paths = new LinkedHashMap<>();
        heads.ifPresent(path -> paths.put(StockKind.HEADS, path));
        shafts.ifPresent(path -> paths.put(StockKind.SHAFTS, path));
        grips.ifPresent(path -> paths.put(StockKind.GRIPS, path));
        sleeves.ifPresent(path -> paths.put(StockKind.SLEEVES, path));
        weights.ifPresent(path -> paths.put(StockKind.WEIGHTS, path));
        clubs.ifPresent(path -> paths.put(StockKind.CLUBS, path));
        sleeveSettings.ifPresent(path -> paths.put(StockKind.SLEEVE_SETTINGS, path));
        frequencies.ifPresent(path -> paths.put(StockKind.FREQUENCIES, path));
        return paths;
    }
}
