package benchtwin.bench;

import benchtwin.book.BookEntry;
import benchtwin.book.BookProblem;
import benchtwin.book.ClubActs;
import benchtwin.book.EventKind;
import benchtwin.book.KeptEvent;
import benchtwin.book.Moment;
import benchtwin.book.NewEvent;
import benchtwin.book.State;
import benchtwin.book.Thing;
import benchtwin.book.ThingKind;
import benchtwin.stock.SheetReading;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Enters a row about a player's club: one day of it. */
final class ImportedClub {

    /** What a club is, once and for all; the rest of its row is how it was that day. */
    private static final List<String> OF_THE_CLUB = List.of("player", "category", "number", "hand");
    /** What a row of a club says of the day; a blank cell says that there was none. */
    private static final List<String> OF_THE_DAY = List.of("state", "head", "shaft", "grip", "sleeve", "setting", "tape_layers",
        "orientation", "tip_weight_g", "tape_g", "melt_g");
    /** How a day's readings were taken, where there were none. */
    private static final List<String> OF_NOTHING = List.of("measured_on", "gauge");

    private final ImportedRow row;
    private final BookEntry entry;
    private final String day;

    ImportedClub(ImportedRow row) {
        this.row = row;
        this.entry = row.entry();
        this.day = row.measured().map(Moment::text).orElse("a day not given");
    }

    ImportedRow.Came enter(Optional<Thing> known) throws BookProblem {
        Map<String, String> facts = row.facts();
        OF_NOTHING.forEach(facts::remove);
        Map<String, String> lasting = new HashMap<>();
        OF_THE_CLUB.forEach(name -> Optional.ofNullable(facts.remove(name)).ifPresent(text -> lasting.put(name, text)));
        lasting.put("player", PlayerBook.orNew(entry, lasting.get("player")).tag());
        if (known.isEmpty()) {
            Map<String, String> came = new HashMap<>(lasting);
            Optional.ofNullable(facts.get("sleeve")).ifPresent(sleeve -> came.put("sleeve", sleeve));
            Thing club = entry.add(ThingKind.CLUB, row.row().tag(), row.when(NewEvent.of(EventKind.RECEIVED).with(came)));
            recorded(club, facts);
            return new ImportedRow.Came(true, Optional.empty());
        }
        List<String> words = new ArrayList<>();
        described(known.get(), lasting, words);
        if (row.isFirst()) {
            recorded(known.get(), facts);
            words.add(0, "recorded on " + day);
            return new ImportedRow.Came(false, Optional.of("%s: %s".formatted(known.get().name(), String.join(", ", words))));
        }
        corrected(known.get(), facts, words);
        return new ImportedRow.Came(false, words.isEmpty() ? Optional.empty()
            : Optional.of("%s on %s: %s".formatted(known.get().name(), day, String.join(", ", words))));
    }

    private void described(Thing club, Map<String, String> lasting, List<String> words) throws BookProblem {
        State state = entry.state(club);
        Map<String, String> news = new LinkedHashMap<>();
        lasting.forEach((name, text) -> {
            if (row.isNews(name) && !text.equals(state.facts().get(name))) {
                news.put(name, text);
                words.add(ImportedRow.news(name, state.fact(name), text));
            }
        });
        if (!news.isEmpty()) {
            entry.add(club, NewEvent.of(EventKind.DESCRIBED).with(news));
        }
    }

    private void recorded(Thing club, Map<String, String> facts) throws BookProblem {
        Map<String, String> said = new HashMap<>(facts);
        OF_THE_DAY.forEach(name -> said.putIfAbsent(name, ""));
        String note = Optional.ofNullable(said.remove("note")).orElse("");
        record(club, row.when(NewEvent.of(EventKind.RECORDED).with(said).saying(note).reading(row.readings())
            .from(row.origin())));
    }

    /** What was so on the newest day is so now, its parts included; an older day is only history. */
    private void record(Thing club, NewEvent event) throws BookProblem {
        Optional<Moment> newest = entry.events(club).stream().filter(one -> one.event().kind() == EventKind.RECORDED)
            .map(KeptEvent::since).reduce((a, b) -> b);
        if (newest.isPresent() && row.measured().isPresent() && newest.get().compareTo(row.measured().get()) > 0) {
            entry.add(club, event);
            return;
        }
        SleeveTin.leaveAlone(entry, club, entry.state(club).facts(), event.facts(), Optional.empty(), row.measured());
        row.remarks(new ClubActs(entry).enter(club, event, true));
    }

    /** A row of a day that is in the book already, and says something else now. Cells that say what they said are left alone. */
    private void corrected(Thing club, Map<String, String> facts, List<String> words) throws BookProblem {
        CorrectedDay readings = new CorrectedDay(entry.events(club), row.origin().key());
        for (SheetReading read : row.row().readings()) {
            if (row.isNews(read)) {
                readings.holds(ImportedRow.reading(read), words);
            }
        }
        readings.holdsNoMore(row.blanked(), words);
        Map<String, String> news = new LinkedHashMap<>();
        List<String> names = new ArrayList<>(OF_THE_DAY);
        facts.keySet().stream().filter(name -> name.startsWith(ImportedRow.EXTRA)).forEach(names::add);
        names.stream().filter(name -> facts.containsKey(name) ? row.isNews(name) : row.isBlanked(name)).forEach(name -> {
            news.put(name, facts.getOrDefault(name, ""));
            words.add(ImportedRow.news(name, row.before(name), facts.getOrDefault(name, "")));
        });
        String note = row.isNews("note") ? facts.getOrDefault("note", "") : "";
        if (!note.isEmpty()) {
            words.add("note " + note);
        }
        if (!news.isEmpty() || !readings.late().isEmpty() || !note.isEmpty()) {
            record(club, row.when(NewEvent.of(EventKind.RECORDED).with(news).saying(note).reading(readings.late())
                .from(row.origin())));
        }
        entry.add(club, row.when(NewEvent.of(EventKind.CORRECTED).reading(readings.corrections()).from(row.origin())));
    }
}
