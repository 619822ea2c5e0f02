package benchtwin.bench;

import benchtwin.bend.BendGoal;
import benchtwin.book.Promise;
import benchtwin.book.State;
import benchtwin.book.Thing;
import benchtwin.book.ThingKind;
import benchtwin.club.Head;
import benchtwin.club.Quantity;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What the plans of jobs bend. */
final class BendPlans {

    /** So little is planned of a bend that none is needed. */
    private static final double HARDLY_BENT_DEG = 0.05;

    private final OpenBook book;

    BendPlans(OpenBook book) {
        this.book = book;
    }

    /** The heads a job's plan bends, in order; none where it bends nothing. */
    List<String> headsOf(String number) throws BadInput {
        return heads(plan(number));
    }

    /** Open jobs that bend something, the one due first before the others. */
    List<BendService.JobHeads> waiting() throws BadInput {
        return book.read(view -> {
            List<BendService.JobHeads> waiting = new ArrayList<>();
            view.states(ThingKind.JOB).stream().filter(JobBook::isOpen).sorted(JobBook.BY_DUE).forEach(job -> {
                List<String> heads = JobPlan.read(job.state()).map(BendPlans::heads).orElse(List.of());
                if (!heads.isEmpty()) {
                    waiting.add(new BendService.JobHeads(job.thing().tag(), job.state().fact("player"), heads));
                }
            });
            return waiting;
        });
    }

    private static List<String> heads(JobPlan plan) {
        return plan.clubs().stream().filter(BendPlans::bends).map(club -> club.build().get("head")).toList();
    }

    private JobPlan plan(String number) throws BadInput {
        return book.read(view -> JobPlan.read(view.state(OpenBook.need(view, ThingKind.JOB, number))).orElse(JobPlan.NONE));
    }

    private static boolean bends(JobPlan.Club club) {
        return Math.abs(club.amounts().getOrDefault("tiltUprightDeg", 0.0)) > HARDLY_BENT_DEG
            || Math.abs(club.amounts().getOrDefault("tiltForwardDeg", 0.0)) > HARDLY_BENT_DEG;
    }

    /** The only job a head is promised to. */
    Optional<String> promisedTo(Head head) throws BadInput {
        return book.read(view -> {
            Optional<Thing> thing = view.thing(ThingKind.HEAD, head.tag());
            List<String> jobs = thing.map(view::state).map(State::promises).orElse(List.of()).stream().map(Promise::job)
                .flatMap(Optional::stream).distinct().toList();
            return jobs.size() == 1 ? Optional.of(jobs.get(0)) : Optional.empty();
        });
    }

    /** What a job's plan is for a head; empty when it does not bend it. */
    Optional<JobPlan.Club> planned(Head head, String number) throws BadInput {
        return plan(number).clubs().stream().filter(club -> head.tag().equals(club.build().get("head")) && bends(club)
            && (club.reading().isEmpty() || club.reading().get() == head.angles().reading())).findFirst();
    }

    /** The angles a plan bends a head to, degrees. */
    static Map<Quantity, Double> wanted(Head head, JobPlan.Club plan) {
        Map<Quantity, Double> wanted = new EnumMap<>(Quantity.class);
        BendGoal.steered(head.angles().reading()).stream().filter(plan.predicted()::containsKey)
            .forEach(quantity -> wanted.put(quantity, BendAims.hundredths(plan.predicted().get(quantity))));
        return wanted;
    }
}
