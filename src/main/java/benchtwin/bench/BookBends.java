package benchtwin.bench;

import benchtwin.bend.Bend;
import benchtwin.bend.BendDirection;
import benchtwin.bend.BendTrial;
import benchtwin.bend.Working;
import benchtwin.book.BookEntry;
import benchtwin.book.BookProblem;
import benchtwin.book.BookView;
import benchtwin.book.ClubActs;
import benchtwin.book.EventKind;
import benchtwin.book.KeptEvent;
import benchtwin.book.NewEvent;
import benchtwin.book.NewReading;
import benchtwin.book.Thing;
import benchtwin.book.ThingKind;
import benchtwin.club.Quantity;
import benchtwin.measure.PlainNumber;
import benchtwin.stock.MeasuredColumns;
import benchtwin.stock.StockKind;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import java.util.Set;
import java.util.TreeMap;

/** Bends in the book: events of the head, with the readings after them; of the club too that the head sits in. */
final class BookBends implements BendJournal {

    /** Facts of a bend that was done in a session. */
    static final String ASKED = "asked_deg";
    private static final String DIRECTION = "direction";
    private static final String GOT = "got_deg";
    private static final String READING_SPREAD = "reading_deg";
    private static final String WORKING = "working";
    private static final String TARGET = "target";
    private static final String INSTEAD_OF = "instead_of";
    private static final double HARDLY_MOVED_DEG = 0.05;

    private final OpenBook book;
    private final Optional<String> job;

    /**
     * @param book the book
     * @param job  the job the heads are bent for
     */
    BookBends(OpenBook book, Optional<String> job) {
        this.book = book;
        this.job = job;
    }

    @Override
    public String place() {
        return "the book";
    }

    @Override
    public List<Kept> bends() throws BadInput {
        return book.read(view -> {
            Map<String, String> models = new HashMap<>();
            List<KeptEvent> bends = view.events(EventKind.BENT);
            bends.forEach(bend -> models.computeIfAbsent(bend.thing().tag(), tag -> view.state(bend.thing()).fact("model").orElse("")));
            return kept(bends, models);
        });
    }

    private static List<Kept> kept(List<KeptEvent> bends, Map<String, String> models) {
        Set<Long> putRight = new HashSet<>();
        bends.stream().map(bend -> bend.event().facts()).filter(facts -> facts.containsKey(INSTEAD_OF))
            .forEach(facts -> putRight.add(Long.parseLong(facts.get(INSTEAD_OF))));
        List<Kept> kept = new ArrayList<>();
        for (KeptEvent bend : bends) {
            Map<String, String> facts = bend.event().facts();
            if (facts.containsKey(ASKED) && !putRight.contains(bend.id())) {
                kept.add(new Kept(bend.id(), bend.thing().tag(), models.get(bend.thing().tag()), BendWords.direction(facts.get(DIRECTION)),
                    new BendTrial(Double.parseDouble(facts.get(ASKED)), Double.parseDouble(facts.get(GOT)),
                        Double.parseDouble(facts.get(READING_SPREAD)), BendWords.working(facts.get(WORKING))),
                    BendTargets.read(facts.getOrDefault(TARGET, ""))));
            }
        }
        return kept;
    }

    /** The stock out of the book knows of every bend already. */
    @Override
    public Since since(String head) {
        return Since.NOTHING;
    }

    @Override
    public void read(Of of, Map<Quantity, Double> readDeg) throws BadInput {
        book.write("bend", entry -> {
            Thing head = OpenBook.need(entry, ThingKind.HEAD, of.head());
            entry.add(head, forJob(entry, NewEvent.of(EventKind.MEASURED).reading(readings(entry, of, StockKind.HEADS, readDeg))));
            found(entry, head, of, readDeg, null);
            return null;
        });
    }

    @Override
    public void answered(Of of, String words) throws BadInput {
        book.write("bend", entry -> {
            entry.add(OpenBook.need(entry, ThingKind.HEAD, of.head()), forJob(entry, NewEvent.of(EventKind.DESCRIBED).saying(words)));
            return null;
        });
    }

    @Override
    public long bent(Of of, Bend bend, Map<Quantity, Double> readDeg, Optional<Mistyped> insteadOf) throws BadInput {
        return book.write("bend", entry -> {
            Thing head = OpenBook.need(entry, ThingKind.HEAD, of.head());
            Map<String, String> facts = facts(of, bend, insteadOf);
            String words = "asked %s%s".formatted(BendWords.asked(bend.direction(), bend.askedDeg(), of.reading()),
                insteadOf.isPresent() ? ", in place of the entry before" : "");
            List<NewReading> readings = readings(entry, of, StockKind.HEADS, readDeg);
            Map<Quantity, Double> rest = new TreeMap<>(bend.afterDeg());
            rest.keySet().removeAll(readDeg.keySet());
            readings(entry, of, StockKind.HEADS, rest).forEach(one -> readings.add(WorkedOut.reading(one, one.value().orElseThrow(),
                one.uncertainty(), "not read after the bend")));
            entry.add(head, forJob(entry, NewEvent.of(EventKind.BENT).with(facts).saying(words).reading(readings)));
            found(entry, head, of, readDeg, bend);
            return entry.events(head).stream().mapToLong(KeptEvent::id).max().orElseThrow();
        });
    }

    private static Map<String, String> facts(Of of, Bend bend, Optional<Mistyped> insteadOf) {
        Map<String, String> facts = new TreeMap<>();
        for (BendDirection direction : BendDirection.values()) {
            double used = Math.max(0, direction.part(bend.used()));
            double said = insteadOf.isPresent() ? Math.max(0, direction.part(insteadOf.get().bend().used())) : 0;
            if (used != said) {
                facts.put("bent_%s_deg".formatted(direction.word()), PlainNumber.text(used - said));
            }
        }
        facts.put(DIRECTION, bend.direction().word());
        facts.put(ASKED, PlainNumber.text(bend.trial().askedDeg()));
        facts.put(GOT, PlainNumber.text(bend.trial().gotDeg()));
        facts.put(READING_SPREAD, PlainNumber.text(bend.trial().readingDeg()));
        facts.put(WORKING, bend.trial().working().word());
        facts.put(TARGET, BendTargets.text(of.targetDeg()));
        insteadOf.ifPresent(mistyped -> facts.put(INSTEAD_OF, Long.toString(mistyped.id())));
        return facts;
    }

    /** A head that sits in a club is read there; an angle that went along and was not read is no longer known there. */
    private void found(BookEntry entry, Thing head, Of of, Map<Quantity, Double> readDeg, Bend bend) throws BookProblem {
        Optional<Thing> club = entry.state(head).club().flatMap(tag -> entry.thing(ThingKind.CLUB, tag));
        if (club.isEmpty() || readDeg.isEmpty()) {
            return;
        }
        long last = entry.events(club.get()).stream().mapToLong(KeptEvent::id).max().orElse(0);
        Map<String, String> unread = new TreeMap<>();
        if (bend != null) {
            bend.afterDeg().forEach((quantity, after) -> {
                double moved = Math.abs(after - bend.beforeDeg().getOrDefault(quantity, after));
                if (!readDeg.containsKey(quantity) && moved > HARDLY_MOVED_DEG) {
                    unread.put(ClubReadings.mark(quantity.word() + "_deg"), Long.toString(last));
                }
            });
        }
        new ClubActs(entry).enter(club.get(), forJob(entry, NewEvent.of(EventKind.FOUND).with(unread)
            .reading(readings(entry, of, StockKind.CLUBS, readDeg))));
    }

    private NewEvent forJob(BookView view, NewEvent event) throws BookProblem {
        return job.isPresent() ? event.of(OpenBook.need(view, ThingKind.JOB, job.get())) : event;
    }

    private static List<NewReading> readings(BookView view, Of of, StockKind kind, Map<Quantity, Double> anglesDeg) {
        List<NewReading> readings = new ArrayList<>();
        anglesDeg.forEach((quantity, value) -> {
            String column = quantity.word() + "_deg";
            Map<String, String> condition = MeasuredColumns.condition(kind, column).contains("reading")
                ? Map.of("reading", of.reading()) : Map.of();
            Double spread = of.readingDeg().get(quantity);
            readings.add(new NewReading(column, OptionalDouble.of(value), spread == null ? OptionalDouble.empty()
                : OptionalDouble.of(spread), MeasuredColumns.unit(kind, column), condition, of.gauge(), Optional.empty(),
                Optional.empty(), Optional.empty(), Optional.empty(), OptionalLong.empty()));
        });
        return readings;
    }

    /** Whether a head was bent for a job in sessions, so that the record has it already. */
    static boolean bentInSession(BookView view, Thing head, Thing job) {
        return view.events(head).stream().anyMatch(event -> event.event().kind() == EventKind.BENT
            && event.event().facts().containsKey(ASKED) && event.event().job().equals(Optional.of(job)));
    }
}
