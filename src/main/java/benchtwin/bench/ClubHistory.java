package benchtwin.bench;

import benchtwin.book.BookView;
import benchtwin.book.CurrentReading;
import benchtwin.book.EventKind;
import benchtwin.book.KeptEvent;
import benchtwin.book.KeptReading;
import benchtwin.book.LastWords;
import benchtwin.book.Moment;
import benchtwin.book.NewReading;
import benchtwin.book.State;
import benchtwin.book.Thing;
import benchtwin.book.ThingKind;
import benchtwin.club.BenchTime;
import benchtwin.club.MeasuredDifference;
import benchtwin.club.Quantity;
import benchtwin.club.Timeline;
import benchtwin.club.TimelineEntry;
import benchtwin.club.TimelineValue;
import benchtwin.club.ValueComparison;
import benchtwin.club.ValueCorrection;
import benchtwin.match.Tolerances;
import benchtwin.picture.HistoryPicture;
import benchtwin.picture.HistoryReading;
import benchtwin.picture.HistoryStrip;
import benchtwin.picture.Intervention;
import java.time.Instant;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;

/** Tells what befell a club, oldest first, with what was read each time as it is known now. */
public final class ClubHistory {

    private static final String HEAD = "head";
    private static final Set<EventKind> OF_PARTS = Set.of(EventKind.BENT, EventKind.GROUND);

    /** What of a club is told, in this order. */
    private static final List<String> SHOWN = Stream.of(List.of("category", "number", "hand", "player", "state"), ClubBook.PARTS,
        ClubBook.DETAILS).flatMap(List::stream).toList();

    private final OpenBook book;
    private final GaugeReference gauges;
    private final Map<String, String> known = new HashMap<>();
    private final List<Intervention> interventions = new ArrayList<>();
    private final Map<Quantity, ClubValues.Value> before = new EnumMap<>(Quantity.class);

    private ClubHistory(OpenBook book, GaugeReference gauges) {
        this.book = book;
        this.gauges = gauges;
    }

    /**
     * A club's timeline.
     * @param book the book
     * @param tag  the club's tag
     * @return what befell it, bends and grinds of its parts included
     * @throws BadInput when there is no such club
     */
    public static Timeline of(OpenBook book, String tag) throws BadInput {
        return book.read(view -> {
            Thing club = OpenBook.need(view, ThingKind.CLUB, tag);
            return new ClubHistory(book, GaugeReference.of(view)).of(view, club);
        });
    }

    /**
     * The same as a picture.
     * @param book       the book
     * @param tag        the club's tag
     * @param tolerances the bands about what it should measure
     * @return readings over time, with what was done to the club
     * @throws BadInput when there is no such club
     */
    public static HistoryPicture picture(OpenBook book, String tag, Tolerances tolerances) throws BadInput {
        return book.read(view -> {
            Thing club = OpenBook.need(view, ThingKind.CLUB, tag);
            ClubHistory history = new ClubHistory(book, GaugeReference.of(view));
            Timeline timeline = history.of(view, club);
            Map<Quantity, ClubValues.Value> should = view.state(club).accepted()
                .map(accepted -> ClubValues.of(ClubReadings.accepted(accepted))).orElse(Map.of());
            Map<Quantity, HistoryStrip> strips = new EnumMap<>(Quantity.class);
            for (ReadColumn column : ReadColumn.values()) {
                List<HistoryReading> readings = readings(timeline, column.quantity());
                if (!readings.isEmpty()) {
                    strips.put(column.quantity(), new HistoryStrip(Optional.ofNullable(should.get(column.quantity()))
                        .map(value -> tolerances.wanted(column.quantity(), value.value())), readings));
                }
            }
            return new HistoryPicture(timeline.of(), strips, history.interventions);
        });
    }

    private static List<HistoryReading> readings(Timeline timeline, Quantity quantity) {
        List<HistoryReading> readings = new ArrayList<>();
        for (TimelineEntry entry : timeline.entries()) {
            entry.corrections().stream().filter(correction -> correction.quantity() == quantity).forEach(correction ->
                readings.add(new HistoryReading(entry.when(), correction.was(), 0, Optional.empty(), true)));
            Optional.ofNullable(entry.values().get(quantity)).ifPresent(value ->
                readings.add(HistoryReading.of(entry.when(), value.value(), value.standardUncertainty())));
        }
        return readings;
    }

    private Timeline of(BookView view, Thing club) {
        List<KeptEvent> events = new ArrayList<>(view.events(club));
        LastWords lastWords = new LastWords(events);
        events.removeIf(event -> event.event().kind() == EventKind.CORRECTED);
        events.removeIf(event -> isSaidByTheNext(event, events));
        events.addAll(ofTheHeads(view, club, events));
        events.sort(Comparator.comparing(KeptEvent::since).thenComparing(KeptEvent::id));
        State state = view.state(club);
        String whose = state.fact("player").map(player -> ", " + player).orElse("");
        return new Timeline(club.tag() + whose, events.stream().map(event -> entry(club, event, lastWords)).toList());
    }

    /** A sleeve is put down by itself before the record it belongs to. */
    private static boolean isSaidByTheNext(KeptEvent event, List<KeptEvent> events) {
        return event.event().kind() == EventKind.DESCRIBED && event.readings().isEmpty() && event.event().words().isEmpty()
            && events.stream().anyMatch(other -> other.id() > event.id() && other.entry().id() == event.entry().id()
                && other.event().facts().entrySet().containsAll(event.event().facts().entrySet()));
    }

    /** Bends and grinds of each head while it was this club's, or for the job that made it so. */
    private static List<KeptEvent> ofTheHeads(BookView view, Thing club, List<KeptEvent> events) {
        Set<KeptEvent> theirs = new LinkedHashSet<>();
        Optional<Thing> head = Optional.empty();
        for (int k = 0; k < events.size(); k++) {
            KeptEvent event = events.get(k);
            String named = event.event().facts().get(HEAD);
            head = named == null ? head : view.thing(ThingKind.HEAD, named);
            Optional<Moment> until = k + 1 < events.size() ? Optional.of(events.get(k + 1).since()) : Optional.empty();
            head.ifPresent(one -> view.events(one).stream().filter(act -> OF_PARTS.contains(act.event().kind()))
                .filter(act -> act.since().compareTo(event.since()) >= 0 && until.map(next -> act.since().compareTo(next) < 0)
                    .orElse(true) || act.event().job().isPresent() && act.event().job().equals(event.event().job()))
                .forEach(theirs::add));
        }
        return List.copyOf(theirs);
    }

    private TimelineEntry entry(Thing club, KeptEvent event, LastWords lastWords) {
        Map<Quantity, TimelineValue> values = new EnumMap<>(Quantity.class);
        List<ValueCorrection> corrected = new ArrayList<>();
        List<CurrentReading> read = new ArrayList<>();
        for (KeptReading reading : event.readings()) {
            KeptReading last = reading;
            for (Optional<KeptReading> right = lastWords.correctionOf(last); right.isPresent(); right = lastWords.correctionOf(last)) {
                correction(last, right.get(), lastWords.correctedIn(last).orElseThrow()).ifPresent(corrected::add);
                last = right.get();
            }
            if (last.read().value().isPresent()) {
                read.add(new CurrentReading(last.id(), event.id(), event.since(), last.read()));
            }
        }
        if (event.thing().equals(club)) {
            ClubValues.of(read).forEach((quantity, value) -> values.put(quantity, value(quantity, value)));
        }
        note(club, event);
        return new TimelineEntry(time(event.since()), words(club, event), values, corrected);
    }

    /** What was done, as far as it was more than measuring: a part that changed, a bend, a new state. */
    private void note(Thing club, KeptEvent event) {
        List<String> changed = new ArrayList<>();
        if (!event.thing().equals(club)) {
            changed.add(words(club, event));
        } else {
            Map<String, String> facts = event.event().facts();
            SHOWN.stream().filter(name -> facts.containsKey(name) && known.containsKey(name)
                && !amount(facts.get(name)).equals(amount(known.get(name)))).forEach(name -> changed.add(said(name, facts.get(name))));
        }
        if (!changed.isEmpty()) {
            interventions.add(new Intervention(time(event.since()), String.join(", ", changed)));
        }
    }

    private TimelineValue value(Quantity quantity, ClubValues.Value value) {
        ClubValues.Value earlier = before.put(quantity, value);
        Optional<MeasuredDifference> moved = Optional.ofNullable(earlier)
            .filter(known -> ClubValues.apart(quantity, known, value).isEmpty())
            .map(known -> gauges.compare(quantity, known, value, quantity.defaultTolerance()))
            .flatMap(ValueComparison::difference);
        return new TimelineValue(value.value(), value.uncertainty(), moved, value.gauge());
    }

    private Optional<ValueCorrection> correction(KeptReading wrong, KeptReading right, KeptEvent in) {
        return ReadColumn.of(wrong.read().quantity()).filter(column -> wrong.read().value().isPresent()).map(column -> new ValueCorrection(column.quantity(),
            wrong.read().value().orElseThrow(), time(in.entry().at()), right.read().note().orElse("")));
    }

    private BenchTime time(Moment moment) {
        return moment.isDay() ? BenchTime.on(moment.day(book.zone()))
            : BenchTime.at(LocalDateTime.ofInstant(Instant.parse(moment.text()), book.zone()));
    }

    private String words(Thing club, KeptEvent event) {
        if (!event.thing().equals(club)) {
            return "%s %s%s%s%s".formatted(event.thing().name(), event.event().kind().word(), HistoryWords.bends(event.event().facts()),
                event.event().job().map(job -> " for job " + job.tag()).orElse(""),
                event.event().words().map(words -> ": " + words).orElse(""));
        }
        Map<String, String> news = new TreeMap<>(event.event().facts());
        Optional<String> by = event.readings().stream().map(KeptReading::read).map(NewReading::by).flatMap(Optional::stream)
            .findFirst().or(() -> Optional.ofNullable(news.get("measured_by"))).or(() -> event.entry().by());
        List<String> words = new ArrayList<>();
        for (String name : SHOWN) {
            String text = news.get(name);
            if (text != null && !amount(text).equals(amount(known.getOrDefault(name, "")))) {
                words.add(said(name, text));
            }
        }
        known.putAll(news);
        event.event().words().ifPresent(words::add);
        return "%s%s%s%s".formatted(event.event().kind() == EventKind.RECEIVED ? "came into the book" : event.event().kind().word(),
            by.map(name -> " by " + name).orElse(""), event.event().job().map(job -> " for job " + job.tag()).orElse(""),
            words.isEmpty() ? "" : ": " + String.join(", ", words));
    }

    /** None of something is said only where there was some. */
    private static String amount(String text) {
        return text.equals("0") ? "" : text;
    }

    private static String said(String name, String text) {
        return switch (name) {
            case "player", "category", "state" -> text.isEmpty() ? "no " + name : text;
            case "hand" -> text + "-handed";
            default -> ColumnText.fact(name, text);
        };
    }
}
