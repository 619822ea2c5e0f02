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
        Map<String, String> fields = new LinkedHashMap<>();
        for (Quantity quantity : quantities) {
            String field = FIELD + quantity.word();
            Optional<Double> typed = form.number(field, "tolerance of " + QuantityText.name(quantity));
            if (typed.isPresent()) {
                if (!(typed.get() > 0)) {
                    throw new BadInput("a tolerance of %s for %s is not above 0".formatted(form.text(field).orElse(""),
                        QuantityText.name(quantity)));
                }
                all.put(quantity, typed.get());
                fields.put(field, form.text(field).orElse(""));
            }
        }
        return new ToleranceFields(all, fields);
    }
}
