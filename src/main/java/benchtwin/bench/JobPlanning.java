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
        Map<String, String> facts = new LinkedHashMap<>();
        if (job.number().isEmpty()) {
            facts.putAll(JobBook.facts(job.order()));
        }
        JobPlan plan = new JobPlan(clubs.stream().map(club -> JobPlan.Club.of(club.name(), club.option(), club.grip())).toList());
        return book.write("job plan", entry -> {
            JobActs acts = new JobActs(entry);
            Thing thing;
            if (job.number().isPresent()) {
                thing = OpenBook.need(entry, ThingKind.JOB, job.number().get());
            } else {
                JobBook.complete(entry, job.order(), facts);
                thing = acts.open(facts, job.order().words());
            }
            acts.plan(thing, plan.facts(), needed(entry, thing, clubs));
            return thing.tag();
        });
    }

    private static List<JobActs.Needed> needed(BookEntry entry, Thing job, List<PlannedClub> clubs) throws BookProblem {
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
