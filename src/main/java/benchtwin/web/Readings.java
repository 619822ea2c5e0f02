package benchtwin.web;

import benchtwin.bench.BadInput;
import benchtwin.bench.ColumnText;
import benchtwin.bench.Sitting;
import benchtwin.bench.TypedReading;
import benchtwin.club.AngleReading;
import benchtwin.club.LengthMethod;
import benchtwin.club.Quantity;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;

/** What is read of a whole club: which quantities, and how a form says them. */
public final class Readings {

    /** In the order they are always shown. */
    public static final List<Quantity> ALL = List.of(Quantity.LOFT, Quantity.LIE, Quantity.FACE, Quantity.BOUNCE, Quantity.LENGTH,
        Quantity.SWING_WEIGHT, Quantity.FREQUENCY, Quantity.TOTAL_MASS);
    private static final String ONE_TO_NINE = "789456123";

    private Readings() {
    }

    /** The sitting a form tells of: one field a quantity, under its word; the rest says how it was read. */
    static Sitting of(Form form) throws BadInput {
        Map<Quantity, List<Double>> values = new LinkedHashMap<>();
        for (Quantity quantity : ALL) {
            Optional<String> typed = form.text(quantity.word());
            if (typed.isPresent()) {
                values.put(quantity, List.of(TypedReading.of(quantity, typed.get())));
            }
        }
        return new Sitting(values, form.choice("reading", "how the angles were read", AngleReading.values()),
            form.choice("lengthMethod", "how the length was taken", LengthMethod.values()).orElse(LengthMethod.AXIS), Optional.empty(),
            clampMm(form), !form.isTicked("bare"), form.day("on", "the day"), form.text("gauge"), Optional.empty(), Optional.empty(),
            form.text("note"));
    }

    /** What a form says was read, as it was typed. */
    static String typed(Form form) {
        return ALL.stream().filter(quantity -> form.isTicked(quantity.word())).map(quantity -> "%s %s".formatted(quantity.word(),
            form.text(quantity.word()).orElseThrow())).collect(Collectors.joining(", "));
    }

    private static OptionalDouble clampMm(Form form) throws BadInput {
        Optional<String> typed = form.text("clamp");
        return typed.isPresent() ? OptionalDouble.of(TypedReading.of(Quantity.LENGTH, typed.get())) : OptionalDouble.empty();
    }

    /** The quantity a page's address names. */
    static Optional<Quantity> named(String word) {
        return ALL.stream().filter(quantity -> quantity.word().equals(word)).findFirst();
    }

    /**
     * Which of them a club of a category has.
     * @param category its word
     * @return face angles of woods, bounce of the others
     */
    public static List<Quantity> of(String category) {
        boolean wood = category.equals("driver") || category.equals("fairway");
        return ALL.stream().filter(quantity -> quantity != (wood ? Quantity.BOUNCE : Quantity.FACE)).toList();
    }

    /**
     * Whether only some clubs have it.
     * @param quantity what is read
     * @return true for face angle and bounce
     */
    public static boolean isOfSome(Quantity quantity) {
        return quantity == Quantity.FACE || quantity == Quantity.BOUNCE;
    }

    /**
     * The keys of the number pad beside the digits: what values of a quantity are written with.
     * @param quantity what is read
     * @return what each key types
     */
    public static List<String> keys(Quantity quantity) {
        return switch (quantity) {
            case LENGTH -> List.of(" ", "/", " mm");
            case SWING_WEIGHT -> List.of("C", "D", "E", "F");
            case LOFT, FACE, BOUNCE -> List.of("−");
            default -> List.of();
        };
    }

    /**
     * The same for a quantity of a part.
     * @param column its name in the book
     * @return what each key types
     */
    public static List<String> keys(String column) {
        return ColumnText.isInInches(column) ? keys(Quantity.LENGTH) : column.equals("swing_weight_points") ? keys(Quantity.SWING_WEIGHT)
            : column.endsWith("_deg") || column.endsWith("_mm") ? keys(Quantity.FACE) : List.of();
    }

    /**
     * The digits of the number pad.
     * @return in rows of three from the top left
     */
    public static List<String> digits() {
        return List.of((ONE_TO_NINE + "0.").split(""));
    }

    /**
     * How a value is written.
     * @param quantity what is read
     * @return its unit, or examples
     */
    public static String written(Quantity quantity) {
        return switch (quantity) {
            case LENGTH -> "such as 45 1/4 or 1149 mm";
            case SWING_WEIGHT -> "such as D2.3";
            case FREQUENCY, TOTAL_MASS -> quantity.unit();
            default -> "degrees";
        };
    }
}
