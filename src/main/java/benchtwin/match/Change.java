package benchtwin.match;

import benchtwin.club.Grip;
import benchtwin.club.Quantity;
import benchtwin.club.Target;
import benchtwin.club.Wanted;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * Finds every way to change a recorded club so that it measures what is asked.
 *
 * <p>The club, the club with its tip out, with another grip, head or shaft are each planned exactly, with every set of the
 * further levers (angles, mass at the head, butt). What is asked is held ten times as tight as it is judged, so that it
 * comes before what should only stay as it is. What was left as it is costs as it moves: a way that drags less along has a
 * smaller miss.
 */
public final class Change {

    /** How much tighter than its tolerance a quantity asked for is searched. Ours. */
    private static final double ASKED_TIGHTER = 10;
    /** What is this near to what the club measures, in tolerances, no reading tells from it: 0.24 mm, 0.04 degrees. Ours. */
    private static final double ALREADY_SO = 0.15;
    private static final int GRIPS_TRIED = 3;

    private final ChangeRequest request;
    private final Favourite club;
    private final OldClub old;
    private final Map<Quantity, Double> now;
    private final Target target;
    private final Target searched;
    private final ChangeParts parts;
    /** Whether the grip asked for, or one of its mass, is there. */
    private boolean gripReaches = true;

    private Change(ChangeRequest request) throws CannotChange {
        this.request = request;
        this.club = request.club();
        this.now = now(club);
        this.old = club.old().orElseThrow();
        for (Quantity quantity : request.wished().keySet()) {
            if (!now.containsKey(quantity)) {
                throw new CannotChange("the %s of %s was never read and cannot be worked out from its parts: read it first"
                    .formatted(quantity.word().replace('-', ' '), club.name()));
            }
        }
        this.target = target(1);
        this.searched = target(ASKED_TIGHTER);
        this.parts = new ChangeParts(request, target, club.carried());
    }

    /** The club cannot be changed as asked; the message says why. */
    public static final class CannotChange extends Exception {
        private static final long serialVersionUID = 1;

        CannotChange(String message) {
            super(message);
        }
    }

    /**
     * Finds the ways.
     * @param request what is asked
     * @return the answer
     * @throws CannotChange when the club's parts are not on record, or what is asked for was never read and cannot be
     *                      worked out
     */
    public static ChangeAnswer run(ChangeRequest request) throws CannotChange {
        return new Change(request).run();
    }

    /**
     * What a club measures now.
     * @param club the club with its last sound readings
     * @return what was read, and what is worked out from its parts where nothing was
     * @throws CannotChange when its parts are not on record
     */
    public static Map<Quantity, Double> now(Favourite club) throws CannotChange {
        OldClub old = club.old().orElseThrow(() -> new CannotChange(
            "the parts of %s are not all on record, and a change can only start from what the club is made of: %s"
                .formatted(club.name(), String.join("; ", club.notes()))));
        return TwinModel.known(twin(club, Keep.BOTH).predict(old.assembly(), old.setup()));
    }

    /** What is asked at its new value, everything else that was read where it is. */
    private Target target(double tighter) {
        EnumMap<Quantity, Wanted> wanted = new EnumMap<>(Quantity.class);
        club.target().wanted().forEach((quantity, w) ->
            wanted.put(quantity, new Wanted(now.getOrDefault(quantity, w.value()), w.tolerance(), w.weight())));
        request.wished().forEach((quantity, value) -> {
            Wanted usual = request.tolerances().wanted(quantity, value);
            wanted.put(quantity, new Wanted(value, usual.tolerance() / tighter, Math.max(1, usual.weight())));
        });
        return new Target(club.reading(), wanted);
    }

    static TwinModel twin(Favourite club, Keep keep) {
        return new TwinModel(club.old(), keep, club.condition(), club.reading());
    }

    private ChangeAnswer run() {
        boolean alreadySo = !request.asksForAGrip() && request.wished().entrySet().stream()
            .allMatch(e -> Math.abs(target.of(e.getKey()).orElseThrow().deviation(now.get(e.getKey()))) <= ALREADY_SO);
        if (alreadySo) {
            return new ChangeAnswer(request, target, now, measured(), List.of(), 0, List.of(), true, club.notes());
        }
        List<Grip> wishedGrips = wishedGrips();
        List<FoundWay> found = new ChangeSearch(request, target, searched, parts, gripReaches).run(wishedGrips);
        List<FoundWay> reaching = worthShowing(found);
        List<Way> ways = new ArrayList<>();
        for (FoundWay one : reaching.subList(0, Math.min(reaching.size(), request.top()))) {
            ways.add(way(one, ways.size() + 1));
        }
        Shortfalls shortfalls = new Shortfalls(request, target, now, new WhyNot(parts, request, now, wishedGrips));
        return new ChangeAnswer(request, target, now, measured(), List.copyOf(ways), reaching.size() - ways.size(),
            shortfalls.of(found, reaching, one -> way(one, 0)), false, club.notes());
    }

    private Set<Quantity> measured() {
        Set<Quantity> measured = EnumSet.noneOf(Quantity.class);
        measured.addAll(old.measured().keySet());
        return measured;
    }

    private List<Grip> wishedGrips() {
        if (request.grip().isPresent()) {
            return List.of(request.grip().get());
        }
        OptionalDouble mass = request.gripMassG();
        if (mass.isEmpty()) {
            return List.of();
        }
        List<Grip> nearest = parts.freeGrips().stream().sorted(Comparator.comparingDouble(this::off)).limit(GRIPS_TRIED)
            .toList();
        List<Grip> right = nearest.stream().filter(g -> off(g) <= ChangeRequest.GRIP_TOLERANCE_G).toList();
        gripReaches = !right.isEmpty();
        return gripReaches ? right : nearest.stream().limit(1).toList();
    }

    private double off(Grip grip) {
        return Math.abs(grip.massG().orElseThrow().value() - request.gripMassG().getAsDouble());
    }

    /** Ways that reach what is asked, less those that change more than another and are hardly nearer for it. */
    private static List<FoundWay> worthShowing(List<FoundWay> found) {
        List<FoundWay> reaching = found.stream().filter(FoundWay::reaches).sorted(FoundWay.ORDER).toList();
        List<FoundWay> kept = new ArrayList<>();
        for (FoundWay next : reaching) {
            boolean needless = reaching.stream().anyMatch(next::isNeedlessBeside);
            long alike = kept.stream().filter(f -> f.changed().equals(next.changed())).count();
            if (!needless && alike < alike(next.changed())) {
                kept.add(next);
            }
        }
        return kept;
    }

    /** One plan is enough where the club's own parts stay; of heads, shafts and grips a second is worth seeing. */
    private static int alike(Set<Lever> changed) {
        return changed.contains(Lever.HEAD) || changed.contains(Lever.SHAFT) || changed.contains(Lever.GRIP) ? 2 : 1;
    }

    private Way way(FoundWay one, int rank) {
        Explanation explanation = new Explanation(target, asked(), twin(club, one.base().keep()), request.shop(),
            one.base().keep());
        return new Way(one.changed(), explanation.alone(one.plan()).withRank(rank), one.plan().candidate().grip(),
            one.plan().start().tapeLayers());
    }

    /** What was asked alone; everything where only a grip was. */
    private Target asked() {
        EnumMap<Quantity, Wanted> wanted = new EnumMap<>(Quantity.class);
        wanted.putAll(target.wanted());
        if (!request.wished().isEmpty()) {
            wanted.keySet().retainAll(request.wished().keySet());
        }
        return new Target(target.reading(), wanted);
    }
}
