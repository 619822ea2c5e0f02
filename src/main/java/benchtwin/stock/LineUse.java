package benchtwin.stock;

import benchtwin.club.Line;
import benchtwin.club.WantedClub;
import java.util.List;
import java.util.Optional;

/**
 * A club that names a line.
 * @param club   the club
 * @param column where it names it
 * @param name   the line's name as written
 * @param line   the line; empty where the file of lines has no such good row
 * @param set    every row of the player's set, good or not, in file order
 */
record LineUse(Lot.Item<WantedClub> club, LineColumn column, String name, Optional<Lot.Item<Line>> line, List<Row> set) {

    Row row() {
        return club.row();
    }

    /** The row of the line's anchor club in this set. */
    Optional<Row> anchor() {
        return line.flatMap(item -> set.stream()
            .filter(row -> row.text("club").equals(Optional.of(item.value().anchorClub()))).findFirst());
    }

    void fault(String problem, String expected) {
        row().fault(column.column(), problem, expected);
    }
}
