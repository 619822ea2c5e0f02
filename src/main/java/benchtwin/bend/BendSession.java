package benchtwin.bend;

import benchtwin.club.Quantity;
import benchtwin.mechanics.HoselTilt;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * One head on its way to its target: what it reads, what its hosel has left, what its metal has taught so far. Nothing in it
 * changes; a bend gives a new one.
 * @param goal         where it is to go
 * @param working      how asks are held
 * @param readingDeg   standard uncertainty of a reading of each steered angle, degrees, above 0
 * @param risk         the most chance there may be of passing the far end of a tolerance, or the hosel's limit
 * @param known        what is known of its metal, each direction
 * @param left         what the hosel has left
 * @param nowDeg       its angles as last read; lie among them, and whatever is targeted
 * @param bends        done so far, oldest first
 */
public record BendSession(BendGoal goal, Working working, Map<Quantity, Double> readingDeg, double risk,
                          Map<BendDirection, Springback> known, HoselLimits left, Map<Quantity, Double> nowDeg,
                          List<Bend> bends) {

    /** A tilt the other way counts as metal used once it is so many times its own uncertainty. */
    private static final double CERTAIN = 3;

    public BendSession {
        readingDeg = copy(readingDeg);
        nowDeg = copy(nowDeg);
        known = Collections.unmodifiableMap(new EnumMap<>(known));
        bends = List.copyOf(bends);
        if (!nowDeg.containsKey(Quantity.LIE) || !nowDeg.keySet().containsAll(goal.targetDeg().keySet())) {
            throw new IllegalArgumentException("a head that reads %s cannot be bent to %s: lie and every target must be read"
                .formatted(nowDeg, goal.targetDeg()));
        }
    }

    private static Map<Quantity, Double> copy(Map<Quantity, Double> values) {
        Map<Quantity, Double> copy = new EnumMap<>(Quantity.class);
        copy.putAll(values);
        return Collections.unmodifiableMap(copy);
    }

    /**
     * What to do next.
     * @return an ask, or why there is none
     */
    public BendAdvice advice() {
        Optional<Quantity> off = goal.furthestOff(nowDeg);
        if (off.isEmpty()) {
            return new BendAdvice.Reached();
        }
        HoselTilt needed = goal.needed(nowDeg);
        boolean lie = off.get() == Quantity.LIE;
        BendDirection direction = BendDirection.of(lie, (lie ? needed.uprightDeg() : needed.forwardDeg()) > 0);
        double leverage = goal.leverage(direction, nowDeg);
        double need = direction.part(needed);
        double tolerance = goal.toleranceDeg().get(off.get()) / leverage;
        double room = left.leftDeg(direction);
        if (need - tolerance > room) {
            return new BendAdvice.PastLimit(direction, needed, room);
        }
        AskPolicy policy = new AskPolicy(AskPolicy.STEP_DEG / leverage, risk);
        double reading = readingDeg.get(off.get()) / leverage;
        Optional<NextBend> next = policy.next(known.get(direction), working, need, tolerance, reading, room);
        if (next.isEmpty()) {
            boolean atLimit = policy.next(known.get(direction), working, need, tolerance, reading, Double.MAX_VALUE).isPresent();
            return new BendAdvice.TooRisky(direction, atLimit);
        }
        NextBend ask = next.get();
        return new BendAdvice.Ask(direction, leverage * ask.askedDeg(), leverage * ask.expectedDeg(), leverage * ask.spreadDeg(), ask,
            known.get(direction), goal.after(nowDeg, direction.tilt(ask.expectedDeg())));
    }

    /**
     * After a bend.
     * @param direction which way it was asked
     * @param askedDeg  what was asked, degrees of the angle that is read, above 0
     * @param readDeg   angles read afterwards; a steered one that was not read stays as it was read before, others follow
     * @return the session with it
     */
    public BendSession after(BendDirection direction, double askedDeg, Map<Quantity, Double> readDeg) {
        Map<Quantity, Double> after = new EnumMap<>(Quantity.class);
        after.putAll(nowDeg);
        after.putAll(readDeg);
        Map<Quantity, Double> followed = goal.after(nowDeg, goal.between(nowDeg, after));
        after.keySet().removeIf(quantity -> !followed.containsKey(quantity) && !readDeg.containsKey(quantity));
        followed.forEach((quantity, angle) -> {
            if (!BendGoal.steered(goal.reading()).contains(quantity) && !readDeg.containsKey(quantity)) {
                after.put(quantity, angle);
            }
        });
        double leverage = goal.leverage(direction, nowDeg);
        double reading = readingDeg.get(direction.quantity(goal.isWood())) / leverage;
        HoselTilt moved = goal.between(nowDeg, after);
        BendTrial trial = new BendTrial(askedDeg / leverage, direction.part(moved), reading, working);
        HoselTilt used = used(direction, moved);
        Map<BendDirection, Springback> learned = new EnumMap<>(known);
        learned.computeIfPresent(direction, (way, before) -> before.after(trial));
        List<Bend> more = new ArrayList<>(bends);
        more.add(new Bend(direction, askedDeg, trial, nowDeg, after, used));
        return new BendSession(goal, working, readingDeg, risk, learned, left.after(used), after, more);
    }

    /** The metal cannot have gone against the push; what it went sideways counts where readings are sure of it. */
    private HoselTilt used(BendDirection direction, HoselTilt moved) {
        double along = Math.max(0, direction.part(moved));
        BendDirection side = BendDirection.of(!direction.isLie(), true);
        double sure = CERTAIN * Math.sqrt(2) * readingDeg.get(side.quantity(goal.isWood())) / goal.leverage(side, nowDeg);
        double aside = Math.abs(side.part(moved)) > sure ? side.part(moved) : 0;
        HoselTilt one = direction.tilt(along);
        HoselTilt other = side.tilt(aside);
        return new HoselTilt(one.uprightDeg() + other.uprightDeg(), one.forwardDeg() + other.forwardDeg());
    }

    /**
     * The same with angles read anew, without a bend.
     * @param readDeg angles that were read
     * @return the session with them
     */
    public BendSession reading(Map<Quantity, Double> readDeg) {
        Map<Quantity, Double> now = new EnumMap<>(Quantity.class);
        now.putAll(nowDeg);
        now.putAll(readDeg);
        return new BendSession(goal, working, readingDeg, risk, known, left, now, bends);
    }
}
