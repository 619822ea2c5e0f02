package benchtwin.sets;

import benchtwin.club.Inventory;
import benchtwin.club.SetTargets;
import benchtwin.samples.EventWorkshop;
import benchtwin.stock.InventoryRead;
import benchtwin.stock.InventoryReader;
import benchtwin.stock.SetTargetRead;
import benchtwin.stock.SetTargetReader;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A made-up event as the program reads it from files: for measuring plans of whole sets.
 * @param inventory the truck's stock
 * @param targets   what the players want
 */
public record EventStock(Inventory inventory, SetTargets targets) {

    /**
     * An event, written to a temporary folder and read back.
     * @param size A, B or C; see {@link EventWorkshop#of}
     * @param seed same seed, same event
     * @return the event
     * @throws IllegalStateException when a file has a fault
     */
    public static EventStock of(char size, long seed) {
        try {
            Path folder = Files.createTempDirectory("event");
            try {
                EventWorkshop.of(size, seed).write(folder);
                return read(folder);
            } finally {
                delete(folder);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static EventStock read(Path folder) {
        InventoryRead stock = InventoryReader.readFolder(folder, false);
        SetTargetRead wishes = SetTargetReader.read(folder.resolve("set-targets.csv"),
            Optional.of(folder.resolve("lines.csv")), false);
        return new EventStock(
            stock.inventory().orElseThrow(() -> new IllegalStateException("faults: " + stock.faults())),
            wishes.targets().orElseThrow(() -> new IllegalStateException("faults: " + wishes.faults())));
    }

    private static void delete(Path folder) throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            List<Path> deepestFirst = files.sorted(Comparator.reverseOrder()).toList();
            for (Path path : deepestFirst) {
                Files.delete(path);
            }
        }
    }
}
