package benchtwin.match;

import benchtwin.club.AddedMasses;
import benchtwin.club.Head;
import benchtwin.club.Quantity;
import benchtwin.club.Shaft;
import benchtwin.club.Sleeve;
import benchtwin.club.StepKind;
import benchtwin.club.Target;
import benchtwin.club.Wanted;
import benchtwin.mechanics.Assembly;
import benchtwin.mechanics.ClubAngles;
import benchtwin.mechanics.CutClub;
import benchtwin.mechanics.Setup;
import benchtwin.mechanics.SleeveSettings;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The build that shafts are chosen for, and what is wanted of it.
 *
 * <p>The old shaft is put into the new build on paper: same stiffness, new head, insertion and grip, at the length wanted,
 * with the mass at the head that brings the old swing weight back as far as the head takes it. What that club would
 * measure is the target. A shaft that measures the same is equally stiff in the new build.
 */
final class ShaftBuild {

    private final ShaftRequest request;
    private final Favourite club;
    private final TwinModel twin;
    private final double carriedCpm;
    private final double wantLengthMm;
    private final List<String> notes = new ArrayList<>();
    private final HeadMass.Option headMass;
    private final Optional<double[]> reference;
    private final Target target;

    /** Nothing a target could be made of; the message says what is missing. */
    static final class NoTarget extends Exception {
        private static final long serialVersionUID = 1;

        private final Quantity missing;

        NoTarget(Quantity missing, String message) {
            super(message);
            this.missing = missing;
        }

        Quantity missing() {
            return missing;
        }
    }

    ShaftBuild(ShaftRequest request) throws NoTarget {
        this.request = request;
        this.club = request.club();
        if (lengthOrNull() == null) {
            throw new NoTarget(Quantity.LENGTH, "the length of the new build is not known");
        }
        this.twin = new TwinModel(club.old(), isOwnHead() ? Keep.HEAD : Keep.NONE, club.condition(), club.reading());
        this.carriedCpm = twin.carried()[Quantity.FREQUENCY.ordinal()];
        this.wantLengthMm = lengthOrNull() - twin.carried()[Quantity.LENGTH.ordinal()];
        Optional<Old> old = old();
        this.headMass = headMass(old);
        this.reference = old.map(o -> o.twin().predict(o.assembly(), o.setup().withHeadAdded(headMass.addedG())));
        this.target = findTarget();
        if (club.old().isPresent() && carriedCpm == 0) {
            notes.add("the old shaft has no raw reading, so what the beam model misses on the old club cannot be carried over");
        }
    }

    /** The old shaft in the new build. */
    private record Old(TwinModel twin, Assembly assembly, Setup setup) {
    }

    private Optional<Old> old() {
        if (club.shaft().isEmpty() || club.shaft().get().massG().isEmpty()) {
            return Optional.empty();
        }
        Shaft shaft = club.shaft().get();
        Optional<Sleeve> sleeve = Optional.empty();
        if (request.head().seat().isPresent()) {
            sleeve = club.sleeve().filter(s -> s.fits(request.head()))
                .or(() -> request.inventory().sleeves().stream().filter(s -> s.fits(request.head())).findFirst());
            if (sleeve.isEmpty()) {
                notes.add("no sleeve on record fits head %s, so the old shaft cannot be put into it on paper"
                    .formatted(request.head().tag()));
                return Optional.empty();
            }
        }
        Assembly assembly = club.assemblies().of(request.head(), shaft, sleeve, club.grip());
        TwinModel kept = new TwinModel(club.old(), isOwnHead() ? Keep.BOTH : Keep.SHAFT, club.condition(), club.reading());
        if (Double.isNaN(kept.stiffnessRoot(assembly))) {
            return Optional.empty();
        }
        double tipWeightG = club.carried().tipWeightG();
        Setup plain = new Setup(0, 0, 0, 0, club.tapeLayers(), 0, tipWeightG, aim(sleeve));
        double lie = ClubAngles.of(assembly, plain.aim()).lieDeg();
        double over = new CutClub(assembly, plain, club.condition().clampMm()).lengthMm(lie) - wantLengthMm();
        return Optional.of(new Old(kept, assembly, new Setup(0, Math.max(0, over), Math.max(0, -over), 0,
            club.tapeLayers(), 0, tipWeightG, plain.aim())));
    }

    private HeadMass.Option headMass(Optional<Old> old) {
        List<HeadMass.Option> options = new HeadMass.Table(request.inventory().weights(), request.shop(), start(), true)
            .of(request.head().ports(), request.head().hotMeltMaxG());
        double inPorts = request.head().ports().stream().mapToDouble(p -> p.massG()).sum();
        if (request.headAddedG().isPresent()) {
            double wanted = inPorts + start().tapeG() + start().meltG() + request.headAddedG().getAsDouble();
            return options.stream().min(Comparator.comparingDouble(o -> Math.abs(o.addedG() - wanted))).orElseThrow();
        }
        Optional<Double> swing = Optional.ofNullable(request.written().get(Quantity.SWING_WEIGHT))
            .or(() -> club.target().of(Quantity.SWING_WEIGHT).map(Wanted::value));
        if (old.isEmpty() || swing.isEmpty()) {
            return options.stream().filter(HeadMass.Option::isAsItIs).findFirst().orElseThrow();
        }
        Old o = old.get();
        return options.stream().min(Comparator.comparingDouble((HeadMass.Option option) -> {
            double points = o.twin().predict(o.assembly(), o.setup().withHeadAdded(option.addedG()))
                [Quantity.SWING_WEIGHT.ordinal()];
            double off = (points - swing.get()) / Quantity.SWING_WEIGHT.defaultTolerance();
            return off * off + option.effort();
        })).orElseThrow();
    }

    private Target findTarget() throws NoTarget {
        Map<Quantity, Wanted> wanted = new EnumMap<>(Quantity.class);
        for (Quantity quantity : ShaftRequest.QUALITIES) {
            Double value = quantity == Quantity.LENGTH ? lengthOrNull() : value(quantity);
            if (value != null && !Double.isNaN(value)) {
                wanted.put(quantity, request.weighted().wanted(quantity, value));
            }
        }
        if (!wanted.containsKey(Quantity.FREQUENCY)) {
            throw new NoTarget(Quantity.FREQUENCY, club.old().isPresent() || club.shaft().isPresent()
                ? "%s has no frequency reading and its shaft no raw one, so its stiffness cannot be carried over"
                    .formatted(club.name())
                : "no frequency is wanted");
        }
        return new Target(club.reading(), wanted);
    }

    private Double value(Quantity quantity) {
        Double written = request.written().get(quantity);
        return written != null ? written : reference.map(values -> values[quantity.ordinal()]).orElse(null);
    }

    private Double lengthOrNull() {
        Double written = request.written().get(Quantity.LENGTH);
        return written != null ? written : club.target().of(Quantity.LENGTH).map(Wanted::value).orElse(null);
    }

    /** The playing length that is wanted, less what is carried over, so that it compares with what the model says, mm. */
    double wantLengthMm() {
        return wantLengthMm;
    }

    private Setup.Aim aim(Optional<Sleeve> sleeve) {
        return setting(sleeve).flatMap(label -> SleeveSettings.aim(sleeve.orElseThrow(), request.head().hand(),
            request.head().seat().orElseThrow().readAtSetting(), label)).orElse(Setup.AS_READ);
    }

    /** The setting the club had, where its own head is built again; else the head stays as it was read. */
    private Optional<String> setting(Optional<Sleeve> sleeve) {
        return sleeve.isPresent() && isOwnHead() ? club.setting() : Optional.empty();
    }

    /** How a candidate's angles are set: nothing is bent for a choice of shafts. */
    AngleOption angle(Candidate candidate) {
        Setup.Aim aim = aim(candidate.sleeve());
        return new AngleOption(aim, aim == Setup.AS_READ ? null : setting(candidate.sleeve()).orElse(null), 0, 0,
            ClubAngles.of(candidate.assembly(), aim).lieDeg(), 0);
    }

    double effort(Candidate candidate) {
        return headMass.effort() + candidate.joiningEffort(shop());
    }

    double readyMinutes(Candidate candidate, Cut cut) {
        double minutes = cut.minutes(shop()) + headMass.minutes();
        double wait = cut.waitMinutes(shop());
        for (Work work : candidate.joining()) {
            minutes += shop().minutes().get(work.kind());
            wait = Math.max(wait, shop().waitMinutes(work.kind()));
        }
        AngleOption angle = angle(candidate);
        if (angle.setting() != null && !candidate.settingNow().equals(Optional.of(angle.setting()))) {
            minutes += shop().minutes().get(StepKind.SLEEVE_SETTING);
        }
        return minutes + wait;
    }

    ShopSettings shop() {
        return request.shop();
    }

    TwinModel twin() {
        return twin;
    }

    double carriedCpm() {
        return carriedCpm;
    }

    /** What the build carries before anything is added: tape under the grip, and what the club's own head has on it. */
    AddedMasses start() {
        AddedMasses on = club.carried();
        return isOwnHead() ? new AddedMasses(on.tapeLayers(), 0, on.tapeG(), on.meltG())
            : new AddedMasses(on.tapeLayers(), 0, 0, 0);
    }

    /** Whether the club's own head is built again. */
    boolean isOwnHead() {
        return club.head().map(Head::tag).equals(Optional.of(request.head().tag()));
    }

    /** What has to be done before a new shaft can go into the head: the old one comes out of the club's own. */
    List<Work> freeing() {
        return isOwnHead() && request.head().bore().isPresent() && club.shaft().isPresent()
            ? List.of(Joining.pull(club.shaft().get(), "head " + request.head().tag())) : List.of();
    }

    HeadMass.Option headMass() {
        return headMass;
    }

    Target target() {
        return target;
    }

    /** What the old shaft would measure in the new build. */
    Optional<Map<Quantity, Double>> reference() {
        return reference.map(TwinModel::known);
    }

    List<String> notes() {
        return List.copyOf(notes);
    }
}
