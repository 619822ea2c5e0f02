package benchtwin.book;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Optional;

/**
 * A look back: only what was entered by one day, and only what had happened by another, the days included. A correction
 * tells of what it corrects, so it counts once it was entered, whenever that was put right.
 * @param knownBy what was entered later is left out
 * @param trueBy  what happened later is left out
 * @param zone    where the workshop's days begin
 */
public record AsOf(Optional<LocalDate> knownBy, Optional<LocalDate> trueBy, ZoneId zone) {

    /**
     * Everything.
     * @param zone where the workshop's days begin
     * @return a look at today
     */
    public static AsOf now(ZoneId zone) {
        return new AsOf(Optional.empty(), Optional.empty(), zone);
    }

    boolean knows(KeptEvent event) {
        return knownBy.map(day -> !event.entry().at().day(zone).isAfter(day)).orElse(true);
    }

    boolean saw(KeptEvent event) {
        return trueBy.map(day -> !event.since().day(zone).isAfter(day)).orElse(true);
    }
}
