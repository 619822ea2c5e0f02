package benchtwin.bench;

import benchtwin.book.KeptEvent;
import benchtwin.book.KeptReading;
import benchtwin.book.LastWords;
import benchtwin.book.NewReading;
import benchtwin.book.SheetOrigin;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What of one sitting's readings a file says otherwise now: corrections, each in the place of the last word on a reading. */
final class CorrectedDay {

    private static final String WHY = "its file says otherwise now";

    private final Map<String, KeptReading> now = new LinkedHashMap<>();
    private final List<NewReading> corrections = new ArrayList<>();
    private final List<NewReading> late = new ArrayList<>();

    /**
     * @param all everything that befell the club
     * @param key the row's key, which the events that came from it bear
     */
    CorrectedDay(List<KeptEvent> all, String key) {
        LastWords lastWords = new LastWords(all);
        all.stream().filter(event -> event.event().sheet().map(SheetOrigin::key).equals(Optional.of(key)))
            .flatMap(event -> event.readings().stream()).filter(reading -> reading.read().corrects().isEmpty())
            .map(lastWords::lastOf).forEach(last -> now.put(last.read().quantity(), last));
    }

    /** A reading the row gives anew: nothing to do when it is the same, a correction or a late reading otherwise. */
    void holds(NewReading read, List<String> words) {
        KeptReading old = now.get(read.quantity());
        String name = ColumnText.name(read.quantity());
        String value = ColumnText.value(read.quantity(), read.value().orElseThrow());
        if (old == null) {
            late.add(read);
            words.add("%s %s, not read before".formatted(name, value));
        } else if (!old.read().value().equals(read.value()) || !old.read().condition().equals(read.condition())) {
            corrections.add(read.correcting(old.id(), WHY));
            words.add("%s %s → %s".formatted(name, old.read().value().isPresent()
                ? ColumnText.value(read.quantity(), old.read().value().getAsDouble()) : "taken back", value));
        }
    }

    /** Readings of cells that were emptied are taken back. */
    void holdsNoMore(List<String> blanked, List<String> words) {
        now.values().stream().filter(old -> blanked.contains(old.read().quantity()) && old.read().value().isPresent())
            .forEach(old -> {
                corrections.add(old.read().takingBack(old.id(), WHY));
                words.add("%s %s taken back".formatted(ColumnText.name(old.read().quantity()),
                    ColumnText.value(old.read().quantity(), old.read().value().getAsDouble())));
            });
    }

    /** Readings in the place of others. */
    List<NewReading> corrections() {
        return corrections;
    }

    /** Readings that were not there before. */
    List<NewReading> late() {
        return late;
    }
}
