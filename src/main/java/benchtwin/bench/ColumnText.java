package benchtwin.bench;

import benchtwin.club.Quantity;
import benchtwin.club.QuantityText;
import benchtwin.measure.LengthText;
import benchtwin.measure.SwingWeightText;
import benchtwin.measure.Units;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;

/** What the book keeps under a column's name, as a bench says and writes it: {@code tip_cut_mm} is the tip cut, in inches. */
public final class ColumnText {

    private static final int MOST_DECIMALS = 3;
    private static final String EXTRA = ImportedRow.EXTRA;
    /** What the trade writes in inches, as the files do. */
    private static final Set<String> IN_INCHES = Set.of("raw_length_mm", "balance_mm", "tip_mm", "butt_mm", "parallel_tip_mm",
        "clamp_mm", "free_length_mm", "bore_mm", "core_mm", "cg_mm", "length_mm");
    /** What a plan cuts in millimetres and a shaft's papers give in inches. */
    private static final Set<String> IN_BOTH = Set.of("tip_cut_mm", "butt_cut_mm");
    private static final Map<String, String> NAMES = Map.ofEntries(Map.entry("ct_us", "characteristic time"),
        Map.entry("cg_toe_mm", "CG toward the toe"), Map.entry("cg_up_mm", "CG above the ground"),
        Map.entry("cg_mm", "CG from the butt end"), Map.entry("hot_melt_max_g", "room for hot melt"),
        Map.entry("port_g", "in the ports"), Map.entry("tape_g", "lead tape"), Map.entry("melt_g", "hot melt"),
        Map.entry("tip_weight_g", "weight in the tip"), Map.entry("tape_layers", "tape under the grip"),
        Map.entry("orientation", "markings"), Map.entry("grip_orientation", "grip markings"),
        Map.entry("measured_by", "read by"), Map.entry("measured_on", "read on"), Map.entry("retired_why", "retired"),
        Map.entry("tip_mm", "tip diameter"), Map.entry("butt_mm", "butt diameter"),
        Map.entry("dloft_deg", "change of loft"), Map.entry("dlie_deg", "change of lie"), Map.entry("dface_deg", "change of face"),
        Map.entry("ring1_tilt_deg", "outer ring tilts"), Map.entry("ring1_settings", "outer ring settings"),
        Map.entry("ring1_offset_deg", "outer ring's 1 lies at"), Map.entry("ring2_tilt_deg", "inner ring tilts"),
        Map.entry("ring2_settings", "inner ring settings"), Map.entry("ring2_offset_deg", "inner ring's 1 lies at"),
        Map.entry("sleeve_on", "sleeve on it"), Map.entry("grip_on", "grip on it"), Map.entry("over_grip", "over the grip"),
        Map.entry("raw_length_mm", "length as made"));
    private static final List<String> UNITS = List.of("_g_cm2", "_kg_cm2", "_cm3", "_deg", "_mm", "_cpm", "_points", "_us", "_g");

    private ColumnText() {
    }

    /**
     * What a column is called.
     * @param column its name in the book; one that came with a file and is not known here keeps its own name
     * @return for instance {@code loft}, {@code length as made}
     */
    public static String name(String column) {
        if (column.startsWith(EXTRA)) {
            return column.substring(EXTRA.length());
        }
        if (NAMES.containsKey(column)) {
            return NAMES.get(column);
        }
        return bare(column).replace('_', ' ');
    }

    /** A column's name without its unit. */
    static String bare(String column) {
        return column.substring(0, column.length() - unit(column).length());
    }

    private static String unit(String column) {
        return UNITS.stream().filter(column::endsWith).findFirst().orElse("");
    }

    /**
     * What stands in a column.
     * @param column its name in the book
     * @param text   as the book keeps it
     * @return with its unit: {@code 9.40°}, {@code 46 in}; other text as it is
     */
    public static String value(String column, String text) {
        OptionalDouble number = column.startsWith(EXTRA) || unit(column).isEmpty() ? OptionalDouble.empty() : number(text);
        if (number.isPresent()) {
            return value(column, number.getAsDouble());
        }
        if (column.equals("tape_layers")) {
            return text.equals("1") ? "1 layer" : text + " layers";
        }
        return column.equals("port_g") ? text.replace("+", " + ") + " g" : text;
    }

    /**
     * A number in a column.
     * @param column its name in the book
     * @param value  in the column's unit
     * @return with its unit, a minus sign that is one
     */
    public static String value(String column, double value) {
        if (column.equals("length_mm")) {
            return QuantityText.value(Quantity.LENGTH, value);
        }
        if (column.equals("swing_weight_points")) {
            return QuantityText.value(Quantity.SWING_WEIGHT, value);
        }
        if (IN_BOTH.contains(column)) {
            return value == 0 ? "0" : "%s in (%s mm)".formatted(plain(Units.inches(value), MOST_DECIMALS), plain(value, 1));
        }
        return size(column, value);
    }

    /**
     * A number in a column that is an uncertainty or a difference without a sign: lengths of a club in millimetres.
     * @param column its name in the book
     * @param value  in the column's unit
     * @return with its unit
     */
    public static String size(String column, double value) {
        if (IN_INCHES.contains(column) && !column.equals("length_mm")) {
            return minus(plain(Units.inches(value), MOST_DECIMALS)) + " in";
        }
        return minus(switch (unit(column)) {
            case "_deg" -> Quantity.TORQUE.word().equals(name(column)) ? fixed(value, 1) + "°" : fixed(value, 2) + "°";
            case "_mm" -> plain(value, 1) + " mm";
            case "_cpm" -> fixed(value, 1) + " cpm";
            case "_g" -> plain(value, 2) + " g";
            case "_g_cm2" -> plain(value, 0) + " g·cm²";
            case "_kg_cm2" -> plain(value, 0) + " kg·cm²";
            case "_cm3" -> plain(value, 1) + " cm³";
            case "_us" -> plain(value, 1) + " µs";
            case "_points" -> fixed(value, 1) + " pt";
            default -> plain(value, MOST_DECIMALS);
        });
    }

    /**
     * Something known of a thing, in a few words.
     * @param column its name in the book
     * @param text   as the book keeps it; empty where it was taken back
     * @return for instance {@code head H-014}, {@code no hot melt}
     */
    public static String fact(String column, String text) {
        if (column.equals("tape_layers")) {
            return (text.isEmpty() || text.equals("0") ? "no" : text) + (text.equals("1") ? " layer" : " layers") + " of tape under the grip";
        }
        return text.isEmpty() ? "no " + name(column) : name(column) + " " + value(column, text);
    }

    /**
     * Reads a value as a bench writes it.
     * @param column its name in the book
     * @param typed  a number in the unit that pages show; a length may name another: {@code 45 1/4}, {@code 1149 mm}
     * @return in the column's unit; empty when it is none
     */
    static OptionalDouble parse(String column, String typed) {
        OptionalDouble value = written(column, typed);
        return value.isPresent() && Double.isFinite(value.getAsDouble()) ? value : OptionalDouble.empty();
    }

    /**
     * The same, refused where it is none; a comma may stand for the point.
     * @param column its name in the book
     * @param called what a bench calls the quantity
     * @param typed  as above
     * @return in the column's unit
     * @throws BadInput when it is no value
     */
    static double need(String column, String called, String typed) throws BadInput {
        return parse(column, typed.replace(',', '.')).orElseThrow(() -> new BadInput("%s: \"%s\" is not a value; expected %s".formatted(called,
            typed.strip(), expected(column))));
    }

    private static OptionalDouble written(String column, String typed) {
        String text = typed.strip().replace('−', '-');
        if (isInInches(column)) {
            return LengthText.parseMm(text);
        }
        if (column.equals("swing_weight_points")) {
            OptionalDouble lettered = SwingWeightText.parsePoints(text);
            return lettered.isPresent() ? lettered : number(text);
        }
        return number(unit(column).equals("_mm") ? text.replaceAll("\\s*mm$", "") : text.replaceAll("\\s*(°|g|cpm)$", ""));
    }

    /**
     * Whether a column's values are written in inches.
     * @param column its name in the book
     * @return true for most lengths of a shaft, a grip and a club
     */
    public static boolean isInInches(String column) {
        return IN_INCHES.contains(column) || IN_BOTH.contains(column);
    }

    /** Whether a column holds a number. */
    static boolean isNumber(String column) {
        return !unit(column).isEmpty();
    }

    /** A kept text as it would be typed again: a length in inches where the trade writes inches. */
    static String typedForm(String column, String kept) {
        OptionalDouble number = IN_INCHES.contains(column) ? number(kept) : OptionalDouble.empty();
        return number.isPresent() ? plain(Units.inches(number.getAsDouble()), MOST_DECIMALS) : kept;
    }

    /** What a value of a column looks like. */
    static String expected(String column) {
        if (isInInches(column)) {
            return "inches such as 45.25 or 45 1/4, or millimetres such as 1149 mm";
        }
        return switch (unit(column)) {
            case "_points" -> "a letter and a number such as D2.4, or points above A0";
            case "_deg" -> "degrees, such as 9.4";
            case "_mm" -> "millimetres, such as 50.6";
            case "_g" -> "grams, such as 190.6";
            case "_cpm" -> "cycles per minute, such as 252.1";
            default -> "a number";
        };
    }

    /**
     * How something was measured.
     * @param condition by name
     * @return for instance {@code soled, at setting 1/1}; empty where nothing was recorded
     */
    public static String condition(Map<String, String> condition) {
        List<String> words = new ArrayList<>();
        condition.forEach((name, text) -> words.add(switch (name) {
            case "reading" -> text.equals("edge") ? "by the leading edge" : text;
            case "length_method" -> switch (text) {
                case "axis" -> "along the axis";
                case "rules60" -> "on the 60° plane";
                default -> "by " + text;
            };
            case "over_grip" -> text.equals("yes") ? "over the grip" : "on the bare butt";
            case "read_at_setting", "setting" -> "at setting " + text;
            case "weighed_with" -> text.equals("bare") ? "bare" : "with " + text.replace("+", " and ");
            case "tip_mass_g" -> value(name, text) + " at the tip";
            case "free_length_mm" -> value(name, text) + " free";
            case "clamp_mm" -> value(name, text) + " in the clamp";
            case "plane_deg" -> "plane " + value(name, text);
            default -> fact(name, text);
        }));
        return String.join(", ", words);
    }

    private static OptionalDouble number(String text) {
        try {
            return OptionalDouble.of(Double.parseDouble(text));
        } catch (NumberFormatException words) {
            return OptionalDouble.empty();
        }
    }

    private static String plain(double value, int decimals) {
        String text = fixed(value, decimals);
        return text.contains(".") ? text.replaceAll("0+$", "").replaceAll("\\.$", "") : text;
    }

    private static String fixed(double value, int decimals) {
        String text = String.format(Locale.ROOT, "%." + decimals + "f", value);
        return text.startsWith("-") && Double.parseDouble(text) == 0 ? text.substring(1) : text;
    }

    private static String minus(String text) {
        return text.replace('-', '−');
    }
}
