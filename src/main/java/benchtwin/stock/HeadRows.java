package benchtwin.stock;

import benchtwin.club.Adjust;
import benchtwin.club.BendHistory;
import benchtwin.club.Bore;
import benchtwin.club.Category;
import benchtwin.club.Hand;
import benchtwin.club.Head;
import benchtwin.club.HeadAngles;
import benchtwin.club.HeadCondition;
import benchtwin.club.HeadMaterial;
import benchtwin.club.HeadSize;
import benchtwin.club.MadeAngles;
import benchtwin.club.MassProperties;
import benchtwin.club.Port;
import benchtwin.club.SleeveSeat;
import benchtwin.club.TipKind;
import benchtwin.club.WeighedWith;
import benchtwin.measure.PlainNumber;
import benchtwin.measure.Taken;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/** Rows of heads.csv. */
final class HeadRows {

    private static final List<String> BORE_COLUMNS = List.of("bore_in", "bore_kind", "bore_depth_mm", "bore_to_ground_mm");
    private static final List<String> SEAT_COLUMNS = List.of("sleeve_fit", "seat_to_ground_mm", "read_at_setting");

    private HeadRows() {
    }

    /** The head, or empty when the row has a fault. */
    static Optional<Head> read(Row row) {
        String tag = row.tag("tag");
        String model = row.need("model");
        Optional<Category> category = row.needWord("category", Category.class);
        Optional<Hand> hand = row.needWord("hand", Hand.class);
        Optional<Adjust> adjust = row.needWord("adjust", Adjust.class);
        if (category.equals(Optional.of(Category.IRON)) && !row.has("number")) {
            row.missing("number", "an iron's number, such as 7 or PW");
        }
        Taken taken = row.taken();
        Measures measures = new Measures(row, category, taken);
        HeadAngles angles = AngleCells.read(row, category, taken);
        Optional<Bore> bore = bore(row, measures, adjust);
        Optional<SleeveSeat> seat = seat(row, measures, adjust);
        HeadMaterial material = row.word("material", HeadMaterial.class).orElse(HeadMaterial.UNKNOWN);
        if (adjust.equals(Optional.of(Adjust.BEND))
            && (material == HeadMaterial.ALUMINIUM || material == HeadMaterial.ZINC)) {
            row.warn("adjust", "is never done with " + material.word(), "fixed");
        }
        Set<WeighedWith> weighedWith = weighedWith(row);
        List<Port> ports = ports(row, measures);
        MassProperties mass = new MassProperties(measures.reading("cg_toe_mm"), measures.reading("cg_up_mm"),
            measures.reading("transverse_inertia_g_cm2"), measures.reading("vertical_inertia_g_cm2"),
            measures.reading("volume_cm3"), measures.reading("ct_us"));
        HeadSize size = new HeadSize(measures.reading("heel_toe_mm"), measures.reading("face_back_mm"),
            measures.reading("sole_crown_mm"), measures.reading("neck_mm"));
        MadeAngles made = new MadeAngles(measures.number("made_loft_deg"), measures.number("made_lie_deg"),
            measures.number("made_face_deg"));
        BendHistory bent = new BendHistory(measures.number("bent_upright_deg"), measures.number("bent_flat_deg"),
            measures.number("bent_forward_deg"), measures.number("bent_back_deg"));
        OptionalDouble offset = measures.number("offset_mm");
        var massG = measures.reading("mass_g");
        double hotMeltMax = measures.number("hot_melt_max_g").orElse(0);
        HeadCondition condition = row.word("condition", HeadCondition.class).orElse(HeadCondition.USED);
        if (!row.isGood()) {
            return Optional.empty();
        }
        return Optional.of(new Head(tag, model, category.orElseThrow(), row.text("number"), hand.orElseThrow(), angles,
            offset, row.text("grind"), massG, weighedWith, bore, seat, material, adjust.orElseThrow(), ports, hotMeltMax,
            made, bent, mass, size, condition, KeepingCells.read(row)));
    }

    private static Optional<Bore> bore(Row row, Measures measures, Optional<Adjust> adjust) {
        if (adjust.isEmpty()) {
            return Optional.empty();
        }
        if (adjust.get() == Adjust.SLEEVE) {
            refuse(row, BORE_COLUMNS, "does not go with adjust sleeve", "a blank cell: the bore is the sleeve's");
            return Optional.empty();
        }
        OptionalDouble diameter = measures.need("bore_in");
        Optional<TipKind> kind = row.needWord("bore_kind", TipKind.class);
        var depth = measures.reading("bore_depth_mm");
        var toGround = measures.reading("bore_to_ground_mm");
        return diameter.isEmpty() || kind.isEmpty() ? Optional.empty()
            : Optional.of(new Bore(diameter.getAsDouble(), kind.get(), depth, toGround));
    }

    private static Optional<SleeveSeat> seat(Row row, Measures measures, Optional<Adjust> adjust) {
        if (adjust.isEmpty()) {
            return Optional.empty();
        }
        if (adjust.get() != Adjust.SLEEVE) {
            refuse(row, SEAT_COLUMNS, "does not go with adjust " + adjust.get().word(),
                "a blank cell, or adjust sleeve");
            return Optional.empty();
        }
        return Optional.of(new SleeveSeat(row.need("sleeve_fit"),
            measures.reading("seat_to_ground_mm"),
            row.setting("read_at_setting")));
    }

    private static void refuse(Row row, List<String> columns, String problem, String expected) {
        columns.stream().filter(row::has).forEach(column -> row.fault(column, problem, expected));
    }

    private static Set<WeighedWith> weighedWith(Row row) {
        Set<WeighedWith> with = row.words("weighed_with", WeighedWith.class);
        if (with.contains(WeighedWith.BARE) && with.size() > 1) {
            row.fault("weighed_with", "says bare and something more", "bare alone, or what was on it, such as weights+screw");
        }
        return with;
    }

    private static List<Port> ports(Row row, Measures measures) {
        List<String> types = row.texts("port");
        List<String> masses = row.texts("port_g");
        if (types.size() != masses.size()) {
            if (masses.isEmpty()) {
                row.missing("port_g", "the mass now in each port, 0 for an empty one, such as 4+0");
            } else {
                row.fault("port_g", "gives %d masses for %d ports".formatted(masses.size(), types.size()),
                    "one mass for each port, such as 4+7");
            }
            return List.of();
        }
        List<Port> ports = new ArrayList<>();
        for (int i = 0; i < types.size(); i++) {
            OptionalDouble massG = measures.member("port_g", masses.get(i));
            if (massG.isPresent()) {
                ports.add(new Port(types.get(i), massG.getAsDouble()));
            }
        }
        row.noteList("port_g", ports.stream().map(port -> PlainNumber.text(port.massG())).toList());
        return ports;
    }
}
