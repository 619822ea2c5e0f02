package benchtwin.bench;

import benchtwin.book.BookView;
import benchtwin.book.StateOf;
import benchtwin.book.ThingKind;
import benchtwin.club.Hazard;
import benchtwin.club.StepKind;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * The day at the bench.
 * @param jobs     what is open, the one due first before the others, those without a day last
 * @param cautions of all work that is planned and not done
 * @param gauges   gauges whose check is due
 */
public record Today(List<Due> jobs, List<String> cautions, List<GaugeBook.Standing> gauges) {

    /**
     * A job to do.
     * @param number    its number
     * @param what      twin, change, set or repair
     * @param club      the club it is about
     * @param player    for whom
     * @param due       by when
     * @param urgency   how that stands to now
     * @param isPlanned whether it has a plan; without one it waits for that
     * @param needs     the parts its plan takes
     * @param words     what was said when it was taken on
     */
    public record Due(String number, String what, Optional<String> club, Optional<String> player, Optional<String> due,
                      Urgency urgency, boolean isPlanned, List<JobNeeds.Need> needs, Optional<String> words) {
    }

    /** How near a job's time is. */
    public enum Urgency {
        /** Its time has passed. */
        OVERDUE("overdue"),
        /** Due before the day ends. */
        TODAY("today"),
        /** Due tomorrow. */
        TOMORROW("tomorrow"),
        /** Later, or on no day. */
        LATER("");

        private final String words;

        Urgency(String words) {
            this.words = words;
        }

        /**
         * The word beside the time.
         * @return empty where there is nothing to say
         */
        public String words() {
            return words;
        }
    }

    /**
     * The day at the bench now.
     * @param book the book
     * @return jobs, cautions, gauges
     * @throws BadInput when the book cannot be read
     */
    public static Today of(OpenBook book) throws BadInput {
        List<GaugeBook.Standing> gauges = GaugeBook.list(book).stream().filter(GaugeBook.Standing::isDue).toList();
        LocalDateTime now = LocalDateTime.ofInstant(book.book().clock().instant(), book.zone());
        return book.read(view -> {
            Set<Hazard> hazards = EnumSet.noneOf(Hazard.class);
            List<Due> jobs = new ArrayList<>();
            for (StateOf job : view.states(ThingKind.JOB).stream().filter(JobBook::isOpen).sorted(JobBook.BY_DUE).toList()) {
                JobPlan plan = JobPlan.read(job.state()).orElse(JobPlan.NONE);
                hazards.addAll(hazards(plan));
                jobs.add(due(view, job, plan, now));
            }
            return new Today(jobs, Cautions.ofHazards(hazards), gauges);
        });
    }

    /** What the steps of a plan can do to somebody; where a step's kind is not known, everything. */
    static Collection<Hazard> hazards(JobPlan plan) {
        List<Optional<StepKind>> kinds = plan.clubs().stream().flatMap(club -> club.tasks().stream()).map(JobPlan.Task::kind).toList();
        return kinds.stream().anyMatch(Optional::isEmpty) ? Arrays.asList(Hazard.values())
            : kinds.stream().flatMap(kind -> kind.flatMap(StepKind::hazard).stream()).distinct().toList();
    }

    private static Due due(BookView view, StateOf job, JobPlan plan, LocalDateTime now) {
        Optional<String> due = job.state().fact("due");
        return new Due(job.thing().tag(), job.state().fact("what").orElse("job"), job.state().fact("club"), job.state().fact("player"),
            due.map(day -> day.replace('T', ' ')), due.map(day -> urgency(day, now)).orElse(Urgency.LATER), !plan.clubs().isEmpty(),
            JobNeeds.of(view, job, plan), view.events(job.thing()).get(0).event().words());
    }

    /** A day without an hour lasts until it ends. */
    static Urgency urgency(String due, LocalDateTime now) {
        boolean hasHour = due.contains("T");
        LocalDate day = LocalDate.parse(due.substring(0, 10));
        boolean past = hasHour ? LocalDateTime.parse(due).isBefore(now) : day.isBefore(now.toLocalDate());
        return past ? Urgency.OVERDUE : day.equals(now.toLocalDate()) ? Urgency.TODAY
            : day.equals(now.toLocalDate().plusDays(1)) ? Urgency.TOMORROW : Urgency.LATER;
    }
}
