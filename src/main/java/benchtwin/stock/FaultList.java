package benchtwin.stock;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Faults as they are found: the first thousand are kept, the rest only counted. */
final class FaultList {

    /** How many faults are kept: more than anybody reads, few enough for any memory. */
    static final int KEPT = 1000;

    private final List<Fault> kept = new ArrayList<>();
    private int count;

    void add(Fault fault) {
        count++;
        if (kept.size() < KEPT) {
            kept.add(fault);
        }
    }

    /** How many were found, kept or not. */
    int count() {
        return count;
    }

    /** Those kept, by file in the order given, then by line. */
    List<Fault> sorted(List<String> fileOrder) {
        return kept.stream()
            .sorted(Comparator.comparingInt((Fault fault) -> fileOrder.indexOf(fault.file()))
                .thenComparingLong(Fault::line))
            .toList();
    }
}
