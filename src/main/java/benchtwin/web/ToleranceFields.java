package benchtwin.web;

import benchtwin.bench.BadInput;
import benchtwin.bench.OpenBook;
import benchtwin.bench.PlayerBook;
import benchtwin.club.Quantity;
import benchtwin.club.QuantityText;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Tolerances of a page: those the player prefers, and in their place what was typed, each in the unit its field names.
 * @param all   by quantity
 * @param typed what was typed, by field
 */
record ToleranceFields(Map<Quantity, Double> all, Map<String, String> typed) {

    private static final String FIELD = "tol-";

    static ToleranceFields of(OpenBook book, String club, Form form, List<Quantity> quantities) throws BadInput {
        Map<Quantity, Double> all = new EnumMap<>(Quantity.class);
        all.putAll(PlayerBook.tolerancesFor(book, club));
        Map<Quantity, Double> typed = typed(form, quantities);
        all.putAll(typed);
        Map<String, String> fields = new LinkedHashMap<>();
        typed.keySet().forEach(quantity -> fields.put(field(quantity), form.text(field(quantity)).orElse("")));
        return new ToleranceFields(all, fields);
    }

    /** What was typed alone. */
    static Map<Quantity, Double> typed(Form form, List<Quantity> quantities) throws BadInput {
        Map<Quantity, Double> tolerances = new EnumMap<>(Quantity.class);
        for (Quantity quantity : quantities) {
            Optional<Double> typed = form.number(field(quantity), "tolerance of " + QuantityText.name(quantity));
            if (typed.isPresent()) {
                if (!(typed.get() > 0)) {
                    throw new BadInput("a tolerance of %s for %s is not above 0".formatted(form.text(field(quantity)).orElse(""),
                        QuantityText.name(quantity)));
                }
                tolerances.put(quantity, typed.get());
            }
        }
        return tolerances;
    }

    private static String field(Quantity quantity) {
        return FIELD + quantity.word();
    }
}
