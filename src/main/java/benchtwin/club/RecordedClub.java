package benchtwin.club;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * A player's club as the record knows it: its readings over time.
 * @param tag      its own tag
 * @param player   whose it is
 * @param category driver to putter
 * @param number   its number
 * @param hand     right or left
 * @param rows     one a day it was measured, oldest first; at least one
 */
public record RecordedClub(String tag, String player, Category category, Optional<String> number, Hand hand,
                           List<ClubRow> rows) {

    public RecordedClub {
        rows = rows.stream().sorted(Comparator.comparing(ClubRow::measuredOn)).toList();
        if (rows.isEmpty()) {
            throw new IllegalArgumentException("club %s has no row".formatted(tag));
        }
    }

    /**
     * The newest row.
     * @return what is known last
     */
    public ClubRow newest() {
        return rows.get(rows.size() - 1);
    }

    /**
     * The last row before the club was damaged or stripped: what a twin is built to.
     * @return the newest row whose state is sound; empty when there is none
     */
    public Optional<ClubRow> lastSound() {
        return rows.stream()
            .filter(row -> row.state().isSound())
            .reduce((earlier, later) -> later);
    }
}
