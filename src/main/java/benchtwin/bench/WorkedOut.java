package benchtwin.bench;

import benchtwin.book.BookEntry;
import benchtwin.book.BookProblem;
import benchtwin.book.EventKind;
import benchtwin.book.KeptEvent;
import benchtwin.book.KeptReading;
import benchtwin.book.NewEvent;
import benchtwin.book.NewReading;
import benchtwin.book.Thing;
import benchtwin.club.AngleReading;
import benchtwin.club.Quantity;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Enters what a bent head and a cut shaft measure, so that the next plan for the club need not start from nothing: an angle
 * read on the finished club is the head's own; what nobody read is worked out by the plan, and its note says so.
 */
final class WorkedOut {

    private static final String READING = "reading";
    private static final Map<Quantity, String> OF_HEAD = new EnumMap<>(Map.of(Quantity.LOFT, "loft_deg", Quantity.LIE, "lie_deg",
        Quantity.FACE, "face_deg", Quantity.BOUNCE, "bounce_deg", Quantity.OFFSET, "offset_mm"));
    private static final Map<Quantity, String> OF_SHAFT = new EnumMap<>(Map.of(Quantity.SHAFT_MASS, "mass_g",
        Quantity.SHAFT_BALANCE, "balance_mm", Quantity.TORQUE, "torque_deg"));

    private final BookEntry entry;
    private final Thing job;
    private final Thing club;
    private final JobPlan.Club plan;

    WorkedOut(BookEntry entry, Thing job, Thing club, JobPlan.Club plan) {
        this.entry = entry;
        this.job = job;
        this.club = club;
        this.plan = plan;
    }

    /** The angles of a head that was bent. */
    void bentHead(Thing head, Iterable<NewReading> readOnTheClub) throws BookProblem {
        Map<String, NewReading> before = lastRead(head);
        Map<String, NewReading> now = new LinkedHashMap<>();
        Set<String> readSince = entry.state(head).readings().stream().map(one -> one.read().quantity()).collect(Collectors.toSet());
        OF_HEAD.forEach((quantity, column) -> {
            NewReading earlier = before.get(column);
            if (earlier != null && !readSince.contains(column) && plan.predicted().containsKey(quantity) && isSameReading(earlier)) {
                now.put(column, reading(earlier, plan.predicted().get(quantity), uncertainty(quantity, earlier), note()));
            }
        });
        for (NewReading read : readOnTheClub) {
            NewReading earlier = before.get(read.quantity());
            if (OF_HEAD.containsValue(read.quantity()) && earlier != null
                && earlier.condition().getOrDefault(READING, "").equals(read.condition().getOrDefault(READING, ""))) {
                now.put(read.quantity(), new NewReading(read.quantity(), read.value(), read.uncertainty(), read.unit(),
                    earlier.condition(), read.gauge(), read.station(), read.measuredAt(), read.by(),
                    Optional.of("read on club " + club.tag()), OptionalLong.empty()));
            }
        }
        enter(head, now);
    }

    /** What was predicted in another reading than the head's own says nothing of it. */
    private boolean isSameReading(NewReading earlier) {
        String reading = earlier.condition().get(READING);
        return reading == null || plan.reading().map(AngleReading::word).orElse(reading).equals(reading);
    }

    /** Mass, balance and torque of a shaft that was cut. Its frequency has to be read. */
    void cutShaft(Thing shaft) throws BookProblem {
        Map<String, NewReading> before = lastRead(shaft);
        Map<String, NewReading> now = new LinkedHashMap<>();
        OF_SHAFT.forEach((quantity, column) -> {
            NewReading earlier = before.get(column);
            if (earlier != null && plan.predicted().containsKey(quantity)) {
                now.put(column, reading(earlier, plan.predicted().get(quantity), uncertainty(quantity, earlier), note()));
            }
        });
        enter(shaft, now);
    }

    private void enter(Thing part, Map<String, NewReading> readings) throws BookProblem {
        if (!readings.isEmpty()) {
            entry.add(part, NewEvent.of(EventKind.MEASURED).of(job).reading(new ArrayList<>(readings.values())));
        }
    }

    /** The newest reading of each quantity, overtaken or not, for how it was taken. */
    private Map<String, NewReading> lastRead(Thing part) {
        Map<Long, NewReading> corrected = new LinkedHashMap<>();
        Map<String, NewReading> last = new LinkedHashMap<>();
        List<KeptEvent> events = entry.events(part);
        events.forEach(event -> event.readings().forEach(one -> one.read().corrects().ifPresent(id ->
            corrected.put(id, one.read()))));
        for (KeptEvent event : events) {
            for (KeptReading one : event.readings()) {
                NewReading read = one.read();
                if (read.value().isPresent() && !corrected.containsKey(one.id())) {
                    last.put(read.quantity(), read);
                }
            }
        }
        return last;
    }

    private OptionalDouble uncertainty(Quantity quantity, NewReading earlier) {
        Double predicted = plan.uncertainty().get(quantity);
        return predicted == null ? earlier.uncertainty() : OptionalDouble.of(predicted);
    }

    private String note() {
        return "worked out for %s, not read".formatted(job.name());
    }

    /** A value that nobody read, of a quantity that was read in this way before. */
    static NewReading reading(NewReading earlier, double value, OptionalDouble uncertainty, String note) {
        return new NewReading(earlier.quantity(), OptionalDouble.of(Json.rounded(value)), uncertainty, earlier.unit(),
            earlier.condition(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.of(note),
            OptionalLong.empty());
    }
}
