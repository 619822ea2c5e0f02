package benchtwin.stock;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/** Rows out of the record. */
final class RecordLots implements LotSource {

    /** What messages call the record. */
    static final String BOOK = "the book";

    private final Map<StockKind, List<RecordedRow>> rows = new EnumMap<>(StockKind.class);
    private final FaultList faults = new FaultList();
    private final FaultList warnings = new FaultList();

    RecordLots(List<RecordedRow> all) {
        all.forEach(row -> rows.computeIfAbsent(row.row().kind(), kind -> new ArrayList<>()).add(row));
    }

    @Override
    public <T> Lot<T> lot(StockKind kind, Function<Row, Optional<T>> parse) {
        if (!kind.isStock()) {
            return null;
        }
        Source source = new Source(kind, Source.Form.RECORDED, false, faults, warnings);
        List<RecordedRow> ofKind = rows.getOrDefault(kind, List.of());
        LotBuilder<T> lot = new LotBuilder<>(kind, parse);
        ofKind.forEach(row -> lot.add(new Row(source, new RecordCells(row))));
        return lot.build(BOOK, ofKind.size(), List.of());
    }

    @Override
    public boolean isRecord() {
        return true;
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
