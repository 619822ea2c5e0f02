package benchtwin.club;

import java.time.LocalDate;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * One club of a set that is to be built. Player and club together name it.
 * @param player        for whom
 * @param club          its name within the set, such as {@code 7-iron}
 * @param category      driver to putter
 * @param number        its number, such as {@code 7} or {@code PW}; a wedge's is its nominal loft
 * @param hand          right or left
 * @param group         the group of the player's set it belongs to, if any
 * @param groupRule     how firmly that group keeps to one head and one shaft model
 * @param target        what its row names, with tolerances and weights; empty when everything comes from lines
 * @param frequencyLine name of the line its frequency lies on, if any
 * @param swingLine     name of the line its swing weight or butt inertia lies on, if any
 * @param loftLine      name of the line its loft lies on, if any
 * @param priority      1, the most urgent, to 9
 * @param neededBy      the day it is needed, if there is one
 * @param keeping       note and columns the program does not know
 * @param lineMargins   tolerances and weights its row names for values that come from lines
 */
public record WantedClub(String player, String club, Category category, Optional<String> number, Hand hand,
                         Optional<String> group, GroupRule groupRule, Optional<Target> target,
                         Optional<String> frequencyLine, Optional<String> swingLine, Optional<String> loftLine,
                         int priority, Optional<LocalDate> neededBy, Keeping keeping,
                         Map<Quantity, Margin> lineMargins) {

    /** The most urgent. */
    public static final int FIRST_PRIORITY = 1;
    /** The least urgent. */
    public static final int LAST_PRIORITY = 9;
    /** Where a row says nothing. */
    public static final int DEFAULT_PRIORITY = 3;

    public WantedClub {
        EnumMap<Quantity, Margin> margins = new EnumMap<>(Quantity.class);
        margins.putAll(lineMargins);
        lineMargins = Collections.unmodifiableMap(margins);
        if (player.isBlank() || club.isBlank()) {
            throw new IllegalArgumentException("a wanted club needs a player and a name");
        }
        if (target.isEmpty() && frequencyLine.isEmpty() && swingLine.isEmpty() && loftLine.isEmpty()) {
            throw new IllegalArgumentException("%s of %s: nothing is wanted of it".formatted(club, player));
        }
        if (priority < FIRST_PRIORITY || priority > LAST_PRIORITY) {
            throw new IllegalArgumentException(
                "%s of %s: priority %d is not from 1 to 9".formatted(club, player, priority));
        }
    }

    /**
     * A club on no loft line, whose other lines are met with the default tolerances.
     * @param player        for whom
     * @param club          its name within the set
     * @param category      driver to putter
     * @param number        its number
     * @param hand          right or left
     * @param group         its group, if any
     * @param groupRule     how firmly the group keeps together
     * @param target        what its row names
     * @param frequencyLine line of its frequency
     * @param swingLine     line of its swing weight or butt inertia
     * @param priority      1 to 9
     * @param neededBy      the day it is needed
     * @param keeping       note and further columns
     */
    public WantedClub(String player, String club, Category category, Optional<String> number, Hand hand,
                      Optional<String> group, GroupRule groupRule, Optional<Target> target,
                      Optional<String> frequencyLine, Optional<String> swingLine, int priority,
                      Optional<LocalDate> neededBy, Keeping keeping) {
        this(player, club, category, number, hand, group, groupRule, target, frequencyLine, swingLine, Optional.empty(),
            priority, neededBy, keeping, Map.of());
    }

    /**
     * The lines it names.
     * @return frequency line, swing line and loft line, those it has
     */
    public List<String> lineNames() {
        return Stream.of(frequencyLine, swingLine, loftLine).flatMap(Optional::stream).toList();
    }

    /**
     * How near a value that a line gives is to be met at this club.
     * @param quantity the line's quantity
     * @return what its row says, else the quantity's defaults
     */
    public Margin margin(Quantity quantity) {
        return lineMargins.getOrDefault(quantity, Margin.ofDefaults(quantity));
    }
}
