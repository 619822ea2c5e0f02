package benchtwin.stock;

import benchtwin.club.AngleReading;
import benchtwin.club.Line;
import benchtwin.club.Margin;
import benchtwin.club.Quantity;
import benchtwin.club.SetTargets;
import benchtwin.club.Target;
import benchtwin.club.WantedClub;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** A wanted club as the filled cells of its row. */
final class WantedClubCells {

    private final Map<String, String> cells = new LinkedHashMap<>();

    private WantedClubCells() {
    }

    /** The cells by the name of their column, a length under the unit that says it exactly. */
    static Map<String, String> of(WantedClub club, SetTargets targets) {
        WantedClubCells row = new WantedClubCells();
        row.put("player", club.player());
        row.put("club", club.club());
        row.put("category", club.category().word());
        club.number().ifPresent(number -> row.put("number", number));
        row.put("hand", club.hand().word());
        club.group().ifPresent(group -> {
            row.put("group", group);
            row.put("group_rule", club.groupRule().word());
        });
        club.target().ifPresent(row::target);
        for (LineColumn column : LineColumn.values()) {
            column.of(club).flatMap(targets::line).ifPresent(line -> row.line(column, line, club));
        }
        row.put("priority", Integer.toString(club.priority()));
        club.neededBy().ifPresent(day -> row.put("needed_by", day.toString()));
        club.keeping().note().ifPresent(note -> row.put("note", note));
        club.keeping().extra().forEach(row::put);
        return row.cells;
    }

    private void put(String column, String cell) {
        cells.put(column, cell);
    }

    private void target(Target target) {
        put("reading", target.reading().word());
        target.wanted().forEach((quantity, wanted) -> {
            WantedColumn column = WantedColumn.of(quantity);
            put(column.value(), wanted.value(), switch (quantity) {
                case LENGTH -> ExactText.inches(wanted.value());
                case SWING_WEIGHT -> ExactText.swingWeight(wanted.value());
                default -> Optional.of(ExactText.number(wanted.value()));
            });
            Margin usual = Margin.ofDefaults(quantity);
            if (wanted.tolerance() != usual.tolerance()) {
                put(column.tolerance(), wanted.tolerance(), quantity == Quantity.LENGTH
                    ? ExactText.inches(wanted.tolerance()) : Optional.of(ExactText.number(wanted.tolerance())));
            }
            if (wanted.weight() != usual.weight()) {
                put(column.weight(), ExactText.number(wanted.weight()));
            }
        });
    }

    /** The usual way to write a value, or the plain number under the column's other name. */
    private void put(String column, double value, Optional<String> usual) {
        if (usual.isPresent()) {
            put(column, usual.get());
        } else {
            put(StockKind.SET_TARGETS.column(column).flatMap(Column::otherName).orElseThrow(), ExactText.number(value));
        }
    }

    private void line(LineColumn column, Line line, WantedClub club) {
        if (club.target().flatMap(target -> target.of(line.quantity())).isPresent()) {
            return;
        }
        put(column.column(), line.name());
        if (column == LineColumn.LOFT && !AngleCells.isReadByTheEdge(Optional.of(club.category()))) {
            cells.putIfAbsent("reading", AngleReading.SOLED.word());
        }
        Margin margin = club.lineMargins().get(line.quantity());
        if (margin != null) {
            WantedColumn own = WantedColumn.of(line.quantity());
            put(own.tolerance(), ExactText.number(margin.tolerance()));
            put(own.weight(), ExactText.number(margin.weight()));
        }
    }
}
