package benchtwin.stock;

import java.util.List;

/**
 * Makes recorded rows into the inventory that files with the same rows would give, by the same rules. What is unusual about
 * them was said when they were entered, and is not said again.
 */
public final class InventoryOfRows {

    private InventoryOfRows() {
    }

    /**
     * Reads the rows together.
     * @param rows         rows of any kinds, those of one kind in the order they are to have
     * @param goodRowsOnly take the rows without a fault even when others have one
     * @return the inventory, or none, with all faults, each naming its part in the place of file and line; no warnings
     */
    public static InventoryRead read(List<RecordedRow> rows, boolean goodRowsOnly) {
        StockReading reading = new StockReading(new RecordLots(rows));
        reading.read(true);
        return reading.asInventory(goodRowsOnly);
    }
}
