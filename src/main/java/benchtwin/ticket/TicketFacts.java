package benchtwin.ticket;

import benchtwin.picture.QrCode;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/** Small texts of a ticket. */
final class TicketFacts {

    private static final DateTimeFormatter WHEN = DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm", Locale.ROOT);

    private static final double CODE_MM = 24;

    private static final double MEASURE_PERCENT = 10;
    private static final double ALL_MEASURES_PERCENT = 48;

    private TicketFacts() {
    }

    /** The file's title. */
    static String title(Ticket ticket, PaperText text) {
        return "Job %s: %s%s".formatted(ticket.job(), text.show("title", ticket.title()),
            ticket.player().map(player -> " for " + text.show("player", player)).orElse(""));
    }

    static String code(Ticket ticket) {
        return QrCode.of(ticket.code()).svg(CODE_MM);
    }

    /** How wide a column of readings is, so that all of them leave room for the work. */
    static String measureWidth(Ticket ticket) {
        return String.format(Locale.ROOT, "%.1f%%", Math.min(MEASURE_PERCENT,
            ALL_MEASURES_PERCENT / ticket.rows().get(0).lines().size()));
    }

    static String when(LocalDateTime when) {
        return WHEN.format(when);
    }
}
