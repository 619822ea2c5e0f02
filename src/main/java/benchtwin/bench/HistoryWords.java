package benchtwin.bench;

import benchtwin.book.EventKind;
import benchtwin.book.KeptEvent;
import benchtwin.book.KeptReading;
import benchtwin.book.Moment;
import benchtwin.book.NewReading;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** What befell a thing, in one line. */
final class HistoryWords {

    private static final DateTimeFormatter MINUTES = DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm");
    /** Facts the line says by other words, or that nobody reads. */
    private static final Set<String> SAID = Set.of("plan", "retired_why", "called_off_why");

    private HistoryWords() {
    }

    static String of(OpenBook book, KeptEvent event) {
        List<String> parts = new ArrayList<>();
        event.event().facts().entrySet().stream().filter(fact -> !SAID.contains(fact.getKey())).forEach(fact ->
            parts.add(fact(event.event().kind(), fact)));
        event.readings().forEach(reading -> parts.add(reading(reading)));
        event.event().words().ifPresent(parts::add);
        return "%s  %s%s%s%s".formatted(when(book, event.since()), event.event().kind().word(),
            event.event().job().map(job -> " for job " + job.tag()).orElse(""),
            parts.isEmpty() ? "" : ": " + String.join(", ", parts), event.entry().by().map(by -> " (" + by + ")").orElse(""));
    }

    /** A day, or a day with hour and minute where those are known, in the workshop's zone. */
    static String when(OpenBook book, Moment moment) {
        return moment.isDay() ? moment.text()
            : LocalDateTime.ofInstant(Instant.parse(moment.text()), book.zone()).format(MINUTES);
    }

    private static String fact(EventKind kind, Map.Entry<String, String> fact) {
        String name = name(fact.getKey());
        if (fact.getValue().isEmpty()) {
            return "no " + name;
        }
        return switch (kind) {
            case MOVED, COUNTED -> fact.getValue();
            case PROMISED -> fact.getKey().equals("whom") ? "to " + fact.getValue() : fact.getValue() + " of it";
            case BUILT_IN -> "into " + fact.getValue();
            default -> name + " " + fact.getValue();
        };
    }

    private static String reading(KeptReading kept) {
        NewReading read = kept.read();
        String value = read.value().isPresent() ? Double.toString(read.value().getAsDouble()).replaceAll("\\.0$", "")
            : "taken back";
        String corrects = read.corrects().isPresent() ? " in place of reading " + read.corrects().getAsLong() : "";
        return "%s %s%s [%d]".formatted(name(read.quantity()), value, corrects, kept.id());
    }

    /** A name in the file as people read it: {@code loft_deg} is {@code loft deg}. */
    static String name(String name) {
        return name.replace('_', ' ');
    }
}
