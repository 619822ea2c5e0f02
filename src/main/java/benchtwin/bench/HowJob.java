package benchtwin.bench;

import benchtwin.book.BookProblem;
import benchtwin.book.KeptEvent;
import benchtwin.book.State;
import benchtwin.book.Thing;
import benchtwin.book.ThingKind;
import benchtwin.club.Quantity;
import benchtwin.club.QuantityText;
import benchtwin.club.StepKind;
import benchtwin.club.Wanted;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** How the numbers of a job's plan came about: what a club of it should measure, and when it can be handed over. */
public final class HowJob {

    /** What an address calls the hour of handing over. */
    public static final String READY = "ready";

    private HowJob() {
    }

    /**
     * What a club of a plan should measure. A plan keeps what came out when it was made, and with what it was made; what was read
     * since does not change it.
     * @param book   the book
     * @param number the job's number
     * @param club   the club, as the plan calls it
     * @param word   the quantity's word
     * @return the account
     * @throws BadInput when there is no such job, club or number
     */
    public static Account aim(OpenBook book, String number, String club, String word) throws BadInput {
        Quantity quantity = HowOption.quantity(word);
        return book.read(view -> {
            Thing job = OpenBook.need(view, ThingKind.JOB, number);
            State state = view.state(job);
            JobPlan.Club plan = JobPlan.read(state).orElse(JobPlan.NONE).clubs().stream().filter(one -> one.name().equals(club)).findFirst()
                .orElseThrow(() -> new BookProblem("no club called \"%s\" is in the plan of job %s".formatted(club, job.tag())));
            Double value = plan.predicted().get(quantity);
            if (value == null) {
                throw new BookProblem("the plan of job %s says nothing of the %s".formatted(job.tag(), QuantityText.name(quantity)));
            }
            Account.Teller tell = Account.tell("How the %s that %s should measure was computed".formatted(QuantityText.name(quantity), club),
                QuantityText.value(quantity, value), plan.uncertainty().containsKey(quantity)
                    ? "± " + QuantityText.size(quantity, plan.uncertainty().get(quantity)) : "");
            Wanted wanted = plan.wanted().get(quantity);
            if (wanted != null) {
                tell.say(HowOption.wanted(quantity, value, wanted, Optional.empty()));
            }
            made(book, tell, view.events(job));
            plan.reading().ifPresent(reading -> tell.law(Formula.of(quantity, reading, false), quantity.isAngle()
                ? new String[] {"angles read " + reading.word()} : new String[0]));
            return tell.table("Made of", List.of("Part", "Which"), plan.build().entrySet().stream().map(part -> List.of(ColumnText.name(part.getKey()),
                    part.getValue())).toList())
                .points("What is done to it:", plan.steps()).law(Formula.UNCERTAINTY).done();
        });
    }

    private static void made(OpenBook book, Account.Teller tell, List<KeptEvent> events) {
        events.stream().filter(event -> event.event().facts().containsKey(JobPlan.FACT)).reduce((first, later) -> later).ifPresent(event ->
            tell.say(("Worked out on %s with benchtwin %s%s, from the readings that counted then. What each of its inputs did to it stands behind the "
                + "same number where the option was chosen, as long as nothing of it was read again.").formatted(
                HistoryWords.when(book, event.entry().at()), event.entry().program(), event.entry().by().map(by -> ", chosen by " + by).orElse(""))));
    }

    /**
     * When a job can be handed over.
     * @param book   the book
     * @param number the job's number
     * @param wish   resin, temperature and start
     * @return the account
     * @throws BadInput when there is no such job
     */
    public static Account ready(OpenBook book, String number, TicketWish wish) throws BadInput {
        String words = JobTicket.of(book, number, wish).ready().words();
        return book.read(view -> {
            List<JobPlan.Club> clubs = JobPlan.read(view.state(OpenBook.need(view, ThingKind.JOB, number))).orElse(JobPlan.NONE).clubs();
            List<List<String>> rows = new ArrayList<>();
            for (JobPlan.Club club : clubs) {
                for (JobPlan.Task task : club.tasks()) {
                    rows.add(List.of((clubs.size() > 1 ? club.name() + ": " : "") + task.words(), task.minutes().isPresent()
                        ? OptionWords.time(task.minutes().getAsDouble()) : "not kept", task.kind().map(HowOption::waits).orElse(""), Account.DEFAULT));
                }
            }
            double minutes = clubs.stream().flatMap(club -> club.tasks().stream()).mapToDouble(task -> task.minutes().orElse(0)).sum();
            boolean dries = clubs.stream().flatMap(club -> club.tasks().stream()).anyMatch(task -> task.kind()
                .filter(kind -> kind.waitFor() == StepKind.Wait.DRY).isPresent());
            return Account.tell("When job %s can be handed over".formatted(number), OptionWords.time(minutes) + " at the bench", "")
                .say(words).table("Step by step", List.of("Step", "At the bench#", "Then", "From"), rows)
                .law(Formula.READY, dries ? new String[] {"cure times by the resin maker's sheet", "two hours to dry under a grip, a default"}
                    : new String[] {"cure times by the resin maker's sheet"}).done();
        });
    }
}
