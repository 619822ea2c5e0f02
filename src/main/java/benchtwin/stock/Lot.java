package benchtwin.stock;

import java.util.List;
import java.util.Set;

/**
 * What one file gave.
 * @param file           its name as the user knows it
 * @param items          the good rows
 * @param named          every tag or name its rows gave, those of bad rows included
 * @param rows           rows seen, good or not
 * @param unknownColumns names the program does not know
 * @param <T>            what a row is
 */
record Lot<T>(String file, List<Item<T>> items, Set<String> named, int rows, List<String> unknownColumns) {

    /**
     * A good row and what it says.
     * @param row   the row
     * @param value what it says
     * @param <T>   what a row is
     */
    record Item<T>(Row row, T value) {
    }

    List<T> values() {
        return items.stream().map(Item::value).toList();
    }
}
