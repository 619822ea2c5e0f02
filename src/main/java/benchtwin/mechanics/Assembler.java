package benchtwin.mechanics;

import benchtwin.club.Bore;
import benchtwin.club.Category;
import benchtwin.club.Grip;
import benchtwin.club.Head;
import benchtwin.club.Port;
import benchtwin.club.Shaft;
import benchtwin.club.Sleeve;
import benchtwin.club.SleeveSeat;
import benchtwin.club.WeighedWith;
import benchtwin.measure.DefaultUncertainty;
import benchtwin.measure.Reading;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** Turns a head, a shaft, a grip and perhaps a sleeve into the numbers of an {@link Assembly}, defaults marked. */
public final class Assembler {

    private final double[] values = new double[Input.values().length];
    private final List<Factor> factors = new ArrayList<>();
    private final List<String> notes = new ArrayList<>();

    private Assembler() {
        Arrays.fill(values, Double.NaN);
    }

    /**
     * Puts parts together, with the default grip factor. The shaft's stiffness is worked out anew each time: for many
     * assemblies, and for another grip factor, see {@link Assemblies}.
     * @param head   the head
     * @param shaft  the shaft
     * @param sleeve the sleeve, for a sleeved head
     * @param grip   the grip; without one its mass is missing and so is everything that hangs on it
     * @return the assembly
     * @throws IllegalArgumentException when a sleeved head comes without a sleeve or a bored one with
     */
    public static Assembly of(Head head, Shaft shaft, Optional<Sleeve> sleeve, Optional<Grip> grip) {
        return of(head, shaft, sleeve, grip, ShaftStiffness.of(shaft, GripFactor.DEFAULT), GripFactor.DEFAULT);
    }

    /** The same with the shaft's stiffness already worked out. */
    static Assembly of(Head head, Shaft shaft, Optional<Sleeve> sleeve, Optional<Grip> grip, ShaftStiffness stiffness,
                       GripFactor factor) {
        if (head.seat().isPresent() != sleeve.isPresent()) {
            throw new IllegalArgumentException(head.seat().isPresent()
                ? "head %s takes a sleeve and none was given".formatted(head.tag())
                : "head %s has a bore and cannot take sleeve %s".formatted(head.tag(), sleeve.get().name()));
        }
        Assembler assembler = run(head, shaft, sleeve, grip, stiffness, factor);
        boolean cgAtGround = head.category() == Category.PUTTER && head.mass().cgToeMm().isEmpty();
        Optional<Assembly.RawCondition> raw = stiffness.anchor().map(anchor -> new Assembly.RawCondition(
            shaft.lengthMm() - anchor.freeLengthMm(), anchor.freeLengthMm(), anchor.tipMassG(), anchor.overGrip()));
        // of thousands of assemblies a search makes, a handful is ever asked what it rests on: that is worked out then
        return new Assembly(assembler.values, () -> run(head, shaft, sleeve, grip, stiffness, factor).factors,
            new Assembly.Shape(head.category(), head.angles().reading(), cgAtGround, stiffness.shape(), shaft.tipCutMm(),
                raw, List.copyOf(assembler.notes)));
    }

    private static Assembler run(Head head, Shaft shaft, Optional<Sleeve> sleeve, Optional<Grip> grip,
                                 ShaftStiffness stiffness, GripFactor factor) {
        Assembler assembler = new Assembler();
        assembler.angles(head);
        assembler.headMass(head, sleeve);
        assembler.hosel(head, sleeve);
        assembler.shaft(shaft, stiffness);
        assembler.grip(grip, factor);
        return assembler;
    }

    private void angles(Head head) {
        String key = "head:" + head.tag();
        String of = " of head " + head.tag();
        reading(key + ":loft", "loft" + of, head.angles().loftDeg(), Input.HEAD_LOFT_DEG);
        reading(key + ":lie", "lie" + of, head.angles().lieDeg(), Input.HEAD_LIE_DEG);
        reading(key + ":face", "face angle" + of, head.angles().faceDeg(), Input.HEAD_FACE_DEG);
        reading(key + ":bounce", "bounce" + of, head.angles().bounceDeg(), Input.HEAD_BOUNCE_DEG);
        head.offsetMm().ifPresent(mm -> set(Input.HEAD_OFFSET_MM, mm));
    }

    private void headMass(Head head, Optional<Sleeve> sleeve) {
        String key = "head:" + head.tag();
        boolean withSleeve = head.weighedWith().contains(WeighedWith.SLEEVE);
        if (sleeve.isPresent()) {
            String name = "sleeve:" + sleeve.get().name() + ":mass";
            if (sleeve.get().massG().isPresent()) {
                Reading mass = sleeve.get().massG().get();
                add(name, "mass of sleeve " + sleeve.get().name(), mass.value(), mass.standardUncertainty(),
                    mass.standardUncertainty(), Origin.MEASURED, Input.SLEEVE_MASS_G);
            } else {
                add(name, "mass of sleeve " + sleeve.get().name(), MechanicsDefaults.SLEEVE_G, 1,
                    DefaultUncertainty.MASS_G, Origin.DEFAULT, Input.SLEEVE_MASS_G);
            }
        } else {
            set(Input.SLEEVE_MASS_G, 0);
        }
        double included = 0;
        if (head.weighedWith().contains(WeighedWith.WEIGHTS)) {
            included += head.ports().stream().mapToDouble(Port::massG).sum();
        }
        if (withSleeve) {
            included += sleeve.isPresent() ? values[Input.SLEEVE_MASS_G.ordinal()] : MechanicsDefaults.SLEEVE_G;
        } else if (head.weighedWith().contains(WeighedWith.SCREW)) {
            included += MechanicsDefaults.SLEEVE_SCREW_G;
            notes.add("head %s was weighed with its screw: %.1f g taken off (default)"
                .formatted(head.tag(), MechanicsDefaults.SLEEVE_SCREW_G));
        }
        if (head.massG().isPresent()) {
            Reading mass = head.massG().get();
            add(key + ":mass", "mass of head " + head.tag(), mass.value() - included, mass.standardUncertainty(),
                mass.standardUncertainty(), Origin.MEASURED, Input.HEAD_MASS_G);
        }
        centreOfGravity(head, key);
        head.mass().transverseInertiaGCm2().ifPresentOrElse(
            inertia -> set(Input.TRANSVERSE_INERTIA_G_CM2, inertia.value()),
            () -> set(Input.TRANSVERSE_INERTIA_G_CM2, 0));
    }

    private void centreOfGravity(Head head, String key) {
        Optional<Reading> toe = head.mass().cgToeMm();
        Optional<Reading> up = head.mass().cgUpMm();
        String label = "centre of gravity of head " + head.tag();
        set(Input.CG_TOE_MM, toe.map(Reading::value).orElse(MechanicsDefaults.cgToeMm(head.category())));
        set(Input.CG_UP_MM, up.map(Reading::value).orElse(MechanicsDefaults.cgUpMm(head.category())));
        double own = MechanicsDefaults.CG_MEASURED_U_MM;
        if (toe.isPresent() && up.isPresent()) {
            add(key + ":cg", label, 0, own, own, Origin.MEASURED, Input.CG_ALONG_MM);
            return;
        }
        // heads of one model share what the default is wrong by, and differ from each other as measured ones do
        double shared = Math.sqrt(MechanicsDefaults.CG_DEFAULT_U_MM * MechanicsDefaults.CG_DEFAULT_U_MM - own * own);
        add("model:" + head.model() + ":" + head.category().word() + ":cg", "centre of gravity of the model "
            + head.model(), 0, shared, 0, Origin.DEFAULT, Input.CG_ALONG_MM);
        add(key + ":cg", label, 0, own, own, Origin.DEFAULT, Input.CG_ALONG_MM);
    }

    private void hosel(Head head, Optional<Sleeve> sleeve) {
        String key = "head:" + head.tag();
        if (sleeve.isPresent()) {
            Sleeve fitted = sleeve.get();
            SleeveSeat seat = head.seat().orElseThrow();
            orDefault("sleeve:" + fitted.name() + ":depth", "bore depth of sleeve " + fitted.name(),
                fitted.boreDepthMm(), MechanicsDefaults.BORE_DEPTH_MM, MechanicsDefaults.BORE_DEPTH_U_MM,
                Input.INSERTION_MM);
            double stop = missingAsNaN(fitted.stopToSeatMm());
            fitted.stopToSeatMm().ifPresent(r -> factor("sleeve:" + fitted.name() + ":stop", "stop to seat of sleeve "
                + fitted.name(), r, Input.BORE_TO_GROUND_MM));
            seat.toGroundMm().ifPresent(r -> factor(key + ":seat", "seat to ground of head " + head.tag(), r,
                Input.BORE_TO_GROUND_MM, Input.BEND_POINT_MM));
            set(Input.BORE_TO_GROUND_MM, stop + missingAsNaN(seat.toGroundMm()));
            set(Input.BEND_POINT_MM, missingAsNaN(seat.toGroundMm()));
        } else {
            Bore bore = head.bore().orElseThrow();
            orDefault(key + ":depth", "bore depth of head " + head.tag(), bore.depthMm(),
                MechanicsDefaults.BORE_DEPTH_MM, MechanicsDefaults.BORE_DEPTH_U_MM, Input.INSERTION_MM);
            reading(key + ":bore-to-ground", "bottom of bore to ground of head " + head.tag(), bore.toGroundMm(),
                Input.BORE_TO_GROUND_MM);
            double bendPoint = head.isWood() ? MechanicsDefaults.WOOD_BEND_POINT_MM : MechanicsDefaults.IRON_BEND_POINT_MM;
            add("model:" + head.model() + ":" + head.category().word() + ":bend-point", "bend point of the model "
                + head.model(), bendPoint, MechanicsDefaults.BEND_POINT_U_MM, MechanicsDefaults.CG_MEASURED_U_MM,
                Origin.DEFAULT, Input.BEND_POINT_MM);
        }
        add("shop:adhesive", "mass of adhesive", MechanicsDefaults.ADHESIVE_G, MechanicsDefaults.ASSUMED_MASS_U_G,
            MechanicsDefaults.ASSUMED_MASS_U_G, Origin.DEFAULT, Input.ADHESIVE_G);
        add("shop:ferrule", "mass of ferrule", MechanicsDefaults.FERRULE_G, MechanicsDefaults.ASSUMED_MASS_U_G,
            DefaultUncertainty.MASS_G, Origin.DEFAULT, Input.FERRULE_G);
    }

    private void shaft(Shaft shaft, ShaftStiffness stiffness) {
        String key = "shaft:" + shaft.tag();
        String of = " of shaft " + shaft.tag();
        add(key + ":length", "length" + of, shaft.lengthMm(), DefaultUncertainty.LENGTH_MM,
            DefaultUncertainty.LENGTH_MM, Origin.MEASURED, Input.SHAFT_LENGTH_MM);
        reading(key + ":mass", "mass" + of, shaft.massG(), Input.SHAFT_MASS_G);
        double middle = shaft.lengthMm() / 2;
        if (shaft.balanceMm().isPresent()
            && ShaftMass.isBalanceUsable(shaft.lengthMm(), shaft.balanceMm().get().value())) {
            factor(key + ":balance", "balance point" + of, shaft.balanceMm().get(), Input.SHAFT_BALANCE_MM);
        } else {
            shaft.balanceMm().ifPresent(r -> notes.add(
                "shaft %s: a balance point of %.0f mm does not lie in the middle third; taken as uniform"
                    .formatted(shaft.tag(), r.value())));
            add(key + ":balance", "balance point" + of, middle, middle * 0.04, DefaultUncertainty.BALANCE_MM,
                Origin.DEFAULT, Input.SHAFT_BALANCE_MM);
        }
        reading(key + ":torque", "torque" + of, shaft.torqueDeg(), Input.SHAFT_TORQUE_DEG);
        stiffness.anchor().ifPresent(anchor -> add(key + ":cpm", "frequency" + of, anchor.cpm(),
            anchor.standardUncertaintyCpm(), anchor.standardUncertaintyCpm(), Origin.MEASURED, Input.SHAFT_CPM));
        notes.addAll(stiffness.notes());
    }

    private void grip(Optional<Grip> grip, GripFactor factor) {
        add(factor.key(), factor.label(), factor.value(), factor.standardUncertainty(),
            MechanicsDefaults.GRIP_FACTOR_U / 2, factor.origin(), Input.GRIP_FACTOR);
        add("shop:tape-layer", "mass of a layer of tape", MechanicsDefaults.TAPE_LAYER_G,
            MechanicsDefaults.ASSUMED_MASS_U_G, DefaultUncertainty.MASS_G, Origin.DEFAULT, Input.TAPE_LAYER_G);
        if (grip.isEmpty()) {
            set(Input.CAP_MM, MechanicsDefaults.CAP_MM);
            set(Input.GRIP_CG_MM, MechanicsDefaults.GRIP_LENGTH_MM * MechanicsDefaults.GRIP_CG_FRACTION);
            set(Input.GRIP_MIDDLE_MM, MechanicsDefaults.GRIP_LENGTH_MM / 2);
            return;
        }
        Grip fitted = grip.get();
        String key = "grip:" + fitted.tag();
        String of = " of grip " + fitted.tag();
        double length = fitted.lengthMm().orElse(MechanicsDefaults.GRIP_LENGTH_MM);
        reading(key + ":mass", "mass" + of, fitted.massG(), Input.GRIP_MASS_G);
        if (factor.pairs() > 0) {
            // the default's uncertainty has room for how grips differ; what pairs taught is the machine's middle
            add(key + ":grip-factor", "how the machine reads over grip " + fitted.tag(), factor.value(),
                MechanicsDefaults.GRIP_TO_GRIP_U, MechanicsDefaults.GRIP_TO_GRIP_U, Origin.DEFAULT, Input.GRIP_FACTOR);
        }
        orDefault(key + ":cg", "centre of gravity" + of, fitted.cgMm(), length * MechanicsDefaults.GRIP_CG_FRACTION,
            MechanicsDefaults.BEND_POINT_U_MM, Input.GRIP_CG_MM);
        set(Input.GRIP_MIDDLE_MM, length / 2);
        if (fitted.capMm().isPresent()) {
            set(Input.CAP_MM, fitted.capMm().getAsDouble());
        } else {
            add(key + ":cap", "cap" + of, MechanicsDefaults.CAP_MM, 1, DefaultUncertainty.BORE_MM, Origin.DEFAULT,
                Input.CAP_MM);
        }
    }

    private static double missingAsNaN(Optional<Reading> reading) {
        return reading.map(Reading::value).orElse(Double.NaN);
    }

    private void set(Input input, double value) {
        values[input.ordinal()] = value;
    }

    /** A measured value, if it was measured. */
    private void reading(String key, String label, Optional<Reading> reading, Input input) {
        reading.ifPresent(r -> factor(key, label, r, input));
    }

    private void factor(String key, String label, Reading reading, Input... inputs) {
        add(key, label, reading.value(), reading.standardUncertainty(), reading.standardUncertainty(), Origin.MEASURED,
            inputs);
    }

    private void orDefault(String key, String label, Optional<Reading> reading, double standIn, double standInU,
                           Input input) {
        if (reading.isPresent()) {
            factor(key, label, reading.get(), input);
        } else {
            add(key, label, standIn, standInU, DefaultUncertainty.BORE_MM, Origin.DEFAULT, input);
        }
    }

    private void add(String key, String label, double value, double u, double uMeasured, Origin origin, Input... inputs) {
        for (Input input : inputs) {
            values[input.ordinal()] = value;
        }
        factors.add(new Factor(key, label, List.of(inputs), value, u, uMeasured, origin));
    }
}
