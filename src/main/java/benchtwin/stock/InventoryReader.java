package benchtwin.stock;

import benchtwin.club.Inventory;
import java.nio.file.Path;
import java.util.Optional;

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
        StockReading reading = new StockReading(files.byKind());
        reading.read(true);
        boolean whole = reading.faults().count() == 0;
        Optional<Inventory> inventory = whole || goodRowsOnly ? Optional.of(reading.inventory()) : Optional.empty();
        return new InventoryRead(inventory, reading.sortedFaults(), reading.sortedWarnings(), reading.faults().count(),
            reading.warnings().count(), reading.unknownColumns(), reading.rowsRead());
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
