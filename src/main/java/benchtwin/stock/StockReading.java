package benchtwin.stock;

import benchtwin.club.Grip;
import benchtwin.club.Head;
import benchtwin.club.Inventory;
import benchtwin.club.Line;
import benchtwin.club.RecordedClub;
import benchtwin.club.ResinTable;
import benchtwin.club.SetTargets;
import benchtwin.club.Shaft;
import benchtwin.club.Sleeve;
import benchtwin.club.WantedClub;
import benchtwin.club.Weight;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

/** One reading of a set of files, at most one of each kind. */
final class StockReading {

    private final LotSource source;
    private final Map<StockKind, Lot<?>> lots = new EnumMap<>(StockKind.class);
    private Lot<Head> heads;
    private Lot<Shaft> shafts;
    private Lot<Grip> grips;
    private Lot<Sleeve> sleeves;
    private Lot<Weight> weights;
    private Lot<ClubEntry> clubs;
    private Lot<SettingRow> settings;
    private Lot<FrequencyRow> frequencies;
    private List<RecordedClub> recordedClubs = List.of();
    private SetCheck sets;
    private ResinCheck resins;

    StockReading(LotSource source) {
        this.source = source;
    }

    /** Of files, whose rows need not be kept in canonical spelling. */
    static StockReading of(Map<StockKind, Path> paths) {
        return new StockReading(new FileLots(paths, new FileLabels(paths.values()), false));
    }

    /** Reads everything. As a whole inventory, further frequencies without their shafts file are a fault. */
    void read(boolean whole) {
        settings = lot(StockKind.SLEEVE_SETTINGS, SettingRow::read);
        frequencies = lot(StockKind.FREQUENCIES, FrequencyRow::read);
        sleeves = lot(StockKind.SLEEVES, new SleeveRows(grouped(settings, SettingRow::sleeve))::read);
        shafts = lot(StockKind.SHAFTS, new ShaftRows(grouped(frequencies, FrequencyRow::shaft))::read);
        heads = lot(StockKind.HEADS, HeadRows::read);
        grips = lot(StockKind.GRIPS, GripRows::read);
        weights = lot(StockKind.WEIGHTS, WeightRows::read);
        clubs = lot(StockKind.CLUBS, ClubEntry::read);
        recordedClubs = ClubEntry.gather(values(clubs));
        CrossCheck cross = new CrossCheck(heads, shafts, grips, sleeves);
        cross.refuseLostFrequencies(frequencies);
        if (!source.isRecord()) {
            cross.warn(clubs, settings);
        }
        readSets(whole);
        resins = new ResinCheck(lot(StockKind.RESINS, ResinRow::read));
        if (whole) {
            refuseAlone(StockKind.FREQUENCIES, StockKind.SHAFTS, faults());
            refuseAlone(StockKind.SLEEVE_SETTINGS, StockKind.SLEEVES, warnings());
        }
    }

    private void readSets(boolean whole) {
        int before = faults().count();
        Lot<Line> lines = lot(StockKind.LINES, LineRows::read);
        boolean linesWhole = faults().count() == before;
        WantedClubRows rows = new WantedClubRows();
        Lot<WantedClub> wanted = lot(StockKind.SET_TARGETS, rows::read);
        sets = new SetCheck(wanted, rows.seen(), lines, linesWhole, whole);
    }

    private <T> Lot<T> lot(StockKind kind, Function<Row, Optional<T>> parse) {
        Lot<T> lot = source.lot(kind, parse);
        if (lot != null) {
            lots.put(kind, lot);
        }
        return lot;
    }

    private static <T> Map<String, List<T>> grouped(Lot<T> lot, Function<T, String> owner) {
        Map<String, List<T>> byOwner = new LinkedHashMap<>();
        if (lot != null) {
            lot.values().forEach(value -> byOwner.computeIfAbsent(owner.apply(value), name -> new ArrayList<>()).add(value));
        }
        return byOwner;
    }

    private void refuseAlone(StockKind kind, StockKind needed, FaultList where) {
        if (lots.containsKey(kind) && !lots.containsKey(needed)) {
            where.add(new Fault(lots.get(kind).file(), 0, Optional.empty(), Optional.empty(),
                "was read without the %s it speaks of".formatted(needed.word()), needed.fileName() + " beside it"));
        }
    }

    /** Everything; nothing when there was any fault, unless the good rows alone are asked for. */
    InventoryRead asInventory(boolean goodRowsOnly) {
        Optional<Inventory> inventory = faults().count() > 0 && !goodRowsOnly ? Optional.empty()
            : Optional.of(new Inventory(values(heads), values(shafts), values(grips), values(sleeves), values(weights),
                recordedClubs));
        return new InventoryRead(inventory, sortedFaults(), sortedWarnings(), faults().count(), warnings().count(),
            unknownColumns(), rowsRead());
    }

    /** The good rows, kind by kind, each in file order. A shaft or sleeve with a fault takes its further rows along. */
    List<SheetRow> sheets() {
        Set<String> lostShafts = lost(shafts);
        Set<String> lostSleeves = lost(sleeves);
        List<SheetRow> sheets = new ArrayList<>();
        lots.forEach((kind, lot) -> {
            Set<String> lost = kind == StockKind.FREQUENCIES ? lostShafts
                : kind == StockKind.SLEEVE_SETTINGS ? lostSleeves : Set.of();
            lot.items().stream().map(Lot.Item::row).filter(Row::isGood).map(Row::sheet)
                .filter(sheet -> !lost.contains(sheet.tag())).forEach(sheets::add);
        });
        return sheets;
    }

    /** Tags that have a row, but no good one. */
    private static Set<String> lost(Lot<?> lot) {
        Set<String> tags = new HashSet<>(lot == null ? Set.of() : lot.named());
        if (lot != null) {
            lot.items().forEach(item -> item.row().key().ifPresent(key -> tags.remove(key.get(0))));
        }
        return tags;
    }

    /** The good rows of set-targets.csv and lines.csv. */
    SetTargets setTargets() {
        return sets.targets();
    }

    /** Resins of which every row is good. */
    List<ResinTable> resins() {
        return resins.tables();
    }

    private static <T> List<T> values(Lot<T> lot) {
        return lot == null ? List.of() : lot.values();
    }

    FaultList faults() {
        return source.faults();
    }

    FaultList warnings() {
        return source.warnings();
    }

    List<Fault> sortedFaults() {
        return faults().sorted(fileOrder());
    }

    List<Fault> sortedWarnings() {
        return warnings().sorted(fileOrder());
    }

    private List<String> fileOrder() {
        return lots.values().stream().<String>map(Lot::file).toList();
    }

    /** By file, only those that have some. */
    Map<String, List<String>> unknownColumns() {
        Map<String, List<String>> unknown = new LinkedHashMap<>();
        lots.values().stream().filter(lot -> !lot.unknownColumns().isEmpty())
            .forEach(lot -> unknown.put(lot.file(), lot.unknownColumns()));
        return unknown;
    }

    Map<String, Integer> rowsRead() {
        Map<String, Integer> rows = new LinkedHashMap<>();
        lots.values().forEach(lot -> rows.merge(lot.file(), lot.rows(), Integer::sum));
        return rows;
    }
}
