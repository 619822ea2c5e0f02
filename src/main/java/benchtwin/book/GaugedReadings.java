package benchtwin.book;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Collects the readings of things with the gauge of each, apart by what was done to the things in between. */
final class GaugedReadings {

    private static final Set<EventKind> CHANGING = Set.of(EventKind.BENT, EventKind.GROUND, EventKind.PULLED, EventKind.BUILT_IN);

    private GaugedReadings() {
    }

    /** Of one thing, from its events in the order they count from. */
    static List<GaugedReading> of(Thing thing, List<KeptEvent> events) {
        Map<Long, KeptReading> corrections = new HashMap<>();
        events.forEach(event -> event.readings().forEach(reading -> reading.read().corrects()
            .ifPresent(id -> corrections.put(id, reading))));
        List<GaugedReading> gauged = new ArrayList<>();
        Map<String, String> facts = new HashMap<>();
        int phase = 0;
        for (KeptEvent event : events) {
            if (event.event().kind() == EventKind.CORRECTED) {
                continue;
            }
            phase += CHANGING.contains(event.event().kind()) || Overtaken.changesBuild(thing.kind(), facts, event.event().facts())
                ? 1 : 0;
            facts.putAll(event.event().facts());
            for (KeptReading reading : event.readings()) {
                KeptReading last = reading;
                while (corrections.containsKey(last.id())) {
                    last = corrections.get(last.id());
                }
                if (last.read().value().isPresent() && last.read().gauge().isPresent()) {
                    gauged.add(new GaugedReading(thing, phase, event.since(), last.read()));
                }
            }
        }
        return gauged;
    }
}
