package benchtwin.bench;

import benchtwin.club.Quantity;
import benchtwin.club.QuantityText;
import benchtwin.match.ShaftRequest;
import benchtwin.measure.LengthText;
import benchtwin.measure.SwingWeightText;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.Collectors;

/** Reads lists such as {@code loft=0.25,lie=0.3,length=1/16}, typed in an option or in a field of a page. */
public final class QuantityList {

    /** What a club is asked for. */
    public static final QuantityList OF_CLUBS = new QuantityList(Quantity.targetable(), Map.of("mass", Quantity.TOTAL_MASS));
    /** What a shaft is asked for. */
    public static final QuantityList OF_SHAFTS = new QuantityList(ShaftRequest.QUALITIES,
        Map.of("mass", Quantity.SHAFT_MASS, "balance", Quantity.SHAFT_BALANCE));

    /** What a change asks for. */
    static final QuantityList OF_CHANGES = new QuantityList(ChangeService.ASKABLE,
        Map.of("mass", Quantity.TOTAL_MASS, "cpm", Quantity.FREQUENCY));

    private final List<Quantity> known;
    private final Map<String, Quantity> alsoCalled;

    private QuantityList(List<Quantity> known, Map<String, Quantity> alsoCalled) {
        this.known = known;
        this.alsoCalled = alsoCalled;
    }

    /**
     * Reads values: lengths in inches (or mm with their unit), swing weight as {@code D2.4} or points.
     * @param option what they were typed in
     * @param text   the list; null for none
     * @return by quantity, lengths in mm
     * @throws BadInput when it cannot be read
     */
    public Map<Quantity, Double> values(String option, String text) throws BadInput {
        return parse(option, text, true, true);
    }

    /**
     * Reads tolerances, above 0: a length's in inches or mm, a swing weight's in points.
     * @param option what they were typed in
     * @param text   the list; null for none
     * @return by quantity, lengths in mm
     * @throws BadInput when it cannot be read
     */
    public Map<Quantity, Double> tolerances(String option, String text) throws BadInput {
        Map<Quantity, Double> values = parse(option, text, true, false);
        for (Map.Entry<Quantity, Double> entry : values.entrySet()) {
            if (!(entry.getValue() > 0)) {
                throw new BadInput("%s: a tolerance of %s for %s is not above 0".formatted(option,
                    String.format(Locale.ROOT, "%.2f", entry.getValue()), QuantityText.name(entry.getKey())));
            }
        }
        return values;
    }

    /**
     * Reads weights, 0 or more.
     * @param option what they were typed in
     * @param text   the list; null for none
     * @return by quantity
     * @throws BadInput when it cannot be read
     */
    public Map<Quantity, Double> weights(String option, String text) throws BadInput {
        Map<Quantity, Double> values = parse(option, text, false, false);
        for (Map.Entry<Quantity, Double> entry : values.entrySet()) {
            if (!(entry.getValue() >= 0)) {
                throw new BadInput("%s: a weight of %s for %s is below 0".formatted(option,
                    String.format(Locale.ROOT, "%.2f", entry.getValue()), QuantityText.name(entry.getKey())));
            }
        }
        return values;
    }

    private Map<Quantity, Double> parse(String option, String text, boolean lengths, boolean letters)
        throws BadInput {
        EnumMap<Quantity, Double> values = new EnumMap<>(Quantity.class);
        if (text == null) {
            return values;
        }
        for (String item : text.split(",")) {
            String[] pair = item.split("=", 2);
            if (pair.length != 2) {
                throw new BadInput("%s: \"%s\" is not of the form quantity=value, such as loft=0.25".formatted(option,
                    item.strip()));
            }
            Quantity quantity = quantity(option, pair[0].strip());
            OptionalDouble value = value(quantity, pair[1].strip(), lengths, letters);
            if (value.isEmpty() || !Double.isFinite(value.getAsDouble())) {
                throw new BadInput("%s: \"%s\" is not a value for %s; expected %s".formatted(option, pair[1].strip(),
                    QuantityText.name(quantity), expected(quantity, lengths, letters)));
            }
            if (values.put(quantity, value.getAsDouble()) != null) {
                throw new BadInput("%s names %s twice".formatted(option, QuantityText.name(quantity)));
            }
        }
        return values;
    }

    /** The quantity a word names. */
    Quantity quantity(String option, String word) throws BadInput {
        String plain = plain(word);
        for (Quantity quantity : known) {
            if (quantity.word().equals(plain)) {
                return quantity;
            }
        }
        Quantity called = alsoCalled.get(plain);
        if (called != null) {
            return called;
        }
        throw new BadInput("%s: \"%s\" is not a quantity; expected one of %s".formatted(option, word,
            known.stream().map(this::called).collect(Collectors.joining(", "))
                + (this == OF_CHANGES ? " or grip" : "")));
    }

    /** The word a list's help uses: the short one where there is one. */
    private String called(Quantity quantity) {
        return alsoCalled.entrySet().stream().filter(e -> e.getValue() == quantity && quantity.word().endsWith(e.getKey()))
            .map(Map.Entry::getKey).findFirst().orElse(quantity.word());
    }

    /** Whether it names a quantity of this list. */
    boolean knows(String word) {
        String plain = plain(word);
        return known.stream().anyMatch(quantity -> quantity.word().equals(plain)) || alsoCalled.containsKey(plain);
    }

    private static String plain(String word) {
        return word.toLowerCase(Locale.ROOT).replace('_', '-').replace(' ', '-');
    }

    static OptionalDouble value(Quantity quantity, String text, boolean lengths, boolean letters) {
        if (isLength(quantity) && lengths) {
            return LengthText.parseMm(text);
        }
        if (quantity == Quantity.SWING_WEIGHT && letters) {
            OptionalDouble lettered = SwingWeightText.parsePoints(text);
            if (lettered.isPresent()) {
                return lettered;
            }
        }
        try {
            return OptionalDouble.of(Double.parseDouble(text));
        } catch (NumberFormatException notANumber) {
            return OptionalDouble.empty();
        }
    }

    static String expected(Quantity quantity, boolean lengths, boolean letters) {
        if (isLength(quantity) && lengths) {
            return letters ? "inches such as 45.25 or 45 1/4, or millimetres such as 1149 mm"
                : "inches such as 1/16, or millimetres such as 1.5 mm";
        }
        if (quantity == Quantity.SWING_WEIGHT && letters) {
            return "a letter and a number such as D2.4, or points above A0";
        }
        return "a number";
    }

    private static boolean isLength(Quantity quantity) {
        return quantity == Quantity.LENGTH || quantity == Quantity.SHAFT_BALANCE;
    }
}
