package benchtwin.bench;

import benchtwin.book.BookProblem;
import benchtwin.book.BookView;
import benchtwin.book.KeptEvent;
import benchtwin.book.Moment;
import benchtwin.book.State;
import benchtwin.book.Thing;
import benchtwin.book.ThingKind;
import benchtwin.club.AngleReading;
import benchtwin.club.Hazard;
import benchtwin.club.Quantity;
import benchtwin.club.QuantityText;
import benchtwin.club.StepKind;
import benchtwin.ticket.Ticket;
import benchtwin.ticket.TicketLine;
import benchtwin.ticket.TicketPart;
import benchtwin.ticket.TicketStep;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** Fills in the ticket of a job from the book. */
public final class JobTicket {

    /** Lines to write on where nothing is planned. */
    private static final int BLANK_STEPS = 6;

    private final OpenBook book;
    private final BookView view;
    private final Thing job;
    private final State state;
    private final TicketWish wish;

    private JobTicket(OpenBook book, BookView view, Thing job, TicketWish wish) {
        this.book = book;
        this.view = view;
        this.job = job;
        this.state = view.state(job);
        this.wish = wish;
    }

    /**
     * The ticket of a job.
     * @param book   the book
     * @param number the job's number
     * @param wish   resin, temperature and start
     * @return what goes to the bench
     * @throws BadInput when there is no such job
     */
    public static Ticket of(OpenBook book, String number, TicketWish wish) throws BadInput {
        return book.read(view -> new JobTicket(book, view, OpenBook.need(view, ThingKind.JOB, number), wish).ticket());
    }

    private Ticket ticket() throws BookProblem {
        List<JobPlan.Club> clubs = JobPlan.read(state).orElse(JobPlan.NONE).clubs();
        Optional<String> due = state.fact("due").map(day -> day.replace('T', ' '));
        TicketTimes times = new TicketTimes(wish, start(), clubs.stream().flatMap(club -> club.tasks().stream()).toList(), due);
        TicketParts parts = new TicketParts(view);
        boolean several = clubs.size() > 1;
        List<TicketStep> steps = several ? List.of() : clubs.isEmpty() ? unplanned() : TicketSteps.of(job.tag(), clubs.get(0), parts, times);
        List<KeptEvent> events = view.events(job);
        return new Ticket(job.tag(), title(clubs.size()), state.fact("player"), due, state.standing().word(), events.get(0).event().words(),
            several ? List.of() : clubs.isEmpty() ? ofClub(parts) : parts.of(clubs.get(0)), steps,
            several ? TicketRows.of(clubs, parts) : List.of(), times.ready(),
            cautions(clubs, several), notes(clubs),
            clubs.size() == 1 ? parts.sketch(clubs.get(0)) : Optional.empty(), "job:" + job.tag(), made(events), BuildIdentity.text());
    }

    private LocalDateTime start() {
        return wish.start().orElseGet(() -> LocalDateTime.ofInstant(book.book().clock().instant(), book.zone()))
            .truncatedTo(ChronoUnit.MINUTES);
    }

    private String title(int clubs) {
        String what = state.fact("what").orElse("job");
        return Character.toUpperCase(what.charAt(0)) + what.substring(1) + state.fact("club").map(club -> " of " + club)
            .orElse(clubs > 1 ? ", %d clubs".formatted(clubs) : "");
    }

    /** When the plan was made: when the job last changed, so that the same plan is printed alike on another day. */
    private LocalDateTime made(List<KeptEvent> events) {
        Moment last = events.get(events.size() - 1).entry().at();
        return LocalDateTime.ofInstant(Instant.parse(last.text()), book.zone()).truncatedTo(ChronoUnit.MINUTES);
    }

    private List<TicketPart> ofClub(TicketParts parts) {
        return state.fact("club").flatMap(tag -> view.thing(ThingKind.CLUB, tag)).map(view::state).map(parts::ofClub)
            .orElse(List.of());
    }

    private List<TicketStep> unplanned() {
        List<TicketStep> steps = new ArrayList<>();
        for (int k = 0; k < BLANK_STEPS; k++) {
            steps.add(new TicketStep("", "", List.of(TicketLine.of("")), List.of()));
        }
        steps.add(new TicketStep("Final measure", TicketSteps.measureAndEnter(job.tag()),
            List.of(Quantity.LOFT, Quantity.LIE, Quantity.LENGTH, Quantity.SWING_WEIGHT, Quantity.FREQUENCY, Quantity.TOTAL_MASS)
                .stream().map(quantity -> TicketLine.of(QuantityText.name(quantity))).toList(), List.of()));
        return steps;
    }


    /** With rows there is no step to stand by; where a step's kind is not known, everything may be needed. */
    private static List<String> cautions(List<JobPlan.Club> clubs, boolean several) {
        List<Optional<StepKind>> kinds = clubs.stream().flatMap(club -> club.tasks().stream()).map(JobPlan.Task::kind).toList();
        if (clubs.isEmpty() || kinds.stream().anyMatch(Optional::isEmpty)) {
            return Cautions.ofHazards(Arrays.asList(Hazard.values()));
        }
        List<Hazard> hazards = kinds.stream().flatMap(kind -> kind.flatMap(StepKind::hazard).stream()).toList();
        return hazards.isEmpty() ? List.of() : several ? Cautions.ofHazards(hazards) : List.of(Hazard.FIRST);
    }

    private List<String> notes(List<JobPlan.Club> clubs) {
        List<String> notes = new ArrayList<>(view.notes(job).stream().map(note -> "Note: " + note.text()).toList());
        if (clubs.isEmpty()) {
            notes.add("Not planned yet. " + book.asks(ToDo.PLAN_IT, job.tag()));
        }
        clubs.stream().flatMap(club -> club.reading().stream()).distinct().forEach(reading -> notes.add("Angles are read %s."
            .formatted(reading == AngleReading.EDGE ? "with the leading edge square" : reading.word())));
        return notes;
    }
}
