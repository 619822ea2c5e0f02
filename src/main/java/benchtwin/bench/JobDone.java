package benchtwin.bench;

import benchtwin.book.BookEntry;
import benchtwin.book.BookProblem;
import benchtwin.book.ClubActs;
import benchtwin.book.EventKind;
import benchtwin.book.JobActs;
import benchtwin.book.NewEvent;
import benchtwin.book.NewReading;
import benchtwin.book.PartActs;
import benchtwin.book.Standing;
import benchtwin.book.State;
import benchtwin.book.Thing;
import benchtwin.book.ThingKind;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Hands a job over: what was planned is now so. Parts go into the club, cuts and bends into the parts' records, readings
 * into the club's; promises that were not needed lapse. All in one act.
 */
public final class JobDone {

    private static final Map<String, String> AMOUNTS = Map.of("tapeG", "tape_g", "meltG", "melt_g", "tipWeightG", "tip_weight_g");
    private static final Map<String, String> CUTS = Map.of("tipCutMm", "tip_cut_mm", "buttCutMm", "butt_cut_mm");

    /**
     * How it came out.
     * @param sitting  what the club measures now
     * @param as       the tag of the club that was built, where the plan makes a new one
     * @param facts    what was done otherwise than planned, by name
     * @param oldCracked whether the old head is cracked
     * @param words    anything else
     */
    public record Result(Sitting sitting, Optional<String> as, Map<String, String> facts, boolean oldCracked, String words) {
    }

    private final BookEntry entry;
    private final Thing job;
    private final Result result;
    private final List<String> remarks = new ArrayList<>();

    private JobDone(BookEntry entry, Thing job, Result result) {
        this.entry = entry;
        this.job = job;
        this.result = result;
    }

    /**
     * Hands a job over.
     * @param book   the book
     * @param number the job's number
     * @param result how it came out
     * @return what the person who enters it should know
     * @throws BadInput when there is no such job, it is over, or a part went elsewhere; then nothing is kept
     */
    public static List<String> handOver(OpenBook book, String number, Result result) throws BadInput {
        return book.write("job done", entry -> {
            Thing job = OpenBook.need(entry, ThingKind.JOB, number);
            JobDone done = new JobDone(entry, job, result);
            done.run();
            return done.remarks;
        });
    }

    private void run() throws BookProblem {
        State state = entry.state(job);
        Optional<JobPlan> plan = JobPlan.read(state);
        if (plan.isEmpty()) {
            measured(state);
        } else {
            List<JobPlan.Club> clubs = plan.get().clubs();
            for (JobPlan.Club club : clubs) {
                built(state, club, clubs.size() == 1);
            }
        }
        new JobActs(entry).handOver(job, Map.of(), result.words());
    }

    /** A job without a plan: what was read and changed is the club's. */
    private void measured(State state) throws BookProblem {
        Optional<String> tag = state.fact("club");
        boolean nothing = result.sitting().values().isEmpty() && result.facts().isEmpty();
        if (tag.isEmpty()) {
            if (!nothing) {
                throw new BookProblem("%s has neither a plan nor a club, so nothing can be entered of one".formatted(job.name()));
            }
            return;
        }
        Thing club = OpenBook.need(entry, ThingKind.CLUB, tag.get());
        if (nothing) {
            remarks.add("%s was handed over unmeasured; what it measures now is not known".formatted(club.name()));
            return;
        }
        record(club, new TreeMap<>(result.facts()), ClubBook.readings(entry, club, result.sitting()));
    }

    private void built(State state, JobPlan.Club plan, boolean only) throws BookProblem {
        Optional<Thing> known = entry.thing(ThingKind.CLUB, only ? result.as().orElse(plan.name()) : plan.name());
        boolean fresh = only ? result.as().isPresent() && known.isEmpty() : known.isEmpty();
        Thing club = fresh ? newClub(state, plan, only) : known.orElseThrow(() -> new BookProblem(
            "%s makes a new club; say its tag with --as TAG".formatted(job.name())));
        Map<String, String> before = fresh ? Map.of() : entry.state(club).facts();
        Map<String, String> facts = new TreeMap<>(plan.build());
        facts.put("state", "in play");
        AMOUNTS.forEach((amount, fact) -> {
            double more = plan.amounts().getOrDefault(amount, 0.0);
            if (more != 0) {
                facts.put(fact, plain(Double.parseDouble(before.getOrDefault(fact, "0")) + more));
            }
        });
        facts.putAll(only ? result.facts() : Map.of());
        worked(plan, facts);
        List<NewReading> readings = only ? ClubBook.readings(entry, club, result.sitting()) : List.of();
        if (readings.isEmpty()) {
            remarks.add("%s was handed over unmeasured; what it measures is not known until it is read".formatted(club.name()));
        }
        String oldHead = before.get("head");
        record(club, facts, readings);
        if (result.oldCracked() && oldHead != null && !oldHead.equals(facts.get("head"))) {
            Optional<Thing> head = entry.thing(ThingKind.HEAD, oldHead);
            if (head.isPresent() && entry.state(head.get()).standing() != Standing.RETIRED) {
                new PartActs(entry).retire(head.get(), true, "");
            }
        }
    }

    private Thing newClub(State state, JobPlan.Club plan, boolean only) throws BookProblem {
        Map<String, String> lasting = new TreeMap<>();
        state.fact("player").ifPresent(player -> lasting.put("player", player));
        Thing head = OpenBook.need(entry, ThingKind.HEAD, plan.build().get("head"));
        for (String name : List.of("category", "number", "hand")) {
            entry.state(head).fact(name).ifPresent(text -> lasting.put(name, text));
        }
        String tag = only ? result.as().orElseThrow() : "%s-%s".formatted(job.tag(), plan.name());
        return entry.add(ThingKind.CLUB, tag, NewEvent.of(EventKind.RECEIVED).with(lasting).of(job));
    }

    private void record(Thing club, Map<String, String> facts, List<NewReading> readings) throws BookProblem {
        NewEvent event = NewEvent.of(EventKind.RECORDED).with(facts).reading(readings).of(job);
        String note = result.sitting().note().orElse("");
        remarks.addAll(new ClubActs(entry).enter(club, event.saying(note)));
    }

    /** What was cut and bent goes into the records of shaft and head. */
    private void worked(JobPlan.Club plan, Map<String, String> facts) throws BookProblem {
        Optional<Thing> shaft = entry.thing(ThingKind.SHAFT, facts.getOrDefault("shaft", ""));
        Map<String, String> cut = new TreeMap<>();
        if (shaft.isPresent()) {
            Map<String, String> known = entry.state(shaft.get()).facts();
            CUTS.forEach((amount, fact) -> {
                double more = plan.amounts().getOrDefault(amount, 0.0);
                if (more != 0) {
                    cut.put(fact, plain(Double.parseDouble(known.getOrDefault(fact, "0")) + more));
                }
            });
            if (!cut.isEmpty()) {
                entry.add(shaft.get(), NewEvent.of(EventKind.DESCRIBED).with(cut).of(job).saying("cut"));
            }
        }
        Optional<Thing> head = entry.thing(ThingKind.HEAD, facts.getOrDefault("head", ""));
        double upright = plan.amounts().getOrDefault("tiltUprightDeg", 0.0);
        double forward = plan.amounts().getOrDefault("tiltForwardDeg", 0.0);
        if (head.isPresent() && (upright != 0 || forward != 0)) {
            Map<String, String> bent = new TreeMap<>();
            bent.put(upright > 0 ? "bent_upright_deg" : "bent_flat_deg", plain(Math.abs(upright)));
            bent.put(forward > 0 ? "bent_forward_deg" : "bent_back_deg", plain(Math.abs(forward)));
            entry.add(head.get(), NewEvent.of(EventKind.BENT).with(bent).of(job).saying("as planned"));
        }
    }

    private static String plain(double value) {
        return java.math.BigDecimal.valueOf(Json.rounded(value)).stripTrailingZeros().toPlainString();
    }
}
