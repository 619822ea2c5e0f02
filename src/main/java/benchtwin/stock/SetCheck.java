package benchtwin.stock;

import benchtwin.club.Line;
import benchtwin.club.SetTargets;
import benchtwin.club.WantedClub;
import java.util.List;
import java.util.Set;

/** Whether the clubs of set-targets.csv go with each other and with the lines of lines.csv, and which of them do. */
final class SetCheck {

    private static final Lot<WantedClub> NO_CLUBS = new Lot<>("", List.of(), Set.of(), 0, List.of());

    private final Lot<WantedClub> clubs;
    private final Lot<Line> lines;
    private final List<LineUse> uses;

    /**
     * Checks files read before.
     * @param clubs      the good rows of set-targets.csv; null where it was not given
     * @param everyClub  all of its rows
     * @param lines      the good rows of lines.csv; null where it was not given
     * @param linesWhole whether lines.csv had no fault
     * @param whole      whether a line without a lines file is a fault
     */
    SetCheck(Lot<WantedClub> clubs, List<Row> everyClub, Lot<Line> lines, boolean linesWhole, boolean whole) {
        this.clubs = clubs == null ? NO_CLUBS : clubs;
        this.lines = lines;
        GroupCheck.check(this.clubs);
        this.uses = new LineCheck(this.clubs, everyClub, lines, linesWhole).check(whole);
    }

    /** The clubs and lines that can be used. */
    SetTargets targets() {
        List<Line> good = lines == null ? List.of()
            : lines.items().stream().filter(item -> item.row().isGood()).map(Lot.Item::value).toList();
        return new GoodClubs(clubs, uses).with(good);
    }
}
