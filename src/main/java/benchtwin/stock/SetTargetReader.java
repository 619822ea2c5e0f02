package benchtwin.stock;

import benchtwin.club.SetTargets;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;

/** Reads the sets that are wished for, with the lines through them: all of it, or nothing and every fault at once. */
public final class SetTargetReader {

    private SetTargetReader() {
    }

    /**
     * Reads set targets and checks that they go with each other and with their lines.
     * @param targets      a file as {@code set-targets.csv}
     * @param lines        a file as {@code lines.csv}; without one, a club that names a line is a fault
     * @param goodRowsOnly take the clubs without a fault even when others have one; a club whose value on a line rests on
     *                     a row with a fault is left out too, with a warning
     * @return the targets, or none, with all faults and warnings; never an exception for anything a file holds
     */
    public static SetTargetRead read(Path targets, Optional<Path> lines, boolean goodRowsOnly) {
        Map<StockKind, Path> paths = new EnumMap<>(StockKind.class);
        paths.put(StockKind.SET_TARGETS, targets);
        lines.ifPresent(path -> paths.put(StockKind.LINES, path));
        StockReading reading = StockReading.of(paths);
        reading.read(true);
        Optional<SetTargets> sets = reading.faults().count() == 0 || goodRowsOnly
            ? Optional.of(reading.setTargets()) : Optional.empty();
        return new SetTargetRead(sets, reading.sortedFaults(), reading.sortedWarnings(), reading.faults().count(),
            reading.warnings().count(), reading.unknownColumns(), reading.rowsRead());
    }
}
