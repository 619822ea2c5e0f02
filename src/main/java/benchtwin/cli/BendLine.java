package benchtwin.cli;

import benchtwin.bench.BadInput;
import benchtwin.club.Quantity;
import benchtwin.club.QuantityText;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * One line typed in a bending session.
 * @param word    what it begins with: again, skip, stop, why or help; empty for a reading
 * @param asked   what was asked, where it was not what the program said
 * @param readDeg angles read
 */
record BendLine(String word, Optional<Double> asked, Map<Quantity, Double> readDeg) {

    private static final List<String> WORDS = List.of("again", "skip", "stop", "why", "help");
    private static final String ASKED = "asked";

    /**
     * Reads a line: {@code 58.5}, {@code 58.5 0.4}, {@code lie=58.5 face=0.4}, {@code asked 1.2 58.5}, {@code again 58.4}.
     * @param line   as typed
     * @param order  the angles, in the order plain numbers stand for
     * @param single the angle that one plain number alone stands for
     */
    static BendLine read(String line, List<Quantity> order, Quantity single) throws BadInput {
        List<String> items = Arrays.stream(line.strip().split("[\\s;]+")).filter(item -> !item.isEmpty()).toList();
        int at = 0;
        String word = "";
        if (!items.isEmpty() && WORDS.contains(items.get(0).toLowerCase(Locale.ROOT))) {
            word = items.get(0).toLowerCase(Locale.ROOT);
            at = 1;
        } else if (items.equals(List.of("?"))) {
            return new BendLine("help", Optional.empty(), Map.of());
        }
        Optional<Double> asked = Optional.empty();
        if (at < items.size() && items.get(at).equalsIgnoreCase(ASKED)) {
            if (at + 1 == items.size()) {
                throw new BadInput("\"asked\" wants the angle you asked for, such as asked 1.2 " + example(order));
            }
            asked = Optional.of(number(items.get(at + 1), order));
            at += 2;
        }
        return new BendLine(word, asked, angles(items.subList(at, items.size()), order, single));
    }

    private static Map<Quantity, Double> angles(List<String> items, List<Quantity> order, Quantity single) throws BadInput {
        Map<Quantity, Double> angles = new EnumMap<>(Quantity.class);
        long plain = items.stream().filter(item -> !item.contains("=")).count();
        if (plain > order.size()) {
            throw new BadInput("%d numbers, but %s %s read: type %s".formatted(plain, names(order), order.size() == 1 ? "is" : "are",
                example(order)));
        }
        int at = 0;
        for (String item : items) {
            Quantity quantity;
            String value = item;
            if (item.contains("=")) {
                quantity = quantity(item.substring(0, item.indexOf('=')), order);
                value = item.substring(item.indexOf('=') + 1);
            } else {
                quantity = plain == 1 ? single : order.get(at++);
            }
            if (angles.put(quantity, number(value, order)) != null) {
                throw new BadInput("%s is named twice; type %s".formatted(QuantityText.name(quantity), example(order)));
            }
        }
        return angles;
    }

    private static Quantity quantity(String name, List<Quantity> order) throws BadInput {
        for (Quantity quantity : Quantity.values()) {
            if (quantity.isAngle() && quantity.word().equalsIgnoreCase(name)) {
                return quantity;
            }
        }
        throw new BadInput("\"%s\" is no angle of this head; type %s".formatted(name, example(order)));
    }

    private static double number(String text, List<Quantity> order) throws BadInput {
        try {
            double value = Double.parseDouble(text.replace(',', '.').replace("°", ""));
            if (Double.isFinite(value) && !text.matches(".*[a-zA-Z].*")) {
                return value;
            }
        } catch (NumberFormatException notANumber) {
            // said below
        }
        throw new BadInput("\"%s\" is not a number of degrees; type %s".formatted(text, example(order)));
    }

    /** An example of a line. */
    static String example(List<Quantity> order) {
        List<String> values = order.stream().map(quantity -> switch (quantity) {
            case LOFT -> "34.0";
            case LIE -> order.contains(Quantity.FACE) ? "58.5" : "62.5";
            default -> "0.5";
        }).toList();
        return "%s, or only the one you bent: %s (or %s=%s)".formatted(String.join(" ", values), values.get(0), order.get(0).word(),
            values.get(0));
    }

    static String names(List<Quantity> order) {
        return String.join(" and ", order.stream().map(QuantityText::name).toList());
    }
}
