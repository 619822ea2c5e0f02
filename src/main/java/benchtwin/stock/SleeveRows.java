package benchtwin.stock;

import benchtwin.club.Hand;
import benchtwin.club.Ring;
import benchtwin.club.Sleeve;
import benchtwin.measure.Reading;
import benchtwin.measure.Taken;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeSet;

/** Rows of sleeves.csv. */
final class SleeveRows {

    private static final String BOTH_HANDS = "both";

    private final Map<String, List<SettingRow>> measured;

    /** With the measured settings of each sleeve, by name. */
    SleeveRows(Map<String, List<SettingRow>> measured) {
        this.measured = measured;
    }

    /** The sleeve, or empty when the row has a fault. */
    Optional<Sleeve> read(Row row) {
        Measures measures = new Measures(row, Optional.empty(), Taken.UNRECORDED);
        String name = row.tag("sleeve");
        if (!row.has("fits")) {
            row.missing("fits", "the seats it fits, as heads name them in sleeve_fit, such as Q2+Q3");
        }
        Set<String> fits = new TreeSet<>(row.texts("fits"));
        row.noteList("fits", List.copyOf(fits));
        Optional<Hand> hand = hand(row);
        OptionalDouble bore = measures.need("bore_in");
        Optional<Reading> depth = measures.reading("bore_depth_mm");
        Optional<Reading> stopToSeat = measures.reading("stop_to_seat_mm");
        Optional<Reading> mass = measures.reading("mass_g");
        if (!row.has("turns_shaft")) {
            row.missing("turns_shaft", "yes when turning the sleeve turns shaft and grip, else no");
        }
        Optional<Boolean> turns = row.yesOrNo("turns_shaft");
        List<Ring> rings = rings(row, measures);
        OptionalInt count = measures.whole("count");
        List<SettingRow> settings = measured.getOrDefault(name, List.of());
        if (rings.isEmpty() && settings.isEmpty() && row.isGood()) {
            row.warn("sleeve", "has no rings and no measured settings, so it cannot be set",
                "ring1_tilt_deg and ring1_settings, or its rows in " + StockKind.SLEEVE_SETTINGS.fileName());
        }
        return row.isGood() ? Optional.of(new Sleeve(name, fits, hand, bore.getAsDouble(), depth, stopToSeat, mass,
            turns.orElseThrow(), rings, settings.stream().map(SettingRow::setting).toList(), count,
            KeepingCells.read(row, extras(settings)))) : Optional.empty();
    }

    private static Optional<Hand> hand(Row row) {
        Optional<String> text = row.text("hand");
        if (text.isEmpty() || Nearest.fold(text.get()).equals(BOTH_HANDS)) {
            text.ifPresent(both -> row.note("hand", BOTH_HANDS));
            return Optional.empty();
        }
        Optional<Hand> hand = Words.find(text.get(), Hand.class);
        hand.ifPresentOrElse(found -> row.note("hand", found.word()), () -> row.fault("hand",
            "is not a word of this column", Words.expectation(text.get(), List.of("right", "left", BOTH_HANDS))));
        return hand;
    }

    private static List<Ring> rings(Row row, Measures measures) {
        List<Ring> rings = new ArrayList<>();
        for (String ring : new String[] {"ring1", "ring2"}) {
            String tiltColumn = ring + "_tilt_deg";
            String settingsColumn = ring + "_settings";
            String offsetColumn = ring + "_offset_deg";
            OptionalDouble tilt = measures.number(tiltColumn);
            OptionalInt settings = measures.whole(settingsColumn);
            OptionalDouble offset = measures.number(offsetColumn);
            boolean any = row.has(tiltColumn) || row.has(settingsColumn) || row.has(offsetColumn);
            if (any && !row.has(tiltColumn)) {
                row.missing(tiltColumn, "degrees of tilt of this ring, such as 1");
            }
            if (any && !row.has(settingsColumn)) {
                row.missing(settingsColumn, "how many settings this ring has, such as 12");
            }
            if (any && ring.equals("ring2") && !row.has("ring1_tilt_deg")) {
                row.missing("ring1_tilt_deg", "the outer ring first: a sleeve with one ring has it as ring1");
            }
            if (tilt.isPresent() && settings.isPresent()) {
                rings.add(new Ring(tilt.getAsDouble(), settings.getAsInt(), offset.orElse(0)));
            }
        }
        return rings;
    }

    /** Unknown columns of the settings file, told apart by the setting. */
    private static Map<String, String> extras(List<SettingRow> settings) {
        Map<String, String> extras = new LinkedHashMap<>();
        for (SettingRow setting : settings) {
            setting.row().extra().forEach(
                (name, value) -> extras.put("setting %s, %s".formatted(setting.setting().setting(), name), value));
        }
        return extras;
    }
}
