package benchtwin.samples;

import benchtwin.club.FrequencyReading;
import benchtwin.club.Grip;
import benchtwin.club.Head;
import benchtwin.club.Keeping;
import benchtwin.club.MeasuredSetting;
import benchtwin.club.Port;
import benchtwin.club.Ring;
import benchtwin.club.Shaft;
import benchtwin.club.Sleeve;
import benchtwin.club.SleeveSeat;
import benchtwin.club.TipKind;
import benchtwin.club.Weight;
import benchtwin.samples.CsvTable.Row;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** Parts as rows of their files. */
final class PartTables {

    private PartTables() {
    }

    static CsvTable heads(List<Head> heads) {
        CsvTable table = new CsvTable();
        for (Head head : heads) {
            Row row = new Row().put("tag", head.tag()).put("model", head.model())
                .put("category", head.category().word()).put("number", Cells.text(head.number()))
                .put("hand", head.hand().word())
                .put("loft_deg", Cells.reading(head.angles().loftDeg(), 1))
                .put("lie_deg", Cells.reading(head.angles().lieDeg(), 1))
                .put("face_deg", Cells.reading(head.angles().faceDeg(), 1))
                .put("reading", head.angles().reading().word())
                .put("bounce_deg", Cells.reading(head.angles().bounceDeg(), 1))
                .put("offset_mm", Cells.number(head.offsetMm(), 1)).put("grind", Cells.text(head.grind()))
                .put("mass_g", Cells.reading(head.massG(), 1))
                .put("weighed_with", Cells.words(head.weighedWith()));
            hosel(row, head);
            row.put("material", head.material().word()).put("adjust", head.adjust().word());
            ports(row, head.ports());
            row.put("hot_melt_max_g", Cells.number(head.hotMeltMaxG(), 1))
                .put("made_loft_deg", Cells.number(head.made().loftDeg(), 1))
                .put("made_lie_deg", Cells.number(head.made().lieDeg(), 1))
                .put("made_face_deg", Cells.number(head.made().faceDeg(), 1))
                .put("bent_upright_deg", Cells.number(head.bent().uprightDeg(), 1))
                .put("bent_flat_deg", Cells.number(head.bent().flatDeg(), 1))
                .put("bent_forward_deg", Cells.number(head.bent().forwardDeg(), 1))
                .put("bent_back_deg", Cells.number(head.bent().backDeg(), 1))
                .put("cg_toe_mm", Cells.reading(head.mass().cgToeMm(), 1))
                .put("cg_up_mm", Cells.reading(head.mass().cgUpMm(), 1))
                .put("transverse_inertia_g_cm2", Cells.reading(head.mass().transverseInertiaGCm2(), 0))
                .put("vertical_inertia_g_cm2", Cells.reading(head.mass().verticalInertiaGCm2(), 0))
                .put("volume_cm3", Cells.reading(head.mass().volumeCm3(), 0))
                .put("ct_us", Cells.reading(head.mass().ctUs(), 0)).put("condition", head.condition().word());
            table.add(keeping(row, head.keeping()));
        }
        return table;
    }

    private static void hosel(Row row, Head head) {
        row.put("bore_in", head.bore().map(bore -> Cells.inches(bore.diameterMm(), 3)).orElse(""))
            .put("bore_kind", head.bore().map(bore -> bore.kind().word()).orElse(""))
            .put("bore_depth_mm", Cells.reading(head.bore().flatMap(bore -> bore.depthMm()), 1))
            .put("bore_to_ground_mm", Cells.reading(head.bore().flatMap(bore -> bore.toGroundMm()), 1))
            .put("sleeve_fit", head.seat().map(SleeveSeat::fit).orElse(""))
            .put("seat_to_ground_mm", Cells.reading(head.seat().flatMap(SleeveSeat::toGroundMm), 1))
            .put("read_at_setting", Cells.text(head.seat().flatMap(SleeveSeat::readAtSetting)));
    }

    private static void ports(Row row, List<Port> ports) {
        row.put("port", ports.stream().map(Port::type).collect(Collectors.joining("+")))
            .put("port_g", ports.stream().map(port -> Cells.number(port.massG(), 1)).collect(Collectors.joining("+")));
    }

    static CsvTable shafts(List<Shaft> shafts) {
        CsvTable table = new CsvTable();
        for (Shaft shaft : shafts) {
            Optional<FrequencyReading> own = shaft.frequencies().stream().findFirst();
            Row row = new Row().put("tag", shaft.tag()).put("model", shaft.model())
                .put("material", shaft.material().word()).put("meant_for", Cells.words(shaft.meantFor()))
                .put("made_for_number", Cells.text(shaft.madeForNumber()))
                .put("raw_length_in", Cells.tapeInches(shaft.rawLengthMm()))
                .put("mass_g", Cells.reading(shaft.massG(), 1))
                .put("balance_in", Cells.inches(shaft.balanceMm(), 2))
                .put("torque_deg", Cells.reading(shaft.torqueDeg(), 1)).put("tip_in", Cells.inches(shaft.tipMm(), 3))
                .put("tip_kind", shaft.tipKind().word()).put("butt_in", Cells.inches(shaft.buttMm(), 3))
                .put("parallel_tip_in", shaft.tipKind() == TipKind.TAPER ? "" : Cells.inches(shaft.parallelTipMm(), 2))
                .put("tip_cut_in", Cells.inches(shaft.tipCutMm(), 3))
                .put("butt_cut_in", Cells.inches(shaft.buttCutMm(), 2))
                .put("frequency_cpm", own.map(f -> Cells.number(f.cpm().value(), 1)).orElse(""))
                .put("clamp_in", own.map(f -> Cells.inches(f.clampMm(), 2)).orElse(""))
                .put("tip_mass_g", own.map(f -> Cells.number(f.tipMassG(), 0)).orElse(""))
                .put("over_grip", own.map(f -> Cells.yesOrNo(f.overGrip())).orElse(""))
                .put("sleeve_on", Cells.text(shaft.sleeveOn())).put("grip_on", Cells.text(shaft.gripOn()))
                .put("orientation", Cells.text(shaft.orientation())).put("pulls", Integer.toString(shaft.pulls()))
                .put("condition", shaft.condition().word());
            table.add(keeping(row, shaft.keeping()));
        }
        return table;
    }

    static CsvTable grips(List<Grip> grips) {
        CsvTable table = new CsvTable();
        for (Grip grip : grips) {
            Row row = new Row().put("tag", grip.tag()).put("model", grip.model())
                .put("mass_g", Cells.reading(grip.massG(), 1))
                .put("length_in", Cells.tapeInches(grip.lengthMm().orElseThrow()))
                .put("cap_mm", Cells.number(grip.capMm(), 1))
                .put("core_in", Cells.inches(grip.coreMm(), 3)).put("rib", Cells.yesOrNo(grip.ribbed()))
                .put("cg_in", Cells.inches(grip.cgMm(), 2));
            table.add(keeping(row, grip.keeping()));
        }
        return table;
    }

    static CsvTable sleeves(List<Sleeve> sleeves) {
        CsvTable table = new CsvTable();
        for (Sleeve sleeve : sleeves) {
            Row row = new Row().put("sleeve", sleeve.name())
                .put("fits", sleeve.fits().stream().sorted().collect(Collectors.joining("+")))
                .put("hand", sleeve.hand().map(hand -> hand.word()).orElse(""))
                .put("bore_in", Cells.inches(sleeve.boreMm(), 3))
                .put("bore_depth_mm", Cells.reading(sleeve.boreDepthMm(), 1))
                .put("stop_to_seat_mm", Cells.reading(sleeve.stopToSeatMm(), 1))
                .put("mass_g", Cells.reading(sleeve.massG(), 1))
                .put("turns_shaft", Cells.yesOrNo(sleeve.turnsShaft()));
            for (int k = 0; k < 2; k++) {
                Optional<Ring> ring = k < sleeve.rings().size() ? Optional.of(sleeve.rings().get(k)) : Optional.empty();
                String column = "ring%d_".formatted(k + 1);
                row.put(column + "tilt_deg", ring.map(r -> Cells.number(r.tiltDeg(), 2)).orElse(""))
                    .put(column + "settings", ring.map(r -> Integer.toString(r.settings())).orElse(""))
                    .put(column + "offset_deg", ring.map(r -> Cells.number(r.offsetDeg(), 1)).orElse(""));
            }
            row.put("count", Integer.toString(sleeve.count().orElseThrow()));
            table.add(row.put("place", Cells.text(sleeve.keeping().place())));
        }
        return table;
    }

    static CsvTable sleeveSettings(List<Sleeve> sleeves) {
        CsvTable table = new CsvTable();
        for (Sleeve sleeve : sleeves) {
            for (MeasuredSetting setting : sleeve.measured()) {
                table.add(new Row().put("sleeve", sleeve.name()).put("setting", setting.setting())
                    .put("dloft_deg", Cells.number(setting.dLoftDeg(), 2))
                    .put("dlie_deg", Cells.number(setting.dLieDeg(), 2))
                    .put("dface_deg", Cells.number(setting.dFaceDeg(), 2)).put("reading", setting.reading().word()));
            }
        }
        return table;
    }

    static CsvTable weights(List<Weight> weights) {
        CsvTable table = new CsvTable();
        for (Weight weight : weights) {
            table.add(new Row().put("tag", weight.tag()).put("port", weight.port())
                .put("mass_g", Cells.number(weight.massG(), 1)).put("count", Integer.toString(weight.count()))
                .put("place", Cells.text(weight.keeping().place())));
        }
        return table;
    }

    private static Row keeping(Row row, Keeping keeping) {
        return row.put("reserved_for", Cells.text(keeping.reservedFor())).put("place", Cells.text(keeping.place()))
            .put("note", Cells.text(keeping.note()));
    }
}
