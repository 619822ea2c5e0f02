package benchtwin.samples;

import java.util.List;

/** Cure times of two invented resins, as their invented makers state them. They tell nothing of any resin that can be bought. */
final class Resins {

    private Resins() {
    }

    static List<CsvTable.Row> rows() {
        return List.of(row("slow", 15, 720, 48), row("slow", 20, 480, 30), row("slow", 25, 300, 24), row("slow", 35, 120, 12),
            row("quick", 18, 30, 3), row("quick", 23, 20, 2));
    }

    private static CsvTable.Row row(String resin, int celsius, int handlingMinutes, int fullCureHours) {
        return new CsvTable.Row().put("resin", resin).put("temperature_c", Integer.toString(celsius))
            .put("handling_min", Integer.toString(handlingMinutes)).put("full_cure_h", Integer.toString(fullCureHours));
    }
}
