package benchtwin.match;

import benchtwin.club.Grip;
import benchtwin.club.Head;
import benchtwin.club.HeadCondition;
import benchtwin.club.Inventory;
import benchtwin.club.Quantity;
import benchtwin.club.RecordedClub;
import benchtwin.club.Shaft;
import benchtwin.club.Sleeve;
import benchtwin.club.StepKind;
import benchtwin.mechanics.CutClub;
import benchtwin.mechanics.Setup;
import benchtwin.mechanics.SleeveSettings;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Rules out parts that cannot fit, by reason, and joins the rest into candidates. */
final class Screening {

    private final Favourite favourite;
    private final Inventory inventory;
    private final boolean otherModels;
    /** By tag: of a backup every pair of thousands asks for the grip on its shaft. */
    private final Map<String, Grip> grips = new HashMap<>();
    private final Set<String> headsInClubs = new HashSet<>();
    private final Set<String> shaftsInClubs = new HashSet<>();

    Screening(Favourite favourite, Inventory inventory, boolean otherModels) {
        this.favourite = favourite;
        this.inventory = inventory;
        this.otherModels = otherModels;
        inventory.grips().forEach(grip -> grips.putIfAbsent(grip.tag(), grip));
        for (RecordedClub club : inventory.clubs()) {
            club.newest().head().ifPresent(headsInClubs::add);
            club.newest().shaft().ifPresent(shaftsInClubs::add);
        }
    }

    /**
     * Heads for the old shaft.
     * @return candidates and counts
     */
    Screened headsForTheOldShaft() {
        Shaft shaft = favourite.shaft().orElseThrow();
        Screened.Collector collector = new Screened.Collector();
        for (Head head : inventory.heads()) {
            Optional<String> reason = whyNot(head);
            if (reason.isPresent()) {
                collector.out(reason.get());
                continue;
            }
            List<Candidate> ways = onOldShaft(head, shaft);
            if (ways.isEmpty()) {
                collector.out(noWay(head));
            } else {
                collector.in(ways, isPromised(head.keeping().reservedFor()));
            }
        }
        return collector.done();
    }

    /**
     * Shafts for the old head.
     * @param whole whether the old shaft is sound and comes out whole; else its broken end does
     * @return candidates and counts
     */
    Screened shaftsForTheOldHead(boolean whole) {
        Head head = favourite.head().orElseThrow();
        Screened.Collector collector = new Screened.Collector();
        for (Shaft shaft : inventory.shafts()) {
            Optional<String> reason = whyNot(shaft);
            if (reason.isPresent()) {
                collector.out(reason.get());
                continue;
            }
            List<Candidate> ways = onOldHead(head, shaft, whole);
            List<Candidate> longEnough = ways.stream().filter(this::isLongEnough).toList();
            if (longEnough.isEmpty()) {
                collector.out(ways.isEmpty() ? noWay(head) : RuleOut.TOO_SHORT.word());
            } else {
                collector.in(longEnough, isPromised(shaft.keeping().reservedFor()));
            }
        }
        return collector.done();
    }

    /**
     * Why a head is out of the question.
     * @return the reason, or empty
     */
    Optional<String> whyNot(Head head) {
        if (head.category() != favourite.category()) {
            return Optional.of(RuleOut.OTHER_CATEGORY.word());
        }
        if (head.hand() != favourite.hand()) {
            return Optional.of(RuleOut.WRONG_HAND.word());
        }
        if (favourite.number().isPresent() && head.number().isPresent()
            && !favourite.number().get().equalsIgnoreCase(head.number().get())) {
            return Optional.of(RuleOut.OTHER_NUMBER.word());
        }
        if (!otherModels && favourite.head().isPresent() && !favourite.head().get().model().equals(head.model())) {
            return Optional.of(RuleOut.OTHER_MODEL.word());
        }
        if (head.condition() == HeadCondition.CRACKED) {
            return Optional.of(RuleOut.CRACKED.word());
        }
        if (headsInClubs.contains(head.tag())) {
            return Optional.of(RuleOut.IN_A_CLUB.word());
        }
        return missing(head).map(what -> RuleOut.NOT_MEASURED.word() + " (" + what + ")");
    }

    private Optional<String> missing(Head head) {
        if (head.isWood() != favourite.reading().isWood()) {
            return Optional.of("angles in a comparable reading");
        }
        if (wants(Quantity.LOFT) && head.angles().loftDeg().isEmpty()) {
            return Optional.of("loft");
        }
        if (wants(Quantity.LIE) && head.angles().lieDeg().isEmpty()) {
            return Optional.of("lie");
        }
        if (wants(Quantity.FACE) && head.angles().faceDeg().isEmpty()) {
            return Optional.of("face");
        }
        if (wants(Quantity.BOUNCE) && head.angles().bounceDeg().isEmpty()) {
            return Optional.of("bounce");
        }
        if (head.massG().isEmpty() && (wants(Quantity.SWING_WEIGHT) || wants(Quantity.TOTAL_MASS))) {
            return Optional.of("mass");
        }
        boolean seatUnknown = head.seat().isPresent() && head.seat().get().toGroundMm().isEmpty();
        boolean boreUnknown = head.bore().isPresent() && head.bore().get().toGroundMm().isEmpty();
        return seatUnknown || boreUnknown ? Optional.of("hosel to ground") : Optional.empty();
    }

    private boolean wants(Quantity quantity) {
        return favourite.target().of(quantity).filter(w -> w.weight() > 0).isPresent();
    }

    /**
     * Why a shaft is out of the question.
     * @return the reason, or empty
     */
    Optional<String> whyNot(Shaft shaft) {
        if (!shaft.meantFor().isEmpty() && !shaft.meantFor().contains(favourite.category())) {
            return Optional.of(RuleOut.NOT_MEANT_FOR.word());
        }
        if (!otherModels && favourite.shaft().isPresent() && !favourite.shaft().get().model().equals(shaft.model())) {
            return Optional.of(RuleOut.OTHER_MODEL.word());
        }
        if (shaftsInClubs.contains(shaft.tag())) {
            return Optional.of(RuleOut.IN_A_CLUB.word());
        }
        if (shaft.massG().isEmpty()) {
            return Optional.of(RuleOut.NOT_MEASURED.word() + " (mass)");
        }
        boolean readable = shaft.frequencies().stream()
            .anyMatch(f -> f.clampMm().isPresent() || f.freeLengthMm().isPresent());
        if (wants(Quantity.FREQUENCY) && !readable) {
            return Optional.of(RuleOut.NOT_MEASURED.word() + " (frequency with its clamp)");
        }
        return Optional.empty();
    }

    boolean isLongEnough(Candidate candidate) {
        if (!wants(Quantity.LENGTH)) {
            return true;
        }
        CutClub club = new CutClub(candidate.assembly(), Setup.plain(favourite.tapeLayers(), 0),
            favourite.condition().clampMm());
        double wanted = favourite.target().of(Quantity.LENGTH).orElseThrow().value();
        return club.lengthMm(Double.NaN) + LONGEST_EXTENSION_MM >= wanted;
    }

    /** No extension is longer: 1 in on steel. */
    private static final double LONGEST_EXTENSION_MM = 25.4;

    boolean isPromised(Optional<String> reservedFor) {
        return reservedFor.isPresent() && !reservedFor.equals(favourite.player())
            && !reservedFor.get().equals(favourite.name());
    }

    /** A sleeve fits when its type does and it has the setting the head was read at. */
    private static boolean fits(Sleeve sleeve, Head head) {
        return sleeve.fits(head) && SleeveSettings.labels(sleeve).stream().anyMatch(label ->
            SleeveSettings.aim(sleeve, head.hand(), head.seat().orElseThrow().readAtSetting(), label).isPresent());
    }

    String noWay(Head head) {
        return head.seat().isPresent() ? RuleOut.NO_SLEEVE.word() : RuleOut.TIP.word();
    }

    private List<Candidate> onOldShaft(Head head, Shaft shaft) {
        Optional<Sleeve> on = favourite.sleeve();
        if (on.isPresent() && fits(on.get(), head)) {
            return List.of(Candidate.of(favourite.assemblies(), head, shaft, on, favourite.grip(), List.of(Joining.screwOn(head, on.get())),
                favourite.setting(), false, false, false));
        }
        Work pull = Joining.pull(shaft, on.map(s -> "sleeve " + s.name()).orElse(
            favourite.head().map(h -> "head " + h.tag()).orElse("its head")));
        List<Candidate> ways = new ArrayList<>();
        for (Way way : ways(head, shaft, Optional.empty())) {
            List<Work> steps = new ArrayList<>(List.of(pull));
            steps.addAll(way.steps());
            ways.add(Candidate.of(favourite.assemblies(), head, shaft, way.sleeve(), favourite.grip(), steps, Optional.empty(), true, false,
                false));
        }
        return ways;
    }

    private List<Candidate> onOldHead(Head head, Shaft shaft, boolean whole) {
        List<Candidate> ways = new ArrayList<>();
        Shaft broken = favourite.shaft().orElse(shaft);
        Optional<Sleeve> old = head.seat().isPresent() ? favourite.sleeve() : Optional.empty();
        for (Way way : ways(head, shaft, old)) {
            List<Work> steps = new ArrayList<>();
            if (head.seat().isEmpty()) {
                steps.add(pullOld(broken, "head " + head.tag(), whole));
            } else if (way.reusesOldSleeve()) {
                steps.add(pullOld(broken, "sleeve " + old.orElseThrow().name(), whole));
            }
            steps.addAll(way.steps());
            ways.add(withGrip(head, shaft, way, steps));
        }
        return ways;
    }

    private static Work pullOld(Shaft shaft, String from, boolean whole) {
        return whole ? Joining.pull(shaft, from) : Joining.pullStub(shaft, from);
    }

    /** Joins a shaft from the drawer to a head, the grip included. */
    Candidate withGrip(Head head, Shaft shaft, Way way, List<Work> joinSteps) {
        List<Work> steps = new ArrayList<>(joinSteps);
        Optional<Grip> on = shaft.gripOn().map(grips::get);
        boolean keepsGrip = on.isPresent() && (favourite.grip().isEmpty()
            || favourite.grip().get().model().equals(on.get().model()));
        Optional<Grip> grip = keepsGrip ? on : favourite.grip();
        if (!keepsGrip) {
            steps.add(grip.isPresent()
                ? Work.of(StepKind.REGRIP, "Mount a grip like %s (%s).", grip.get().tag(), grip.get().model())
                : Work.of(StepKind.REGRIP, "Mount a grip like the old club's."));
        }
        return Candidate.of(favourite.assemblies(), head, shaft, way.sleeve(), grip, steps, Optional.empty(), way.tipFree(), way.tipFree(),
            !keepsGrip);
    }

    /**
     * One way to join a shaft from the drawer to a head.
     * @param sleeve          the sleeve between them
     * @param steps           the steps
     * @param tipFree         whether the tip is out of everything at some point
     * @param reusesOldSleeve whether the old club's sleeve is freed and used
     */
    record Way(Optional<Sleeve> sleeve, List<Work> steps, boolean tipFree, boolean reusesOldSleeve) {
    }

    /**
     * Every way to join a shaft from the drawer to a head, a sleeve on the shaft kept where it fits.
     * @param old the old club's sleeve when it can be freed for this
     * @return none when they do not go together
     */
    List<Way> ways(Head head, Shaft shaft, Optional<Sleeve> old) {
        Optional<Sleeve> on = sleeveOn(shaft);
        if (on.isPresent() && fits(on.get(), head)) {
            return List.of(new Way(on, List.of(Joining.screwOn(head, on.get())), false, false));
        }
        return waysFreed(head, shaft, old);
    }

    /**
     * The same, and beside a sleeve that fits and stays also the ways that pull it, so that the tip can be cut.
     * @return none when they do not go together
     */
    List<Way> waysWithTipFree(Head head, Shaft shaft) {
        List<Way> ways = new ArrayList<>(ways(head, shaft, Optional.empty()));
        Optional<Sleeve> on = sleeveOn(shaft).filter(sleeve -> fits(sleeve, head));
        if (on.isPresent()) {
            ways.addAll(waysFreed(head, shaft, on));
        }
        return ways;
    }

    private Optional<Sleeve> sleeveOn(Shaft shaft) {
        boolean inTheOldClub = favourite.shaft().equals(Optional.of(shaft));
        return inTheOldClub ? Optional.empty() : shaft.sleeveOn().flatMap(inventory::sleeve);
    }

    private List<Way> waysFreed(Head head, Shaft shaft, Optional<Sleeve> old) {
        boolean inTheOldClub = favourite.shaft().equals(Optional.of(shaft));
        List<Work> free = new ArrayList<>();
        if (!inTheOldClub && shaft.sleeveOn().isPresent()) {
            free.add(Joining.pull(shaft, "sleeve " + shaft.sleeveOn().get()));
        }
        List<Way> ways = new ArrayList<>();
        if (head.bore().isPresent()) {
            Joining.bondHead(shaft, head).ifPresent(bond -> ways.add(new Way(Optional.empty(), join(free, bond), true,
                false)));
            return ways;
        }
        for (Sleeve sleeve : inventory.sleeves()) {
            if (fits(sleeve, head) && sleeve.count().orElse(1) > 0) {
                Joining.bondSleeve(shaft, sleeve).ifPresent(bond -> ways.add(
                    new Way(Optional.of(sleeve), join(join(free, bond), List.of(Joining.screwOn(head, sleeve))), true,
                        false)));
            }
        }
        old.filter(sleeve -> fits(sleeve, head)).ifPresent(sleeve -> Joining.bondSleeve(shaft, sleeve).ifPresent(bond ->
            ways.add(new Way(old, join(join(free, bond), List.of(Joining.screwOn(head, sleeve))), true, true))));
        return ways;
    }

    private static List<Work> join(List<Work> first, List<Work> then) {
        List<Work> all = new ArrayList<>(first);
        all.addAll(then);
        return all;
    }
}
