package benchtwin.stock;

import benchtwin.club.AngleReading;
import benchtwin.club.Category;
import benchtwin.club.GroupRule;
import benchtwin.club.Hand;
import benchtwin.club.Keeping;
import benchtwin.club.Margin;
import benchtwin.club.Quantity;
import benchtwin.club.Target;
import benchtwin.club.Wanted;
import benchtwin.club.WantedClub;
import benchtwin.measure.Taken;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** Reads set-targets.csv, and remembers every row, so that one with a fault still counts as a club of its set. */
final class WantedClubRows {

    private static final String LOFT_LINE = LineColumn.LOFT.column();

    private final List<Row> seen = new ArrayList<>();

    /** Every row read so far, good or not, in file order. */
    List<Row> seen() {
        return seen;
    }

    Optional<WantedClub> read(Row row) {
        seen.add(row);
        String player = row.tag("player");
        String club = row.tag("club");
        Optional<Category> category = row.needWord("category", Category.class);
        Optional<Hand> hand = row.needWord("hand", Hand.class);
        if (category.equals(Optional.of(Category.IRON)) && !row.has("number")) {
            row.missing("number", "an iron's number, such as 7 or PW");
        }
        Optional<GroupRule> rule = row.word("group_rule", GroupRule.class);
        if (rule.isPresent() && !row.has("group")) {
            row.fault("group_rule", "stands beside no group", "a blank cell, or the group it is for");
        }
        Measures measures = new Measures(row, category, Taken.UNRECORDED);
        AngleReading reading = reading(row, category);
        Map<Quantity, Margin> margins = new EnumMap<>(Quantity.class);
        Map<Quantity, Wanted> wanted = wanted(row, measures, margins);
        int priority = measures.whole("priority").orElse(WantedClub.DEFAULT_PRIORITY);
        Optional<LocalDate> neededBy = row.date("needed_by");
        refuseEmpty(row, wanted);
        if (wanted.isEmpty() && row.has(LOFT_LINE) && !isSureToBe(reading, category)) {
            row.fault("reading", "stands beside a loft line and no value of the row's own",
                "a value besides, such as lie_deg or length_in");
        }
        if (!row.isGood()) {
            return Optional.empty();
        }
        return Optional.of(new WantedClub(player, club, category.orElseThrow(), row.text("number"), hand.orElseThrow(),
            row.text("group"), rule.orElse(GroupRule.PREFER),
            wanted.isEmpty() ? Optional.empty() : Optional.of(new Target(reading, wanted)),
            row.text("frequency_line"), row.text("swing_line"), row.text(LOFT_LINE), priority, neededBy,
            new Keeping(Optional.empty(), Optional.empty(), row.text("note"), row.extra()), margins));
    }

    /** How the angles are meant; a face angle is a wood's, bounce is not. */
    private static AngleReading reading(Row row, Optional<Category> category) {
        AngleReading reading = AngleCells.reading(row, category);
        if (category.isPresent() && reading.isWood() && row.has("bounce_deg")) {
            row.fault("bounce_deg", "does not go with a club read as a wood", "a blank cell; bounce is read by the edge");
        } else if (category.isPresent() && !reading.isWood() && row.has("face_deg")) {
            row.fault("face_deg", "does not go with a club read by the edge", "a blank cell; only a wood has a face angle");
        }
        if (row.has(LOFT_LINE) && !row.has("reading") && !AngleCells.areAny(row) && !AngleCells.isReadByTheEdge(category)) {
            row.missing("reading", "how the loft of its line is read: soled or square"
                + (category.equals(Optional.of(Category.HYBRID)) ? ", or edge" : ""));
        }
        return reading;
    }

    /** Whether a club of the category is taken to be read so where its row names no value that keeps the reading. */
    private static boolean isSureToBe(AngleReading reading, Optional<Category> category) {
        return AngleCells.isReadByTheEdge(category) || reading == AngleReading.SOLED;
    }

    /** What the row names. Margins without a value of their own are kept for the line that gives it. */
    private static Map<Quantity, Wanted> wanted(Row row, Measures measures, Map<Quantity, Margin> margins) {
        Map<Quantity, Wanted> wanted = new EnumMap<>(Quantity.class);
        for (WantedColumn column : WantedColumn.ALL) {
            OptionalDouble value = measures.number(column.value());
            Margin usual = Margin.ofDefaults(column.quantity());
            Margin margin = new Margin(measures.number(column.tolerance()).orElse(usual.tolerance()),
                measures.number(column.weight()).orElse(usual.weight()));
            if (value.isPresent()) {
                wanted.put(column.quantity(), margin.around(value.getAsDouble()));
            } else if (!row.has(column.value()) && (row.has(column.tolerance()) || row.has(column.weight()))) {
                if (comesFromALine(row, column.quantity())) {
                    margins.put(column.quantity(), margin);
                } else {
                    row.fault(row.has(column.tolerance()) ? column.tolerance() : column.weight(),
                        "stands beside no " + row.nameInFile(column.value()), "a blank cell, or the value it is for");
                }
            }
        }
        return wanted;
    }

    private static boolean comesFromALine(Row row, Quantity quantity) {
        return Arrays.stream(LineColumn.values())
            .anyMatch(column -> column.quantities().contains(quantity) && row.has(column.column()));
    }

    private static void refuseEmpty(Row row, Map<Quantity, Wanted> wanted) {
        boolean line = Arrays.stream(LineColumn.values()).anyMatch(column -> row.has(column.column()));
        boolean named = WantedColumn.ALL.stream().anyMatch(column -> row.has(column.value()));
        if (!named && !line) {
            row.fault("wants nothing of this club", "a value, such as loft_deg or length_in, or a line");
        } else if (row.isGood() && named && wanted.values().stream().noneMatch(each -> each.weight() > 0)) {
            row.fault("gives every value it names a weight of 0", "at least one weight above 0");
        }
    }
}
