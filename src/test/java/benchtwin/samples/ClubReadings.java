package benchtwin.samples;

import benchtwin.club.LengthMethod;
import benchtwin.club.Quantity;
import benchtwin.measure.SwingWeightText;
import benchtwin.measure.Units;
import benchtwin.mechanics.Assembly;
import benchtwin.mechanics.ClubModel;
import benchtwin.mechanics.FrequencyCondition;
import benchtwin.mechanics.Setup;
import benchtwin.samples.CsvTable.Row;
import java.util.List;

/**
 * Reads a built club as the shop's gauges would. A club differs from its model by something of its own that stays with it
 * (swing weight up to 0.25 point, frequency 2.2 cpm, length 0.5 mm, mass 0.3 g), and each reading by the gauge's scatter.
 * Both: memory.
 */
final class ClubReadings {

    private static final double ANGLE_SD_DEG = 0.06;
    private static final double ANGLE_MOST_DEG = 0.15;
    private static final List<String> READERS = List.of("Kim", "Jo");

    /**
     * What the club is made of.
     * @param head  tag of the head
     * @param shaft tag of the shaft
     * @param grip  tag of the grip
     * @param tapeG lead tape on the head, g
     */
    record Parts(String head, String shaft, String grip, double tapeG) {
    }

    private final Draw draw;
    private final Assembly assembly;
    private final double stiffnessRoot;
    private final double ownPoints;
    private final double ownCpm;
    private final double ownLengthMm;
    private final double ownMassG;

    ClubReadings(Draw draw, Assembly assembly, double stiffnessRoot) {
        this.draw = draw;
        this.assembly = assembly;
        this.stiffnessRoot = stiffnessRoot;
        Draw own = draw.of("own");
        ownPoints = own.near(0, 0.13, 0.25);
        ownCpm = own.near(0, 1, 2.2);
        ownLengthMm = own.near(0, 0.25, 0.5);
        ownMassG = own.near(0, 0.15, 0.3);
    }

    Row row(ClubSpec spec, ClubSpec.Day day, Parts parts, Setup setup) {
        Draw scatter = draw.of(day.date());
        FrequencyCondition condition = new FrequencyCondition(FrequencyCondition.BARE.clampMm(), spec.overGrip);
        double[] model = ClubModel.predict(assembly, setup, condition, stiffnessRoot, spec.line.reading());
        Row row = new Row().put("tag", spec.tag).put("player", spec.player)
            .put("category", spec.line.category().word()).put("number", spec.line.size(spec.size).number())
            .put("hand", spec.hand.word()).put("head", parts.head()).put("shaft", parts.shaft())
            .put("grip", parts.grip()).put("sleeve", spec.sleeve.orElse("")).put("setting", day.setting());
        boolean read = day.read();
        row.put("loft_deg", angle(read, scatter, model, Quantity.LOFT))
            .put("lie_deg", angle(read && spec.lieRead, scatter, model, Quantity.LIE))
            .put("face_deg", angle(read, scatter, model, Quantity.FACE))
            .put("reading", read ? spec.line.reading().word() : "")
            .put("bounce_deg", angle(read, scatter, model, Quantity.BOUNCE));
        Quantity lengthKind = spec.lengthMethod == LengthMethod.RULES60 ? Quantity.RULES_LENGTH : Quantity.LENGTH;
        double lengthMm = model[lengthKind.ordinal()] + ownLengthMm + scatter.near(0, 0.1, 0.2);
        double points = model[Quantity.SWING_WEIGHT.ordinal()] + ownPoints + scatter.near(0, 0.04, 0.08);
        double cpm = model[Quantity.FREQUENCY.ordinal()] + ownCpm + scatter.near(0, 0.3, 0.7);
        double massG = model[Quantity.TOTAL_MASS.ordinal()] + ownMassG + scatter.near(0, 0.05, 0.1);
        row.put("length_in", read ? Cells.tapeInches(lengthMm) : "")
            .put("length_method", read ? spec.lengthMethod.word() : "")
            .put("swing_weight", read ? SwingWeightText.format(points).orElse("") : "")
            .put("frequency_cpm", read ? Cells.number(cpm, 1) : "")
            .put("clamp_in", read ? Cells.number(Units.inches(condition.clampMm()), 1) : "")
            .put("over_grip", read ? Cells.yesOrNo(spec.overGrip) : "")
            .put("total_mass_g", read ? Cells.number(massG, 1) : "");
        return row.put("tape_layers", "1").put("orientation", "logo down").put("measured_on", day.date())
            .put("state", day.state().word()).put("tip_weight_g", "").put("tape_g", Cells.number(parts.tapeG(), 1))
            .put("melt_g", "").put("measured_by", scatter.pick(READERS)).put("gauge", read ? "bench 1" : "")
            .put("note", day.note());
    }

    private static String angle(boolean read, Draw scatter, double[] model, Quantity quantity) {
        double value = scatter.near(0, ANGLE_SD_DEG, ANGLE_MOST_DEG) + model[quantity.ordinal()];
        return read && !Double.isNaN(value) ? Cells.number(value, 1) : "";
    }
}
