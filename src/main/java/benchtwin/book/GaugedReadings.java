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
        LastWords lastWords = new LastWords(events);
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
                NewReading read = lastWords.lastOf(reading).read();
                if (read.value().isPresent() && read.gauge().isPresent()) {
                    gauged.add(new GaugedReading(thing, phase, event.since(), read));
                }
            }
        }
        return gauged;
    }
}
