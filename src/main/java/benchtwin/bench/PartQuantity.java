package benchtwin.bench;

import benchtwin.book.State;
import benchtwin.book.ThingKind;
import benchtwin.club.AngleReading;
import benchtwin.club.Category;
import benchtwin.club.WeighedWith;
import benchtwin.stock.MeasuredColumns;
import benchtwin.stock.StockKind;
import benchtwin.stock.UsualOfClubs;
import benchtwin.stock.UsualOfParts;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** One quantity that is read of a part: how it is written, how it may have been read, how far it is trusted. */
final class PartQuantity {

    private static final String READING = "reading";
    private static final String WEIGHED_WITH = "weighed_with";
    private static final List<String> YES_OR_NO = List.of("no", "yes");
    private static final Set<String> WOODS_ALONE = Set.of("face_deg");
    private static final Set<String> SLEEVED_ALONE = Set.of("seat_to_ground_mm");
    private static final Set<String> BONDED_ALONE = Set.of("bore_depth_mm", "bore_to_ground_mm");

    private final StockKind kind;
    private final String column;
    private final Optional<Category> category;
    private final boolean sleeved;

    private PartQuantity(StockKind kind, String column, State part) {
        this.kind = kind;
        this.column = column;
        this.category = ClubViews.category(part);
        this.sleeved = part.fact("adjust").equals(Optional.of("sleeve"));
    }

    /** The quantities that are read of a part, in the order of its file's columns. */
    static List<PartQuantity> of(ThingKind part, State state) {
        StockKind kind = StockInventory.sheet(part);
        return MeasuredColumns.names(kind).stream().map(column -> new PartQuantity(kind, column, state)).filter(PartQuantity::isReadOfIt)
            .toList();
    }

    private boolean isReadOfIt() {
        boolean head = kind == StockKind.HEADS;
        boolean wood = category.filter(Category::isDriverOrFairway).isPresent();
        return !(head && (WOODS_ALONE.contains(column) && isByEdge() || column.equals("bounce_deg") && wood
            || SLEEVED_ALONE.contains(column) && !sleeved || BONDED_ALONE.contains(column) && sleeved));
    }

    /** Whether its angles can be read by the leading edge alone. */
    private boolean isByEdge() {
        return category.filter(Category::isReadByTheEdge).isPresent();
    }

    String column() {
        return column;
    }

    /** The ways a condition can be, where there are a few; empty where it is typed. */
    private List<String> ways(String condition) {
        return switch (condition) {
            case READING -> Arrays.stream(AngleReading.values()).filter(way -> category.isEmpty() || category.get() == Category.HYBRID
                || way.isWood() != isByEdge()).map(AngleReading::word).toList();
            case "over_grip" -> YES_OR_NO;
            default -> List.of();
        };
    }

    /** What says how it was read, each as it was the last time. */
    List<PartReadings.Condition> conditions(Map<String, String> last) {
        return MeasuredColumns.condition(kind, column).stream().filter(name -> sleeved || !name.equals("read_at_setting")).map(name -> {
            List<String> ways = ways(name);
            String was = last.getOrDefault(name, ways.isEmpty() ? "" : ways.get(0));
            return new PartReadings.Condition(name, ways, ColumnText.typedForm(name, was));
        }).toList();
    }

    /** How it was read, as the book keeps it. */
    Map<String, String> condition(Map<String, String> typed) throws BadInput {
        Map<String, String> condition = new TreeMap<>();
        for (PartReadings.Condition one : conditions(Map.of())) {
            String text = typed.getOrDefault(one.name(), "").strip();
            if (!text.isEmpty()) {
                condition.put(one.name(), one.name().equals(WEIGHED_WITH) ? weighedWith(text) : said(one, text));
            }
        }
        return condition;
    }

    private static String said(PartReadings.Condition condition, String text) throws BadInput {
        if (!condition.ways().isEmpty()) {
            if (!condition.ways().contains(text)) {
                throw new BadInput("%s: \"%s\"; expected %s".formatted(ColumnText.name(condition.name()), text,
                    String.join(" or ", condition.ways())));
            }
            return text;
        }
        return ColumnText.isNumber(condition.name()) ? Double.toString(number(condition.name(), text)).replaceAll("\\.0$", "") : text;
    }

    private static String weighedWith(String text) throws BadInput {
        Map<String, WeighedWith> words = Arrays.stream(WeighedWith.values()).collect(Collectors.toMap(WeighedWith::word, with -> with,
            (one, other) -> one, LinkedHashMap::new));
        Set<WeighedWith> with = new java.util.TreeSet<>();
        for (String word : text.split("[+,]")) {
            WeighedWith known = words.get(word.strip());
            if (known == null) {
                throw new BadInput("weighed with: \"%s\"; expected %s, several joined by +".formatted(word.strip(),
                    String.join(", ", words.keySet())));
            }
            with.add(known);
        }
        return with.stream().map(WeighedWith::word).collect(Collectors.joining("+"));
    }

    /** The value as the book keeps it. */
    double value(String typed) throws BadInput {
        return number(column, typed);
    }

    private static double number(String column, String typed) throws BadInput {
        return ColumnText.need(column, ColumnText.name(column), typed);
    }

    /** What a reading of it is trusted to until a gauge's own uncertainty is known. */
    double uncertainty() {
        return MeasuredColumns.uncertainty(kind, column, category.isPresent() && !isByEdge());
    }

    String unit() {
        return MeasuredColumns.unit(kind, column);
    }

    UsualOfClubs.Usual usual() {
        return UsualOfParts.of(kind, column, category);
    }
}
