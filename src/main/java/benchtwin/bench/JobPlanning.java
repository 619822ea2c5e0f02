package benchtwin.bench;

import benchtwin.book.BookEntry;
import benchtwin.book.BookProblem;
import benchtwin.book.JobActs;
import benchtwin.book.Standing;
import benchtwin.book.State;
import benchtwin.book.Thing;
import benchtwin.book.ThingKind;
import benchtwin.club.Grip;
import benchtwin.match.Favourite;
import benchtwin.match.Ranked;
import benchtwin.match.ShaftPick;
import benchtwin.match.ShaftRequest;
import benchtwin.match.Way;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** Turns an answer into a job: takes it on, keeps its plan and promises its parts, all in one act. */
public final class JobPlanning {

    private static final Map<String, ThingKind> KINDS = Map.of("head", ThingKind.HEAD, "shaft", ThingKind.SHAFT, "grip",
        ThingKind.GRIP, "sleeve", ThingKind.SLEEVE);

    /**
     * Which job a plan is for.
     * @param number a job that was taken on before; without it a new one is taken on
     * @param order  what is known of a new one
     */
    public record For(Optional<String> number, JobBook.Order order) {
    }

    /**
     * What is planned of one club.
     * @param name   the club's tag, or what the set calls it
     * @param option its parts and plan
     * @param grip   a grip from the stock it gets, if it gets one
     * @param inHand parts that are the club's own already, by kind, and so need no promise
     */
    public record PlannedClub(String name, Ranked option, Optional<Grip> grip, Map<String, String> inHand) {
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
        return new PlannedClub(name, option, Optional.empty(), partsOf(favourite));
    }

    /**
     * A changed club's own parts: all it has but what is changed.
     * @param name the club's tag
     * @param way  the way chosen
     * @param club the club as it is
     * @return what is planned
     */
    public static PlannedClub changed(String name, Way way, Favourite club) {
        return new PlannedClub(name, way.option(), way.grip().filter(grip -> !club.grip().equals(Optional.of(grip))),
            partsOf(club));
    }

    /**
     * A club built anew around a head with a shaft from the drawer.
     * @param pick    the shaft chosen
     * @param request what was asked
     * @return what is planned
     */
    public static PlannedClub reshafted(ShaftPick pick, ShaftRequest request) {
        return new PlannedClub(request.club().name(), pick.option(), Optional.empty(), partsOf(request.club()));
    }

    /**
     * A club of a set, all of it from the stock.
     * @param name   what the set calls it
     * @param option its parts and plan
     * @return what is planned
     */
    public static PlannedClub ofSet(String name, Ranked option) {
        return new PlannedClub(name, option, Optional.empty(), Map.of());
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
            facts.put(job, new LinkedHashMap<>(JobBook.facts(job.order())));
        }
        return book.write("job plan", entry -> {
            List<String> numbers = new ArrayList<>();
            for (Map.Entry<For, List<PlannedClub>> job : jobs.entrySet()) {
                numbers.add(promise(entry, job.getKey(), facts.get(job.getKey()), job.getValue()));
            }
            return numbers;
        });
    }

    private static String promise(BookEntry entry, For job, Map<String, String> facts, List<PlannedClub> clubs)
        throws BookProblem {
        JobPlan plan = new JobPlan(clubs.stream().map(club -> JobPlan.Club.of(club.name(), club.option(), club.grip())).toList());
        JobActs acts = new JobActs(entry);
        Thing thing;
        if (job.number().isPresent()) {
            thing = OpenBook.need(entry, ThingKind.JOB, job.number().get());
        } else {
            JobBook.complete(entry, job.order(), facts);
            thing = acts.open(facts, job.order().words());
        }
        acts.plan(thing, plan.facts(), needed(entry, clubs));
        return thing.tag();
    }

    private static List<JobActs.Needed> needed(BookEntry entry, List<PlannedClub> clubs) throws BookProblem {
        Map<Thing, Integer> needed = new LinkedHashMap<>();
        for (PlannedClub club : clubs) {
            JobPlan.Club plan = JobPlan.Club.of(club.name(), club.option(), club.grip());
            for (Map.Entry<String, ThingKind> slot : KINDS.entrySet()) {
                String tag = plan.build().get(slot.getKey());
                boolean own = tag == null || tag.equals(club.inHand().get(slot.getKey()));
                boolean onTheShaft = slot.getKey().equals("sleeve")
                    && club.option().shaft().sleeveOn().equals(Optional.ofNullable(tag));
                if (!own && !onTheShaft) {
                    needed.merge(OpenBook.need(entry, slot.getValue(), tag), 1, Integer::sum);
                }
            }
            for (String weight : plan.weights()) {
                needed.merge(OpenBook.need(entry, ThingKind.WEIGHT, weight), 1, Integer::sum);
            }
        }
        List<JobActs.Needed> all = new ArrayList<>();
        for (Map.Entry<Thing, Integer> one : needed.entrySet()) {
            State state = entry.state(one.getKey());
            if (state.standing() == Standing.RETIRED) {
                throw new BookProblem("%s left the stock while this was planned; plan anew".formatted(one.getKey().name()));
            }
            all.add(new JobActs.Needed(one.getKey(), one.getValue()));
        }
        return all;
    }
}
