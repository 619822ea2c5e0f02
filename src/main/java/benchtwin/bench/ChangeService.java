package benchtwin.bench;

import benchtwin.club.AngleReading;
import benchtwin.club.ClubRow;
import benchtwin.club.ClubState;
import benchtwin.club.Grip;
import benchtwin.club.Quantity;
import benchtwin.club.RecordedClub;
import benchtwin.match.Change;
import benchtwin.match.ChangeAnswer;
import benchtwin.match.ChangeRequest;
import benchtwin.match.Favourite;
import benchtwin.match.FavouriteOfRecord;
import benchtwin.match.ShopSettings;
import benchtwin.match.Tolerances;
import benchtwin.measure.Reading;
import java.time.LocalDate;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** Every way to change a recorded club. */
public final class ChangeService {

    /** The quantities a change can ask for, in showing order. */
    public static final List<Quantity> ASKABLE = List.of(Quantity.LOFT, Quantity.LIE, Quantity.FACE, Quantity.LENGTH,
        Quantity.SWING_WEIGHT, Quantity.FREQUENCY, Quantity.TOTAL_MASS);

    private ChangeService() {
    }

    /**
     * An amount asked for.
     * @param value    in the quantity's unit
     * @param relative whether it is a change from what the club measures now
     */
    public record Amount(double value, boolean relative) {

        double from(double now) {
            return relative ? now + value : value;
        }
    }

    /**
     * What is asked.
     * @param amounts     by quantity
     * @param gripTag     another grip, by tag
     * @param gripMass    another grip, by mass in g
     * @param reading     in which reading a wood's loft is asked for and shown; default as the club was read
     * @param otherModels whether heads and shafts of other models may be used
     * @param top         how many ways
     * @param tolerances  tolerances and weights
     * @param shop        workshop settings
     */
    public record Wish(Map<Quantity, Amount> amounts, Optional<String> gripTag, Optional<Amount> gripMass,
                       Optional<AngleReading> reading, boolean otherModels, int top, Tolerances tolerances, ShopSettings shop) {
    }

    /**
     * The ways, with when the club was last measured.
     * @param change     the ways
     * @param measuredOn the day its last sound readings were taken
     */
    public record Answer(ChangeAnswer change, LocalDate measuredOn) {
    }

    /**
     * Finds the ways.
     * @param workshop the stock
     * @param tag      the club's tag
     * @param wish     what is asked
     * @return the answer
     * @throws BadInput when the club is not on record or not sound, or what is asked cannot be worked out
     */
    public static Answer ways(Workshop workshop, String tag, Wish wish) throws BadInput {
        RecordedClub club = workshop.club(tag);
        ClubState state = club.newest().state();
        if (!state.isSound()) {
            throw new BadInput("club %s is %s: a change starts from a sound club; %s"
                .formatted(club.tag(), state.word(), workshop.asks(ToDo.TWIN_INSTEAD)));
        }
        try {
            Favourite favourite = read(wish, FavouriteOfRecord.of(club, workshop.inventory(), wish.tolerances()));
            Map<Quantity, Double> now = Change.now(favourite);
            Map<Quantity, Double> wished = new EnumMap<>(Quantity.class);
            for (Map.Entry<Quantity, Amount> entry : wish.amounts().entrySet()) {
                wished.put(entry.getKey(), wished(entry.getKey(), entry.getValue(), now, favourite));
            }
            Optional<Grip> grip = grip(workshop, wish, favourite);
            OptionalDouble gripMassG = gripMassG(wish, favourite);
            ClubRow row = club.lastSound().orElseThrow();
            return new Answer(Change.run(new ChangeRequest(favourite, wished, grip, gripMassG, workshop.inventory(),
                wish.shop(), wish.tolerances(), wish.otherModels(), wish.top())), row.measuredOn());
        } catch (FavouriteOfRecord.NothingToMatch | Change.CannotChange cannot) {
            throw new BadInput(cannot.getMessage());
        }
    }

    private static Favourite read(Wish wish, Favourite club) throws BadInput {
        if (wish.reading().isEmpty()) {
            return club;
        }
        return club.readAs(wish.reading().get()).orElseThrow(() -> new BadInput(club.reading().isWood()
            ? "%s lacks a loft, lie or face reading, or cannot be given %s".formatted(club.name(),
                wish.reading().get().word())
            : "%s is read by its leading edge; soled and square are a wood's readings".formatted(club.name())));
    }

    private static double wished(Quantity quantity, Amount amount, Map<Quantity, Double> now, Favourite club)
        throws BadInput {
        if (quantity == Quantity.FACE && !club.reading().isWood()) {
            throw new BadInput("%s is read by its leading edge and has no face angle: ask for loft or lie"
                .formatted(club.name()));
        }
        Double value = now.get(quantity);
        if (value == null) {
            throw new BadInput("the %s of %s was never read and cannot be worked out from its parts: read it first"
                .formatted(quantity.word().replace('-', ' '), club.name()));
        }
        double after = amount.from(value);
        AskedRange.check(quantity, after);
        return after;
    }

    private static Optional<Grip> grip(Workshop workshop, Wish wish, Favourite club) throws BadInput {
        if (wish.gripTag().isEmpty()) {
            return Optional.empty();
        }
        Grip grip = workshop.grip(wish.gripTag().get());
        if (grip.massG().isEmpty()) {
            throw new BadInput("grip %s was never weighed, so what it does to a club cannot be worked out: weigh it"
                .formatted(grip.tag()));
        }
        if (club.grip().map(Grip::tag).equals(Optional.of(grip.tag()))) {
            throw new BadInput("grip %s is the one on %s".formatted(grip.tag(), club.name()));
        }
        return Optional.of(grip);
    }

    private static OptionalDouble gripMassG(Wish wish, Favourite club) throws BadInput {
        if (wish.gripMass().isEmpty()) {
            return OptionalDouble.empty();
        }
        Optional<Reading> now = club.grip().flatMap(Grip::massG);
        if (now.isEmpty()) {
            throw new BadInput("the grip of %s was never weighed, so a change of it cannot be worked out".formatted(
                club.name()));
        }
        double grams = wish.gripMass().get().from(now.get().value());
        if (!(grams >= 10 && grams <= 300)) {
            throw new BadInput("a grip of %s g: expected 10 to 300 g".formatted(Json.rounded(grams)));
        }
        return OptionalDouble.of(grams);
    }
}
