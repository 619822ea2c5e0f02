package benchtwin.bench;

import benchtwin.book.BookEntry;
import benchtwin.book.BookProblem;
import benchtwin.book.BookView;
import benchtwin.book.CurrentReading;
import benchtwin.book.EventKind;
import benchtwin.book.JobActs;
import benchtwin.book.KeptEvent;
import benchtwin.book.Note;
import benchtwin.book.Standing;
import benchtwin.book.State;
import benchtwin.book.StateOf;
import benchtwin.book.Thing;
import benchtwin.book.ThingKind;
import benchtwin.club.Quantity;
import benchtwin.club.Word;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.format.DateTimeParseException;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** The jobs in the book: what is promised to whom by when. */
public final class JobBook {

    private static final int LONGEST_WORDS = 2000;

    /** What a job makes. */
    public enum What implements Word {
        /** The twin of a club. */
        TWIN("twin"),
        /** A changed version of a club. */
        CHANGE("change"),
        /** A set. */
        SET("set"),
        /** Something put right. */
        REPAIR("repair");

        private final String word;

        What(String word) {
            this.word = word;
        }

        @Override
        public String word() {
            return word;
        }
    }

    /**
     * A job to be taken on.
     * @param what   what it makes
     * @param player for whom; the club's player where a club is named and nobody is
     * @param club   the club it is about
     * @param due    {@code 2026-05-21} or {@code 2026-05-21 14:20}
     * @param words  anything else
     */
    public record Order(What what, Optional<String> player, Optional<String> club, Optional<String> due, String words) {
    }

    /**
     * A job as it stands.
     * @param number   its number
     * @param what     what it makes
     * @param player   for whom
     * @param club     the club it is about
     * @param due      by when, a day or a day and hour of the workshop
     * @param status   waiting, planned, handed over or called off
     * @param steps    what its plan says to do
     * @param expected what each finished club should measure
     * @param measured what was read of each when it was handed over
     * @param parts    what is promised to it, with where it lies
     * @param history  what was done, oldest first, with the day
     * @param notes    notes on it
     * @param words    what was said when it was taken on
     */
    public record Job(String number, String what, Optional<String> player, Optional<String> club, Optional<String> due,
                      String status, List<String> steps, List<OfClub> expected, List<OfClub> measured, List<PartInShort> parts,
                      List<String> history, List<String> notes, Optional<String> words) {
    }

    /**
     * What a finished club should measure, or does.
     * @param club   its tag, or what the set calls it
     * @param values by quantity
     */
    public record OfClub(String club, Map<Quantity, Double> values) {
    }

    /**
     * A part in one line.
     * @param kind  head, shaft and so on
     * @param tag   its tag
     * @param place where it lies
     * @param count how many
     */
    public record PartInShort(String kind, String tag, Optional<String> place, int count) {
    }

    /** The one due first before the others, those without a day last. */
    static final Comparator<StateOf> BY_DUE = Comparator.comparing((StateOf job) -> job.state().fact("due").orElse("9999"))
        .thenComparing(job -> Integer.parseInt(job.thing().tag()));

    private JobBook() {
    }

    /**
     * Takes a job on.
     * @param book  the book
     * @param order the job
     * @return its number
     * @throws BadInput when the club or the day is not known
     */
    public static String add(OpenBook book, Order order) throws BadInput {
        if (order.club().isEmpty() && order.player().isEmpty()) {
            throw new BadInput("a job is for somebody: " + book.asks(ToDo.WHOSE_JOB));
        }
        Map<String, String> facts = facts(book, order);
        return book.write("job add", entry -> {
            complete(entry, order, facts);
            return new JobActs(entry).open(facts, order.words()).tag();
        });
    }

    /** What is known of a job before the book is looked at. */
    static Map<String, String> facts(OpenBook book, Order order) throws BadInput {
        Map<String, String> facts = new TreeMap<>(Map.of("what", order.what().word()));
        if (order.words().length() > LONGEST_WORDS) {
            throw new BadInput("what was said of the job has %d characters; expected at most %d, or %s"
                .formatted(order.words().length(), LONGEST_WORDS, book.asks(ToDo.NOTE_INSTEAD)));
        }
        if (order.due().isPresent()) {
            facts.put("due", due(order.due().get()));
        }
        return facts;
    }

    /** What the book adds: the club as it is written there, and its player. */
    static void complete(BookEntry entry, Order order, Map<String, String> facts) throws BookProblem {
        if (order.club().isPresent()) {
            Thing club = OpenBook.need(entry, ThingKind.CLUB, order.club().get());
            facts.put("club", club.tag());
            entry.state(club).fact("player").ifPresent(player -> facts.put("player", player));
        }
        if (order.player().isPresent()) {
            facts.put("player", PlayerBook.orNew(entry, order.player().get()).tag());
        }
    }

    /**
     * How long there is until something is due.
     * @param book where the clock is
     * @param due  a day, which lasts until midnight, or a day and an hour
     * @return minutes from now
     * @throws BadInput when it is no day, or is over
     */
    public static double minutesUntil(OpenBook book, String due) throws BadInput {
        String text = due(due);
        LocalDateTime end = text.contains("T") ? LocalDateTime.parse(text) : LocalDate.parse(text).plusDays(1).atStartOfDay();
        LocalDateTime now = LocalDateTime.ofInstant(book.book().clock().instant(), book.zone()).truncatedTo(ChronoUnit.MINUTES);
        double minutes = now.until(end, ChronoUnit.MINUTES);
        if (minutes <= 0) {
            throw new BadInput("%s is over: it is %s now".formatted(text.replace('T', ' '), now.toString().replace('T', ' ')));
        }
        return minutes;
    }

    /** A day, or a day and an hour, as the book keeps it. */
    static String due(String typed) throws BadInput {
        String text = typed.strip().replace(' ', 'T');
        try {
            return text.contains("T") ? LocalDateTime.parse(text.length() == 15 ? text.replace("T", "T0") : text).toString()
                : LocalDate.parse(text).toString();
        } catch (DateTimeParseException neither) {
            throw new BadInput("\"%s\" is no day; expected year-month-day, with an hour if you like: 2026-05-21 or 2026-05-21 14:20"
                .formatted(typed));
        }
    }

    /**
     * The jobs, the one due first before the others.
     * @param book the book
     * @param all  whether those done and called off are listed too
     * @return in order of due day, those without one last
     * @throws BadInput when the book cannot be read
     */
    public static List<Job> list(OpenBook book, boolean all) throws BadInput {
        return book.read(view -> view.states(ThingKind.JOB).stream().filter(job -> all || isOpen(job))
            .sorted(BY_DUE)
            .map(job -> job(book, view, job)).toList());
    }

    /**
     * One job.
     * @param book   the book
     * @param number its number
     * @return the job
     * @throws BadInput when there is none of this number
     */
    public static Job show(OpenBook book, String number) throws BadInput {
        return book.read(view -> {
            Thing job = OpenBook.need(view, ThingKind.JOB, number);
            return job(book, view, new StateOf(job, view.state(job)));
        });
    }

    /**
     * Calls a job off; its parts are free again.
     * @param book   the book
     * @param number its number
     * @param why    in words
     * @return the parts that are free again
     * @throws BadInput when there is no such job, or it is over
     */
    public static List<PartInShort> cancel(OpenBook book, String number, String why) throws BadInput {
        return book.write("job cancel", entry -> {
            Thing job = OpenBook.need(entry, ThingKind.JOB, number);
            List<PartInShort> freed = parts(entry, job);
            new JobActs(entry).callOff(job, why);
            return freed;
        });
    }

    static Job job(OpenBook book, BookView view, StateOf job) {
        State state = job.state();
        List<KeptEvent> events = view.events(job.thing());
        JobPlan plan = JobPlan.read(state).orElse(JobPlan.NONE);
        return new Job(job.thing().tag(), state.fact("what").orElse("job"), state.fact("player"), state.fact("club"),
            state.fact("due").map(due -> due.replace('T', ' ')), state.standing().word(), plan.steps(),
            plan.clubs().stream().map(club -> new OfClub(club.name(), club.predicted())).toList(), measured(view, job.thing()),
            parts(view, job.thing()), events.stream().map(event -> history(book, event)).toList(),
            view.notes(job.thing()).stream().map(Note::text).toList(), events.get(0).event().words());
    }

    private static List<OfClub> measured(BookView view, Thing job) {
        List<OfClub> measured = new ArrayList<>();
        for (KeptEvent event : view.eventsFor(job)) {
            if (event.event().kind() == EventKind.RECORDED && !event.readings().isEmpty()) {
                Map<Quantity, Double> values = new EnumMap<>(Quantity.class);
                ClubValues.of(event.readings().stream().map(reading -> new CurrentReading(reading.id(), event.id(), event.since(),
                    reading.read())).toList()).forEach((quantity, value) -> values.put(quantity, value.value()));
                measured.add(new OfClub(event.thing().tag(), values));
            }
        }
        return measured;
    }

    private static String history(OpenBook book, KeptEvent event) {
        String what = event.event().kind() == EventKind.RECEIVED ? "taken on" : event.event().kind().word();
        return "%s  %s%s%s".formatted(HistoryWords.when(book, event.entry().at()), what,
            event.entry().by().map(by -> " by " + by).orElse(""),
            event.event().words().map(words -> ": " + words).orElse(""));
    }


    private static List<PartInShort> parts(BookView view, Thing job) {
        return JobActs.promisedTo(view, job).stream().map(part -> new PartInShort(part.thing().kind().word(), part.thing().tag(),
            part.state().fact("place"), part.state().promises().stream()
                .filter(promise -> promise.job().equals(Optional.of(job.tag()))).mapToInt(promise -> promise.count()).sum()))
            .toList();
    }

    /** A job that is neither done nor called off. */
    static Thing needOpen(BookView view, String number) throws BookProblem {
        Thing job = OpenBook.need(view, ThingKind.JOB, number);
        State state = view.state(job);
        if (!isOpen(new StateOf(job, state))) {
            throw new BookProblem("%s is %s already".formatted(job.name(), state.standing().word()));
        }
        return job;
    }

    static boolean isOpen(StateOf job) {
        return isOpen(job.state().standing());
    }

    static boolean isOpen(Standing job) {
        return job == Standing.WAITING || job == Standing.PLANNED;
    }

    /** A job in a few words: {@code twin of C-17, due 2026-05-21, planned}. */
    static String inWords(State job) {
        return "%s%s%s, %s".formatted(job.fact("what").orElse("job"), job.fact("club").map(club -> " of " + club).orElse(""),
            job.fact("due").map(due -> ", due " + due.replace('T', ' ')).orElse(""), job.standing().word());
    }
}
