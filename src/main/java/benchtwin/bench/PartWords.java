package benchtwin.bench;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.stream.Collectors;

/** What is said of a part in a line, alike on the command line and on the pages. */
public final class PartWords {

    /** The order in which a bench names what it measured. */
    private static final List<String> ORDER = List.of("loft_deg", "lie_deg", "face_deg", "bounce_deg", "raw_length_mm", "length_mm",
        "frequency_cpm", "mass_g", "torque_deg", "balance_mm");
    private static final int MOST_MEASURES = 4;

    private PartWords() {
    }

    /**
     * Where it lies. A part in a club lies nowhere else.
     * @param part the part
     * @return the place, or nothing
     */
    public static String lies(StockViews.Part part) {
        return part.standing().equals("built in") ? "" : part.place().orElse("");
    }

    /**
     * How it stands: how many there are, to whom it is promised, which club it is in, why it is retired.
     * @param part the part
     * @return nothing for one that is simply there
     */
    public static String stands(StockViews.Part part) {
        List<String> words = new ArrayList<>();
        if (part.isCounted()) {
            words.add(part.count().isPresent() ? part.count().getAsInt() + " there" : "not counted");
        }
        if (!part.promises().isEmpty()) {
            words.add("promised to " + String.join("; ", part.promises()));
        }
        switch (part.standing()) {
            case "built in" -> words.add(part.club().map(club -> "in " + club).orElse("built in"));
            case "retired" -> words.add("retired" + part.fact("retired_why").map(why -> ": " + why).orElse(""));
            default -> { }
        }
        return String.join(", ", words);
    }

    /**
     * Whether it left the stock and cannot come back.
     * @param part the part
     * @return true for a cracked one
     */
    public static boolean isGoneForGood(StockViews.Part part) {
        return part.standing().equals("retired") && part.fact("condition").filter("cracked"::equals).isPresent();
    }

    /**
     * What was read of it, shortly.
     * @param part the part
     * @return the quantities a bench asks for first, each once
     */
    public static String measures(StockViews.Part part) {
        return inOrder(part).stream().filter(reading -> ORDER.contains(reading.quantity()))
            .collect(Collectors.toMap(StockViews.PartReading::quantity, reading -> reading, (first, again) -> again,
                LinkedHashMap::new)).values().stream().limit(MOST_MEASURES)
            .map(reading -> ColumnText.name(reading.quantity()) + " " + ColumnText.value(reading.quantity(), reading.value()))
            .collect(Collectors.joining(", "));
    }

    /**
     * Its readings in the order in which a bench names them.
     * @param part the part
     * @return all of them, what is asked for first before the rest
     */
    public static List<StockViews.PartReading> inOrder(StockViews.Part part) {
        return part.readings().stream().sorted(Comparator.comparingInt(reading -> {
            int place = ORDER.indexOf(reading.quantity());
            return place < 0 ? ORDER.size() : place;
        })).toList();
    }

    /**
     * How a reading came about.
     * @param reading the reading
     * @return its number, day, gauge, condition and note, as far as they are known
     */
    public static String how(StockViews.PartReading reading) {
        List<String> words = new ArrayList<>();
        words.add(Long.toString(reading.id()));
        reading.day().ifPresent(day -> words.add("of " + day));
        reading.gauge().ifPresent(gauge -> words.add("on " + gauge));
        String condition = ColumnText.condition(reading.condition());
        return String.join(" ", words) + (condition.isEmpty() ? "" : ", " + condition)
            + reading.note().map(note -> ", " + note).orElse("");
    }
}
