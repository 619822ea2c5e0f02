package benchtwin.stock;

import benchtwin.club.AddedMasses;
import benchtwin.club.Category;
import benchtwin.club.ClubRow;
import benchtwin.club.ClubState;
import benchtwin.club.FrequencyReading;
import benchtwin.club.Hand;
import benchtwin.club.HeadAngles;
import benchtwin.club.LengthMethod;
import benchtwin.club.RecordedClub;
import benchtwin.measure.Reading;
import benchtwin.measure.Taken;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A row of clubs.csv: one club on one day.
 * @param row      the row it came from
 * @param tag      the club's tag
 * @param player   whose it is
 * @param category driver to putter
 * @param number   its number
 * @param hand     right or left
 * @param day      what was measured that day
 */
record ClubEntry(Row row, String tag, String player, Category category, Optional<String> number, Hand hand,
                 ClubRow day) {

    /** The entry, or empty when the row has a fault. */
    static Optional<ClubEntry> read(Row row) {
        String tag = row.tag("tag");
        String player = row.need("player");
        Optional<Category> category = row.needWord("category", Category.class);
        Optional<Hand> hand = row.needWord("hand", Hand.class);
        Optional<ClubState> state = row.needWord("state", ClubState.class);
        if (!row.has("measured_on")) {
            row.missing("measured_on", "the day it was measured, such as 2026-05-03");
        }
        Taken taken = row.taken();
        Measures measures = new Measures(row, category, taken);
        HeadAngles angles = AngleCells.read(row, category, taken);
        Optional<Reading> length = measures.reading("length_in");
        if (row.has("length_in") && !row.has("length_method")) {
            row.missing("length_method", "how the length was taken: " + String.join(", ", Words.of(LengthMethod.class)));
        }
        LengthMethod method = row.word("length_method", LengthMethod.class).orElse(LengthMethod.AXIS);
        Optional<Reading> swingWeight = measures.reading("swing_weight");
        Optional<FrequencyReading> frequency = FrequencyCells.read(row, taken, true, false);
        if (row.has("frequency_cpm") && !row.has("over_grip")) {
            row.warn("over_grip", "is blank beside a frequency and taken as yes", "yes or no");
        }
        Optional<Reading> totalMass = measures.reading("total_mass_g");
        AddedMasses masses = new AddedMasses(
            measures.number("tape_layers").orElse(AddedMasses.ONE_LAYER.tapeLayers()),
            measures.number("tip_weight_g").orElse(0), measures.number("tape_g").orElse(0),
            measures.number("melt_g").orElse(0));
        if (!row.isGood()) {
            return Optional.empty();
        }
        ClubRow read = new ClubRow(taken.on().orElseThrow(), state.orElseThrow(), row.text("head"), row.text("shaft"),
            row.text("grip"), row.text("sleeve"), row.setting("setting"),
            AngleCells.areAny(row) ? Optional.of(angles) : Optional.empty(), length, method, swingWeight, frequency,
            totalMass, masses, row.text("orientation"), row.text("note"), row.extra());
        return Optional.of(new ClubEntry(row, tag, player, category.orElseThrow(), row.text("number"),
            hand.orElseThrow(), read));
    }

    /** The clubs of these rows, in order of first appearance. A row at odds with its club's first row is left out. */
    static List<RecordedClub> gather(List<ClubEntry> entries) {
        Map<String, List<ClubEntry>> byTag = new LinkedHashMap<>();
        for (ClubEntry entry : entries) {
            List<ClubEntry> rows = byTag.computeIfAbsent(entry.tag(), tag -> new ArrayList<>());
            if (rows.isEmpty() || entry.agreesWith(rows.get(0))) {
                rows.add(entry);
            }
        }
        return byTag.values().stream().map(rows -> {
            ClubEntry first = rows.get(0);
            return new RecordedClub(first.tag(), first.player(), first.category(), first.number(), first.hand(),
                rows.stream().map(ClubEntry::day).toList());
        }).toList();
    }

    /** What makes two rows the same club; a fault for each that differs. */
    private boolean agreesWith(ClubEntry first) {
        refuse("player", player.equals(first.player()), first);
        refuse("category", category == first.category(), first);
        refuse("number", number.equals(first.number()), first);
        refuse("hand", hand == first.hand(), first);
        return row.isGood();
    }

    private void refuse(String column, boolean same, ClubEntry first) {
        if (!same) {
            row.fault(column, "is not what %s says of club %s".formatted(first.row().cells().words(), tag),
                first.row().text(column).orElse("a blank cell") + ", or another tag");
        }
    }
}
