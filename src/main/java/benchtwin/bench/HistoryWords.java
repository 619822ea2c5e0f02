package benchtwin.bench;

import benchtwin.book.Entry;
import benchtwin.book.EventKind;
import benchtwin.book.KeptEvent;
import benchtwin.book.KeptReading;
import benchtwin.book.Moment;
import benchtwin.book.NewReading;
import benchtwin.book.Note;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** What befell a part, in one line. */
final class HistoryWords {

    private static final DateTimeFormatter MINUTES = DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm");

    private HistoryWords() {
    }

    /** Everything that befell a thing; what was put right says what stood there before. */
    static List<String> of(OpenBook book, List<KeptEvent> events) {
        Map<Long, NewReading> before = new HashMap<>();
        events.forEach(event -> event.readings().forEach(reading -> before.put(reading.id(), reading.read())));
        return events.stream().map(event -> "%s  %s%s%s".formatted(when(book, event.since()), what(event, before),
            event.event().words().map(text -> ": " + text).orElse(""), event.entry().by().map(by -> " (" + by + ")").orElse(""))).toList();
    }

    /** The same as news: when it was entered, by whom, what. */
    static String entered(OpenBook book, KeptEvent event) {
        String words = event.event().words().map(text -> ": " + text).orElse("");
        return "%s%s  %s%s".formatted(when(book, event.entry().at()), by(event.entry()), what(event, Map.of()), words);
    }

    /** A note as news. */
    static String entered(OpenBook book, Note note) {
        return "%s%s  note: %s".formatted(when(book, note.entry().at()), by(note.entry()), note.text());
    }

    private static String by(Entry entry) {
        return entry.by().map(by -> " by " + by).orElse("");
    }

    /** A day, or a day with hour and minute where those are known, in the workshop's zone. */
    static String when(OpenBook book, Moment moment) {
        return moment.isDay() ? moment.text()
            : LocalDateTime.ofInstant(Instant.parse(moment.text()), book.zone()).format(MINUTES);
    }

    private static String what(KeptEvent event, Map<Long, NewReading> before) {
        Map<String, String> facts = new TreeMap<>(event.event().facts());
        String job = event.event().job().map(one -> " for job " + one.tag()).orElse("");
        return switch (event.event().kind()) {
            case RECEIVED -> "came into the book" + (event.readings().isEmpty() ? "" : ", with " + count(event.readings()));
            case MOVED -> "moved to " + facts.getOrDefault("place", "a place not given");
            case COUNTED -> "counted: " + facts.getOrDefault("count", "?");
            case PROMISED -> "promised to " + whom(event) + (facts.getOrDefault("count", "1").equals("1") ? ""
                : " (" + facts.get("count") + " of them)");
            case RELEASED -> "no longer promised to " + event.event().job().map(one -> "job " + one.tag())
                .orElse(facts.getOrDefault("whom", "anybody"));
            case PULLED -> (event.thing().kind().isCounted() ? "one came out of a club" : "pulled")
                + job + (facts.isEmpty() ? "" : ": " + facts(facts));
            case BUILT_IN -> (event.thing().kind().isCounted() ? "one " : "") + "built into %s%s".formatted(facts.getOrDefault("club", "a club"), job);
            case RETIRED -> "retired" + (event.event().words().isPresent() ? ""
                : ": " + facts.getOrDefault("retired_why", "no reason given"));
            case RETURNED -> "back in stock";
            case BENT -> "bent%s%s".formatted(bends(facts), job);
            case CORRECTED -> "corrected: " + readings(event, before);
            default -> other(event, facts, job, before);
        };
    }

    private static String other(KeptEvent event, Map<String, String> facts, String job, Map<Long, NewReading> before) {
        List<String> parts = new ArrayList<>();
        if (!facts.isEmpty()) {
            parts.add(facts(facts));
        }
        if (!event.readings().isEmpty()) {
            parts.add(readings(event, before));
        }
        return event.event().kind().word() + job + (parts.isEmpty() ? "" : ": " + String.join(", ", parts));
    }

    private static String facts(Map<String, String> facts) {
        return String.join(", ", facts.entrySet().stream().map(fact -> ColumnText.fact(fact.getKey(), fact.getValue())).toList());
    }

    private static String whom(KeptEvent event) {
        String whom = event.event().facts().getOrDefault("whom", "");
        return event.event().job().map(one -> "job " + one.tag() + (whom.isEmpty() ? "" : ", " + whom)).orElse(whom);
    }

    /** Bends in words: {@code 0.50° upright, 0.30° forward}. */
    static String bends(Map<String, String> facts) {
        List<String> bends = new ArrayList<>();
        for (String direction : List.of("upright", "flat", "forward", "back")) {
            String name = "bent_%s_deg".formatted(direction);
            if (facts.containsKey(name)) {
                bends.add(ColumnText.value(name, facts.get(name)) + " " + direction);
            }
        }
        return bends.isEmpty() ? "" : " " + String.join(", ", bends);
    }

    private static String count(List<KeptReading> readings) {
        return readings.size() == 1 ? "reading " + readings.get(0).id()
            : "%d readings (%d to %d)".formatted(readings.size(), readings.get(0).id(), readings.get(readings.size() - 1).id());
    }

    private static String readings(KeptEvent event, Map<Long, NewReading> before) {
        return String.join(", ", event.readings().stream().map(kept -> reading(kept, before)).toList());
    }

    private static String reading(KeptReading kept, Map<Long, NewReading> before) {
        NewReading read = kept.read();
        String name = ColumnText.name(read.quantity());
        String note = read.note().isEmpty() || read.corrects().isPresent() ? "" : ", " + read.note().get();
        if (read.corrects().isPresent()) {
            long id = read.corrects().getAsLong();
            NewReading old = before.get(id);
            String said = old == null || old.value().isEmpty() ? "" : ", which said " + ColumnText.value(read.quantity(),
                old.value().getAsDouble());
            return read.value().isPresent() ? "%s %s (reading %d) in place of reading %d%s".formatted(name,
                ColumnText.value(read.quantity(), read.value().getAsDouble()), kept.id(), id, said)
                : "%s, reading %d%s%s taken back".formatted(name, id, said, said.isEmpty() ? "" : ",");
        }
        return "%s %s (reading %d%s)".formatted(name, ColumnText.value(read.quantity(), read.value().orElseThrow()), kept.id(),
            note);
    }
}
