package benchtwin.stock;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** The header of one file: which column stands where. */
final class Header {

    static final int LONGEST_NAME = 200;

    /** Positions by the columns' places in their kind, -1 for those that are not there. */
    private final int[] positions;
    private final int[] otherPositions;
    private final Map<String, Integer> unknown = new LinkedHashMap<>();
    private final List<Integer> unnamed = new ArrayList<>();
    private final int width;

    private Header(int width, int columns) {
        this.width = width;
        positions = new int[columns];
        otherPositions = new int[columns];
    }

    /** Reads a header and adds a fault for each name that stands twice and each required one that is missing. */
    static Optional<Header> read(List<String> cells, String file, long line, Source source) {
        if (isTooLong(cells)) {
            source.faults().add(new Fault(file, line, Optional.empty(), Optional.empty(),
                "has a column name of more than %d characters".formatted(LONGEST_NAME), "a header line, such as "
                    + String.join(",", source.kind().requiredColumns())));
            return Optional.empty();
        }
        Header header = new Header(cells.size(), source.kind().columns().size());
        int before = source.faults().count();
        Map<String, Integer> first = new LinkedHashMap<>();
        Map<String, Integer> known = new LinkedHashMap<>();
        for (int i = 0; i < cells.size(); i++) {
            String name = fold(cells.get(i));
            Integer earlier = name.isEmpty() ? null : first.putIfAbsent(name, i);
            if (name.isEmpty()) {
                header.unnamed.add(i);
            } else if (earlier != null) {
                source.faults().add(new Fault(file, line, Optional.of(name), Optional.empty(),
                    "stands twice in the header, as columns %d and %d".formatted(earlier + 1, i + 1),
                    "every column once"));
            } else if (source.kind().column(name).isPresent()) {
                known.put(name, i);
            } else {
                header.unknown.put(cells.get(i).strip(), i);
            }
        }
        for (Column column : source.kind().columns()) {
            header.positions[column.place()] = known.getOrDefault(column.name(), -1);
            header.otherPositions[column.place()] = known.getOrDefault(column.otherName().orElse(""), -1);
        }
        header.refuseMissing(cells, file, line, source);
        return source.faults().count() == before ? Optional.of(header) : Optional.empty();
    }

    /** A name as it is compared: no case, and spaces or hyphens as underscores. */
    static String fold(String name) {
        return name.replace('\u00a0', ' ').strip().toLowerCase(Locale.ROOT).replaceAll("[\\s-]+", "_");
    }

    /** How many of a kind's columns these names are; -1 when a required one is missing. */
    static int fit(StockKind kind, List<String> cells) {
        if (isTooLong(cells)) {
            return -1;
        }
        List<String> names = cells.stream().map(Header::fold).toList();
        boolean complete = kind.columns().stream().filter(Column::required).allMatch(
            column -> names.contains(column.name()) || column.otherName().filter(names::contains).isPresent());
        return complete ? (int) names.stream().filter(name -> kind.column(name).isPresent()).count() : -1;
    }

    private static boolean isTooLong(List<String> cells) {
        return cells.stream().anyMatch(cell -> cell.length() > LONGEST_NAME);
    }

    private void refuseMissing(List<String> cells, String file, long line, Source source) {
        for (Column column : source.kind().columns()) {
            if (!column.required() || has(column)) {
                continue;
            }
            Optional<String> near = Nearest.to(column.name(), unknown.keySet());
            String also = column.otherName().map(other -> " (or " + other + ")").orElse("");
            source.faults().add(new Fault(file, line, Optional.of(column.name()), Optional.empty(),
                "is missing from the header",
                "it%s beside those found: %s%s%s".formatted(also, found(cells),
                    near.map(name -> "; is \"" + name + "\" meant for it?").orElse(""), otherKind(cells, source.kind()))));
        }
    }

    private static String found(List<String> cells) {
        String names = String.join(", ", cells.stream().map(String::strip).filter(name -> !name.isEmpty()).toList());
        return names.length() > 400 ? names.substring(0, 400) + "…" : names;
    }

    private static String otherKind(List<String> cells, StockKind kind) {
        return StockCheck.kindOfColumns(cells).filter(other -> other != kind)
            .map(other -> "; the columns look like those of " + other.fileName()).orElse("");
    }

    private boolean has(Column column) {
        return position(column) >= 0 || otherPosition(column) >= 0;
    }

    /** Where a column stands under its canonical name, -1 when it is not there. */
    int position(Column column) {
        return positions[column.place()];
    }

    /** Where it stands under its name in the other unit, -1 when it is not there. */
    int otherPosition(Column column) {
        return otherPositions[column.place()];
    }

    int width() {
        return width;
    }

    /** Columns the program does not know, as written, with their positions. */
    Map<String, Integer> unknown() {
        return unknown;
    }

    /** Positions of columns without a name, as spreadsheets leave them at the right edge. */
    List<Integer> unnamed() {
        return unnamed;
    }
}
