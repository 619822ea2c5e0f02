package benchtwin.stock;

import java.util.List;

/**
 * What reading a workshop's files gave, with the rows themselves.
 * @param read inventory, faults and warnings
 * @param rows the rows the inventory was made of, by kind and in file order, those about measured settings of sleeves that
 *             no file has included; none where there is no inventory
 */
public record SheetRead(InventoryRead read, List<SheetRow> rows) {

    public SheetRead {
        rows = List.copyOf(rows);
    }
}
