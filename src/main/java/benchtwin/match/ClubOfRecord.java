package benchtwin.match;

import benchtwin.club.Category;
import benchtwin.club.ClubRow;
import benchtwin.club.ClubState;
import benchtwin.club.GroupRule;
import benchtwin.club.Head;
import benchtwin.club.HeadAngles;
import benchtwin.club.Inventory;
import benchtwin.club.Keeping;
import benchtwin.club.LengthMethod;
import benchtwin.club.Quantity;
import benchtwin.club.RecordedClub;
import benchtwin.club.Shaft;
import benchtwin.club.Target;
import benchtwin.club.Wanted;
import benchtwin.club.WantedClub;
import benchtwin.measure.Reading;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Pattern;

/**
 * A recorded club as something to be built, before its place in the set is known.
 * @param recorded      the club
 * @param row           its last sound reading
 * @param target        what that says, without torque, frequency on the bare butt
 * @param headModel     model of its head, if that is in the files
 * @param shaftModel    model of its shaft, if that is in the files
 * @param carriedToBare whether its frequency was read otherwise
 */
record ClubOfRecord(RecordedClub recorded, ClubRow row, Target target, Optional<String> headModel,
                    Optional<String> shaftModel, boolean carriedToBare) {

    /** By category, then number where that is a figure, then loft: the order in which a set stands. */
    static final Comparator<ClubOfRecord> ORDER = Comparator
        .<ClubOfRecord, Category>comparing(club -> club.recorded.category())
        .thenComparingInt(ClubOfRecord::figure).thenComparingDouble(ClubOfRecord::loftDeg);

    private static final Pattern FIGURE = Pattern.compile("\\d{1,3}");
    private static final double CPM_STEP = 0.01;
    private static final double LENGTH_STEP_MM = 0.01;

    /** What can be used of a club; empty with a note why when that is nothing. */
    static Optional<ClubOfRecord> read(RecordedClub club, Inventory inventory, Tolerances tolerances, List<String> notes) {
        String tag = club.tag();
        if (club.category() == Category.IRON && club.number().isEmpty()) {
            notes.add("%s is left out: an iron without a number, by which a head could be chosen".formatted(tag));
            return Optional.empty();
        }
        Favourite favourite;
        try {
            favourite = FavouriteOfRecord.of(club, inventory, tolerances);
        } catch (FavouriteOfRecord.NothingToMatch nothing) {
            notes.add("%s is left out: %s".formatted(tag, nothing.getMessage()));
            return Optional.empty();
        }
        ClubRow row = club.lastSound().orElseThrow();
        favourite.notes().stream().filter(note -> !note.equals(FavouriteOfRecord.NOTHING_CARRIED))
            .forEach(note -> notes.add("%s: %s".formatted(tag, note)));
        if (row.state() == ClubState.BACKUP) {
            notes.add("%s is on record as a backup".formatted(tag));
        }
        Map<Quantity, Wanted> wanted = wanted(favourite, row, tag, notes);
        if (wanted.values().stream().noneMatch(each -> each.weight() > 0)) {
            notes.add("%s is left out: nothing that was read of it can be wanted of a set".formatted(tag));
            return Optional.empty();
        }
        boolean carried = wanted.containsKey(Quantity.FREQUENCY) && !BareFrequency.isBare(favourite.condition());
        return Optional.of(new ClubOfRecord(club, row, new Target(favourite.reading(), wanted),
            favourite.head().map(Head::model), favourite.shaft().map(Shaft::model), carried));
    }

    private static Map<Quantity, Wanted> wanted(Favourite favourite, ClubRow row, String tag, List<String> notes) {
        EnumMap<Quantity, Wanted> wanted = new EnumMap<>(favourite.target().wanted());
        wanted.remove(Quantity.TORQUE);
        if (row.lengthMethod() == LengthMethod.RULES60) {
            wanted.computeIfPresent(Quantity.LENGTH, (quantity, length) -> stepped(length, length.value(), LENGTH_STEP_MM));
        }
        Wanted frequency = wanted.get(Quantity.FREQUENCY);
        if (frequency != null && !BareFrequency.isBare(favourite.condition())) {
            OptionalDouble bare = BareFrequency.cpm(favourite, frequency.value());
            if (bare.isPresent()) {
                wanted.put(Quantity.FREQUENCY, stepped(frequency, bare.getAsDouble(), CPM_STEP));
            } else {
                wanted.remove(Quantity.FREQUENCY);
                notes.add(("%s: its frequency was read in a clamp of %.0f mm and cannot be carried to the usual one without its "
                    + "parts: left free").formatted(tag, favourite.condition().clampMm()));
            }
        }
        return wanted;
    }

    /** A worked-out value as a person would write it. */
    private static Wanted stepped(Wanted like, double value, double step) {
        double steps = Math.round(1 / step);
        return new Wanted(Math.round(value * steps) / steps, like.tolerance(), like.weight());
    }

    /** Its usual name within a set. */
    String name() {
        Optional<String> number = recorded.number();
        return switch (recorded.category()) {
            case DRIVER -> "driver";
            case FAIRWAY -> number.map(of -> of + "-wood").orElse("fairway wood");
            case HYBRID -> number.map(of -> of + "-hybrid").orElse("hybrid");
            case IRON -> number.map(of -> FIGURE.matcher(of).matches() ? of + "-iron" : of).orElse("iron");
            case WEDGE -> number.orElse("wedge");
            case PUTTER -> "putter";
        };
    }

    private int figure() {
        return recorded.number().filter(number -> FIGURE.matcher(number).matches()).map(Integer::parseInt)
            .orElse(Integer.MAX_VALUE);
    }

    private double loftDeg() {
        return row.angles().flatMap(HeadAngles::loftDeg).map(Reading::value).orElse(Double.POSITIVE_INFINITY);
    }

    WantedClub wanted(String name, Optional<String> group, GroupRule rule) {
        Keeping note = new Keeping(Optional.empty(), Optional.empty(),
            Optional.of("as %s on %s".formatted(recorded.tag(), row.measuredOn())), Map.of());
        return new WantedClub(recorded.player(), name, recorded.category(), recorded.number(), recorded.hand(), group, rule,
            Optional.of(target), Optional.empty(), Optional.empty(), WantedClub.DEFAULT_PRIORITY, Optional.empty(), note);
    }
}
