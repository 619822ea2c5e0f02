package benchtwin.book;

import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Events of one thing for tests of how they add up, one a minute unless they say when they happened. */
final class Slips {

    static final Thing JOB_1 = new Thing(900, ThingKind.JOB, "1");
    static final Thing JOB_2 = new Thing(901, ThingKind.JOB, "2");

    private final Thing thing;
    private final List<KeptEvent> events = new ArrayList<>();
    private int readings;

    private Slips(ThingKind kind) {
        thing = new Thing(1, kind, "X-1");
        add(NewEvent.of(EventKind.RECEIVED));
    }

    /** Of a thing that was received, and nothing else. */
    static Slips of(ThingKind kind) {
        return new Slips(kind);
    }

    static Map<String, String> facts(String... facts) {
        Map<String, String> known = new HashMap<>();
        for (int at = 0; at < facts.length; at += 2) {
            known.put(facts[at], facts[at + 1]);
        }
        return known;
    }

    Slips add(EventKind kind, String... facts) {
        return add(NewEvent.of(kind).with(facts(facts)));
    }

    Slips add(Thing job, EventKind kind, String... facts) {
        return add(NewEvent.of(kind).with(facts(facts)).of(job));
    }

    /** Readings are numbered from 1 on. */
    Slips read(EventKind kind, NewReading... read) {
        return add(NewEvent.of(kind).reading(List.of(read)));
    }

    Slips add(NewEvent event) {
        int number = events.size() + 1;
        List<KeptReading> kept = new ArrayList<>();
        for (NewReading read : event.readings()) {
            kept.add(new KeptReading(++readings, read));
        }
        events.add(new KeptEvent(number, new Entry(number, Moment.at(Instant.parse("2026-05-01T08:00:00Z").plusSeconds(60L * number)),
            Optional.empty(), "test", "test build"), thing, event, kept));
        return this;
    }

    State state() {
        return Fold.of(thing.kind(), events);
    }

    static NewReading loft(double loftDeg) {
        return NewReading.of("loft_deg", loftDeg, "degrees");
    }

    static NewReading frequency(double cpm) {
        return NewReading.of("frequency_cpm", cpm, "cpm");
    }
}
