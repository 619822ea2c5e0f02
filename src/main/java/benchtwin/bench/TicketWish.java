package benchtwin.bench;

import benchtwin.club.ResinTable;
import java.time.LocalDateTime;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What a ticket is worked out with.
 * @param resin        the cure times of the resin that is used
 * @param temperatureC the temperature at the bench, °C
 * @param start        when the work begins, by the clock at the bench; empty for now
 */
public record TicketWish(Optional<ResinTable> resin, OptionalDouble temperatureC, Optional<LocalDateTime> start) {
}
