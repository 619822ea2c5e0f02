package benchtwin.match;

import benchtwin.club.AddedMasses;
import benchtwin.club.ClubRow;
import benchtwin.club.Grip;
import benchtwin.club.Head;
import benchtwin.club.RecordedClub;
import benchtwin.club.Shaft;
import benchtwin.club.Sleeve;
import benchtwin.club.StepKind;
import benchtwin.club.Target;
import benchtwin.mechanics.SleeveSettings;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/** The parts a changed club can consist of: its own, its own with the tip out, another grip, head or shaft. */
final class ChangeParts {

    private final ChangeRequest request;
    private final Favourite club;
    private final Head head;
    private final Shaft shaft;
    private final Optional<Sleeve> sleeve;
    private final AddedMasses carried;
    private final Screening screening;
    private Screened heads;
    private Screened shafts;

    /**
     * @param request what is asked
     * @param target  what is wanted of the changed club
     * @param carried what the club carries beside its parts
     */
    ChangeParts(ChangeRequest request, Target target, AddedMasses carried) {
        this.request = request;
        this.club = request.club();
        this.head = club.head().orElseThrow();
        this.shaft = club.shaft().orElseThrow();
        this.sleeve = head.seat().isPresent() ? club.sleeve() : Optional.empty();
        this.carried = carried;
        this.screening = new Screening(club.withTarget(target), request.inventory(), request.otherModels());
    }

    /** Parts, what they carry, and what of the old club they keep. */
    record Base(Lever lever, Keep keep, AddedMasses start, List<Candidate> candidates) {
    }

    Head head() {
        return head;
    }

    Shaft shaft() {
        return shaft;
    }

    Optional<Sleeve> sleeve() {
        return sleeve;
    }

    /** The club itself, nothing taken apart. */
    Base own() {
        return new Base(null, Keep.BOTH, carried, List.of(candidate(List.of(), false, club.grip(), false)));
    }

    /** The club itself, its shaft pulled so that the tip can be cut or weighted, and bonded again. */
    Base tipOut() {
        List<Work> steps = new ArrayList<>();
        steps.add(Joining.pull(shaft, sleeve.map(s -> "sleeve " + s.name()).orElse("head " + head.tag())));
        Optional<List<Work>> bond = sleeve.isPresent() ? Joining.bondSleeve(shaft, sleeve.get())
            : Joining.bondHead(shaft, head);
        if (bond.isEmpty()) {
            return new Base(Lever.TIP, Keep.BOTH, carried, List.of());
        }
        steps.addAll(bond.get());
        sleeve.ifPresent(s -> steps.add(Joining.screwOn(head, s)));
        return new Base(Lever.TIP, Keep.BOTH, carried, List.of(candidate(steps, true, club.grip(), false)));
    }

    /** The club's own grip over another number of layers. */
    Base tape(int layers) {
        Work regrip = Work.of(StepKind.REGRIP, "Take the grip off and mount it again, or one like it, over %s of tape.",
            layers == 1 ? "1 layer" : layers + " layers");
        return new Base(Lever.TAPE, Keep.BOTH,
            new AddedMasses(layers, carried.tipWeightG(), carried.tapeG(), carried.meltG()),
            List.of(candidate(List.of(regrip), false, club.grip(), true)));
    }

    /** The club with each of these grips. */
    Base grips(List<Grip> grips) {
        return new Base(Lever.GRIP, Keep.BOTH, carried,
            grips.stream().map(grip -> candidate(List.of(mount(grip)), false, Optional.of(grip), true)).toList());
    }

    private static Work mount(Grip grip) {
        return Work.of(StepKind.REGRIP, "Take the old grip off and mount grip %s (%s).", grip.tag(), grip.model());
    }

    private Candidate candidate(List<Work> joining, boolean tipOut, Optional<Grip> grip, boolean gripOff) {
        return Candidate.of(club.assemblies(), head, shaft, sleeve, grip, joining, club.setting(), tipOut, tipOut, gripOff);
    }

    /** Other heads on the shaft. */
    Base heads() {
        if (heads == null) {
            heads = screening.headsForTheOldShaft();
        }
        AddedMasses fresh = new AddedMasses(carried.tapeLayers(), carried.tipWeightG(), 0, 0);
        return new Base(Lever.HEAD, Keep.SHAFT, fresh, heads.fit());
    }

    /** Other shafts in the head, the old one pulled whole. */
    Base shafts() {
        if (shafts == null) {
            shafts = screening.shaftsForTheOldHead(true);
        }
        return new Base(Lever.SHAFT, Keep.HEAD, new AddedMasses(carried.tapeLayers(), 0, carried.tapeG(), carried.meltG()),
            shafts.fit().stream().map(this::setAsBefore).toList());
    }

    /** A new shaft's sleeve starts at the setting the club has, where it knows that one. */
    private Candidate setAsBefore(Candidate c) {
        Optional<String> label = club.setting().filter(setting -> c.sleeve().isPresent()
            && SleeveSettings.labels(c.sleeve().get()).contains(setting));
        if (label.isEmpty()) {
            return c;
        }
        List<Work> joining = new ArrayList<>(c.joining());
        joining.add(Work.of(StepKind.SLEEVE_SETTING, "Set %s, as before.",
            PlanWords.settingWords(c.sleeve().get(), label.get())));
        return Candidate.of(club.assemblies(), c.head(), c.shaft(), c.sleeve(), c.grip(), joining, label, c.tipFree(), c.trimmable(),
            c.gripOff());
    }

    /** Why heads or shafts were ruled out, by count. */
    Map<String, Integer> ruledOut(Lever lever) {
        Screened screened = lever == Lever.HEAD ? heads : shafts;
        Map<String, Integer> counts = new TreeMap<>(screened.ruledOut());
        if (!screened.promised().isEmpty()) {
            counts.put("promised elsewhere", (int) screened.promised().stream()
                .map(c -> lever == Lever.HEAD ? c.head().tag() : c.shaft().tag()).distinct().count());
        }
        return counts;
    }

    /** The same parts with another grip on. */
    Base regripped(Base base, Grip grip) {
        List<Candidate> with = new ArrayList<>();
        for (Candidate c : base.candidates()) {
            List<Work> joining = new ArrayList<>(c.joining().stream().filter(w -> w.kind() != StepKind.REGRIP).toList());
            joining.add(mount(grip));
            with.add(Candidate.of(club.assemblies(), c.head(), c.shaft(), c.sleeve(), Optional.of(grip), joining, c.settingNow(), c.tipFree(),
                c.trimmable(), true));
        }
        return new Base(base.lever(), base.keep(), base.start(), with);
    }

    /** Grips that are weighed and free, those of the club's own model first. */
    List<Grip> freeGrips() {
        Set<String> taken = new HashSet<>();
        for (RecordedClub other : request.inventory().clubs()) {
            ClubRow row = other.newest();
            row.grip().ifPresent(taken::add);
        }
        request.inventory().shafts().forEach(s -> s.gripOn().ifPresent(taken::add));
        String model = club.grip().map(Grip::model).orElse("");
        return request.inventory().grips().stream()
            .filter(g -> !taken.contains(g.tag()) && g.massG().isPresent()
                && !screening.isPromised(g.keeping().reservedFor()))
            .sorted(Comparator.comparing((Grip g) -> !g.model().equals(model)).thenComparing(Grip::tag)).toList();
    }

}
