package benchtwin.rules;

import benchtwin.club.Category;
import benchtwin.club.Head;
import benchtwin.club.Quantity;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What the equipment rules say beside their limits, and what a plan has to be told. */
public final class EquipmentRules {

    /** Most clubs in a bag. Memory: Rules of Golf 4.1b. */
    public static final int MOST_CLUBS = 14;

    /** Who decides. */
    public static final String WHO_DECIDES = "Advice only: the governing bodies decide whether a club conforms, and the committee in "
        + "charge of a competition which local rules are in force there.";

    /** How verdicts are reached. */
    public static final String HOW_JUDGED = "± is twice the standard uncertainty. Clear is what lies on one side of a limit with all "
        + "of that (at least 97.7 % sure by measuring); the rest is too close to call. An allowance is what the published test adds "
        + "to a limit before it turns a head away: it counts, and the limit alone is shown beneath.";

    /** Said near a limit on a length that was not read by the published procedure itself. */
    public static final String READS_LESS = "In the published procedure the hosel lies on the plane and not the axis, so a ruler there "
        + "can read up to 4 mm less than the length worked out here (its radius times cot 60°). So near a limit, lay the club "
        + "on the 60° plane and record the length as rules60";

    private EquipmentRules() {
    }

    /**
     * Something the rules say that no measuring settles.
     * @param text   a sentence
     * @param source document, with its mark
     */
    public record Information(String text, String source) {
    }

    /**
     * What a technician should know beside the limits.
     * @return sentences with their sources
     */
    public static List<Information> information() {
        return List.of(
            new Information("A player starts a round with at most %d clubs.".formatted(MOST_CLUBS), "Rules of Golf 4.1b (memory)"),
            new Information("A club's characteristics must not be changed during a round: no bending, setting, weight or tape.",
                "Rules of Golf 4.1a (memory)"),
            new Information("A club broken or damaged during a round may be replaced only as the rules and the local rule in force allow.",
                "Rules of Golf 4.1a and 4.1b, Model Local Rule G-9 (memory)"));
    }

    /**
     * The list a club's conformity rests on.
     * @param category the club's
     * @return a sentence for a driver; empty for any other
     */
    public static Optional<Information> publishedList(Category category) {
        return category != Category.DRIVER ? Optional.empty() : Optional.of(new Information(
            "Conformity rests on a published list: look it up. A driver's head, model and loft, has to stand on the list of conforming "
                + "driver heads where that local rule is in force.", "Model Local Rule G-1 (memory)"));
    }

    /**
     * What a plan would cross or come too close to.
     * @param head        its head
     * @param predicted   what the club would measure, by quantity
     * @param uncertainty standard uncertainty of each
     * @return a sentence each, without its stop; none where every limit that can be judged is clearly kept
     */
    public static List<String> warnings(Head head, Map<Quantity, Double> predicted, Map<Quantity, Double> uncertainty) {
        return RuledClub.planned(head, predicted, uncertainty).findings().stream()
            .filter(finding -> finding.verdict().isDoubtful()).map(RulesText::warning).toList();
    }
}
