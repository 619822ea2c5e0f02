package benchtwin.bench;

import benchtwin.club.AddedMasses;
import benchtwin.club.Category;
import benchtwin.club.Grip;
import benchtwin.club.Head;
import benchtwin.club.HeadCondition;
import benchtwin.club.Quantity;
import benchtwin.club.Shaft;
import benchtwin.club.ShaftMaterial;
import benchtwin.club.Target;
import benchtwin.club.Wanted;
import benchtwin.match.Favourite;
import benchtwin.match.FavouriteOfRecord;
import benchtwin.match.ShaftAnswer;
import benchtwin.match.ShaftChoice;
import benchtwin.match.ShaftRequest;
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

/** Chooses shafts from the drawer for a build. */
public final class ShaftsService {

    private ShaftsService() {
    }

    /**
     * What is asked.
     * @param club       the recorded club whose stiffness is carried over, by tag
     * @param head       the head of the new build, by tag; default the club's own
     * @param grip       the grip, by tag; default the club's own
     * @param written    values written out; lengths in mm along the axis
     * @param clampMm    clamp in which a frequency written out is read, mm; default the club's, else the usual one
     * @param overGrip   whether a frequency written out is read over the grip
     * @param headAddedG mass at the head beside what its ports hold, g; default what brings the swing weight back
     * @param material   the only material wanted
     * @param sameModel  whether only shafts of the old shaft's model are wanted
     * @param assumeClampMm the clamp in which readings without one are taken to have been read, mm; empty: they are not used
     * @param picking    how many are picked and how
     * @param tolerances tolerances and weights
     * @param shop       workshop settings
     */
    public record Wish(Optional<String> club, Optional<String> head, Optional<String> grip, Map<Quantity, Double> written,
                       OptionalDouble clampMm, boolean overGrip, OptionalDouble headAddedG,
                       Optional<ShaftMaterial> material, boolean sameModel, OptionalDouble assumeClampMm,
                       ShaftRequest.Picking picking,
                       Tolerances tolerances, ShopSettings shop) {
    }

    /**
     * Chooses.
     * @param workshop the stock
     * @param wish     what is asked
     * @return the answer
     * @throws BadInput when a part is not on record or what is asked cannot be worked out
     */
    public static ShaftAnswer choose(Workshop workshop, Wish wish) throws BadInput {
        if (wish.assumeClampMm().isEmpty()) {
            return choose(workshop, wish, Set.of());
        }
        AssumedClamp.Assumed assumed = AssumedClamp.of(workshop.inventory(), wish.assumeClampMm().getAsDouble());
        return choose(new Workshop(assumed.inventory(), workshop.remarks(), workshop.way()), wish, assumed.marked());
    }

    private static ShaftAnswer choose(Workshop workshop, Wish wish, Set<String> assumed) throws BadInput {
        Favourite club = club(workshop, wish);
        Head head = head(workshop, wish, club);
        for (Map.Entry<Quantity, Double> entry : wish.written().entrySet()) {
            AskedRange.check(entry.getKey(), entry.getValue());
        }
        ShaftRequest request = new ShaftRequest(club, head, workshop.inventory(), wish.shop(), wish.tolerances(),
            wish.written(), wish.headAddedG(), wish.material(), wish.sameModel(), assumed, wish.picking());
        if (wish.sameModel() && club.shaft().isEmpty()) {
            throw new BadInput("there is no old shaft on record whose model could be asked for");
        }
        if (request.weighted().wanted(Quantity.FREQUENCY, 0).weight() == 0) {
            throw new BadInput("shafts are chosen for their stiffness: give frequency a weight above 0");
        }
        try {
            return ShaftChoice.run(request);
        } catch (ShaftChoice.NothingToChooseFor nothing) {
            ToDo what = nothing.missing() == Quantity.LENGTH ? ToDo.NAME_LENGTH : request.club().old().isPresent()
                || request.club().shaft().isPresent() ? ToDo.CARRY_STIFFNESS : ToDo.NAME_STIFFNESS;
            throw new BadInput("%s: %s".formatted(nothing.getMessage(), workshop.asks(what)));
        }
    }

    private static Favourite club(Workshop workshop, Wish wish) throws BadInput {
        Optional<Grip> grip = wish.grip().isPresent() ? Optional.of(workshop.grip(wish.grip().get())) : Optional.empty();
        if (wish.club().isEmpty()) {
            return written(workshop, wish, grip);
        }
        try {
            Favourite club = FavouriteOfRecord.of(workshop.club(wish.club().get()), workshop.inventory(), wish.tolerances());
            if (grip.isEmpty() && club.grip().isEmpty()) {
                throw new BadInput("the grip of %s is not on record: name the one it is built with%s"
                    .formatted(club.name(), workshop.asks(ToDo.NAME_GRIP)));
            }
            return club.gripped(weighed(grip.or(club::grip).orElseThrow()), condition(wish, club.condition()));
        } catch (FavouriteOfRecord.NothingToMatch nothing) {
            throw new BadInput(nothing.getMessage());
        }
    }

    private static Favourite written(Workshop workshop, Wish wish, Optional<Grip> grip) throws BadInput {
        if (wish.head().isEmpty() || grip.isEmpty()) {
            throw new BadInput("a target written out needs the head and the grip of the build" + workshop.asks(ToDo.NAME_BOTH));
        }
        if (!wish.written().containsKey(Quantity.FREQUENCY)) {
            throw new BadInput("no stiffness is named: " + workshop.asks(ToDo.NAME_STIFFNESS));
        }
        Head head = workshop.head(wish.head().get());
        EnumMap<Quantity, Wanted> wanted = new EnumMap<>(Quantity.class);
        wish.written().forEach((quantity, value) -> wanted.put(quantity, new Wanted(value, 1, 1)));
        return new Favourite("the target", Optional.empty(), head.category(), head.number(), head.hand(), Optional.empty(),
            Optional.<Shaft>empty(), Optional.empty(), Optional.empty(), weighed(grip.get()), AddedMasses.ONE_LAYER,
            new Target(head.angles().reading(), wanted), condition(wish, FrequencyCondition.BARE),
            head.angles().reading(), Optional.empty(),
            new Assemblies(GripFactors.learn(workshop.inventory().shafts()).of(Optional.empty())), List.of());
    }

    private static FrequencyCondition condition(Wish wish, FrequencyCondition usual) {
        return wish.written().containsKey(Quantity.FREQUENCY) && (wish.clampMm().isPresent() || wish.overGrip())
            ? new FrequencyCondition(wish.clampMm().orElse(FrequencyCondition.BARE.clampMm()), wish.overGrip()) : usual;
    }

    private static Optional<Grip> weighed(Grip grip) throws BadInput {
        if (grip.massG().isEmpty()) {
            throw new BadInput("grip %s was never weighed, so no club with it can be worked out: weigh it, or name another"
                .formatted(grip.tag()));
        }
        return Optional.of(grip);
    }

    private static Head head(Workshop workshop, Wish wish, Favourite club) throws BadInput {
        if (wish.head().isEmpty() && club.head().isEmpty()) {
            throw new BadInput("the head of %s is not on record: name the one it is built with%s"
                .formatted(club.name(), workshop.asks(ToDo.NAME_HEAD)));
        }
        Head head = wish.head().isPresent() ? workshop.head(wish.head().get()) : club.head().orElseThrow();
        String otherwise = wish.head().isPresent() ? "name another" : "name the one it is built with" + workshop.asks(ToDo.NAME_HEAD);
        if (head.condition() == HeadCondition.CRACKED) {
            throw new BadInput("head %s is cracked: %s".formatted(head.tag(), otherwise));
        }
        if (head.massG().isEmpty()) {
            throw new BadInput("head %s was never weighed, so no club with it can be worked out: weigh it, or %s"
                .formatted(head.tag(), otherwise));
        }
        boolean seatUnknown = head.seat().isPresent() && head.seat().get().toGroundMm().isEmpty();
        boolean boreUnknown = head.bore().isPresent() && head.bore().get().toGroundMm().isEmpty();
        if (seatUnknown || boreUnknown) {
            throw new BadInput("the %s of head %s to the ground was never measured, so a length cannot be worked out"
                .formatted(seatUnknown ? "seat" : "bottom of the bore", head.tag()));
        }
        if (head.category() == Category.PUTTER) {
            throw new BadInput("head %s is a putter's; shafts are chosen by frequency for woods and irons".formatted(
                head.tag()));
        }
        return head;
    }
}
