package benchtwin.book;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Which reading stands in the place of which: a correction names what it corrects, and may be corrected itself. */
public final class LastWords {

    private final Map<Long, KeptReading> corrections = new HashMap<>();
    private final Map<Long, KeptEvent> correctedIn = new HashMap<>();

    /**
     * @param events events of one thing, its corrections among them
     */
    public LastWords(List<KeptEvent> events) {
        events.forEach(event -> event.readings().forEach(reading -> reading.read().corrects().ifPresent(id -> {
            corrections.put(id, reading);
            correctedIn.put(id, event);
        })));
    }

    /**
     * The reading that corrects another.
     * @param reading any
     * @return empty where it was not corrected
     */
    public Optional<KeptReading> correctionOf(KeptReading reading) {
        return Optional.ofNullable(corrections.get(reading.id()));
    }

    /**
     * The event in which a reading was corrected.
     * @param reading any
     * @return empty where it was not corrected
     */
    public Optional<KeptEvent> correctedIn(KeptReading reading) {
        return Optional.ofNullable(correctedIn.get(reading.id()));
    }

    /**
     * What stands in a reading's place now.
     * @param reading any
     * @return the last correction of it, without a value where it was taken back; itself where it was not corrected
     */
    public KeptReading lastOf(KeptReading reading) {
        KeptReading last = reading;
        for (Optional<KeptReading> next = correctionOf(last); next.isPresent(); next = correctionOf(last)) {
            last = next.get();
        }
        return last;
    }
}
