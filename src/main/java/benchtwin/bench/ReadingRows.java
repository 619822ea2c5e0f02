package benchtwin.bench;

import benchtwin.book.BookView;
import benchtwin.book.CurrentReading;
import benchtwin.book.KeptEvent;
import benchtwin.book.KeptReading;
import benchtwin.book.NewReading;
import benchtwin.book.Thing;
import benchtwin.stock.MeasuredColumns;
import benchtwin.stock.StockKind;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/** Readings of one thing as rows of an account: value, what it is trusted to and why, how, when and by whom it was read and entered. */
final class ReadingRows {

    static final List<String> COLUMNS = List.of("Reading", "Value#", "±#", "± is", "How it was read");

    private final OpenBook book;
    private final StockKind kind;
    private final GaugeReference gauges;
    private final Map<Long, KeptEvent> events = new HashMap<>();
    private final Map<Long, KeptReading> kept = new HashMap<>();

    ReadingRows(OpenBook book, BookView view, Thing thing, GaugeReference gauges) {
        this.book = book;
        this.gauges = gauges;
        this.kind = StockInventory.sheet(thing.kind());
        for (KeptEvent event : view.events(thing)) {
            for (KeptReading reading : event.readings()) {
                events.put(reading.id(), event);
                kept.put(reading.id(), reading);
            }
        }
    }

    List<List<String>> of(List<CurrentReading> readings) {
        return readings.stream().map(this::row).toList();
    }

    private List<String> row(CurrentReading reading) {
        NewReading read = reading.read();
        return List.of(Long.toString(reading.id()), value(read), read.uncertainty().isPresent() ? ColumnText.size(read.quantity(),
            read.uncertainty().getAsDouble()) : "", trust(read), how(reading));
    }

    private static String value(NewReading read) {
        return ColumnText.value(read.quantity(), read.value().orElseThrow());
    }

    /** What the uncertainty is: the gauge's own, a default, or what was entered with the reading. */
    private String trust(NewReading read) {
        if (read.uncertainty().isEmpty()) {
            return "not recorded";
        }
        double u = read.uncertainty().getAsDouble();
        OptionalDouble known = read.gauge().isEmpty() ? OptionalDouble.empty() : gauges.uncertainty(read.gauge().get(), read.quantity());
        if (known.isPresent() && known.getAsDouble() == u) {
            return "what %s is good to".formatted(read.gauge().get());
        }
        return MeasuredColumns.names(kind).contains(read.quantity()) && Stream.of(true, false)
            .anyMatch(wood -> MeasuredColumns.uncertainty(kind, read.quantity(), wood) == u) ? Account.DEFAULT + " (memory)" : "entered with it";
    }

    private String how(CurrentReading reading) {
        NewReading read = reading.read();
        List<String> words = new ArrayList<>();
        read.measuredAt().ifPresent(moment -> words.add("read on " + moment.day(book.zone())));
        read.gauge().ifPresent(gauge -> words.add("on gauge " + gauge));
        read.station().ifPresent(station -> words.add("at " + station));
        String condition = ColumnText.condition(read.condition());
        if (!condition.isEmpty()) {
            words.add(condition);
        }
        read.by().ifPresent(by -> words.add("by " + by));
        read.note().ifPresent(words::add);
        KeptEvent event = events.get(reading.id());
        if (event != null) {
            words.add("entered %s%s%s".formatted(HistoryWords.when(book, event.entry().at()), event.entry().by().map(by -> " by " + by).orElse(""),
                event.event().sheet().isPresent() ? " out of a file" : ""));
            kept.get(reading.id()).read().corrects().ifPresent(id -> words.add("in place of reading " + id));
        }
        return String.join(", ", words);
    }
}
