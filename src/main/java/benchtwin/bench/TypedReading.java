package benchtwin.bench;

import benchtwin.club.Quantity;
import benchtwin.club.QuantityText;

/** Reads what was typed as a club's value, the way a bench writes it. */
public final class TypedReading {

    private TypedReading() {
    }

    /**
     * The value.
     * @param quantity what was read of a whole club
     * @param typed    {@code 9.4} or {@code 9,4}, {@code 45 1/4}, {@code 1149 mm}, {@code D2.3}, {@code 248.8}; units may stand behind
     * @return in the quantity's unit
     * @throws BadInput when it is no value of this quantity
     */
    public static double of(Quantity quantity, String typed) throws BadInput {
        String column = ReadColumn.of(quantity).orElseThrow(() -> new BadInput("%s is not read of a whole club".formatted(
            QuantityText.name(quantity)))).column();
        return ColumnText.need(column, QuantityText.name(quantity), typed);
    }
}
