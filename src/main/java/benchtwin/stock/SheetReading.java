package benchtwin.stock;

import benchtwin.measure.Reading;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * One measured cell of a row.
 * @param column    its name, which ends in the unit: {@code loft_deg}
 * @param reading   its value in that unit, how far it is trusted and how it was taken
 * @param unit      the unit in words
 * @param condition the filled cells that say how it was measured, by column; empty where none says anything
 */
public record SheetReading(String column, Reading reading, String unit, Map<String, String> condition) {

    public SheetReading {
        condition = Collections.unmodifiableMap(new LinkedHashMap<>(condition));
    }
}
