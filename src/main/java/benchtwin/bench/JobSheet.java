package benchtwin.bench;

import benchtwin.book.BookView;
import benchtwin.book.StateOf;
import benchtwin.book.Thing;
import benchtwin.book.ThingKind;
import benchtwin.club.Quantity;
import benchtwin.club.Wanted;
import benchtwin.picture.HeadSketchPicture;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Everything about one job.
 * @param job      the job
 * @param needs    the parts its plan takes, with where they lie
 * @param work     what is done to each club of the plan
 * @param aims     what each club of the plan should come out at
 * @param cautions of the work planned
 * @param makesNew whether it makes a club that needs a tag of its own
 * @param isOpen   whether it is still to be done
 */
public record JobSheet(JobBook.Job job, List<JobNeeds.Need> needs, List<Work> work, List<Aim> aims, List<String> cautions,
                       boolean makesNew, boolean isOpen) {

    /**
     * What is done to a club.
     * @param club   its tag, or what the set calls it
     * @param steps  what to do, in order
     * @param sketch the head before and after, where its angles change
     */
    public record Work(String club, List<String> steps, Optional<HeadSketchPicture> sketch) {
    }

    /**
     * What a club of a plan should come out at.
     * @param club        its tag, or what the set calls it
     * @param wanted      what was wanted, with tolerances; empty in a plan that did not say
     * @param predicted   what it should measure
     * @param uncertainty standard uncertainty of that
     */
    public record Aim(String club, Map<Quantity, Wanted> wanted, Map<Quantity, Double> predicted, Map<Quantity, Double> uncertainty) {
    }

    /**
     * One job.
     * @param book   the book
     * @param number its number
     * @return all of it
     * @throws BadInput when there is none of this number
     */
    public static JobSheet of(OpenBook book, String number) throws BadInput {
        return book.read(view -> {
            Thing thing = OpenBook.need(view, ThingKind.JOB, number);
            StateOf job = new StateOf(thing, view.state(thing));
            JobPlan plan = JobPlan.read(job.state()).orElse(JobPlan.NONE);
            boolean one = plan.clubs().size() == 1;
            return new JobSheet(JobBook.job(book, view, job), JobNeeds.of(view, job, plan), work(view, plan),
                plan.clubs().stream().map(JobSheet::aim).toList(), Cautions.ofHazards(Today.hazards(plan)),
                one && makesNew(view, plan.clubs().get(0)), JobBook.isOpen(job));
        });
    }

    private static List<Work> work(BookView view, JobPlan plan) {
        TicketParts parts = new TicketParts(view);
        return plan.clubs().stream().map(club -> new Work(club.name(), club.steps(), parts.sketch(club))).toList();
    }

    private static Aim aim(JobPlan.Club club) {
        return new Aim(club.name(), club.wanted(), club.predicted(), club.uncertainty());
    }

    /**
     * The head of one of its clubs before and after.
     * @param club its tag, or what the set calls it
     * @return the drawing
     * @throws BadInput when the plan does not change the angles of such a club
     */
    public HeadSketchPicture sketch(String club) throws BadInput {
        return work.stream().filter(one -> one.club().equals(club)).findFirst().flatMap(Work::sketch).orElseThrow(() -> new BadInput(
            "the plan of job %s changes no angles of a club %s".formatted(job.number(), club)));
    }

    private static boolean makesNew(BookView view, JobPlan.Club plan) {
        return view.thing(ThingKind.CLUB, plan.name()).filter(club -> JobDone.isOf(plan, view.state(club).facts())).isEmpty();
    }
}
