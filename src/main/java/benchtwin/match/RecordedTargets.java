package benchtwin.match;

import benchtwin.club.Category;
import benchtwin.club.GroupRule;
import benchtwin.club.Hand;
import benchtwin.club.Inventory;
import benchtwin.club.Line;
import benchtwin.club.RecordedClub;
import benchtwin.club.SetTargets;
import benchtwin.club.WantedClub;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * A player's recorded clubs as a set to be built: every club as it last measured sound.
 *
 * <p>Frequencies of a set are on the bare butt in the usual clamp. One that was read otherwise is carried there, to 0.01 cpm,
 * and left out where that cannot be done. Torque is not wanted of a set. All else is what {@link FavouriteOfRecord} finds.
 * @param targets  the set by category, number and loft; with the irons' line where they lie on it
 * @param ironLine the line through the irons' frequencies by the inch, least squares of cpm on length; empty where fewer than
 *                 three irons have both, or their lengths span less than 3/4 in
 * @param notes    what was left out or assumed, in plain words
 */
public record RecordedTargets(SetTargets targets, Optional<Line> ironLine, List<String> notes) {

    public RecordedTargets {
        notes = List.copyOf(notes);
    }

    /**
     * Works the set out. Irons form a group that must share models if all on record do, wedges one that prefers to; priority
     * is the usual one, and every club's note says which reading it is.
     * @param inventory    the record, and where parts are looked up
     * @param player       whose clubs, by the name on record
     * @param tolerances   tolerances and weights of all values
     * @param straightened whether the irons are to lie on their line, or each to keep the frequency it had
     * @return the set; without a club, and with notes why, when nothing of the player's can be used
     */
    public static RecordedTargets of(Inventory inventory, String player, Tolerances tolerances, boolean straightened) {
        List<String> notes = new ArrayList<>();
        List<RecordedClub> recorded = inventory.clubs().stream().filter(club -> club.player().equals(player)).toList();
        if (recorded.isEmpty()) {
            notes.add("no club of %s is on record".formatted(player));
        }
        List<ClubOfRecord> clubs = recorded.stream()
            .flatMap(club -> ClubOfRecord.read(club, inventory, tolerances, notes).stream()).sorted(ClubOfRecord.ORDER).toList();
        long carried = clubs.stream().filter(ClubOfRecord::carriedToBare).count();
        if (carried > 0) {
            notes.add("%d %s read over the grip or in another clamp, carried to the bare butt".formatted(carried,
                carried == 1 ? "frequency was" : "frequencies were"));
        }
        List<WantedClub> wanted = wanted(clubs, notes);
        Optional<IronLine> line = IronLine.through(wanted);
        if (straightened) {
            if (line.isPresent()) {
                return new RecordedTargets(new SetTargets(line.get().straighten(wanted, tolerances, notes),
                    List.of(line.get().line())), line.map(IronLine::line), notes);
            }
            if (wanted.stream().anyMatch(club -> club.category() == Category.IRON)) {
                notes.add("the irons keep their frequencies: a line takes three irons with length and frequency, 3/4 in apart "
                    + "or more");
            }
        }
        return new RecordedTargets(new SetTargets(wanted, List.of()), line.map(IronLine::line), notes);
    }

    private static List<WantedClub> wanted(List<ClubOfRecord> clubs, List<String> notes) {
        Map<Hand, GroupRule> ironRule = new EnumMap<>(Hand.class);
        clubs.stream().filter(club -> club.recorded().category() == Category.IRON)
            .collect(Collectors.groupingBy(club -> club.recorded().hand(), TreeMap::new, Collectors.toList()))
            .forEach((hand, irons) -> ironRule.put(hand, ironRule(irons, notes)));
        boolean oneHand = clubs.stream().map(club -> club.recorded().hand()).distinct().count() < 2;
        Set<String> taken = new HashSet<>();
        List<WantedClub> wanted = new ArrayList<>();
        for (ClubOfRecord club : clubs) {
            Hand hand = club.recorded().hand();
            String ofHand = oneHand ? "" : " " + hand.word();
            String name = free(club.name(), taken);
            wanted.add(switch (club.recorded().category()) {
                case IRON -> club.wanted(name, Optional.of("irons" + ofHand), ironRule.get(hand));
                case WEDGE -> club.wanted(name, Optional.of("wedges" + ofHand), GroupRule.PREFER);
                case DRIVER, FAIRWAY, HYBRID, PUTTER -> club.wanted(name, Optional.empty(), GroupRule.PREFER);
            });
        }
        return wanted;
    }

    /** Two of a kind are told apart by a count behind the second. */
    private static String free(String name, Set<String> taken) {
        String free = name;
        for (int count = 2; !taken.add(free); count++) {
            free = name + " " + count;
        }
        return free;
    }

    /** They must share models where those on record are known to. */
    private static GroupRule ironRule(List<ClubOfRecord> irons, List<String> notes) {
        for (Function<ClubOfRecord, Optional<String>> model
            : List.<Function<ClubOfRecord, Optional<String>>>of(ClubOfRecord::headModel, ClubOfRecord::shaftModel)) {
            List<ClubOfRecord> unknown = irons.stream().filter(iron -> model.apply(iron).isEmpty()).toList();
            List<String> models = irons.stream().flatMap(iron -> model.apply(iron).stream()).distinct().toList();
            if (!unknown.isEmpty()) {
                notes.add("the irons prefer to share models: those of %s are not known".formatted(unknown.stream()
                    .map(iron -> iron.recorded().tag()).collect(Collectors.joining(", "))));
                return GroupRule.PREFER;
            }
            if (models.size() > 1) {
                notes.add("the irons prefer to share models: on record they are of " + String.join(" and ", models));
                return GroupRule.PREFER;
            }
        }
        return GroupRule.MUST;
    }
}
