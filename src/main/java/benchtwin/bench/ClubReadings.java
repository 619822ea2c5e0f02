package benchtwin.bench;

import benchtwin.book.Accepted;
import benchtwin.book.CurrentReading;
import benchtwin.book.State;
import benchtwin.club.Quantity;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * A club's readings that still tell of it. Work that moves a quantity leaves a mark: what was read of that quantity up to
 * the event the mark names no longer counts, until it is read again.
 */
final class ClubReadings {

    private static final String MARK = "unread_";

    private ClubReadings() {
    }

    /** Whether a fact is such a mark and says nothing of the club itself. */
    static boolean isMark(String fact) {
        return fact.startsWith(MARK);
    }

    /** The name of the mark of a column. */
    static String mark(String column) {
        return MARK + column;
    }

    /** What the club measures now, as far as it was read since anything moved it. */
    static List<CurrentReading> current(State club) {
        return counted(club.readings(), club.facts());
    }

    /** What it measured when it was last as it should be. */
    static List<CurrentReading> accepted(Accepted accepted) {
        return counted(accepted.readings(), accepted.facts());
    }

    /** Quantities that were moved and not read since. */
    static Set<Quantity> unread(State club) {
        Set<Quantity> unread = EnumSet.noneOf(Quantity.class);
        List<CurrentReading> current = current(club);
        for (ReadColumn column : ReadColumn.values()) {
            if (club.facts().containsKey(mark(column.column()))
                && current.stream().noneMatch(reading -> reading.read().quantity().equals(column.column()))) {
                unread.add(column.quantity());
            }
        }
        return unread;
    }

    private static List<CurrentReading> counted(List<CurrentReading> readings, Map<String, String> facts) {
        return readings.stream().filter(reading -> reading.event()
            > Long.parseLong(facts.getOrDefault(mark(reading.read().quantity()), "0"))).toList();
    }
}
