package benchtwin.stock;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

/** Reads one file from its bytes to its good rows. */
final class LotReader {

    private final FaultList faults;
    private final FaultList warnings;

    LotReader(FaultList faults, FaultList warnings) {
        this.faults = faults;
        this.warnings = warnings;
    }

    /** Reads the file; rows that share their key with another are faults, and none of them is good. */
    <T> Lot<T> read(Path path, String file, StockKind kind, Function<Row, Optional<T>> parse) {
        Optional<String> text = FileText.load(path, file, faults);
        if (text.isEmpty()) {
            return new Lot<>(file, List.of(), Set.of(), 0, List.of());
        }
        TableReader table = new TableReader(text.get());
        Source source = new Source(file, kind, table.separator().leavesCommaFree(), faults, warnings);
        List<Lot.Item<T>> items = new ArrayList<>();
        Map<List<String>, Long> lines = new HashMap<>();
        Set<List<String>> twice = new HashSet<>();
        Set<String> named = new LinkedHashSet<>();
        TableReader.Table read = table.read(source, row -> {
            row.key().ifPresent(key -> {
                named.add(key.get(0));
                Long earlier = lines.putIfAbsent(key, row.line());
                if (earlier != null) {
                    twice.add(key);
                    refuseTwice(row, kind, key, earlier);
                }
            });
            parseSafely(row, parse).filter(value -> row.isGood())
                .ifPresent(value -> items.add(new Lot.Item<>(row, value)));
        });
        items.removeIf(item -> !twice.isEmpty() && item.row().key().filter(twice::contains).isPresent());
        return new Lot<>(file, items, named, read.rows(), read.unknownColumns());
    }

    private static void refuseTwice(Row row, StockKind kind, List<String> key, long earlier) {
        List<String> columns = kind.keyColumns();
        String column = columns.get(columns.size() - 1);
        if (columns.size() == 1) {
            row.fault(column, "is already on line " + earlier, "every %s once".formatted(column));
        } else {
            row.fault(column, "is already on line %d for %s %s".formatted(earlier, columns.get(0), key.get(0)),
                "every %s of a %s once".formatted(column, columns.get(0)));
        }
    }

    /** The records check themselves; should one refuse what the row's own checks let pass, that is a fault like any other. */
    private static <T> Optional<T> parseSafely(Row row, Function<Row, Optional<T>> parse) {
        try {
            return parse.apply(row);
        } catch (IllegalArgumentException refused) {
            row.fault("does not fit together: " + refused.getMessage(), "values that go with each other");
            return Optional.empty();
        }
    }
}
