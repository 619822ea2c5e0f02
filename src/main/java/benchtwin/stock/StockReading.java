package benchtwin.stock;

import benchtwin.club.Grip;
import benchtwin.club.Head;
import benchtwin.club.Inventory;
import benchtwin.club.Line;
import benchtwin.club.RecordedClub;
import benchtwin.club.SetTargets;
import benchtwin.club.Shaft;
import benchtwin.club.Sleeve;
import benchtwin.club.WantedClub;
import benchtwin.club.Weight;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/** One reading of a set of files, at most one of each kind. */
final class StockReading {

    private final Map<StockKind, Path> paths;
    private final FileLabels labels;
    private final FaultList faults = new FaultList();
    private final FaultList warnings = new FaultList();
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

    StockReading(Map<StockKind, Path> paths) {
        this(paths, new FileLabels(paths.values()));
    }

    StockReading(Map<StockKind, Path> paths, FileLabels labels) {
        this.paths = new EnumMap<>(StockKind.class);
        this.paths.putAll(paths);
        this.labels = labels;
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
        new CrossCheck(heads, shafts, grips, sleeves).check(clubs, settings, frequencies);
        readSets(whole);
        if (whole) {
            refuseAlone(StockKind.FREQUENCIES, StockKind.SHAFTS, faults);
            refuseAlone(StockKind.SLEEVE_SETTINGS, StockKind.SLEEVES, warnings);
        }
    }

    private void readSets(boolean whole) {
        int before = faults.count();
        Lot<Line> lines = lot(StockKind.LINES, LineRows::read);
        boolean linesWhole = faults.count() == before;
        WantedClubRows rows = new WantedClubRows();
        Lot<WantedClub> wanted = lot(StockKind.SET_TARGETS, rows::read);
        sets = new SetCheck(wanted, rows.seen(), lines, linesWhole, whole);
    }

    private <T> Lot<T> lot(StockKind kind, Function<Row, Optional<T>> parse) {
        Path path = paths.get(kind);
        if (path == null) {
            return null;
        }
        Lot<T> lot = new LotReader(faults, warnings).read(path, labels.of(path), kind, parse);
        lots.put(kind, lot);
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
        if (paths.containsKey(kind) && !paths.containsKey(needed)) {
            where.add(new Fault(labels.of(paths.get(kind)), 0, Optional.empty(), Optional.empty(),
                "was read without the %s it speaks of".formatted(needed.word()), needed.fileName() + " beside it"));
        }
    }

    /** The good rows. */
    Inventory inventory() {
        return new Inventory(values(heads), values(shafts), values(grips), values(sleeves), values(weights), recordedClubs);
    }

    /** The good rows of set-targets.csv and lines.csv. */
    SetTargets setTargets() {
        return sets.targets();
    }

    private static <T> List<T> values(Lot<T> lot) {
        return lot == null ? List.of() : lot.values();
    }

    FaultList faults() {
        return faults;
    }

    FaultList warnings() {
        return warnings;
    }

    List<Fault> sortedFaults() {
        return faults.sorted(fileOrder());
    }

    List<Fault> sortedWarnings() {
        return warnings.sorted(fileOrder());
    }

    private List<String> fileOrder() {
        return paths.values().stream().map(labels::of).toList();
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
        lots.values().forEach(lot -> rows.put(lot.file(), lot.rows()));
        return rows;
    }
}
