package benchtwin.book;

import static org.assertj.core.api.Assertions.assertThat;

import benchtwin.samples.TestClock;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.OptionalLong;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What was known then, and what was true then, against a model that is as simple as it can be. */
class HistoryPropertyTest {

    private static final LocalDate FIRST = LocalDate.of(2026, 5, 1);
    private static final int DAYS = 8;
    private static final List<String> TAGS = List.of("H-1", "H-2", "H-3");
    private static final List<EventKind> KINDS = List.of(EventKind.MEASURED, EventKind.DESCRIBED, EventKind.MOVED, EventKind.RETIRED,
        EventKind.RETURNED, EventKind.GROUND);

    @TempDir
    private Path folder;

    private final NaiveHistory slips = new NaiveHistory();
    private final Map<Integer, Long> idOfValue = new HashMap<>();
    private final Set<Integer> correctedValues = new HashSet<>();
    private int values;

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {11, 12, 13, 14, 15, 16})
    void everyQuestionIsAnsweredAsTheSlipsWould(long seed) throws BookProblem {
        Random random = new Random(seed);
        TestClock clock = TestClock.ticking(Instant.EPOCH);
        Book book = Book.open(Books.in(folder).file(), clock);
        for (int day = 0; day < DAYS; day++) {
            clock.set(FIRST.plusDays(day).atTime(9, 0).toInstant(ZoneOffset.UTC));
            LocalDate today = FIRST.plusDays(day);
            for (int entry = 0; entry < 5; entry++) {
                enter(book, random, today);
            }
        }
        Set<Object> answers = book.read(view -> {
            Set<Object> given = new HashSet<>();
            for (String tag : TAGS) {
                Thing thing = view.thing(ThingKind.HEAD, tag).orElseThrow();
                ask(view, thing, given);
                assertThat(said(view.state(thing))).as("as it is kept")
                    .isEqualTo(slips.asked(tag, Optional.empty(), Optional.empty()).orElseThrow());
            }
            return given;
        });
        assertThat(answers).as("different answers: else nothing happened").hasSizeGreaterThan(20);
        assertThat(correctedValues).as("corrections").hasSizeGreaterThan(3);
    }

    private void ask(BookView view, Thing thing, Set<Object> given) {
        for (int known = -1; known <= DAYS; known++) {
            for (int happened = -3; happened <= DAYS; happened++) {
                Optional<LocalDate> knownBy = known == DAYS ? Optional.empty() : Optional.of(FIRST.plusDays(known));
                Optional<LocalDate> trueBy = happened == DAYS ? Optional.empty() : Optional.of(FIRST.plusDays(happened));
                Optional<State> state = view.state(thing, new AsOf(knownBy, trueBy, ZoneOffset.UTC));
                Optional<NaiveHistory.Said> said = slips.asked(thing.tag(), knownBy, trueBy);
                assertThat(state.map(HistoryPropertyTest::said)).as("%s known by %s, true by %s", thing.tag(), knownBy, trueBy)
                    .isEqualTo(said);
                given.add(said);
            }
        }
    }

    private static NaiveHistory.Said said(State state) {
        Map<String, List<Double>> values = state.readings().stream().collect(Collectors.groupingBy(
            one -> one.read().quantity() + " " + one.read().condition().getOrDefault("how", ""),
            Collectors.mapping(one -> one.read().value().orElseThrow(), Collectors.toList())));
        values.values().forEach(list -> list.sort(null));
        return new NaiveHistory.Said(state.standing().word(), state.facts(), values);
    }

    /** One slip into the stack and into the book: a new event, or a correction of a value of before. */
    private void enter(Book book, Random random, LocalDate today) throws BookProblem {
        String tag = TAGS.get(random.nextInt(TAGS.size()));
        Optional<Thing> there = book.read(view -> view.thing(ThingKind.HEAD, tag));
        List<NaiveHistory.Value> open = slips.slips().stream().filter(slip -> slip.thing().equals(tag))
            .flatMap(slip -> slip.values().stream())
            .filter(value -> value.value().isPresent() && !correctedValues.contains(value.number())).toList();
        boolean correcting = !open.isEmpty() && random.nextInt(3) == 0;
        int slip = slips.slips().size();
        List<NaiveHistory.Value> written = new ArrayList<>();
        Map<String, String> facts = new HashMap<>();
        if (correcting) {
            NaiveHistory.Value wrong = open.get(random.nextInt(open.size()));
            correctedValues.add(wrong.number());
            written.add(new NaiveHistory.Value(slip, values++, wrong.quantity(), condition(random), OptionalInt.of(wrong.number()),
                random.nextInt(4) == 0 ? Optional.empty() : Optional.of((double) random.nextInt(50))));
        } else {
            for (int more = random.nextInt(4); more > 0; more--) {
                written.add(new NaiveHistory.Value(slip, values++, random.nextBoolean() ? "loft_deg" : "lie_deg", condition(random),
                    OptionalInt.empty(), Optional.of((double) random.nextInt(50))));
            }
            for (String fact : List.of("model", "place")) {
                if (random.nextInt(3) == 0) {
                    facts.put(fact, random.nextInt(4) == 0 ? "" : fact + " " + random.nextInt(50));
                }
            }
        }
        boolean dated = random.nextInt(3) > 0;
        LocalDate happened = dated ? today.minusDays(random.nextInt(4)) : today;
        EventKind kind = correcting ? EventKind.CORRECTED : there.isEmpty() ? EventKind.RECEIVED
            : KINDS.get(random.nextInt(KINDS.size()));
        slips.put(new NaiveHistory.Slip(slip, tag, today, happened, dated, kind, facts, written));
        NewEvent event = NewEvent.of(kind).with(facts).reading(written.stream().map(this::reading).toList());
        book.write(Books.JO, "a slip", entry -> {
            NewEvent when = dated ? event.at(Moment.on(happened)) : event;
            if (there.isEmpty()) {
                return entry.add(ThingKind.HEAD, tag, when);
            }
            entry.add(there.get(), when);
            return null;
        });
        List<KeptReading> kept = book.read(view -> view.events(view.thing(ThingKind.HEAD, tag).orElseThrow())).stream()
            .flatMap(one -> one.readings().stream()).sorted(Comparator.comparing(KeptReading::id)).toList();
        for (int at = 0; at < written.size(); at++) {
            idOfValue.put(written.get(at).number(), kept.get(kept.size() - written.size() + at).id());
        }
    }

    private static String condition(Random random) {
        return random.nextInt(3) == 0 ? "soled" : "";
    }

    private NewReading reading(NaiveHistory.Value value) {
        NewReading read = new NewReading(value.quantity(), OptionalDouble.of(value.value().orElse(0.0)), OptionalDouble.empty(),
            "degrees", value.condition().isEmpty() ? Map.of() : Map.of("how", value.condition()), Optional.empty(), Optional.empty(),
            Optional.empty(), Optional.empty(), Optional.empty(), OptionalLong.empty());
        if (value.corrects().isEmpty()) {
            return read;
        }
        long wrong = idOfValue.get(value.corrects().getAsInt());
        return value.value().isPresent() ? read.correcting(wrong, "misread") : read.takingBack(wrong, "misread");
    }
}
