package benchtwin.bench;

import benchtwin.book.BookEntry;
import benchtwin.book.BookProblem;
import benchtwin.book.EventKind;
import benchtwin.book.JobActs;
import benchtwin.book.NewEvent;
import benchtwin.book.PartActs;
import benchtwin.book.Promise;
import benchtwin.book.State;
import benchtwin.book.Thing;
import benchtwin.book.ThingKind;
import benchtwin.club.AngleReading;
import benchtwin.club.Grip;
import benchtwin.club.Quantity;
import benchtwin.club.Target;
import benchtwin.club.Wanted;
import benchtwin.match.ChangeAnswer;
import benchtwin.match.Favourite;
import benchtwin.match.Ranked;
import benchtwin.match.ShaftAnswer;
import benchtwin.match.ShaftPick;
import benchtwin.match.Way;
import benchtwin.sets.ClubOfSet;
import benchtwin.sets.PlayerSet;
import benchtwin.sets.SetAnswer;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;

/** Turns an answer into a job: takes it on, keeps its plan and promises its parts, all in one act. */
public final class JobPlanning {

    private static final Map<String, ThingKind> KINDS = Map.of("head", ThingKind.HEAD, "shaft", ThingKind.SHAFT, "grip",
        ThingKind.GRIP);

    /**
     * Which job a plan is for.
     * @param number a job that was taken on before; without it a new one is taken on
     * @param order  what is known of a new one
     */
    public record For(Optional<String> number, JobBook.Order order) {
    }

    /**
     * What is planned of one club.
     * @param name       the club's tag, or what the set calls it
     * @param option     its parts and plan
     * @param grip       a grip from the stock it gets, if one was chosen
     * @param tapeLayers layers of tape under the grip afterwards, where that is said
     * @param reading    how its predicted angles are read, where that is said
     * @param inHand     parts that are the club's own already, by kind, and so need no promise
     * @param wanted     what was wanted of it, with tolerances
     */
    public record PlannedClub(String name, Ranked option, Optional<Grip> grip, OptionalDouble tapeLayers,
                              Optional<AngleReading> reading, Map<String, String> inHand, Map<Quantity, Wanted> wanted) {
    }

    private JobPlanning() {
    }

    /**
     * A twin's own parts: what the old club has and the twin keeps.
     * @param name      the club's tag
     * @param option    the option chosen
     * @param favourite the old club
     * @return what is planned
     */
    public static PlannedClub twin(String name, Ranked option, Favourite favourite) {
        return new PlannedClub(name, option, Optional.empty(), OptionalDouble.of(favourite.tapeLayers()),
            Optional.of(favourite.reading()), partsOf(favourite), favourite.target().wanted());
    }

    /**
     * A build from a target written out: there is no old club, so all of it comes from the stock.
     * @param option    the option chosen
     * @param favourite the target
     * @return what is planned
     */
    public static PlannedClub written(Ranked option, Favourite favourite) {
        return new PlannedClub(favourite.name(), option, Optional.empty(), OptionalDouble.of(favourite.tapeLayers()),
            Optional.of(favourite.reading()), Map.of(), favourite.target().wanted());
    }

    /**
     * A changed club's own parts: all it has but what is changed.
     * @param name   the club's tag
     * @param way    the way chosen
     * @param answer what it was chosen from
     * @return what is planned
     */
    public static PlannedClub changed(String name, Way way, ChangeAnswer answer) {
        Favourite club = answer.request().club();
        return new PlannedClub(name, way.option(), way.grip().filter(grip -> !club.grip().equals(Optional.of(grip))),
            OptionalDouble.of(way.tapeLayers()), Optional.of(club.reading()), partsOf(club),
            answer.target().wanted());
    }

    /**
     * A club built anew around a head with a shaft from the drawer.
     * @param pick   the shaft chosen
     * @param answer what it was chosen from
     * @return what is planned
     */
    public static PlannedClub reshafted(ShaftPick pick, ShaftAnswer answer) {
        Favourite club = answer.request().club();
        Map<Quantity, Wanted> wanted = new EnumMap<>(Quantity.class);
        wanted.putAll(answer.target().wanted());
        wanted.computeIfPresent(Quantity.FREQUENCY, (frequency, one) ->
            new Wanted(one.value() + pick.rungCpm(), one.tolerance(), one.weight()));
        return new PlannedClub(club.name(), pick.option(), Optional.empty(), OptionalDouble.empty(), Optional.of(club.reading()),
            partsOf(club), wanted);
    }

    /**
     * A club of a set, all of it from the stock.
     * @param club a club of it that is built
     * @return what is planned
     */
    public static PlannedClub ofSet(ClubOfSet club) {
        return new PlannedClub(club.wanted().club(), club.build().orElseThrow(), Optional.empty(), OptionalDouble.empty(),
            club.target().map(Target::reading), Map.of(), club.target().map(Target::wanted).orElse(Map.of()));
    }

    /** The parts a favourite has, by kind. */
    static Map<String, String> partsOf(Favourite favourite) {
        Map<String, String> parts = new TreeMap<>();
        favourite.head().ifPresent(head -> parts.put("head", head.tag()));
        favourite.shaft().ifPresent(shaft -> parts.put("shaft", shaft.tag()));
        favourite.sleeve().ifPresent(sleeve -> parts.put("sleeve", sleeve.name()));
        favourite.grip().ifPresent(grip -> parts.put("grip", grip.tag()));
        return parts;
    }

    /**
     * Makes the plan a job's.
     * @param book  the book
     * @param job   which
     * @param clubs what is planned, at least one club
     * @return the job's number
     * @throws BadInput when a part is not free any more; then nothing is kept
     */
    public static String promise(OpenBook book, For job, List<PlannedClub> clubs) throws BadInput {
        return promiseAll(book, Map.of(job, clubs)).get(0);
    }

    /**
     * Makes the plans several jobs', all at once or none.
     * @param book the book
     * @param jobs what is planned, by job
     * @return the jobs' numbers, in order
     * @throws BadInput when a part is not free any more; then nothing is kept
     */
    public static List<String> promiseAll(OpenBook book, Map<For, List<PlannedClub>> jobs) throws BadInput {
        Map<For, Map<String, String>> facts = new LinkedHashMap<>();
        for (For job : jobs.keySet()) {
            facts.put(job, new LinkedHashMap<>(JobBook.facts(book, job.order())));
        }
        return book.write("job plan", entry -> {
            List<String> numbers = new ArrayList<>();
            for (Map.Entry<For, List<PlannedClub>> job : jobs.entrySet()) {
                numbers.add(promise(entry, job.getKey(), facts.get(job.getKey()), job.getValue()));
            }
            return numbers;
        });
    }

    /**
     * Makes each player's built clubs of a plan of sets a job: all of them, or none.
     * @param book   the book
     * @param plan   the plan
     * @param number a job that was taken on before, where there is one player only
     * @param due    by when new ones are due
     * @return the jobs' numbers, in the order of the players; none where no club is built
     * @throws BadInput when a part is not free any more; then nothing is kept
     */
    public static List<String> promiseSets(OpenBook book, SetAnswer plan, Optional<String> number, Optional<String> due)
        throws BadInput {
        Map<For, List<PlannedClub>> jobs = new LinkedHashMap<>();
        for (PlayerSet set : plan.players()) {
            List<PlannedClub> clubs = set.clubs().stream().filter(club -> club.build().isPresent()).map(JobPlanning::ofSet).toList();
            if (!clubs.isEmpty()) {
                jobs.put(new For(number, new JobBook.Order(JobBook.What.SET, Optional.of(set.player()), Optional.empty(), due, "")), clubs);
            }
        }
        if (number.isPresent() && jobs.size() > 1) {
            throw new BadInput(book.asks(ToDo.ONE_PLAYERS_JOB, number.get()));
        }
        return jobs.isEmpty() ? List.of() : promiseAll(book, jobs);
    }

    private static String promise(BookEntry entry, For job, Map<String, String> facts, List<PlannedClub> clubs)
        throws BookProblem {
        JobPlan plan = new JobPlan(clubs.stream().map(JobPlan.Club::of).toList());
        JobActs acts = new JobActs(entry);
        Thing thing;
        if (job.number().isPresent()) {
            thing = JobBook.needOpen(entry, job.number().get());
            itsOwn(entry, thing, job.order());
        } else {
            JobBook.complete(entry, job.order(), facts);
            thing = acts.open(facts, job.order().words());
        }
        List<JobActs.Needed> needed = needed(entry, clubs, plan.clubs());
        Map<Thing, Integer> rest = handedToTheJob(entry, thing, needed);
        acts.plan(thing, plan.facts(), needed);
        for (Map.Entry<Thing, Integer> one : rest.entrySet()) {
            State state = entry.state(one.getKey());
            int left = Math.min(one.getValue(), state.count() - state.promised());
            if (left > 0) {
                new PartActs(entry).promise(one.getKey(), Optional.empty(), player(entry, thing), left);
            }
        }
        return thing.tag();
    }

    /**
     * What was put aside for the job's player by name is the job's now.
     * @return how many of a counted part were put aside; what the job does not take stays so
     */
    private static Map<Thing, Integer> handedToTheJob(BookEntry entry, Thing job, List<JobActs.Needed> needed) throws BookProblem {
        Map<Thing, Integer> aside = new LinkedHashMap<>();
        String player = player(entry, job);
        for (JobActs.Needed one : needed) {
            int theirs = entry.state(one.part()).promises().stream().filter(promise -> promise.job().isEmpty()
                && promise.whom().equals(player)).mapToInt(Promise::count).sum();
            if (theirs > 0) {
                entry.add(one.part(), NewEvent.of(EventKind.RELEASED).with(Map.of("whom", player)).saying("taken for " + job.name()));
                if (one.part().kind().isCounted()) {
                    aside.put(one.part(), theirs);
                }
            }
        }
        return aside;
    }

    private static String player(BookEntry entry, Thing job) {
        return entry.state(job).fact("player").orElse("");
    }

    /** A plan for one club, or one player, is none for a job about another. */
    private static void itsOwn(BookEntry entry, Thing job, JobBook.Order order) throws BookProblem {
        State state = entry.state(job);
        String club = state.fact("club").orElse("");
        if (order.club().isPresent() && !club.isEmpty()
            && !OpenBook.need(entry, ThingKind.CLUB, order.club().get()).tag().equals(club)) {
            throw new ToBeDone("%s is about club %s, not about %s; ".formatted(job.name(), club, order.club().get()), ToDo.NEW_JOB);
        }
        String player = state.fact("player").orElse("");
        if (order.club().isEmpty() && order.player().isPresent() && !player.isEmpty() && !order.player().get().equals(player)) {
            throw new ToBeDone("%s is for %s, not for %s; ".formatted(job.name(), player, order.player().get()), ToDo.NEW_JOB);
        }
    }

    /** Parts the plan takes from the stock: a sleeve that is bonded on for it, and whatever is not the club's own. */
    private static List<JobActs.Needed> needed(BookEntry entry, List<PlannedClub> clubs, List<JobPlan.Club> plans)
        throws BookProblem {
        Map<Thing, Integer> needed = new LinkedHashMap<>();
        for (int k = 0; k < clubs.size(); k++) {
            JobPlan.Club plan = plans.get(k);
            for (String slot : List.of("head", "shaft", "grip")) {
                String tag = plan.build().get(slot);
                if (tag != null && !tag.equals(clubs.get(k).inHand().get(slot))) {
                    needed.merge(OpenBook.need(entry, KINDS.get(slot), tag), 1, Integer::sum);
                }
            }
            if (plan.joins().sleeveFromTin()) {
                needed.merge(OpenBook.need(entry, ThingKind.SLEEVE, plan.build().get("sleeve")), 1, Integer::sum);
            }
            for (JobPlan.WeightIn weight : plan.weights()) {
                needed.merge(OpenBook.need(entry, ThingKind.WEIGHT, weight.tag()), 1, Integer::sum);
            }
        }
        return needed.entrySet().stream().map(one -> new JobActs.Needed(one.getKey(), one.getValue())).toList();
    }
}
