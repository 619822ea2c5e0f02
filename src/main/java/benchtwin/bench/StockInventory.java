package benchtwin.bench;

import benchtwin.book.Accepted;
import benchtwin.book.BookView;
import benchtwin.book.CurrentReading;
import benchtwin.book.PartActs;
import benchtwin.book.Promise;
import benchtwin.book.Standing;
import benchtwin.book.State;
import benchtwin.book.StateOf;
import benchtwin.book.StateText;
import benchtwin.book.Thing;
import benchtwin.book.ThingKind;
import benchtwin.club.ClubState;
import benchtwin.club.Grip;
import benchtwin.club.Inventory;
import benchtwin.stock.InventoryOfRows;
import benchtwin.stock.InventoryRead;
import benchtwin.stock.SheetRow;
import benchtwin.stock.StockKind;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;

/** Lays the book out as the stock the matching works on, through the same rules as the files. */
final class StockInventory {

    private static final String DAY = "measured_on";
    private static final String STATE = "state";
    private static final List<String> CUTS = List.of("tip_cut_mm", "butt_cut_mm");
    private static final String FREQUENCY = "frequency_cpm";
    private static final Map<ThingKind, StockKind> SHEETS = new EnumMap<>(Map.of(ThingKind.SLEEVE, StockKind.SLEEVES, ThingKind.WEIGHT,
        StockKind.WEIGHTS, ThingKind.HEAD, StockKind.HEADS, ThingKind.SHAFT, StockKind.SHAFTS, ThingKind.GRIP, StockKind.GRIPS,
        ThingKind.CLUB, StockKind.CLUBS));

    private final OpenBook book;
    private final Optional<String> forJob;
    private final boolean asFound;
    private final CloseLook look;
    private final List<RecordedCells> rows = new ArrayList<>();

    private StockInventory(OpenBook book, Optional<String> forJob, boolean asFound, CloseLook look) {
        this.book = book;
        this.forJob = forJob;
        this.asFound = asFound;
        this.look = look;
    }

    /**
     * The stock.
     * @param book    the book
     * @param view    the same, opened
     * @param forJob  the job that is planned: what is promised to it is free for it
     * @param asFound whether clubs are taken as they measure now; else as they should, and what happened to them since
     * @param look    which of it with its readings
     */
    static InventoryRead of(OpenBook book, BookView view, Optional<String> forJob, boolean asFound, CloseLook look) {
        return read(view, new StockInventory(book, forJob, asFound, look).laidOut(view));
    }

    /** The file that holds things of a kind: parts and clubs have one. */
    static StockKind sheet(ThingKind kind) {
        StockKind sheet = SHEETS.get(kind);
        if (sheet == null) {
            throw new IllegalArgumentException(kind.word() + " is no stock");
        }
        return sheet;
    }

    /** The grips alone. */
    static List<Grip> grips(OpenBook book, BookView view) {
        StockInventory stock = new StockInventory(book, Optional.empty(), true, CloseLook.AT_ALL);
        stock.parts(view, ThingKind.GRIP);
        return read(view, stock.rows).inventory().map(Inventory::grips).orElse(List.of());
    }

    /**
     * One part or club alone, which is the same as in the whole stock: no row speaks of another thing's.
     * @param book    the book
     * @param text    how it stands
     * @param gauges  what readings are carried by
     * @param asFound whether a club is taken as it measures now
     */
    static InventoryRead one(OpenBook book, StateText text, GaugeReference gauges, boolean asFound) {
        StockInventory stock = new StockInventory(book, Optional.empty(), asFound, CloseLook.AT_ALL);
        if (text.thing().kind() == ThingKind.CLUB) {
            stock.club(text);
        } else {
            stock.part(text, sheet(text.thing().kind()));
        }
        return read(gauges, stock.rows);
    }

    /** One part, by itself. */
    static AsStock alone(OpenBook book, BookView view, Thing part) {
        StockInventory stock = new StockInventory(book, Optional.empty(), true, CloseLook.AT_ALL);
        stock.part(new StateOf(part, view.state(part)), sheet(part.kind()));
        return new AsStock(read(view, stock.rows).faults(), stock.rows.stream().flatMap(cells -> cells.row().readings().keySet().stream())
            .collect(Collectors.toSet()));
    }

    private static InventoryRead read(BookView view, List<RecordedCells> rows) {
        return read(GaugeReference.of(view), rows);
    }

    private static InventoryRead read(GaugeReference gauges, List<RecordedCells> rows) {
        return InventoryOfRows.read(rows.stream().map(cells -> cells.carriedBy(gauges).row()).toList(), true);
    }

    /** The stock as rows of files, by kind. */
    static Map<StockKind, List<SheetRow>> sheets(OpenBook book, BookView view) {
        Map<StockKind, List<SheetRow>> sheets = new EnumMap<>(StockKind.class);
        new StockInventory(book, Optional.empty(), false, CloseLook.AT_ALL).laidOut(view).forEach(cells ->
            sheets.computeIfAbsent(cells.kind(), kind -> new ArrayList<>()).add(cells.sheet()));
        return sheets;
    }

    private List<RecordedCells> laidOut(BookView view) {
        for (ThingKind kind : List.of(ThingKind.SLEEVE, ThingKind.WEIGHT, ThingKind.HEAD, ThingKind.SHAFT, ThingKind.GRIP)) {
            parts(view, kind);
        }
        view.eachState(ThingKind.CLUB, this::club);
        return rows;
    }

    private void parts(BookView view, ThingKind kind) {
        view.eachState(kind, text -> part(text, sheet(kind)));
    }

    private void part(StateText text, StockKind sheet) {
        boolean cracked = PartActs.CRACKED.equals(text.facts().get("condition"));
        if (text.standing() != Standing.RETIRED || cracked) {
            if (isClose(text)) {
                part(text.whole(), sheet);
            } else {
                inShort(text, sheet);
            }
        }
    }

    private boolean isClose(StateText part) {
        return switch (part.thing().kind()) {
            case HEAD -> look.isAtHead(part);
            case SHAFT -> look.isAtShaft(part);
            case GRIP -> look.isAtGrip(part);
            default -> true;
        };
    }

    /** What a part is, without what it measures. A promise is read where there is one. */
    private void inShort(StateText part, StockKind sheet) {
        RecordedCells cells = new RecordedCells(sheet, part.thing().tag());
        cells.inShort(part.facts());
        if (part.isPromised()) {
            promised(part.whole(), cells);
        }
        rows.add(cells);
    }

    private void part(StateOf part, StockKind sheet) {
        ThingKind kind = part.thing().kind();
        RecordedCells cells = new RecordedCells(sheet, part.thing().tag());
        cells.facts(part.state().facts());
        if (kind == ThingKind.SHAFT && part.state().fact("pulls").isPresent()) {
            // a pulled shaft must say what was cut off it; what nobody entered was not cut
            CUTS.stream().filter(cut -> part.state().fact(cut).isEmpty()).forEach(cut -> cells.put(cut, "0"));
        }
        promised(part, cells);
        List<CurrentReading> own = new ArrayList<>();
        for (CurrentReading reading : part.state().readings().stream().sorted(Comparator.comparing(CurrentReading::id)).toList()) {
            if (kind == ThingKind.SHAFT && reading.read().quantity().equals(FREQUENCY)) {
                RecordedCells further = new RecordedCells(StockKind.FREQUENCIES, part.thing().tag());
                further.readings(List.of(reading), book.zone());
                rows.add(further);
            } else if (kind != ThingKind.SLEEVE || !reading.read().condition().containsKey("setting")) {
                own.add(reading);
            }
        }
        cells.readings(own, book.zone());
        rows.add(cells);
        if (kind == ThingKind.SLEEVE) {
            settings(part);
        }
    }

    private void promised(StateOf part, RecordedCells cells) {
        List<Promise> others = part.state().promises().stream().filter(promise -> forJob.isEmpty()
            || !promise.job().equals(forJob)).toList();
        if (part.thing().kind().isCounted()) {
            int taken = others.stream().mapToInt(Promise::count).sum();
            if (part.state().fact("count").isPresent()) {
                cells.put("count", Integer.toString(Math.max(0, part.state().count() - taken)));
            }
        } else if (!others.isEmpty()) {
            cells.put("reserved_for", others.get(0).text());
        }
    }

    /** Measured settings of a sleeve, one row each. */
    private void settings(StateOf sleeve) {
        Map<String, RecordedCells> settings = new LinkedHashMap<>();
        for (CurrentReading reading : sleeve.state().readings()) {
            String setting = reading.read().condition().get("setting");
            if (setting != null) {
                settings.computeIfAbsent(setting, label -> new RecordedCells(StockKind.SLEEVE_SETTINGS, sleeve.thing().tag())
                    .put("setting", label)).readings(List.of(reading), book.zone());
            }
        }
        rows.addAll(settings.values());
    }

    private void club(StateText text) {
        if (!look.isAtClub(text.thing())) {
            rows.add(new RecordedCells(StockKind.CLUBS, text.thing().tag()).put(STATE, ClubState.IN_PLAY.word())
                .put(DAY, book.today().toString()).inShort(text.facts()));
            return;
        }
        StateOf club = text.whole();
        State state = club.state();
        Optional<Accepted> accepted = state.accepted();
        List<CurrentReading> current = ClubReadings.current(state);
        LocalDate now = current.stream().map(reading -> reading.since().day(book.zone())).max(LocalDate::compareTo)
            .orElse(book.today());
        if (asFound || accepted.isEmpty()) {
            row(club.thing(), state.facts(), current, now);
            return;
        }
        LocalDate day = accepted.get().since().day(book.zone());
        row(club.thing(), accepted.get().facts(), ClubReadings.accepted(accepted.get()), day);
        boolean changed = !isSound(state.facts()) || List.of("head", "shaft").stream().anyMatch(part ->
            !Objects.equals(state.facts().get(part), accepted.get().facts().get(part)));
        if (changed) {
            // a day's only row stands for that day: what came after the record is put on a later one
            row(club.thing(), state.facts(), isSound(state.facts()) ? List.of() : current,
                now.isAfter(day) ? now : day.plusDays(1));
        }
    }

    private static boolean isSound(Map<String, String> facts) {
        return Arrays.stream(ClubState.values()).filter(state -> state.word().equals(facts.get(STATE))).findFirst()
            .map(ClubState::isSound).orElse(true);
    }

    private void row(Thing club, Map<String, String> facts, List<CurrentReading> readings, LocalDate day) {
        RecordedCells cells = new RecordedCells(StockKind.CLUBS, club.tag());
        cells.put(STATE, ClubState.IN_PLAY.word());
        cells.facts(facts);
        cells.put(DAY, day.toString());
        cells.readings(readings, book.zone());
        rows.add(cells);
    }
}
