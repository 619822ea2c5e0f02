package benchtwin.bench;

import benchtwin.book.BookEntry;
import benchtwin.book.BookProblem;
import benchtwin.book.ClubActs;
import benchtwin.book.CurrentReading;
import benchtwin.book.EventKind;
import benchtwin.book.KeptEvent;
import benchtwin.book.Moment;
import benchtwin.book.NewEvent;
import benchtwin.book.NewReading;
import benchtwin.book.PartActs;
import benchtwin.book.SheetOrigin;
import benchtwin.book.Standing;
import benchtwin.book.State;
import benchtwin.book.Thing;
import benchtwin.book.ThingKind;
import benchtwin.stock.SheetReading;
import benchtwin.stock.SheetRow;
import benchtwin.stock.StockKind;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import java.util.Set;

/** Enters one row of a stock file into the book. */
final class ImportedRow {

    /** What the names of columns the program does not know begin with in the book. */
    static final String EXTRA = "x:";
    private static final String RESERVED = "reserved_for";
    private static final String CONDITION = "condition";
    /** What a club is, once and for all; the rest of its row is how it was that day. */
    private static final Set<String> OF_THE_CLUB = Set.of("player", "category", "number", "hand");
    /** What a row of a club says of the day; a blank cell says that there was none. */
    private static final List<String> OF_THE_DAY = List.of("state", "head", "shaft", "grip", "sleeve", "setting", "tape_layers",
        "orientation", "tip_weight_g", "tape_g", "melt_g");

    /**
     * What came of a row.
     * @param isNew  whether the book did not know the thing
     * @param change what was new about a thing it knew, in words
     */
    record Came(boolean isNew, Optional<String> change) {
    }

    private final BookEntry entry;
    private final SheetRow row;
    private final SheetOrigin origin;
    private final SheetOrigin last;
    private final List<String> remarks;
    private final Optional<Moment> measured;

    /**
     * @param entry   the act it belongs to
     * @param row     the row
     * @param origin  the same as the book keeps it
     * @param last    what the row said when it was imported last; null for the first time
     * @param remarks takes what could not be taken over
     */
    ImportedRow(BookEntry entry, SheetRow row, SheetOrigin origin, SheetOrigin last, List<String> remarks) {
        this.entry = entry;
        this.row = row;
        this.origin = origin;
        this.last = last;
        this.remarks = remarks;
        this.measured = row.cell("measured_on").map(Moment::new);
    }

    static ThingKind kind(SheetRow row) {
        return switch (row.kind()) {
            case HEADS -> ThingKind.HEAD;
            case SHAFTS, FREQUENCIES -> ThingKind.SHAFT;
            case GRIPS -> ThingKind.GRIP;
            case SLEEVES, SLEEVE_SETTINGS -> ThingKind.SLEEVE;
            case WEIGHTS -> ThingKind.WEIGHT;
            default -> ThingKind.CLUB;
        };
    }

    Came enter() throws BookProblem {
        Optional<Thing> known = entry.thing(kind(row), row.tag()).filter(thing -> thing.tag().equals(row.tag()));
        gauges();
        if (row.kind() == StockKind.CLUBS) {
            return club(known);
        }
        if (known.isEmpty()) {
            Thing part = entry.add(kind(row), row.tag(), received());
            standing(part, true);
            return new Came(true, Optional.empty());
        }
        return new Came(false, changed(known.get()));
    }

    /** Every gauge a reading names is one of the book's. */
    private void gauges() throws BookProblem {
        for (SheetReading reading : row.readings()) {
            Optional<String> gauge = reading.reading().taken().gauge();
            if (gauge.isPresent() && entry.thing(ThingKind.GAUGE, gauge.get()).isEmpty()) {
                entry.add(ThingKind.GAUGE, gauge.get(), NewEvent.of(EventKind.RECEIVED));
            }
        }
    }

    private NewEvent received() {
        return when(NewEvent.of(EventKind.RECEIVED).with(facts()).reading(readings()).from(origin));
    }

    private NewEvent when(NewEvent event) {
        return measured.map(event::at).orElse(event);
    }

    private Map<String, String> facts() {
        Map<String, String> facts = new HashMap<>(row.facts());
        facts.remove(RESERVED);
        row.extra().forEach((name, text) -> facts.put(EXTRA + name, text));
        return facts;
    }

    private List<NewReading> readings() {
        return row.readings().stream().map(this::reading).toList();
    }

    private NewReading reading(SheetReading read) {
        return new NewReading(read.column(), OptionalDouble.of(read.reading().value()),
            OptionalDouble.of(read.reading().standardUncertainty()), read.unit(), read.condition(), read.reading().taken().gauge(),
            Optional.empty(), read.reading().taken().on().map(Moment::on), read.reading().taken().by(), Optional.empty(),
            OptionalLong.empty());
    }

    /** Whether it is cracked, and to whom it is promised, are events of their own. */
    private void standing(Thing part, boolean isNew) throws BookProblem {
        PartActs acts = new PartActs(entry);
        boolean cracked = row.cell(CONDITION).filter(PartActs.CRACKED::equals).isPresent() && part.kind() == ThingKind.HEAD;
        if (cracked && entry.state(part).standing() != Standing.RETIRED) {
            acts.retire(part, true, "");
        }
        Optional<String> whom = row.cell(RESERVED);
        Optional<String> before = last == null ? Optional.empty() : Optional.ofNullable(last.cells().get(RESERVED));
        if (whom.equals(before)) {
            return;
        }
        State state = entry.state(part);
        if (before.isPresent() && state.promises().stream().anyMatch(promise -> promise.job().isEmpty())) {
            acts.release(part, Optional.empty(), "by its file");
        }
        if (whom.isPresent()) {
            promise(acts, part, whom.get());
        }
    }

    private void promise(PartActs acts, Thing part, String whom) throws BookProblem {
        State state = entry.state(part);
        int count = part.kind().isCounted() ? state.count() - state.promised() : 1;
        if (part.kind().isCounted() && count == 0) {
            return;
        }
        try {
            acts.promise(part, Optional.empty(), whom, count);
        } catch (BookProblem notFree) {
            remarks.add("%s; its file says it is promised to %s".formatted(notFree.getMessage(), whom));
        }
    }

    /** What of a part the row says anew. */
    private Optional<String> changed(Thing part) throws BookProblem {
        List<String> words = new ArrayList<>();
        State state = entry.state(part);
        Map<String, String> news = new LinkedHashMap<>();
        facts().forEach((name, text) -> {
            if (isNews(name) && !text.equals(state.facts().get(name))) {
                news.put(name, text);
            }
        });
        if (last != null) {
            last.cells().keySet().stream().filter(name -> !origin.cells().containsKey(name) && state.facts().containsKey(name))
                .forEach(name -> news.put(name, ""));
        }
        if (PartActs.CRACKED.equals(state.facts().get(CONDITION)) && news.containsKey(CONDITION)) {
            remarks.add("%s is cracked in the book and stays so; its file says %s".formatted(part.name(), news.remove(CONDITION)));
        }
        news.forEach((name, text) -> words.add("%s %s".formatted(HistoryWords.name(name), text.isEmpty() ? "no longer recorded"
            : state.fact(name).map(old -> old + " → ").orElse("") + text)));
        List<NewReading> fresh = fresh(state, words);
        entry.add(part, when(NewEvent.of(fresh.isEmpty() ? EventKind.DESCRIBED : EventKind.MEASURED).with(news).reading(fresh)
            .from(origin)));
        standing(part, false);
        return words.isEmpty() ? Optional.empty() : Optional.of(part.name() + ": " + String.join(", ", words));
    }

    private boolean isNews(String name) {
        return last == null || !Objects.equals(last.cells().get(name), origin.cells().get(name));
    }

    /** Readings whose value or condition the row gives anew. */
    private List<NewReading> fresh(State state, List<String> words) {
        List<NewReading> fresh = new ArrayList<>();
        for (SheetReading read : row.readings()) {
            NewReading now = reading(read);
            boolean said = isNews(read.column()) || read.condition().keySet().stream().anyMatch(this::isNews)
                || isNews("measured_on");
            Optional<CurrentReading> old = state.readings().stream().filter(one -> one.read().quantity().equals(now.quantity())
                && one.read().condition().equals(now.condition()) && one.read().gauge().equals(now.gauge())).findFirst();
            boolean known = old.isPresent() && old.get().read().value().equals(now.value())
                && old.get().read().measuredAt().equals(now.measuredAt());
            if (said && (!known || row.kind() == StockKind.FREQUENCIES)) {
                fresh.add(now);
                words.add("%s %s%s".formatted(HistoryWords.name(now.quantity()), old.map(one ->
                    Json.rounded(one.read().value().orElseThrow()) + " → ").orElse(""), Json.rounded(now.value().orElseThrow())));
            }
        }
        return fresh;
    }

    private Came club(Optional<Thing> known) throws BookProblem {
        Map<String, String> facts = facts();
        Map<String, String> lasting = new HashMap<>();
        OF_THE_CLUB.forEach(name -> Optional.ofNullable(facts.remove(name)).ifPresent(text -> lasting.put(name, text)));
        lasting.put("player", PlayerBook.orNew(entry, lasting.get("player")).tag());
        Thing club = known.isPresent() ? known.get()
            : entry.add(ThingKind.CLUB, row.tag(), when(NewEvent.of(EventKind.RECEIVED).with(lasting)));
        if (last != null) {
            return new Came(false, Optional.of(corrected(club, facts)));
        }
        OF_THE_DAY.forEach(name -> facts.putIfAbsent(name, ""));
        String note = Optional.ofNullable(facts.remove("note")).orElse("");
        NewEvent event = when(NewEvent.of(EventKind.RECORDED).with(facts).saying(note).reading(readings()).from(origin));
        record(club, event);
        return new Came(known.isEmpty(), known.isEmpty() ? Optional.empty()
            : Optional.of("%s: recorded on %s".formatted(club.name(), measured.map(Moment::text).orElse("a day not given"))));
    }

    /** What was so on the newest day is so now, its parts included; an older day is only history. */
    private void record(Thing club, NewEvent event) throws BookProblem {
        Optional<Moment> newest = entry.events(club).stream().filter(one -> one.event().kind() == EventKind.RECORDED)
            .map(KeptEvent::since).reduce((a, b) -> b);
        if (newest.isPresent() && measured.isPresent() && newest.get().compareTo(measured.get()) > 0) {
            entry.add(club, event);
        } else {
            remarks.addAll(new ClubActs(entry).enter(club, event, true));
        }
    }

    /** A row of a day that is in the book already, and says something else now. */
    private String corrected(Thing club, Map<String, String> facts) throws BookProblem {
        List<String> words = new ArrayList<>();
        CorrectedDay day = new CorrectedDay(entry.events(club), origin.key());
        row.readings().forEach(read -> day.holds(reading(read), words));
        day.holdsNoMore(row.readings().stream().map(SheetReading::column).toList(), words);
        Map<String, String> news = new LinkedHashMap<>();
        OF_THE_DAY.stream().filter(this::isNews).forEach(name -> {
            news.put(name, facts.getOrDefault(name, ""));
            words.add("%s %s".formatted(HistoryWords.name(name), facts.getOrDefault(name, "no longer recorded")));
        });
        if (!news.isEmpty() || !day.late().isEmpty()) {
            record(club, when(NewEvent.of(EventKind.RECORDED).with(news).reading(day.late()).from(origin)));
        }
        entry.add(club, when(NewEvent.of(EventKind.CORRECTED).reading(day.corrections()).from(origin)));
        return "%s on %s: %s".formatted(club.name(), measured.map(Moment::text).orElse("a day not given"),
            words.isEmpty() ? "said otherwise" : String.join(", ", words));
    }
}
