package benchtwin.sets;

import java.util.List;

/**
 * What one constraint costs in one place.
 * @param constraint its name, in plain words
 * @param level      how it counts
 * @param points     what it costs, above 0: hard points count faults, medium points are the weights of clubs left unbuilt,
 *                   soft points are millionths of a squared tolerance
 * @param slots      where: the slots that break a rule together, or all of a group's that are filled
 */
record ScorePart(String constraint, Level level, long points, List<Integer> slots) {

    /** How a constraint counts; each level only where those above it are equal. */
    enum Level { HARD, MEDIUM, SOFT }

    ScorePart {
        slots = List.copyOf(slots);
    }
}
