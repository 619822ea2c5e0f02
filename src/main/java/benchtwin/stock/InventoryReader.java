package benchtwin.stock;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;

/** Reads a workshop's files into one inventory: all of it, or nothing and every fault at once. */
public final class InventoryReader {

    private InventoryReader() {
    }

    /**
     * Reads the files together and checks that they know each other's tags.
     * @param files        the files; those not given leave their part of the inventory empty
     * @param goodRowsOnly take the rows without a fault even when others have one
     * @return the inventory, or none, with all faults and warnings; never an exception for anything a file holds
     */
    public static InventoryRead read(StockFiles files, boolean goodRowsOnly) {
        StockReading reading = StockReading.of(files.byKind());
        reading.read(true);
        return reading.asInventory(goodRowsOnly);
    }

    /**
     * Reads the files in the same way, and keeps their rows as well.
     * @param files        the files
     * @param goodRowsOnly take the rows without a fault even when others have one
     * @return the inventory and the rows it was made of, with the same faults and warnings
     */
    public static SheetRead readSheets(StockFiles files, boolean goodRowsOnly) {
        Map<StockKind, Path> paths = files.byKind();
        StockReading reading = new StockReading(new FileLots(paths, new FileLabels(paths.values()), true));
        reading.read(true);
        InventoryRead read = reading.asInventory(goodRowsOnly);
        return new SheetRead(read, read.inventory().isPresent() ? reading.sheets() : List.of());
    }

    /**
     * Reads the files of a folder that carry the usual names.
     * @param folder       the folder
     * @param goodRowsOnly take the rows without a fault even when others have one
     * @return as for the files
     */
    public static InventoryRead readFolder(Path folder, boolean goodRowsOnly) {
        return read(StockFiles.inFolder(folder), goodRowsOnly);
    }
}
