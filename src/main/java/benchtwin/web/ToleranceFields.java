package benchtwin.web;

import benchtwin.bench.BadInput;
import benchtwin.club.Quantity;
import benchtwin.club.QuantityText;
import benchtwin.match.Tolerances;
import benchtwin.measure.PlainNumber;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Tolerances and weights of a page: tolerances the player prefers, and in their place what was typed, each in the unit its field names.
 * @param all   both, for the search
 * @param typed what was typed, by field
 */
public record ToleranceFields(Tolerances all, Map<String, String> typed) {

    private static final String TOLERANCE = "tol-";
    private static final String WEIGHT = "weight-";

    /** What the names of their fields begin with. */
    static final List<String> NAMES = List.of(TOLERANCE, WEIGHT);

    static ToleranceFields of(Fields fields, Map<Quantity, Double> preferred, List<Quantity> quantities) {
        Map<Quantity, Double> tolerances = new EnumMap<>(Quantity.class);
        tolerances.putAll(preferred);
        Map<Quantity, Double> weights = new EnumMap<>(Quantity.class);
        Map<String, String> typed = new LinkedHashMap<>();
        for (Quantity quantity : quantities) {
            fields.at(tolerance(quantity), Optional.<Double>empty(), form -> tolerance(form, quantity))
                .ifPresent(value -> tolerances.put(quantity, value));
            fields.at(weight(quantity), Optional.<Double>empty(), form -> weight(form, quantity))
                .ifPresent(value -> weights.put(quantity, value));
            for (String field : List.of(tolerance(quantity), weight(quantity))) {
                fields.form().text(field).ifPresent(text -> typed.put(field, text));
            }
        }
        return new ToleranceFields(new Tolerances(tolerances, weights), typed);
    }

    /** Tolerances that were typed alone, on a form that has no weights. */
    static Map<Quantity, Double> typed(Form form, List<Quantity> quantities) throws BadInput {
        Map<Quantity, Double> tolerances = new EnumMap<>(Quantity.class);
        for (Quantity quantity : quantities) {
            tolerance(form, quantity).ifPresent(value -> tolerances.put(quantity, value));
        }
        return tolerances;
    }

    private static Optional<Double> tolerance(Form form, Quantity quantity) throws BadInput {
        Optional<Double> typed = form.number(tolerance(quantity), "tolerance of " + QuantityText.name(quantity));
        if (typed.isPresent() && !(typed.get() > 0)) {
            throw new BadInput("a tolerance of %s for %s is not above 0".formatted(form.text(tolerance(quantity)).orElse(""),
                QuantityText.name(quantity)));
        }
        return typed;
    }

    private static Optional<Double> weight(Form form, Quantity quantity) throws BadInput {
        Optional<Double> typed = form.number(weight(quantity), "weight of " + QuantityText.name(quantity));
        if (typed.isPresent() && !(typed.get() >= 0)) {
            throw new BadInput("a weight of %s for %s is below 0".formatted(form.text(weight(quantity)).orElse(""),
                QuantityText.name(quantity)));
        }
        return typed;
    }

    /**
     * The field a tolerance is typed into.
     * @param quantity of what
     * @return its name
     */
    public static String tolerance(Quantity quantity) {
        return TOLERANCE + quantity.word();
    }

    /**
     * The field a weight is typed into.
     * @param quantity of what
     * @return its name
     */
    public static String weight(Quantity quantity) {
        return WEIGHT + quantity.word();
    }

    /** Whether a quantity was given no weight. */
    boolean isNotRanked(Quantity quantity) {
        return all.weight().getOrDefault(quantity, quantity.defaultWeight()) == 0;
    }

    /**
     * What a field shows.
     * @param field    its name
     * @param quantity whose tolerance stands there where nothing was typed and the player prefers one; null for a weight
     * @return empty for the usual one
     */
    public String shown(String field, Quantity quantity) {
        return typed.getOrDefault(field, quantity == null ? "" : Optional.ofNullable(all.tolerance().get(quantity)).map(PlainNumber::text)
            .orElse(""));
    }
}
