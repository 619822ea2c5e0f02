package benchtwin.bench;

import benchtwin.book.BookProblem;
import benchtwin.book.BookView;
import benchtwin.book.JobActs;
import benchtwin.book.Standing;
import benchtwin.book.StateOf;
import benchtwin.book.Thing;
import benchtwin.book.ThingKind;
import benchtwin.club.Grip;
import benchtwin.club.Quantity;
import benchtwin.club.StepKind;
import benchtwin.match.ShopSettings;
import benchtwin.measure.Reading;
import benchtwin.mechanics.MechanicsDefaults;
import benchtwin.mechanics.SwingWeight;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * New grips for a player's whole bag: which grip of the stock goes on which club so that masses change least, and what it
 * does to total mass and swing weight.
 */
public final class Regrip {

    /**
     * One club.
     * @param club         its tag
     * @param old          the grip on it, if one is on record
     * @param fresh        the grip that goes on; empty when the stock has too few
     * @param massChangeG  what the club gains, g; empty where a grip was never weighed
     * @param swingChange  what its swing weight gains, points; empty where a grip was never weighed
     * @param swingAfter   its swing weight afterwards, points; empty where it was never read
     */
    public record Club(String club, Optional<Grip> old, Optional<Grip> fresh, OptionalDouble massChangeG,
                       OptionalDouble swingChange, OptionalDouble swingAfter) {
    }

    /**
     * The plan.
     * @param player      whose clubs
     * @param model       the model that goes on
     * @param clubs       in bag order
     * @param minutes     bench minutes of all
     * @param dryMinutes  how long the last one dries
     * @param notes       what was assumed or is missing
     */
    public record Plan(String player, String model, List<Club> clubs, double minutes, double dryMinutes, List<String> notes) {

        /**
         * Which grip goes on which club: a plan with another key is another plan.
         * @return one line of text
         */
        public String key() {
            return clubs.stream().map(club -> club.club() + "=" + club.fresh().map(Grip::tag).orElse("")).collect(Collectors.joining("; "));
        }

        /**
         * How many clubs get a grip.
         * @return 0 to all
         */
        public int served() {
            return (int) clubs.stream().filter(club -> club.fresh().isPresent()).count();
        }
    }

    /**
     * A model of grips in the stock.
     * @param name its name
     * @param free how many are neither promised, on a club nor retired
     */
    public record Model(String name, int free) {
    }

    private Regrip() {
    }

    /**
     * The models there are free grips of.
     * @param book the book
     * @return by name
     * @throws BadInput when the book cannot be read
     */
    public static List<Model> models(OpenBook book) throws BadInput {
        return book.read(view -> {
            Map<String, Integer> free = new TreeMap<>();
            free(view, byTag(StockInventory.grips(book, view))).forEach(grip -> free.merge(grip.model(), 1, Integer::sum));
            return free.entrySet().stream().map(model -> new Model(model.getKey(), model.getValue())).toList();
        });
    }

    /**
     * What a grip weighs, to stand behind its name.
     * @param grip the grip
     * @return with its unit and a blank before it; empty where it was never weighed
     */
    public static String mass(Grip grip) {
        return grip.massG().map(read -> ", " + ColumnText.value("mass_g", read.value())).orElse("");
    }

    private static Map<String, Grip> byTag(List<Grip> stock) {
        Map<String, Grip> grips = new LinkedHashMap<>();
        stock.forEach(grip -> grips.put(grip.tag(), grip));
        return grips;
    }

    /**
     * Plans new grips.
     * @param book   the book
     * @param player whose clubs
     * @param model  the model of the new grips
     * @param putters whether putters get one too; they mostly have grips of their own kind
     * @param shop   the workshop's times
     * @return the plan
     * @throws BadInput when there is no such player, or no free grip of that model
     */
    public static Plan of(OpenBook book, String player, String model, boolean putters, ShopSettings shop)
        throws BadInput {
        return book.read(view -> plan(OpenBook.need(view, ThingKind.PLAYER, player), StockInventory.grips(book, view), view, model, putters,
            shop));
    }

    private static Plan plan(Thing player, List<Grip> stock, BookView view, String model, boolean putters, ShopSettings shop)
        throws BookProblem {
        Map<String, Grip> grips = byTag(stock);
        List<Grip> free = free(view, grips).stream().filter(grip -> grip.model().equalsIgnoreCase(model)).toList();
        if (free.isEmpty()) {
            throw new BookProblem("no free grip of the model %s; there is %s".formatted(model,
                String.join(", ", grips.values().stream().map(Grip::model).distinct().toList())));
        }
        List<String> notes = new ArrayList<>();
        List<StateOf> clubs = BagGrid.carried(view, player).stream()
            .filter(club -> putters || !club.state().fact("category").equals(Optional.of("putter"))).toList();
        List<Optional<Grip>> old = clubs.stream().map(club -> club.state().fact("grip").map(grips::get)).toList();
        List<Optional<Grip>> fresh = GripMatching.nearest(old.stream().map(grip -> grip.flatMap(Grip::massG).map(Reading::value))
            .toList(), free);
        List<Club> planned = IntStream.range(0, clubs.size()).mapToObj(k -> club(clubs.get(k), old.get(k), fresh.get(k))).toList();
        long without = fresh.stream().filter(Optional::isEmpty).count();
        if (without > 0) {
            notes.add("%d of %d clubs get none: the stock has %d free grips of this model".formatted(without, clubs.size(),
                free.size()));
        }
        planned.stream().filter(club -> club.fresh().isPresent() && club.massChangeG().isEmpty()).forEach(club ->
            notes.add("%s: %s was never weighed, so what changes cannot be worked out".formatted(club.club(),
                club.old().isEmpty() ? "its grip is not on record, or" : "one of its grips")));
        double minutes = (clubs.size() - without) * shop.minutes().get(StepKind.REGRIP);
        return new Plan(player.tag(), free.get(0).model(), planned, minutes, shop.dryMinutes(), notes);
    }

    private static List<Grip> free(BookView view, Map<String, Grip> grips) {
        return view.states(ThingKind.GRIP).stream()
            .filter(grip -> grip.state().standing() == Standing.THERE && grip.state().promises().isEmpty())
            .map(grip -> grips.get(grip.thing().tag())).filter(grip -> grip != null)
            .sorted(Comparator.comparing(Grip::tag)).toList();
    }

    private static Club club(StateOf club, Optional<Grip> old, Optional<Grip> fresh) {
        OptionalDouble mass = OptionalDouble.empty();
        OptionalDouble swing = OptionalDouble.empty();
        OptionalDouble after = OptionalDouble.empty();
        if (old.flatMap(Grip::massG).isPresent() && fresh.flatMap(Grip::massG).isPresent()) {
            mass = OptionalDouble.of(massG(fresh.get()) - massG(old.get()));
            swing = OptionalDouble.of(swingChange(old.get(), fresh.get()));
            ClubValues.Value read = ClubValues.of(ClubReadings.current(club.state())).get(Quantity.SWING_WEIGHT);
            after = read == null ? after : OptionalDouble.of(read.value() + swing.getAsDouble());
        }
        return new Club(club.thing().tag(), old, fresh, mass, swing, after);
    }

    /**
     * What a club's swing weight gains by another grip, points: the new grip's moment about the fulcrum less the old one's. A
     * cap of another thickness moves everything else along the axis; that part is left out, a tenth of a point a millimetre.
     */
    static double swingChange(Grip old, Grip fresh) {
        return (momentOzIn(fresh) - momentOzIn(old)) / SwingWeight.POINT_OZ_IN;
    }

    private static double momentOzIn(Grip grip) {
        double cgMm = grip.cgMm().map(Reading::value).orElse(MechanicsDefaults.GRIP_CG_FRACTION
            * grip.lengthMm().orElse(MechanicsDefaults.GRIP_LENGTH_MM));
        return SwingWeight.momentOzIn(massG(grip), massG(grip) * cgMm, SwingWeight.FULCRUM_14_MM);
    }

    private static double massG(Grip grip) {
        return grip.massG().map(Reading::value).orElseThrow();
    }

    /**
     * Makes the plan a job that promises its grips.
     * @param book the book
     * @param plan the plan
     * @param due  by when
     * @return the job's number
     * @throws BadInput when a grip is not free any more
     */
    public static String promise(OpenBook book, Plan plan, Optional<String> due) throws BadInput {
        List<JobPlan.Club> clubs = plan.clubs().stream().filter(club -> club.fresh().isPresent()).map(club -> new JobPlan.Club(
            club.club(), Map.of("grip", club.fresh().get().tag()), new JobPlan.Joins(false, false, false),
            List.of(task(club.fresh().get(), plan)), Map.of(), List.of(), Optional.empty(), Map.of(),
            club.swingAfter().isPresent() ? Map.of(Quantity.SWING_WEIGHT, club.swingAfter().getAsDouble()) : Map.of(), Map.of(), 0))
            .toList();
        JobBook.Order order = new JobBook.Order(JobBook.What.CHANGE, Optional.of(plan.player()), Optional.empty(), due, "regrip");
        Map<String, String> facts = new TreeMap<>(JobBook.facts(book, order));
        return book.write("bag regrip", entry -> {
            JobBook.complete(entry, order, facts);
            JobActs acts = new JobActs(entry);
            Thing job = acts.open(facts, order.words());
            List<JobActs.Needed> needed = new ArrayList<>();
            for (JobPlan.Club club : clubs) {
                needed.add(new JobActs.Needed(OpenBook.need(entry, ThingKind.GRIP, club.build().get("grip")), 1));
            }
            acts.plan(job, new JobPlan(clubs).facts(), needed);
            return job.tag();
        });
    }

    private static JobPlan.Task task(Grip grip, Plan plan) {
        return new JobPlan.Task("Take the grip off, clean the butt, mount grip %s.".formatted(grip.tag()), "new grip",
            Optional.of(StepKind.REGRIP), OptionalDouble.of(plan.minutes() / plan.served()));
    }
}
