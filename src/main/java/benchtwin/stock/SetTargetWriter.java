package benchtwin.stock;

import benchtwin.club.Line;
import benchtwin.club.Quantity;
import benchtwin.club.SetTargets;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Writes set targets as the text of set-targets.csv and lines.csv, so that they can be kept, edited and read again. What
 * {@link SetTargetReader} took comes back equal, to the last bit of every number: a length goes into inches where few
 * decimals say it exactly, else into millimetres; a swing weight goes by its letter where that is exact.
 *
 * <p>Three things the files have no cells for are left out: a group rule without a group, a margin for a value that nothing
 * gives, and the line of a value that the club names itself, since its own value counts.
 */
public final class SetTargetWriter {

    private SetTargetWriter() {
    }

    /**
     * The clubs as set-targets.csv: columns for every value, those for tolerances and weights where one is not the usual.
     * @param targets the sets
     * @return the file's text, header first
     * @throws IllegalArgumentException when a club wants a quantity that the file has no column for
     */
    public static String clubs(SetTargets targets) {
        List<Map<String, String>> rows = targets.clubs().stream().map(club -> WantedClubCells.of(club, targets)).toList();
        Set<String> filled = new LinkedHashSet<>();
        rows.forEach(row -> filled.addAll(row.keySet()));
        Set<String> header = new LinkedHashSet<>();
        for (Column column : StockKind.SET_TARGETS.columns()) {
            String other = column.otherName().orElse("");
            boolean margin = WantedColumn.ALL.stream()
                .anyMatch(wanted -> column.name().equals(wanted.tolerance()) || column.name().equals(wanted.weight()));
            if (filled.contains(column.name()) || !margin && !filled.contains(other)) {
                header.add(column.name());
            }
            if (filled.contains(other)) {
                header.add(other);
            }
        }
        header.addAll(filled);
        return CsvText.table(header, rows);
    }

    /**
     * The lines as lines.csv.
     * @param targets the sets
     * @return the file's text, header first; the header alone where there is no line
     */
    public static String lines(SetTargets targets) {
        List<Map<String, String>> rows = new ArrayList<>();
        for (Line line : targets.lines()) {
            String value = line.quantity() == Quantity.SWING_WEIGHT
                ? ExactText.swingWeight(line.anchorValue()).orElse(ExactText.number(line.anchorValue()))
                : ExactText.number(line.anchorValue());
            rows.add(Map.of("line", line.name(), "quantity", line.quantity().word(), "anchor_club", line.anchorClub(),
                "anchor_value", value, "slope", ExactText.number(line.slope()), "per", line.per().word()));
        }
        return CsvText.table(StockKind.LINES.columns().stream().map(Column::name).toList(), rows);
    }
}
