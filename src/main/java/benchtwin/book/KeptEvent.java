package benchtwin.book;

import java.util.List;

/**
 * An event in the record.
 * @param id       its number in the file
 * @param entry    the act it was entered in
 * @param thing    what it befell
 * @param event    what was entered, its readings aside
 * @param readings its readings
 */
public record KeptEvent(long id, Entry entry, Thing thing, NewEvent event, List<KeptReading> readings) {

    public KeptEvent {
        readings = List.copyOf(readings);
    }

    /**
     * When it counts from: when it happened, else when it was entered.
     * @return the moment it has in the history
     */
    public Moment since() {
        return event.happened().orElse(entry.at());
    }
}
