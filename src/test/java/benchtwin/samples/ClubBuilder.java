package benchtwin.samples;

import benchtwin.club.Adjust;
import benchtwin.club.Category;
import benchtwin.club.Grip;
import benchtwin.club.Head;
import benchtwin.club.HeadCondition;
import benchtwin.club.Inventory;
import benchtwin.club.Port;
import benchtwin.club.Quantity;
import benchtwin.club.Shaft;
import benchtwin.club.ShaftCondition;
import benchtwin.club.Sleeve;
import benchtwin.club.WeighedWith;
import benchtwin.measure.Units;
import benchtwin.mechanics.Assembler;
import benchtwin.mechanics.Assembly;
import benchtwin.mechanics.ClubModel;
import benchtwin.mechanics.FrequencyCondition;
import benchtwin.mechanics.MechanicsDefaults;
import benchtwin.mechanics.Setup;
import benchtwin.mechanics.SleeveSettings;
import benchtwin.mechanics.Stiffness;
import benchtwin.samples.CsvTable.Row;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * Builds a player's club: makes its head, cuts a shaft to the length, weights the head to the swing weight, and reads the
 * club on each of its days. The readings are the program's own mechanics, plus what a club always differs by from any model
 * of it, plus the gauge's scatter of the day.
 */
final class ClubBuilder {

    private static final double[] M5_G = {3, 4, 5, 6, 7, 8, 9, 10, 12};
    private static final double[] M6_G = {5, 8, 10, 12, 13, 15, 20};
    private static final double MOST_TAPE_G = 5;

    private final Draw draw;
    private final List<Sleeve> sleeves;
    private final Grips grips;
    private final Shelf<Head> heads;
    private final Shelf<Shaft> shafts;

    ClubBuilder(Draw draw, List<Sleeve> sleeves, Grips grips, Shelf<Head> heads, Shelf<Shaft> shafts) {
        this.draw = draw;
        this.sleeves = sleeves;
        this.grips = grips;
        this.heads = heads;
        this.shafts = shafts;
    }

    BuiltClub build(ClubSpec spec) {
        Draw own = draw.of(spec.tag);
        Optional<Sleeve> sleeve = spec.sleeve.map(name -> new Inventory(List.of(), List.of(), List.of(), sleeves,
            List.of(), List.of()).sleeve(name).orElseThrow());
        HeadDraft head = head(spec, own);
        Grip grip = grips.onto(spec.grip, spec.tag);
        ShaftDraft shaft = shaft(spec, own, head, sleeve, grip);
        Shaft tagged = shafts.add(shaft::toShaft);
        double tapeG = weight(spec, head, tagged, sleeve, grip);
        Head made = heads.add(head::toHead);
        Assembly assembly = Assembler.of(made, tagged, sleeve, Optional.of(grip));
        ClubReadings readings = new ClubReadings(own, assembly, Stiffness.rootFromRaw(assembly));
        List<Row> rows = new ArrayList<>();
        for (ClubSpec.Day day : spec.days) {
            Setup setup = setup(made, sleeve, day.setting(), tapeG);
            rows.add(readings.row(spec, day, new ClubReadings.Parts(made.tag(), tagged.tag(), grip.tag(), tapeG), setup));
        }
        return new BuiltClub(made, tagged, sleeve, grip, head, shaft, rows);
    }

    private static HeadDraft head(ClubSpec spec, Draw own) {
        HeadDraft head = new HeadMaker(own.of("head")).make(spec.line, spec.size, spec.hand);
        head.condition = HeadCondition.USED;
        head.note = "in club " + spec.tag;
        if (spec.line.fitting().adjust() == Adjust.BEND) {
            head.bentUprightDeg = 0;
            head.bentFlatDeg = 0;
            head.bentForwardDeg = 0;
            head.bentBackDeg = 0;
        }
        spec.head.accept(head);
        return head;
    }

    private static ShaftDraft shaft(ClubSpec spec, Draw own, HeadDraft head, Optional<Sleeve> sleeve, Grip grip) {
        String madeFor = spec.line.category() == Category.WEDGE ? "W" : head.size.number();
        ShaftDraft shaft = new ShaftMaker(own.of("shaft")).make(spec.shaft, madeFor);
        double beyond = head.toGroundMm + sleeve.map(s -> s.stopToSeatMm().orElseThrow().value()).orElse(0.0);
        double cutLengthMm = Units.mm(spec.lengthIn) - grip.capMm().orElse(MechanicsDefaults.CAP_MM) - beyond;
        shaft.tipCutIn = spec.tipCutIn;
        shaft.buttCutIn = Draw.round(Units.inches(shaft.rawMm() - cutLengthMm) - spec.tipCutIn, 2);
        if (shaft.buttCutIn < 0) {
            throw new IllegalStateException("%s: shaft %.2f in too short".formatted(spec.tag, -shaft.buttCutIn));
        }
        shaft.sleeveOn = sleeve.map(Sleeve::name).orElse("");
        shaft.gripOn = grip.tag();
        shaft.orientation = "logo down";
        shaft.condition = ShaftCondition.PULLED;
        shaft.note = "in club " + spec.tag;
        spec.shaftStory.accept(shaft);
        return shaft;
    }

    /** Puts the weight in its last port that brings the swing weight nearest; without a port, lead tape. */
    private static double weight(ClubSpec spec, HeadDraft head, Shaft shaft, Optional<Sleeve> sleeve, Grip grip) {
        Function<Double, Double> offBy = tapeG -> {
            Head trial = head.toHead("trial");
            Assembly assembly = Assembler.of(trial, shaft, sleeve, Optional.of(grip));
            double[] predicted = ClubModel.predict(assembly, setup(trial, sleeve, spec.days.get(0).setting(), tapeG),
                FrequencyCondition.BARE, Double.NaN, spec.line.reading());
            return Math.abs(predicted[Quantity.SWING_WEIGHT.ordinal()] - spec.swingWeightPoints);
        };
        if (head.ports.isEmpty()) {
            double best = 0;
            for (double tapeG = 0; tapeG <= MOST_TAPE_G; tapeG += 0.5) {
                best = offBy.apply(tapeG) < offBy.apply(best) ? tapeG : best;
            }
            return best;
        }
        double best = head.ports.get(head.ports.size() - 1).massG();
        double least = Double.POSITIVE_INFINITY;
        for (double grams : head.ports.get(0).type().equals("M5") ? M5_G : M6_G) {
            refill(head, grams);
            if (offBy.apply(0.0) < least) {
                least = offBy.apply(0.0);
                best = grams;
            }
        }
        refill(head, best);
        return 0;
    }

    private static void refill(HeadDraft head, double grams) {
        double before = head.portsG();
        List<Port> ports = new ArrayList<>(head.ports);
        ports.set(ports.size() - 1, new Port(ports.get(0).type(), grams));
        head.ports = List.copyOf(ports);
        if (head.weighedWith.contains(WeighedWith.WEIGHTS)) {
            head.massG = Draw.round(head.massG + head.portsG() - before, 1);
        }
    }

    private static Setup setup(Head head, Optional<Sleeve> sleeve, String setting, double tapeG) {
        Setup.Aim aim = sleeve.map(on -> SleeveSettings.aim(on, head.hand(), head.seat().orElseThrow().readAtSetting(),
            setting).orElseThrow()).orElse(Setup.AS_READ);
        double added = head.ports().stream().mapToDouble(Port::massG).sum() + tapeG;
        return new Setup(0, 0, 0, 0, 1, added, 0, aim);
    }
}
