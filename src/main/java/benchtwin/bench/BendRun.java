package benchtwin.bench;

import benchtwin.bend.Bend;
import benchtwin.bend.BendAdvice;
import benchtwin.bend.BendDirection;
import benchtwin.bend.BendGoal;
import benchtwin.bend.BendSession;
import benchtwin.bend.HoselLimits;
import benchtwin.bend.Springback;
import benchtwin.club.Head;
import benchtwin.club.Quantity;
import benchtwin.club.QuantityText;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * One head's bending session as it runs: takes readings, writes each down before it answers, and says what to do next. Not
 * safe for two threads at once.
 */
public final class BendRun {

    /** A reading further from what was asked than this is typed again before it is taken. Ours. */
    static final double SURPRISE_DEG = 2;
    /** Spreads of an ask that a reading may be off by before it is asked again. */
    private static final double SURPRISE_SPREADS = 5;
    private static final double MOST_ASKED_DEG = 20;

    private final Head head;
    private final BendGoal goal;
    private final BendService.Wish wish;
    private final Map<Quantity, Double> uncertainties;
    private final Map<BendDirection, Springback> known;
    private final HoselLimits left;
    private final double lifeLimitDeg;
    private final Map<Quantity, Double> recorded;
    private final BendJournal journal;
    private final BendJournal.Of of;
    private final Optional<String> job;
    private final int bentBefore;
    private BendSession session;
    private BendSession beforeLast;
    private long lastId;

    BendRun(Head head, BendGoal goal, BendService.Wish wish, Map<Quantity, Double> uncertainties,
            Map<BendDirection, Springback> known, HoselLimits left, double lifeLimitDeg, Map<Quantity, Double> recorded,
            BendJournal journal, Optional<String> job, int bentBefore) {
        this.head = head;
        this.goal = goal;
        this.wish = wish;
        this.uncertainties = uncertainties;
        this.known = known;
        this.left = left;
        this.lifeLimitDeg = lifeLimitDeg;
        this.recorded = recorded;
        this.journal = journal;
        this.job = job;
        this.bentBefore = bentBefore;
        this.of = new BendJournal.Of(head.tag(), goal.targetDeg(), uncertainties, goal.reading().word(), wish.gauge());
    }

    /**
     * The head.
     * @return as it lies in the stock
     */
    public Head head() {
        return head;
    }

    /**
     * Where it is to go.
     * @return the goal
     */
    public BendGoal goal() {
        return goal;
    }

    /**
     * Tilt its hosel stands over its life in one direction.
     * @return degrees
     */
    public double lifeLimitDeg() {
        return lifeLimitDeg;
    }

    /**
     * What the hosel has left.
     * @return now; before the first reading as on record
     */
    public HoselLimits leftDeg() {
        return session == null ? left : session.left();
    }

    /**
     * The job it is bent for.
     * @return its number; empty for none
     */
    public Optional<String> job() {
        return job;
    }

    /**
     * Bends toward the same target that are on record from earlier.
     * @return 0 for a session that begins
     */
    public int bentBefore() {
        return bentBefore;
    }

    /**
     * Where bends are written down.
     * @return in words
     */
    public String place() {
        return journal.place();
    }

    /**
     * Angles on record before the session's first reading.
     * @return by quantity, degrees
     */
    public Map<Quantity, Double> recordedDeg() {
        return Collections.unmodifiableMap(recorded);
    }

    /**
     * The angles to read, in the order they are typed.
     * @return loft and lie, or lie and face
     */
    public List<Quantity> toRead() {
        return BendGoal.steered(goal.reading());
    }

    /**
     * How well each steered angle is read.
     * @return standard uncertainty, degrees, above 0
     */
    public Map<Quantity, Double> readingDeg() {
        return Collections.unmodifiableMap(uncertainties);
    }

    /**
     * Whether the head's angles were read, or taken as recorded.
     * @return false before {@link #begin}
     */
    public boolean hasBegun() {
        return session != null;
    }

    /**
     * Begins with what the head reads now.
     * @param readDeg angles read now; what is missing is taken as it is on record
     * @throws BadInput when an angle is neither read nor on record, cannot be, or cannot be written down
     */
    public void begin(Map<Quantity, Double> readDeg) throws BadInput {
        check(readDeg);
        Map<Quantity, Double> now = new EnumMap<>(Quantity.class);
        now.putAll(recorded);
        now.putAll(readDeg);
        for (Quantity quantity : Quantity.values()) {
            boolean needed = quantity == Quantity.LIE || goal.targetDeg().containsKey(quantity);
            if (needed && !now.containsKey(quantity)) {
                throw new BadInput("the %s of head %s is not on record: read it and type it".formatted(QuantityText.name(quantity),
                    head.tag()));
            }
        }
        BendSession begun = new BendSession(goal, wish.working(), uncertainties, wish.risk(), known, left, now, List.of());
        if (wish.although().isPresent() && wish.limitDeg().isPresent()) {
            journal.answered(of, "bent to a limit of %s of hosel tilt, although: %s".formatted(BendWords.degrees(lifeLimitDeg),
                wish.although().get()));
        }
        if (!readDeg.isEmpty()) {
            journal.read(of, readDeg);
        }
        session = begun;
    }

    private void check(Map<Quantity, Double> readDeg) throws BadInput {
        for (Map.Entry<Quantity, Double> read : readDeg.entrySet()) {
            boolean follows = read.getKey() == Quantity.BOUNCE && !goal.isWood() || read.getKey() == Quantity.LOFT;
            if (!toRead().contains(read.getKey()) && !follows) {
                throw new BadInput("%s is not read of this head; expected %s".formatted(QuantityText.name(read.getKey()),
                    String.join(" and ", toRead().stream().map(QuantityText::name).toList())));
            }
            AskedRange.check(read.getKey(), read.getValue());
        }
    }

    /**
     * How things stand.
     * @return the session
     * @throws IllegalStateException before it has begun
     */
    public BendSession session() {
        if (session == null) {
            throw new IllegalStateException("head %s has not been read yet".formatted(head.tag()));
        }
        return session;
    }

    /**
     * What to do next.
     * @return an ask, or why there is none
     */
    public BendAdvice advice() {
        return session().advice();
    }

    /**
     * A reason to read again before a value is taken.
     * @param direction which way the bend went; empty before the first
     * @param askedDeg  what it was asked
     * @param readDeg   what was typed
     * @return a question; empty when nothing about it is odd
     * @throws BadInput when a value cannot be at all
     */
    public Optional<String> question(Optional<BendDirection> direction, double askedDeg, Map<Quantity, Double> readDeg) throws BadInput {
        check(readDeg);
        Map<Quantity, Double> from = session == null ? recorded : session.nowDeg();
        for (Map.Entry<Quantity, Double> read : readDeg.entrySet()) {
            Double before = from.get(read.getKey());
            if (before == null) {
                continue;
            }
            boolean bent = direction.isPresent() && direction.get().quantity(goal.isWood()) == read.getKey();
            double spread = SURPRISE_SPREADS * Math.sqrt(2) * uncertainties.getOrDefault(read.getKey(), 0.0);
            double moved = Math.abs(read.getValue() - before);
            if (moved > (bent ? askedDeg : 0) + Math.max(SURPRISE_DEG, spread)) {
                return Optional.of("%s %s is %s from %s. Read again; type it once more if it is so".formatted(
                    QuantityText.name(read.getKey()), QuantityText.value(read.getKey(), read.getValue()), BendWords.degrees(moved),
                    QuantityText.value(read.getKey(), before)));
            }
        }
        return Optional.empty();
    }

    /**
     * Takes a bend.
     * @param direction which way
     * @param askedDeg  what was asked, degrees of the angle that is read
     * @param readDeg   angles read afterwards, the one that was bent among them
     * @throws BadInput when a value cannot be, or cannot be written down; then nothing has changed
     */
    public void bent(BendDirection direction, double askedDeg, Map<Quantity, Double> readDeg) throws BadInput {
        BendSession before = session();
        BendSession after = taken(before, direction, askedDeg, readDeg);
        lastId = journal.bent(of, last(after), readDeg, Optional.empty());
        beforeLast = before;
        session = after;
    }

    private BendSession taken(BendSession before, BendDirection direction, double askedDeg, Map<Quantity, Double> readDeg)
        throws BadInput {
        check(readDeg);
        Quantity bent = direction.quantity(goal.isWood());
        if (!readDeg.containsKey(bent)) {
            throw new BadInput("the bend was asked in %s: type what that reads now".formatted(QuantityText.name(bent)));
        }
        if (!(askedDeg > 0 && askedDeg <= MOST_ASKED_DEG)) {
            throw new BadInput("a bend of %s asked: expected above 0 and at most %s".formatted(BendWords.degrees(askedDeg),
                BendWords.degrees(MOST_ASKED_DEG)));
        }
        return before.after(direction, askedDeg, readDeg);
    }

    private static Bend last(BendSession of) {
        return of.bends().get(of.bends().size() - 1);
    }

    /**
     * Puts the last bend's entry right.
     * @param askedDeg what was asked; empty where that stands
     * @param readDeg  angles read after it
     * @throws BadInput when there was no bend, or a value cannot be
     */
    public void again(Optional<Double> askedDeg, Map<Quantity, Double> readDeg) throws BadInput {
        if (beforeLast == null) {
            throw new BadInput("there is no bend yet to put right");
        }
        Bend said = last(session());
        Map<Quantity, Double> read = new EnumMap<>(Quantity.class);
        read.put(said.direction().quantity(goal.isWood()), said.afterDeg().get(said.direction().quantity(goal.isWood())));
        read.putAll(readDeg);
        BendSession after = taken(beforeLast, said.direction(), askedDeg.orElse(said.askedDeg()), read);
        lastId = journal.bent(of, last(after), read, Optional.of(new BendJournal.Mistyped(lastId, said)));
        session = after;
    }

    /**
     * Whether every target is within tolerance.
     * @return false before the head was read
     */
    public boolean isReached() {
        return session != null && session.advice() instanceof BendAdvice.Reached;
    }
}
