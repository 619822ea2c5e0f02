package benchtwin.bench;

import benchtwin.club.AngleReading;
import benchtwin.club.Grip;
import benchtwin.club.Head;
import benchtwin.club.Port;
import benchtwin.club.Quantity;
import benchtwin.club.Shaft;
import benchtwin.club.Sleeve;
import benchtwin.match.BuildPrediction;
import benchtwin.match.ShopSettings;
import benchtwin.measure.Reading;
import benchtwin.mechanics.Assemblies;
import benchtwin.mechanics.Assembly;
import benchtwin.mechanics.ClubAngles;
import benchtwin.mechanics.CutClub;
import benchtwin.mechanics.FrequencyCondition;
import benchtwin.mechanics.GripFactors;
import benchtwin.mechanics.HoselTilt;
import benchtwin.mechanics.Input;
import benchtwin.mechanics.MechanicsDefaults;
import benchtwin.mechanics.Setup;
import benchtwin.mechanics.SleeveSettings;
import benchtwin.picture.HeadSketchPicture;
import benchtwin.rules.EquipmentRules;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What would this build measure? */
public final class PredictService {

    private PredictService() {
    }

    /**
     * A build's prediction with what it rests on.
     * @param spec       the build as asked
     * @param reading    in which reading its loft is given
     * @param buttCutMm  what comes off the butt, mm
     * @param values     what it would measure, by quantity; those an input is missing for are absent
     * @param uncertainty standard uncertainty of each, before the reading that judges it
     * @param inputs     everything that went in
     * @param notes      what a reader should know, in plain words
     * @param rulesWarnings equipment limits it would cross or come too close to, a sentence each
     */
    public record Answer(BuildSpec spec, AngleReading reading, double buttCutMm, Map<Quantity, Double> values,
                         Map<Quantity, Double> uncertainty, List<InputLine> inputs, List<String> notes,
                         List<String> rulesWarnings) {
    }

    /**
     * One thing that went into a prediction.
     * @param key    its identity
     * @param what   what it is
     * @param value  what was used
     * @param u      its standard uncertainty, same unit
     * @param origin measured, derived or default
     */
    public record InputLine(String key, String what, double value, double u, String origin) {
    }

    /**
     * Predicts a build.
     * @param workshop where its parts are looked up
     * @param spec     the build
     * @return the prediction
     * @throws BadInput when a part is not on record or what is asked does not go together
     */
    public static Answer predict(Workshop workshop, BuildSpec spec) throws BadInput {
        Head head = workshop.head(spec.head());
        Shaft shaft = workshop.shaft(spec.shaft());
        Optional<Grip> grip = spec.grip() != null ? Optional.of(workshop.grip(spec.grip()))
            : shaft.gripOn().flatMap(workshop.inventory()::grip);
        Optional<Sleeve> sleeve = sleeve(workshop, spec, head, shaft);
        Assembly assembly = new Assemblies(GripFactors.learn(workshop.inventory().shafts()).of(Optional.empty()))
            .of(head, shaft, sleeve, grip);
        AngleReading reading = reading(spec, head);
        FrequencyCondition condition = new FrequencyCondition(
            spec.clampMm() == null ? MechanicsDefaults.CLAMP_MM : positive("clampMm", spec.clampMm()),
            Boolean.TRUE.equals(spec.overGrip()));
        Setup uncut = setup(spec, head, aim(spec, head, sleeve, assembly.get(Input.HEAD_LIE_DEG)), 0);
        double buttCut = buttCut(spec, assembly, uncut);
        double left = shaft.lengthMm() - buttCut - uncut.tipTrimMm();
        if (left < condition.clampMm() + assembly.get(Input.INSERTION_MM) + SHORTEST_FREE_MM) {
            throw new BadInput("only %.0f mm of shaft %s would be left".formatted(left, shaft.tag()));
        }
        Setup setup = setup(spec, head, uncut.aim(), buttCut);
        List<String> notes = new ArrayList<>(assembly.notes());
        if (grip.isEmpty()) {
            notes.add("no grip is named and none is on the shaft: masses, balance and frequency cannot be computed");
        }
        if (uncut.tipTrimMm() > Math.max(0, shaft.parallelTipLeftMm() - assembly.get(Input.INSERTION_MM))) {
            notes.add("a tip trim of %.1f mm leaves less parallel tip than the bore holds".formatted(uncut.tipTrimMm()));
        }
        BuildPrediction prediction = BuildPrediction.of(assembly, setup, condition, reading);
        List<InputLine> inputs = prediction.inputs().stream()
            .map(f -> new InputLine(f.key(), f.label(), f.value(), f.u(), f.origin().word())).toList();
        return new Answer(spec, reading, buttCut, prediction.values(), prediction.uncertainty(), inputs, notes,
            EquipmentRules.warnings(head, prediction.values(), prediction.uncertainty()));
    }

    /**
     * Draws a build's head as it was read and as it will be.
     * @param workshop where its parts are looked up
     * @param answer   what the build would measure
     * @return the sketch
     * @throws BadInput when a part is not on record
     */
    public static HeadSketchPicture sketch(Workshop workshop, Answer answer) throws BadInput {
        BuildSpec spec = answer.spec();
        Head head = workshop.head(spec.head());
        Shaft shaft = workshop.shaft(spec.shaft());
        Optional<Sleeve> sleeve = sleeve(workshop, spec, head, shaft);
        Setup.Aim aim = aim(spec, head, sleeve, head.angles().lieDeg().map(Reading::value).orElse(Double.NaN));
        return HeadSketches.of(head, Optional.ofNullable(spec.setting()), aim, answer.values().get(Quantity.LENGTH));
    }

    /** Less free shaft than this is no club, mm. */
    private static final double SHORTEST_FREE_MM = 100;

    private static Optional<Sleeve> sleeve(Workshop workshop, BuildSpec spec, Head head, Shaft shaft) throws BadInput {
        if (head.seat().isEmpty()) {
            if (spec.sleeve() != null || spec.setting() != null) {
                throw new BadInput("head %s has a bore and takes no sleeve".formatted(head.tag()));
            }
            return Optional.empty();
        }
        String name = spec.sleeve() != null ? spec.sleeve() : shaft.sleeveOn().orElseThrow(() -> new BadInput(
            "head %s takes a sleeve and shaft %s has none on: %s".formatted(head.tag(), shaft.tag(), workshop.asks(ToDo.NAME_SLEEVE))));
        Sleeve sleeve = workshop.sleeve(name);
        if (!sleeve.fits(head)) {
            throw new BadInput("sleeve %s does not fit head %s (seat type %s)".formatted(name, head.tag(),
                head.seat().get().fit()));
        }
        return Optional.of(sleeve);
    }

    private static AngleReading reading(BuildSpec spec, Head head) throws BadInput {
        if (spec.reading() == null) {
            return head.angles().reading();
        }
        AngleReading reading = Arrays.stream(AngleReading.values()).filter(r -> r.word().equalsIgnoreCase(spec.reading()))
            .findFirst().orElseThrow(() -> new BadInput(
                "reading \"%s\" is not known; expected soled, square or edge".formatted(spec.reading())));
        if (reading.isWood() != head.isWood()) {
            throw new BadInput("head %s was read %s and cannot be given %s".formatted(head.tag(),
                head.angles().reading().word(), reading.word()));
        }
        return reading;
    }

    private static Setup.Aim aim(BuildSpec spec, Head head, Optional<Sleeve> sleeve, double lieNow) throws BadInput {
        double lie = orZero(spec.lieChangeDeg());
        double face = orZero(spec.faceChangeDeg());
        double loft = orZero(spec.loftChangeDeg());
        boolean bends = lie != 0 || face != 0 || loft != 0;
        if (sleeve.isPresent()) {
            if (bends) {
                throw new BadInput("head %s takes a sleeve and is never bent; give a setting".formatted(head.tag()));
            }
            if (spec.setting() == null) {
                return Setup.AS_READ;
            }
            return SleeveSettings.aim(sleeve.get(), head.hand(), head.seat().orElseThrow().readAtSetting(), spec.setting())
                .orElseThrow(() -> new BadInput("sleeve %s has no setting %s; it has %s".formatted(sleeve.get().name(),
                    spec.setting(), String.join(", ", SleeveSettings.labels(sleeve.get())))));
        }
        if (!bends) {
            return Setup.AS_READ;
        }
        if (Double.isNaN(lieNow)) {
            throw new BadInput("head %s has no lie reading, so a bend cannot be worked out".formatted(head.tag()));
        }
        if (head.isWood() && loft != 0) {
            throw new BadInput("bending a wood does not change its soled loft; bend lie or face");
        }
        if (!head.isWood() && face != 0) {
            throw new BadInput("head %s has no face angle to bend; bend loft or lie".formatted(head.tag()));
        }
        return new Setup.Tilted(head.isWood() ? HoselTilt.forWood(lieNow, lieNow + lie, -face)
            : HoselTilt.forIron(lieNow, lieNow + lie, loft));
    }

    private static Setup setup(BuildSpec spec, Head head, Setup.Aim aim, double buttCut) throws BadInput {
        double ports = spec.portG() != null ? notNegative("portG", spec.portG())
            : head.ports().stream().mapToDouble(Port::massG).sum();
        double extension = notNegative("extensionMm", orZero(spec.extensionMm()));
        return new Setup(notNegative("tipTrimMm", orZero(spec.tipTrimMm())), buttCut, extension,
            extension > 0 ? EXTENSION_G : 0,
            spec.tapeLayers() == null ? 1 : notNegative("tapeLayers", spec.tapeLayers()),
            ports + notNegative("headMassG", orZero(spec.headMassG())),
            notNegative("tipWeightG", orZero(spec.tipWeightG())), aim);
    }

    private static final double EXTENSION_G = ShopSettings.DEFAULT.extensionMassG();

    private static double buttCut(BuildSpec spec, Assembly assembly, Setup uncut) throws BadInput {
        if (spec.lengthMm() != null && spec.buttCutMm() != null) {
            throw new BadInput("give a length or a butt cut, not both");
        }
        if (spec.lengthMm() == null) {
            return notNegative("buttCutMm", orZero(spec.buttCutMm()));
        }
        CutClub club = new CutClub(assembly, uncut, MechanicsDefaults.CLAMP_MM);
        double lie = ClubAngles.of(assembly, uncut.aim()).lieDeg();
        double length = club.lengthMm(lie);
        if (Double.isNaN(length)) {
            throw new BadInput("head %s lacks its bore or seat to ground, so length cannot be computed".formatted(spec.head()));
        }
        if (spec.lengthMm() > length) {
            throw new BadInput("the longest club these parts make is %.0f mm; %.0f mm needs an extension of %.0f mm"
                .formatted(length, spec.lengthMm(), spec.lengthMm() - length));
        }
        return length - spec.lengthMm();
    }

    private static double orZero(Double value) {
        return value == null ? 0 : value;
    }

    private static double positive(String name, double value) throws BadInput {
        if (!(value > 0) || Double.isInfinite(value)) {
            throw new BadInput("%s %s is not above 0".formatted(name, value));
        }
        return value;
    }

    private static double notNegative(String name, double value) throws BadInput {
        if (!(value >= 0) || Double.isInfinite(value)) {
            throw new BadInput("%s %s is below 0".formatted(name, value));
        }
        return value;
    }
}
