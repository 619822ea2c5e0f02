package benchtwin.stock;

import benchtwin.club.ResinTable;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;

/** Reads the cure times of the workshop's resins: all of them, or none and every fault at once. */
public final class ResinReader {

    private ResinReader() {
    }

    /**
     * What a file gave.
     * @param resins     in file order; none when there was any fault
     * @param faults     what is wrong, by line; at most the first 1000
     * @param warnings   what is unusual, by line
     * @param faultCount how many faults there were, listed or not
     */
    public record Read(List<ResinTable> resins, List<Fault> faults, List<Fault> warnings, int faultCount) {
    }

    /**
     * Reads a file.
     * @param file a file as {@code resins.csv}
     * @return what it gave; never an exception for anything it holds
     */
    public static Read read(Path file) {
        StockReading reading = StockReading.of(Map.of(StockKind.RESINS, file));
        reading.read(true);
        int faults = reading.faults().count();
        return new Read(faults == 0 ? reading.resins() : List.of(), reading.sortedFaults(), reading.sortedWarnings(), faults);
    }
}
