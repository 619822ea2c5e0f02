package benchtwin.samples;

import benchtwin.club.Inventory;
import benchtwin.stock.InventoryRead;
import benchtwin.stock.InventoryReader;
import java.nio.file.Path;

/** The committed sample workshop as the program reads it. */
public final class SampleFolder {

    /** Where it lies, from the project's root. */
    public static final Path PATH = Path.of("inventory-samples");
    private static final InventoryRead READ = InventoryReader.readFolder(PATH, false);

    private SampleFolder() {
    }

    /**
     * What reading it gave.
     * @return inventory, faults and warnings
     */
    public static InventoryRead read() {
        return READ;
    }

    /**
     * What is in it.
     * @return the inventory
     */
    public static Inventory inventory() {
        return READ.inventory().orElseThrow(() -> new IllegalStateException("faults: " + READ.faults()));
    }
}
