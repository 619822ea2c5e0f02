package benchtwin.picture;

import benchtwin.club.Wanted;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * All readings of one quantity, and what it should measure.
 * @param target   the accepted target with its tolerance, if there is one; its weight does not matter here
 * @param readings oldest first; of those of one time the order is kept; may be empty
 */
public record HistoryStrip(Optional<Wanted> target, List<HistoryReading> readings) {

    /** What adding and subtracting leaves, as a part of the larger number. */
    private static final double ROUNDING = 1e-9;

    public HistoryStrip {
        readings = readings.stream().sorted(Comparator.comparing(HistoryReading::when)).toList();
    }

    /** The last reading that still stands. */
    Optional<HistoryReading> last() {
        return readings.stream().filter(reading -> !reading.superseded()).reduce((earlier, later) -> later);
    }

    /** Whether there is a last reading and something to hold it to. */
    boolean isJudged() {
        return target.isPresent() && last().isPresent();
    }

    /** Whether a reading that stands lies off the strip. */
    boolean reachesOff() {
        return target.isPresent() && readings.stream()
            .anyMatch(reading -> !reading.superseded() && StripScale.off(target.get(), reading.value()) != 0);
    }

    /** 1 when the last reading is above the tolerance, −1 below, 0 within, or when there is nothing to compare. */
    int side() {
        if (!isJudged()) {
            return 0;
        }
        Wanted wanted = target.orElseThrow();
        double off = last().orElseThrow().value() - wanted.value();
        double slack = ROUNDING * Math.max(1, Math.abs(wanted.value()));
        return Math.abs(off) <= wanted.tolerance() + slack ? 0 : (int) Math.signum(off);
    }
}
