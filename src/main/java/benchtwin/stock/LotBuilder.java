package benchtwin.stock;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

/** Parses the rows of one kind and keeps the good ones. Rows that share their key are faults, and none of them is good. */
final class LotBuilder<T> {

    private final StockKind kind;
    private final Function<Row, Optional<T>> parse;
    private final List<Lot.Item<T>> items = new ArrayList<>();
    private final Map<List<String>, Row> first = new HashMap<>();
    private final Set<List<String>> twice = new HashSet<>();
    private final Set<String> named = new LinkedHashSet<>();

    LotBuilder(StockKind kind, Function<Row, Optional<T>> parse) {
        this.kind = kind;
        this.parse = parse;
    }

    void add(Row row) {
        row.key().ifPresent(key -> {
            named.add(key.get(0));
            Row earlier = first.putIfAbsent(key, row);
            if (earlier != null) {
                twice.add(key);
                refuseTwice(row, key, earlier);
            }
        });
        parseSafely(row).filter(value -> row.isGood()).ifPresent(value -> items.add(new Lot.Item<>(row, value)));
    }

    /** What was added. */
    Lot<T> build(String source, int rows, List<String> unknownColumns) {
        items.removeIf(item -> !twice.isEmpty() && item.row().key().filter(twice::contains).isPresent());
        return new Lot<>(source, items, named, rows, unknownColumns);
    }

    private void refuseTwice(Row row, List<String> key, Row earlier) {
        List<String> columns = kind.keyColumns();
        String column = columns.get(columns.size() - 1);
        String where = row.source().isRecord() ? "is there twice" : "is already on " + earlier.cells().words();
        if (columns.size() == 1) {
            row.fault(column, where, "every %s once".formatted(column));
        } else {
            row.fault(column, "%s for %s %s".formatted(where, columns.get(0), key.get(0)),
                "every %s of a %s once".formatted(column, columns.get(0)));
        }
    }

    /** The records check themselves; should one refuse what the row's own checks let pass, that is a fault like any other. */
    private Optional<T> parseSafely(Row row) {
        try {
            return parse.apply(row);
        } catch (IllegalArgumentException refused) {
            row.fault("does not fit together: " + refused.getMessage(), "values that go with each other");
            return Optional.empty();
        }
    }
}
