package benchtwin.bench;

import benchtwin.book.BookEntry;
import benchtwin.book.BookProblem;
import benchtwin.book.CurrentReading;
import benchtwin.book.EventKind;
import benchtwin.book.NewEvent;
import benchtwin.book.NewReading;
import benchtwin.book.PartActs;
import benchtwin.book.Standing;
import benchtwin.book.State;
import benchtwin.book.Thing;
import benchtwin.book.ThingKind;
import benchtwin.stock.SheetReading;
import benchtwin.stock.StockKind;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Enters a row about a part. */
final class ImportedPart {

    private static final String RESERVED = "reserved_for";
    private static final String CONDITION = "condition";
    private static final String PLACE = "place";

    private final ImportedRow row;
    private final BookEntry entry;

    ImportedPart(ImportedRow row) {
        this.row = row;
        this.entry = row.entry();
    }

    ImportedRow.Came enter(Optional<Thing> known) throws BookProblem {
        if (known.isPresent()) {
            return new ImportedRow.Came(false, changed(known.get()));
        }
        Thing part = entry.add(ImportedRow.kind(row.row()), row.row().tag(), row.when(NewEvent.of(EventKind.RECEIVED).with(facts())
            .reading(row.readings()).from(row.origin())));
        standing(part);
        return new ImportedRow.Came(true, Optional.empty());
    }

    private Map<String, String> facts() {
        Map<String, String> facts = row.facts();
        facts.remove(RESERVED);
        return facts;
    }

    /** What of a part the row says anew. */
    private Optional<String> changed(Thing part) throws BookProblem {
        List<String> words = new ArrayList<>();
        State state = entry.state(part);
        Map<String, String> news = news(part, state);
        news.forEach((name, text) -> words.add(ImportedRow.news(name, state.fact(name), text)));
        List<NewReading> fresh = fresh(part, state, words);
        String place = news.remove(PLACE);
        if (place != null) {
            entry.add(part, NewEvent.of(EventKind.MOVED).with(Map.of(PLACE, place)));
        }
        NewEvent event = NewEvent.of(fresh.isEmpty() ? EventKind.DESCRIBED : EventKind.MEASURED).with(news).reading(fresh)
            .from(row.origin());
        entry.add(part, fresh.isEmpty() ? event : row.when(event));
        standing(part).ifPresent(words::add);
        if (state.standing() == Standing.RETIRED && !words.isEmpty()) {
            row.remark("%s left the stock (%s) and stays out of it; its file still lists it".formatted(part.name(),
                state.fact("retired_why").orElse("no reason given")));
        }
        return words.isEmpty() ? Optional.empty() : Optional.of(part.name() + ": " + String.join(", ", words));
    }

    /** Facts the row gives anew, an empty text for those it takes back. What was done by hand since is left alone. */
    private Map<String, String> news(Thing part, State state) {
        Map<String, String> news = new LinkedHashMap<>();
        facts().forEach((name, text) -> {
            if (row.isNews(name) && !text.equals(state.facts().get(name))) {
                news.put(name, text);
            }
        });
        row.blanked().stream().filter(name -> state.facts().containsKey(name)).forEach(name -> news.put(name, ""));
        if (state.fact(CONDITION).equals(Optional.of(PartActs.CRACKED)) && news.containsKey(CONDITION)) {
            String said = news.remove(CONDITION);
            row.remark("%s is cracked in the book and stays so; its file %s".formatted(part.name(),
                said.isEmpty() ? "no longer says it" : "says " + said));
        }
        return news;
    }

    /** Readings whose value or condition the row gives anew. One that is only gone from the row stays. */
    private List<NewReading> fresh(Thing part, State state, List<String> words) {
        List<NewReading> fresh = new ArrayList<>();
        for (SheetReading read : row.row().readings()) {
            NewReading now = ImportedRow.reading(read);
            Optional<CurrentReading> old = state.readings().stream().filter(one -> one.read().quantity().equals(now.quantity())
                && one.read().condition().equals(now.condition()) && one.read().gauge().equals(now.gauge())).findFirst();
            boolean known = old.isPresent() && old.get().read().value().equals(now.value())
                && old.get().read().measuredAt().equals(now.measuredAt());
            if ((row.isNews(read) || row.isNews("measured_on") || row.isNews("gauge"))
                && (!known || row.row().kind() == StockKind.FREQUENCIES)) {
                fresh.add(now);
                words.add(said(now, old));
            }
        }
        row.blanked().stream().filter(name -> state.readings().stream().anyMatch(one -> one.read().quantity().equals(name)))
            .forEach(name -> row.remark("%s: its file no longer gives its %s; what was read stays, and can be taken back as a correction"
                .formatted(part.name(), ColumnText.name(name))));
        return fresh;
    }

    private static String said(NewReading now, Optional<CurrentReading> old) {
        String name = ColumnText.name(now.quantity());
        String value = ColumnText.value(now.quantity(), now.value().orElseThrow());
        if (old.isEmpty()) {
            return name + " " + value;
        }
        boolean earlier = now.measuredAt().filter(day -> day.compareTo(old.get().since()) < 0).isPresent();
        String was = ColumnText.value(now.quantity(), old.get().read().value().orElseThrow());
        return earlier ? "%s %s, read on %s; the later %s stays".formatted(name, value, now.measuredAt().get().text(), was)
            : old.get().read().value().equals(now.value()) ? "%s read again, %s".formatted(name, value)
            : "%s %s → %s".formatted(name, was, value);
    }

    /** Whether it is cracked, and to whom it is promised, are events of their own. */
    private Optional<String> standing(Thing part) throws BookProblem {
        PartActs acts = new PartActs(entry);
        boolean cracked = part.kind() == ThingKind.HEAD && row.row().cell(CONDITION).filter(PartActs.CRACKED::equals).isPresent();
        if (cracked && entry.state(part).standing() != Standing.RETIRED) {
            acts.retire(part, true, "");
        }
        Optional<String> whom = row.row().cell(RESERVED);
        Optional<String> before = row.before(RESERVED);
        if (whom.equals(before) || whom.isEmpty() && !row.isBlanked(RESERVED)) {
            return Optional.empty();
        }
        if (before.isPresent() && isPromisedTo(part, before.get())) {
            // only the file's own promise: what was promised to jobs since stays
            entry.add(part, NewEvent.of(EventKind.RELEASED).with(Map.of("whom", before.get())).saying("its file says so"));
        }
        if (whom.isPresent()) {
            promise(acts, part, whom.get());
        }
        return Optional.of(whom.isPresent() ? "promised to " + whom.get() : "no longer promised to " + before.orElse("anybody"));
    }

    private boolean isPromisedTo(Thing part, String whom) {
        return entry.state(part).promises().stream().anyMatch(promise -> promise.job().isEmpty() && promise.whom().equals(whom));
    }

    private void promise(PartActs acts, Thing part, String whom) throws BookProblem {
        State state = entry.state(part);
        int count = part.kind().isCounted() ? state.count() - state.promised() : 1;
        if (part.kind().isCounted() && count <= 0) {
            row.remark("%s: none is left to promise to %s".formatted(part.name(), whom));
            return;
        }
        try {
            acts.promise(part, Optional.empty(), whom, count);
        } catch (BookProblem notFree) {
            if (state.standing() != Standing.BUILT_IN) {
                row.remark("%s; its file says it is promised to %s".formatted(notFree.getMessage(), whom));
            }
        }
    }
}
