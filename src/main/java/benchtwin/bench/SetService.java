package benchtwin.bench;

import benchtwin.club.Grip;
import benchtwin.club.Head;
import benchtwin.club.Inventory;
import benchtwin.club.SetTargets;
import benchtwin.club.Shaft;
import benchtwin.match.ShopSettings;
import benchtwin.sets.Alikeness;
import benchtwin.sets.PlanLimits;
import benchtwin.sets.PlanProgress;
import benchtwin.sets.SetAnswer;
import benchtwin.sets.SetPin;
import benchtwin.sets.SetPlanner;
import benchtwin.sets.SetRequest;
import benchtwin.stock.SetTargetWriter;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import java.util.stream.Stream;

/** Plans sets from one stock. */
public final class SetService {

    private SetService() {
    }

    /**
     * A choice fixed by hand, as it was typed.
     * @param club  the club, with its player before a slash where more than one has such a club
     * @param head  tag of its head, if that is fixed
     * @param shaft tag of its shaft, if that is fixed
     */
    public record Pin(String club, Optional<String> head, Optional<String> shaft) {
    }

    /**
     * What is asked.
     * @param players whose sets are planned, in any case of letters; none for everybody's
     * @param pins    choices fixed by hand
     * @param banned  tags of heads and shafts that may not be used
     * @param grip    tag of the grip every club gets
     * @param shop    workshop settings
     */
    public record Wish(List<String> players, List<Pin> pins, List<String> banned, Optional<String> grip, ShopSettings shop) {
    }

    /**
     * A plan with what was asked.
     * @param request what was asked
     * @param limits  when the search was to end
     * @param plan    the plan
     */
    public record Answer(SetRequest request, PlanLimits limits, SetAnswer plan) {

        /**
         * The clubs that were planned as a file.
         * @return what reads back as the same clubs
         */
        public String targetsText() {
            return SetTargetWriter.clubs(request.targets());
        }

        /**
         * Their lines as a file.
         * @return what reads back as the same lines
         */
        public String linesText() {
            return SetTargetWriter.lines(request.targets());
        }
    }

    /**
     * Turns a wish into what can be planned.
     * @param workshop the stock
     * @param sets     the sets wished for
     * @param wish     what is asked
     * @return the request
     * @throws BadInput with everything that cannot be as asked
     */
    public static SetRequest request(Workshop workshop, WantedSets sets, Wish wish) throws BadInput {
        SetTargets targets = ofPlayers(workshop, sets.targets(), wish.players());
        Optional<Grip> grip = wish.grip().isEmpty() ? Optional.empty() : Optional.of(weighed(workshop.grip(wish.grip().get())));
        Set<String> banned = new LinkedHashSet<>();
        List<String> unknown = new ArrayList<>();
        for (String tag : wish.banned()) {
            banned(workshop.inventory(), tag).ifPresentOrElse(banned::add, () -> unknown.add(
                "%s: no head or shaft has that tag; nearest are %s".formatted(workshop.asks(ToDo.BAN, tag),
                    NearNames.of(tag, tags(workshop.inventory()).toList()))));
        }
        if (!unknown.isEmpty()) {
            throw new BadInput(unknown);
        }
        List<SetPin> pins = new SetPins(workshop, targets, banned, grip, wish.shop()).of(wish.pins());
        return new SetRequest(targets, workshop.inventory(), wish.shop(), grip, pins, banned, Alikeness.DEFAULT);
    }

    /**
     * Plans.
     * @param request  what is asked
     * @param limits   when the search ends
     * @param progress told of every better plan
     * @param stop     once true, the best plan so far is the answer
     * @return the answer
     */
    public static Answer plan(SetRequest request, PlanLimits limits, Consumer<PlanProgress> progress, BooleanSupplier stop) {
        return new Answer(request, limits, SetPlanner.run(request, limits, progress, stop));
    }

    /** A player's set stays whole, so what its lines give does not change. */
    private static SetTargets ofPlayers(Workshop workshop, SetTargets targets, List<String> names) throws BadInput {
        if (names.isEmpty()) {
            return targets;
        }
        Set<String> players = new LinkedHashSet<>();
        List<String> unknown = new ArrayList<>();
        for (String name : names) {
            List<String> meant = targets.players().stream().filter(name.strip()::equalsIgnoreCase).toList();
            players.addAll(meant);
            if (meant.isEmpty()) {
                unknown.add(workshop.asks(ToDo.PLAYERS) + "no set is wanted for \"%s\"; nearest are %s".formatted(name.strip(),
                    NearNames.of(name.strip(), targets.players())));
            }
        }
        if (!unknown.isEmpty()) {
            throw new BadInput(unknown);
        }
        return new SetTargets(targets.clubs().stream().filter(club -> players.contains(club.player())).toList(),
            targets.lines());
    }

    private static Grip weighed(Grip grip) throws BadInput {
        if (grip.massG().isEmpty()) {
            throw new BadInput("grip %s was never weighed, so no club with it can be worked out: weigh it, or name another"
                .formatted(grip.tag()));
        }
        return grip;
    }

    private static Optional<String> banned(Inventory inventory, String tag) {
        return tags(inventory).filter(tag::equals).findFirst()
            .or(() -> tags(inventory).filter(tag::equalsIgnoreCase).findFirst());
    }

    private static Stream<String> tags(Inventory inventory) {
        return Stream.concat(inventory.heads().stream().map(Head::tag), inventory.shafts().stream().map(Shaft::tag));
    }
}
