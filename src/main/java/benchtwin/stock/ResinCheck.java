package benchtwin.stock;

import benchtwin.club.ResinTable;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Holds the rows of each resin against each other: warmer is never slower. */
final class ResinCheck {

    private final List<ResinTable> tables = new ArrayList<>();

    /**
     * @param rows those of resins.csv; null without such a file
     */
    ResinCheck(Lot<ResinRow> rows) {
        Map<String, List<Lot.Item<ResinRow>>> byResin = new LinkedHashMap<>();
        if (rows != null) {
            rows.items().forEach(item -> byResin.computeIfAbsent(item.value().resin(), name -> new ArrayList<>()).add(item));
        }
        byResin.forEach(this::check);
    }

    private void check(String resin, List<Lot.Item<ResinRow>> rows) {
        rows.sort(Comparator.comparingDouble(item -> item.value().stated().temperatureC()));
        for (int k = 1; k < rows.size(); k++) {
            ResinTable.Row cold = rows.get(k - 1).value().stated();
            ResinTable.Row warm = rows.get(k).value().stated();
            refuseSlower(rows.get(k).row(), rows.get(k - 1).row(), "handling_min", cold.handlingMinutes(), warm.handlingMinutes());
            refuseSlower(rows.get(k).row(), rows.get(k - 1).row(), "full_cure_h", cold.fullCureMinutes(), warm.fullCureMinutes());
        }
        if (rows.stream().allMatch(item -> item.row().isGood())) {
            tables.add(new ResinTable(resin, rows.stream().map(item -> item.value().stated()).toList()));
        }
    }

    private static void refuseSlower(Row warm, Row cold, String column, double coldMinutes, double warmMinutes) {
        if (warmMinutes > coldMinutes) {
            warm.fault(column, "is longer than %s at %s °C, where it is colder".formatted(cold.text(column).orElse(""),
                cold.text("temperature_c").orElse("")), "the same or less: resin cures faster when it is warmer");
        }
    }

    List<ResinTable> tables() {
        return tables;
    }
}
