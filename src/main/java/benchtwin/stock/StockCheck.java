package benchtwin.stock;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * Checks files whose kind nobody has said.
 * @param files        each file as it was given
 * @param faults       what is wrong, file by file; at most the first 1000 of each reading
 * @param warnings     what is unusual, likewise
 * @param faultCount   how many faults there were, listed or not
 * @param warningCount how many warnings there were, listed or not
 */
public record StockCheck(List<CheckedFile> files, List<Fault> faults, List<Fault> warnings, int faultCount,
                         int warningCount) {

    /**
     * One file that was checked.
     * @param file           its name as messages have it
     * @param kind           what it holds; empty when that cannot be told
     * @param rows           rows seen, good or not
     * @param unknownColumns columns the program does not know
     */
    public record CheckedFile(String file, Optional<StockKind> kind, int rows, List<String> unknownColumns) {
    }

    public StockCheck {
        files = List.copyOf(files);
        faults = List.copyOf(faults);
        warnings = List.copyOf(warnings);
    }

    /**
     * Checks files. The kind is told from the file's name ({@code heads.csv}, {@code heads-spring.csv}), else from its
     * columns. Files of different kinds are also checked against each other; with two of one kind, each stands alone.
     * @param paths the files
     * @return what was found; never an exception for anything a file holds
     */
    public static StockCheck check(List<Path> paths) {
        List<Path> once = paths.stream().distinct().toList();
        FileLabels labels = new FileLabels(once);
        FaultList unread = new FaultList();
        Map<Path, Optional<StockKind>> kinds = new LinkedHashMap<>();
        once.forEach(path -> kinds.put(path, kindOf(path, labels.of(path), unread)));
        List<StockReading> readings = readings(kinds, labels);
        List<String> order = once.stream().map(labels::of).toList();
        List<Fault> faults = new ArrayList<>(unread.sorted(order));
        List<Fault> warnings = new ArrayList<>();
        Map<String, Integer> rows = new LinkedHashMap<>();
        Map<String, List<String>> unknown = new LinkedHashMap<>();
        int faultCount = unread.count();
        int warningCount = 0;
        for (StockReading reading : readings) {
            faults.addAll(reading.sortedFaults());
            warnings.addAll(reading.sortedWarnings());
            faultCount += reading.faults().count();
            warningCount += reading.warnings().count();
            rows.putAll(reading.rowsRead());
            unknown.putAll(reading.unknownColumns());
        }
        Comparator<Fault> asGiven = Comparator.comparingInt(fault -> order.indexOf(fault.file()));
        faults.sort(asGiven);
        warnings.sort(asGiven);
        List<CheckedFile> files = kinds.entrySet().stream().map(entry -> {
            String file = labels.of(entry.getKey());
            return new CheckedFile(file, entry.getValue(), rows.getOrDefault(file, 0),
                unknown.getOrDefault(file, List.of()));
        }).toList();
        return new StockCheck(files, faults, warnings, faultCount, warningCount);
    }

    /**
     * Whether nothing was wrong.
     * @return true without a fault, whatever the warnings
     */
    public boolean isClean() {
        return faultCount == 0;
    }

    private static List<StockReading> readings(Map<Path, Optional<StockKind>> kinds, FileLabels labels) {
        Map<StockKind, Path> together = new EnumMap<>(StockKind.class);
        List<StockReading> alone = new ArrayList<>();
        boolean repeated = false;
        for (Map.Entry<Path, Optional<StockKind>> entry : kinds.entrySet()) {
            if (entry.getValue().isPresent()) {
                repeated |= together.put(entry.getValue().get(), entry.getKey()) != null;
                alone.add(reading(Map.of(entry.getValue().get(), entry.getKey()), labels));
            }
        }
        List<StockReading> readings = repeated ? alone : List.of(reading(together, labels));
        readings.forEach(reading -> reading.read(false));
        return readings;
    }

    private static StockReading reading(Map<StockKind, Path> paths, FileLabels labels) {
        return new StockReading(new FileLots(paths, labels, false));
    }

    /** The kind by name, else by columns; without either, one fault that lists the kinds. */
    private static Optional<StockKind> kindOf(Path path, String file, FaultList faults) {
        Optional<StockKind> byName = kindOfName(FileLabels.bareName(path));
        if (byName.isPresent()) {
            return byName;
        }
        Optional<String> text = FileText.load(path, file, faults);
        if (text.isEmpty()) {
            return Optional.empty();
        }
        if (text.get().isBlank()) {
            faults.add(new Fault(file, 0, Optional.empty(), Optional.empty(), "is empty",
                "a table, its columns' names on the first line"));
            return Optional.empty();
        }
        Optional<StockKind> byColumns = kindOfColumns(new TableReader(file, text.get()).headerCells());
        if (byColumns.isEmpty()) {
            faults.add(new Fault(file, 0, Optional.empty(), Optional.empty(),
                "is of no kind that can be told from its name or its columns",
                "one of these, with at least these columns: " + Arrays.stream(StockKind.values())
                    .map(kind -> "%s (%s)".formatted(kind.fileName(), String.join(", ", kind.requiredColumns())))
                    .collect(Collectors.joining("; "))));
        }
        return byColumns;
    }

    /** {@code heads.csv}, {@code Heads 2026.csv}: the kind's word, alone or before anything but a letter. */
    static Optional<StockKind> kindOfName(String name) {
        String lower = name.toLowerCase(Locale.ROOT).replace('_', '-');
        return Arrays.stream(StockKind.values())
            .filter(kind -> lower.startsWith(kind.word()) && (lower.length() == kind.word().length()
                || !Character.isLetter(lower.charAt(kind.word().length()))))
            .max(Comparator.comparingInt(kind -> kind.word().length()));
    }

    /** The one kind whose required columns are all there; among several, the one that knows most of the columns. */
    static Optional<StockKind> kindOfColumns(List<String> cells) {
        int best = Arrays.stream(StockKind.values()).mapToInt(kind -> Header.fit(kind, cells)).max().orElse(-1);
        List<StockKind> fitting = Arrays.stream(StockKind.values())
            .filter(kind -> Header.fit(kind, cells) == best).toList();
        return best > 0 && fitting.size() == 1 ? Optional.of(fitting.get(0)) : Optional.empty();
    }
}
