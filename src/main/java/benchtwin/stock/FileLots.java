package benchtwin.stock;

import java.nio.file.Path;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

/** Rows out of files, at most one file of each kind. */
final class FileLots implements LotSource {

    private final Map<StockKind, Path> paths = new EnumMap<>(StockKind.class);
    private final FileLabels labels;
    private final boolean noting;
    private final FaultList faults = new FaultList();
    private final FaultList warnings = new FaultList();

    /** Whether the rows keep what they say in canonical spelling is for the caller to say: most need it not. */
    FileLots(Map<StockKind, Path> paths, FileLabels labels, boolean noting) {
        this.paths.putAll(paths);
        this.labels = labels;
        this.noting = noting;
    }

    @Override
    public <T> Lot<T> lot(StockKind kind, Function<Row, Optional<T>> parse) {
        Path path = paths.get(kind);
        if (path == null) {
            return null;
        }
        String file = labels.of(path);
        Optional<String> text = FileText.load(path, file, faults);
        if (text.isEmpty()) {
            return new Lot<>(file, List.of(), Set.of(), 0, List.of());
        }
        TableReader table = new TableReader(file, text.get());
        Source source = new Source(kind, table.separator().leavesCommaFree() ? Source.Form.TYPED_WITH_DECIMAL_COMMA
            : Source.Form.TYPED, noting, faults, warnings);
        LotBuilder<T> lot = new LotBuilder<>(kind, parse);
        TableReader.Table read = table.read(source, lot::add);
        return lot.build(file, read.rows(), read.unknownColumns());
    }

    @Override
    public boolean isRecord() {
        return false;
    }

    @Override
    public FaultList faults() {
        return faults;
    }

    @Override
    public FaultList warnings() {
        return warnings;
    }
}
