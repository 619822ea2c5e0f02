package benchtwin.book;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * The row of a file an event came from.
 * @param key   which of the thing's rows: the kind of file, and the day where it has one a day
 * @param cells its cells, in file order
 */
public record SheetOrigin(String key, Map<String, String> cells) {

    public SheetOrigin {
        cells = Collections.unmodifiableMap(new LinkedHashMap<>(cells));
    }
}
