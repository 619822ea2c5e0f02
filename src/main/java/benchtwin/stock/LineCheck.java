package benchtwin.stock;

import benchtwin.club.Line;
import benchtwin.club.LinePer;
import benchtwin.club.Quantity;
import benchtwin.club.WantedClub;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** Whether the clubs that name a line can lie on it. */
final class LineCheck {

    private final Lot<WantedClub> clubs;
    private final Lot<Line> lines;
    private final boolean linesWhole;
    private final Map<String, List<Row>> sets = new HashMap<>();
    private final Set<String> namedSomewhere;

    /**
     * Files read before.
     * @param clubs      the good rows of set-targets.csv
     * @param everyClub  all of its rows
     * @param lines      the good rows of lines.csv; null where it was not given
     * @param linesWhole whether lines.csv had no fault
     */
    LineCheck(Lot<WantedClub> clubs, List<Row> everyClub, Lot<Line> lines, boolean linesWhole) {
        this.clubs = clubs;
        this.lines = lines;
        this.linesWhole = linesWhole;
        everyClub.forEach(row -> row.text("player")
            .ifPresent(player -> sets.computeIfAbsent(player, any -> new ArrayList<>()).add(row)));
        namedSomewhere = everyClub.stream().flatMap(row -> Arrays.stream(LineColumn.values())
            .flatMap(column -> row.text(column.column()).stream())).collect(Collectors.toSet());
    }

    /** Checks every use. Where all must be there, a line without a lines file is a fault; else it is not missed. */
    List<LineUse> check(boolean whole) {
        List<LineUse> uses = uses();
        for (LineUse use : uses) {
            if (lines == null) {
                if (whole) {
                    use.fault("names a line, and no lines were given", "lines.csv with that line");
                }
            } else {
                checkName(use);
            }
        }
        List<LineUse> sound = uses.stream().filter(use -> use.line().isPresent() && fits(use)).toList();
        sound.stream().collect(Collectors.groupingBy(LineUse::name, LinkedHashMap::new, Collectors.toList())).values()
            .forEach(LineCheck::checkAnchor);
        sound.forEach(LineCheck::checkOwnColumns);
        sound.forEach(LineCheck::checkLengths);
        if (lines != null && clubs.rows() > 0) {
            lines.items().stream().filter(line -> !namedSomewhere.contains(line.value().name()))
                .forEach(line -> line.row().warn("line", "is used by no club of " + clubs.file(),
                    "its name under frequency_line, swing_line or loft_line"));
        }
        return uses;
    }

    private List<LineUse> uses() {
        Map<String, Lot.Item<Line>> byName = new HashMap<>();
        if (lines != null) {
            lines.items().forEach(item -> byName.put(item.value().name(), item));
        }
        List<LineUse> uses = new ArrayList<>();
        for (Lot.Item<WantedClub> club : clubs.items()) {
            for (LineColumn column : LineColumn.values()) {
                column.of(club.value()).ifPresent(name -> uses.add(new LineUse(club, column, name,
                    Optional.ofNullable(byName.get(name)), sets.get(club.value().player()))));
            }
        }
        return uses;
    }

    /** A line whose row has a fault is known all the same. */
    private void checkName(LineUse use) {
        boolean known = lines.named().contains(use.name()) || !linesWhole && lines.named().isEmpty();
        if (!known) {
            use.fault("is not in " + lines.file(), CrossCheck.expectation(use.name(), lines));
        } else if (use.line().isPresent() && !fits(use)) {
            use.fault("is a line of " + use.line().get().value().quantity().word(), "a line of "
                + use.column().quantities().stream().map(Quantity::word).collect(Collectors.joining(" or ")));
        }
    }

    private static boolean fits(LineUse use) {
        return use.column().quantities().contains(use.line().orElseThrow().value().quantity());
    }

    /** A slope needs its anchor club in every set; for a constant it is only looked at for a slip of the finger. */
    private static void checkAnchor(List<LineUse> uses) {
        Lot.Item<Line> line = uses.get(0).line().orElseThrow();
        String anchor = line.value().anchorClub();
        if (uses.stream().allMatch(use -> use.anchor().isEmpty())) {
            List<String> clubs = uses.stream().flatMap(use -> use.set().stream())
                .flatMap(row -> row.text("club").stream()).distinct().toList();
            String problem = "is in no set that uses this line";
            String expected = "a club of theirs"
                + Nearest.to(anchor, clubs).map(near -> " (did you mean " + near + "?)").orElse("");
            if (line.value().isConstant()) {
                line.row().warn("anchor_club", problem, expected);
            } else {
                line.row().fault("anchor_club", problem, expected);
            }
        } else if (!line.value().isConstant()) {
            uses.stream().filter(use -> use.anchor().isEmpty()).forEach(use -> use.fault(
                "goes from club %s, which %s does not have".formatted(anchor, use.club().value().player()),
                "that club in the set, or a line from another"));
        }
    }

    /** A value is wanted once: by the row or by the line. */
    private static void checkOwnColumns(LineUse use) {
        Line line = use.line().orElseThrow().value();
        WantedColumn own = WantedColumn.of(line.quantity());
        if (use.row().has(own.value())) {
            use.row().fault(own.value(), "stands beside line %s, which gives the same".formatted(line.name()),
                "the value or the line, one of the two");
        }
        for (Quantity other : use.column().quantities()) {
            if (other != line.quantity() && use.club().value().lineMargins().containsKey(other)) {
                WantedColumn column = WantedColumn.of(other);
                use.row().fault(use.row().has(column.tolerance()) ? column.tolerance() : column.weight(),
                    "stands beside no %s, and line %s is of %s".formatted(use.row().nameInFile(column.value()),
                        line.name(), line.quantity().word()), "a blank cell, or the value it is for");
            }
        }
    }

    private static void checkLengths(LineUse use) {
        Line line = use.line().orElseThrow().value();
        if (line.isConstant() || line.per() != LinePer.INCH || use.anchor().isEmpty()) {
            return;
        }
        Row anchor = use.anchor().get();
        if (!use.row().has("length_in")) {
            use.fault("goes by the inch, and this club has no length", "its length, or a line per club");
        } else if (!anchor.has("length_in")) {
            use.fault("goes by the inch, and its anchor club on line %d has no length".formatted(anchor.cells().line()),
                "that length, or a line per club");
        }
    }
}
