package benchtwin.stock;

import java.util.Optional;
import java.util.function.Function;

/** Where rows are read from, kind by kind: files, or the record. */
interface LotSource {

    /** The rows of a kind; null where there is no such file. */
    <T> Lot<T> lot(StockKind kind, Function<Row, Optional<T>> parse);

    /** Whether the rows come from the record, and had their warnings when they were entered. */
    boolean isRecord();

    FaultList faults();

    FaultList warnings();
}
