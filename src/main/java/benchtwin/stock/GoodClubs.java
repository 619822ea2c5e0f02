package benchtwin.stock;

import benchtwin.club.Line;
import benchtwin.club.LinePer;
import benchtwin.club.SetTargets;
import benchtwin.club.WantedClub;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** The clubs without a fault whose lines rest on nothing that has one. */
final class GoodClubs {

    private final Lot<WantedClub> clubs;
    private final List<LineUse> uses;
    private final Set<Row> good = new HashSet<>();

    GoodClubs(Lot<WantedClub> clubs, List<LineUse> uses) {
        this.clubs = clubs;
        this.uses = uses;
        clubs.items().stream().map(Lot.Item::row).filter(Row::isGood).forEach(good::add);
    }

    /** Leaves out what rests on a fault, with a warning, until nothing more does. */
    SetTargets with(List<Line> lines) {
        boolean again = true;
        while (again) {
            again = false;
            for (LineUse use : uses) {
                Optional<String> why = good.contains(use.row()) ? restsOnAFault(use) : Optional.empty();
                if (why.isPresent()) {
                    good.remove(use.row());
                    use.row().warn(use.column().column(), why.get(), "that put right; until then this club is left out");
                    again = true;
                }
            }
        }
        return new SetTargets(clubs.items().stream().filter(item -> good.contains(item.row())).map(Lot.Item::value)
            .toList(), lines);
    }

    private Optional<String> restsOnAFault(LineUse use) {
        if (use.line().isEmpty() || !use.line().get().row().isGood()) {
            return Optional.of("is a line with a fault");
        }
        Line line = use.line().get().value();
        if (line.isConstant()) {
            return Optional.empty();
        }
        List<Row> rests = line.per() == LinePer.CLUB ? use.set() : use.anchor().stream().toList();
        return rests.stream().filter(row -> !good.contains(row)).findFirst()
            .map(row -> (line.per() == LinePer.CLUB ? "counts clubs, and the one on line %d cannot be used"
                : "goes from the club on line %d, which cannot be used").formatted(row.cells().line()));
    }
}
