package benchtwin.ticket;

import java.time.LocalDateTime;
import java.util.Optional;

/**
 * When a job can be handed over.
 * @param handOver earliest, by the clock at the bench; empty where it is not worked out
 * @param handling from when bonded parts may be handled; empty likewise, or where nothing is bonded
 * @param late     whether that is after the job is due
 * @param words    how it was worked out, or why not
 */
public record TicketReady(Optional<LocalDateTime> handOver, Optional<LocalDateTime> handling, boolean late, String words) {
}
