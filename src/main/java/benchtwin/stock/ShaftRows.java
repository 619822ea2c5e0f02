package benchtwin.stock;

import benchtwin.club.Category;
import benchtwin.club.FrequencyReading;
import benchtwin.club.Shaft;
import benchtwin.club.ShaftCondition;
import benchtwin.club.ShaftMaterial;
import benchtwin.club.TipKind;
import benchtwin.measure.Reading;
import benchtwin.measure.Taken;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/** Rows of shafts.csv. */
final class ShaftRows {

    private final Map<String, List<FrequencyRow>> moreFrequencies;

    /** With the further readings of each shaft, by tag. */
    ShaftRows(Map<String, List<FrequencyRow>> moreFrequencies) {
        this.moreFrequencies = moreFrequencies;
    }

    /** The shaft, or empty when the row has a fault. */
    Optional<Shaft> read(Row row) {
        Taken taken = row.taken();
        Measures measures = new Measures(row, Optional.empty(), taken);
        String tag = row.tag("tag");
        String model = row.need("model");
        Optional<ShaftMaterial> material = row.needWord("material", ShaftMaterial.class);
        if (!row.has("meant_for")) {
            row.missing("meant_for", "the categories it is meant for, such as driver+fairway");
        }
        Set<Category> meantFor = row.words("meant_for", Category.class);
        OptionalDouble raw = measures.need("raw_length_in");
        OptionalDouble tip = measures.need("tip_in");
        OptionalDouble butt = measures.need("butt_in");
        Optional<TipKind> tipKind = row.needWord("tip_kind", TipKind.class);
        int pulls = measures.whole("pulls").orElse(-1);
        ShaftCondition condition = condition(row, pulls);
        double tipCut = cut(row, measures, "tip_cut_in", condition);
        double buttCut = cut(row, measures, "butt_cut_in", condition);
        double parallelTip = parallelTip(row, measures, tipKind, raw);
        Optional<Reading> mass = measures.reading("mass_g");
        Optional<Reading> balance = measures.reading("balance_in");
        Optional<Reading> torque = measures.reading("torque_deg");
        Optional<FrequencyReading> own = FrequencyCells.read(row, taken, row.has("grip_on"), true);
        List<FrequencyReading> frequencies = new ArrayList<>();
        if (raw.isPresent() && lengthFits(row, measures, raw.getAsDouble(), tipCut, buttCut)) {
            double length = raw.getAsDouble() - tipCut - buttCut;
            balance.ifPresent(read -> checkBalance(row, measures, read.value(), length));
            own.ifPresent(read -> frequencies.add(FrequencyCells.complete(row, read, length)));
            for (FrequencyRow more : moreFrequencies.getOrDefault(tag, List.of())) {
                more.on(length, row.has("grip_on")).ifPresent(frequencies::add);
            }
        }
        if (!row.isGood()) {
            return Optional.empty();
        }
        int pulled = pulls >= 0 ? pulls : condition == ShaftCondition.PULLED ? 1 : 0;
        return Optional.of(new Shaft(tag, model, material.orElseThrow(), meantFor, row.text("made_for_number"),
            raw.getAsDouble(), mass, balance, torque, tip.getAsDouble(), tipKind.orElseThrow(), butt.getAsDouble(),
            parallelTip, tipCut, buttCut, frequencies, row.text("sleeve_on"), row.text("grip_on"),
            row.text("orientation"), pulled, condition, KeepingCells.read(row, extras(tag))));
    }

    /** As written; else pulled when it was pulled or has a sleeve on, and new otherwise. */
    private static ShaftCondition condition(Row row, int pulls) {
        Optional<ShaftCondition> written = row.word("condition", ShaftCondition.class);
        if (written.equals(Optional.of(ShaftCondition.NEW)) && pulls > 0) {
            row.fault("pulls", "does not go with condition new", "0 or a blank cell, or condition pulled");
        }
        boolean used = pulls > 0 || row.has("sleeve_on");
        return written.orElse(used ? ShaftCondition.PULLED : ShaftCondition.NEW);
    }

    /** A new shaft without a cut written down has none; a pulled one has to say. */
    private static double cut(Row row, Measures measures, String column, ShaftCondition condition) {
        if (condition == ShaftCondition.PULLED && !row.has(column)) {
            row.missing(column, measures.unit(column) + " cut off a pulled shaft, 0 for none");
        }
        return measures.number(column).orElse(0);
    }

    private static double parallelTip(Row row, Measures measures, Optional<TipKind> tipKind, OptionalDouble raw) {
        OptionalDouble written = measures.number("parallel_tip_in");
        if (tipKind.equals(Optional.of(TipKind.PARALLEL)) && !row.has("parallel_tip_in")) {
            row.missing("parallel_tip_in", measures.unit("parallel_tip_in") + " of parallel tip as made");
        } else if (tipKind.equals(Optional.of(TipKind.TAPER)) && written.orElse(0) > 0) {
            row.fault("parallel_tip_in", "does not go with a taper tip", "0 or a blank cell");
        } else if (written.isPresent() && raw.isPresent() && written.getAsDouble() >= raw.getAsDouble()) {
            row.fault("parallel_tip_in", "is as long as the shaft or longer", "%s below %s, the raw length".formatted(
                measures.unit("parallel_tip_in"), measures.shown("parallel_tip_in", raw.getAsDouble())));
        }
        return written.orElse(0);
    }

    private static boolean lengthFits(Row row, Measures measures, double raw, double tipCut, double buttCut) {
        if (tipCut + buttCut < raw) {
            return true;
        }
        String column = tipCut >= buttCut ? "tip_cut_in" : "butt_cut_in";
        row.fault(column, "with the other cut leaves nothing of the shaft", "%s, both cuts together below %s".formatted(
            measures.unit(column), measures.shown(column, raw)));
        return false;
    }

    private static void checkBalance(Row row, Measures measures, double balance, double length) {
        String unit = measures.unit("balance_in");
        String whole = measures.shown("balance_in", length);
        if (balance >= length) {
            row.fault("balance_in", "is past the tip of a %s %s shaft".formatted(whole, unit.equals("inches") ? "in" : "mm"),
                "%s from the butt, above 0 and below %s".formatted(unit, whole));
        } else if (balance < length / 3 || balance > length * 2 / 3) {
            row.warn("balance_in", "is outside the middle third of the shaft", "%s to %s from the butt as a rule".formatted(
                measures.shown("balance_in", length / 3), measures.shown("balance_in", length * 2 / 3)));
        }
    }

    /** Unknown columns of the frequencies file, told apart by the reading's place among the shaft's further readings. */
    private Map<String, String> extras(String tag) {
        Map<String, String> extras = new LinkedHashMap<>();
        int number = 0;
        for (FrequencyRow more : moreFrequencies.getOrDefault(tag, List.of())) {
            number++;
            String prefix = "frequency %d, ".formatted(number);
            more.row().extra().forEach((name, value) -> extras.put(prefix + name, value));
        }
        return extras;
    }
}
