package benchtwin.bench;

import benchtwin.club.AddedMasses;
import benchtwin.club.AngleReading;
import benchtwin.club.Category;
import benchtwin.club.Grip;
import benchtwin.club.Hand;
import benchtwin.club.Head;
import benchtwin.club.Quantity;
import benchtwin.club.Shaft;
import benchtwin.club.Sleeve;
import benchtwin.club.Target;
import benchtwin.club.Wanted;
import benchtwin.match.Favourite;
import benchtwin.match.FavouriteOfRecord;
import benchtwin.match.Keep;
import benchtwin.match.Match;
import benchtwin.match.MatchAnswer;
import benchtwin.match.MatchRequest;
import benchtwin.match.Reranking;
import benchtwin.match.ShopSettings;
import benchtwin.match.Tolerances;
import benchtwin.mechanics.Assemblies;
import benchtwin.mechanics.FrequencyCondition;
import benchtwin.mechanics.GripFactors;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;

/** Finds the twin of a recorded club, or of a target written out. */
public final class MatchService {

    private MatchService() {
    }

    /**
     * What is asked.
     * @param keep             what the twin keeps
     * @param otherModels      whether other models may be used
     * @param top              how many results
     * @param tolerances       tolerances and weights
     * @param shop             workshop settings
     * @param mostReadyMinutes minutes until the club is due
     * @param readings         what heads screwed on were read at, by tag; those are ranked by what they measured
     * @param without          tags of heads and shafts that are left out, in any case
     */
    public record Wish(Keep keep, boolean otherModels, int top, Tolerances tolerances, ShopSettings shop,
                       OptionalDouble mostReadyMinutes, Map<String, Map<Quantity, Double>> readings, Set<String> without) {
    }

    /**
     * A target written out instead of a recorded club.
     * @param category of the head
     * @param number   of the head, where it has one
     * @param hand     of the head
     * @param reading  how its angles are read
     * @param values   wanted values, length in mm along the axis
     * @param shaft    the shaft to keep, by tag
     * @param head     the head to keep, by tag
     * @param grip     the grip, by tag
     */
    public record WrittenTarget(Category category, Optional<String> number, Hand hand, AngleReading reading,
                                Map<Quantity, Double> values, Optional<String> shaft, Optional<String> head,
                                Optional<String> grip) {
    }

    /**
     * The twin of a recorded club.
     * @param workshop the stock
     * @param club     the club's tag
     * @param wish     what is asked
     * @return the answer
     * @throws BadInput when the club or a part it needs is not on record
     */
    public static MatchAnswer twinOf(Workshop workshop, String club, Wish wish) throws BadInput {
        return answer(workshop, favourite(workshop, club, wish.tolerances()), wish);
    }

    /**
     * What a twin of a recorded club is held against.
     * @param workshop   the stock
     * @param club       the club's tag
     * @param tolerances tolerances and weights
     * @return the club with its target
     * @throws BadInput when it is not on record, or nothing of it was read
     */
    public static Favourite favourite(Workshop workshop, String club, Tolerances tolerances) throws BadInput {
        try {
            return FavouriteOfRecord.of(workshop.club(club), workshop.inventory(), tolerances);
        } catch (FavouriteOfRecord.NothingToMatch nothing) {
            throw new BadInput(nothing.getMessage());
        }
    }

    /**
     * A build nearest a target written out.
     * @param workshop the stock
     * @param written  the target
     * @param wish     what is asked
     * @return the answer
     * @throws BadInput when a part it names is not on record
     */
    public static MatchAnswer nearest(Workshop workshop, WrittenTarget written, Wish wish) throws BadInput {
        Optional<Shaft> shaft = written.shaft().isPresent() ? Optional.of(workshop.shaft(written.shaft().get()))
            : Optional.empty();
        Optional<Head> head = written.head().isPresent()
            ? Optional.of(workshop.head(written.head().get())) : Optional.empty();
        String gripTag = written.grip().or(() -> shaft.flatMap(Shaft::gripOn)).orElseThrow(() ->
            new BadInput("a target written out needs the grip it is built with" + workshop.asks(ToDo.WITH_GRIP)));
        Optional<Grip> grip = Optional.of(workshop.grip(gripTag));
        Optional<Sleeve> sleeve = shaft.flatMap(Shaft::sleeveOn).flatMap(workshop.inventory()::sleeve);
        EnumMap<Quantity, Wanted> wanted = new EnumMap<>(Quantity.class);
        written.values().forEach((quantity, value) -> wanted.put(quantity, wish.tolerances().wanted(quantity, value)));
        if (wanted.values().stream().noneMatch(w -> w.weight() > 0)) {
            throw new BadInput("a target needs at least one quantity that ranks, such as loft, lie or frequency");
        }
        Favourite favourite = new Favourite("the target", Optional.empty(), written.category(), written.number(),
            written.hand(), head, shaft, sleeve, Optional.empty(), grip, AddedMasses.ONE_LAYER, new Target(written.reading(), wanted),
            FrequencyCondition.BARE, written.reading(), Optional.empty(),
            new Assemblies(GripFactors.learn(workshop.inventory().shafts()).of(Optional.empty())), List.of());
        return answer(workshop, favourite, wish);
    }

    private static MatchAnswer answer(Workshop workshop, Favourite favourite, Wish wish) throws BadInput {
        if (wish.keep() == Keep.SHAFT && favourite.shaft().isEmpty()) {
            throw new BadInput("the shaft of %s is not on record, so it cannot be kept; %s, or record it"
                .formatted(favourite.name(), workshop.asks(ToDo.KEEP_NONE)));
        }
        if (wish.keep() == Keep.HEAD && favourite.head().isEmpty()) {
            throw new BadInput("the head of %s is not on record, so it cannot be kept; %s, or record it"
                .formatted(favourite.name(), workshop.asks(ToDo.KEEP_NONE)));
        }
        for (String tag : wish.readings().keySet()) {
            workshop.head(tag);
        }
        Set<String> leftOut = leftOut(workshop, favourite, wish);
        MatchAnswer answer = Match.run(new MatchRequest(favourite, workshop.inventory().without(leftOut), wish.keep(),
            wish.otherModels(), Math.max(wish.top(), wish.readings().size()), wish.shop(), wish.mostReadyMinutes()));
        answer = leftOut.isEmpty() ? answer : answer.alsoRuledOut("left out by hand", leftOut.size());
        return wish.readings().isEmpty() ? answer : Reranking.byReadings(answer, wish.readings());
    }

    /** The tags as the stock writes them; a part the twin keeps cannot be left out. */
    private static Set<String> leftOut(Workshop workshop, Favourite favourite, Wish wish) throws BadInput {
        Set<String> tags = new TreeSet<>();
        for (String typed : wish.without()) {
            String tag = workshop.headOrShaft(typed);
            boolean kept = wish.keep() == Keep.SHAFT && favourite.shaft().map(Shaft::tag).equals(Optional.of(tag))
                || wish.keep() == Keep.HEAD && favourite.head().map(Head::tag).equals(Optional.of(tag));
            if (kept) {
                throw new BadInput("%s is what the twin keeps and cannot be left out".formatted(tag));
            }
            tags.add(tag);
        }
        return tags;
    }
}
