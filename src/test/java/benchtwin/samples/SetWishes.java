package benchtwin.samples;

import static benchtwin.club.Hand.LEFT;
import static benchtwin.club.Hand.RIGHT;

import benchtwin.club.Category;
import benchtwin.club.Hand;
import benchtwin.samples.CsvTable.Row;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.UnaryOperator;

/**
 * What eight players want built this week, and the lines through their sets. More is wanted than there is: two left-handed
 * iron sets where the drawers hold one, three left-handed 4-hybrids where two are free, a left-handed 60 that nobody has.
 * Lofts, lengths and frequencies: common practice, no source; frequencies on the bare butt.
 */
final class SetWishes {

    private static final double IRON_STEP_IN = 0.5;

    private final String player;
    private final Hand hand;
    private final int priority;
    private final String neededBy;
    private final String ironLine;
    private final String swingLine;
    /** How much longer than standard, in, and more upright than the heads' design, degrees, the player has them. */
    private final double longerIn;
    private final double uprightDeg;
    private final List<Row> rows = new ArrayList<>();

    SetWishes(String player, Hand hand, int priority, String neededBy, String ironLine, String swingLine,
              double longerIn, double uprightDeg) {
        this.player = player;
        this.hand = hand;
        this.priority = priority;
        this.neededBy = neededBy;
        this.ironLine = ironLine;
        this.swingLine = swingLine;
        this.longerIn = longerIn;
        this.uprightDeg = uprightDeg;
    }

    /** Every club of the eight sets. */
    static List<Row> clubs() {
        List<Row> clubs = new ArrayList<>();
        clubs.addAll(new SetWishes("J. Quillby", RIGHT, 1, "2026-05-21", "firm irons", "irons D2", 0, 0)
            .driver(9.5, 57, -1.2, 45, 251).fairway("3", 15.1, 56.8, 0.4, 43, 260).hybrid("3", 18.7, 58.8, 40.25, 274)
            .irons(HeadLines.WHIN, "4", "PW", 0, "").wedges("Sickle", 0, "50", "54", "58").rows);
        clubs.addAll(new SetWishes("L. Wexcombe", LEFT, 2, "2026-05-21", "medium irons", "irons D1.5", 0.25, 0.2)
            .driver(10.4, 58.7, 0.2, 45.25, 249).fairway("3", 15.2, 57.4, 0, 42.75, 261).hybrid("4", "", 22, 58.6, -0.2, 39.75, 279)
            .hybrid("4", " backup", 22, 58.6, -0.2, 39.75, 279).irons(HeadLines.SEDGE, "5", "GW", 0, "").wedges("Trowel", 0.2, "56", "60").rows);
        clubs.addAll(new SetWishes("A. Penhollow", RIGHT, 3, "2026-05-22", "firm irons", "irons D2", 0.25, 0.5)
            .driver(10.1, 58.2, -0.4, 44.75, 256).fairway("3", 14.9, 57.3, -0.3, 42.75, 263).hybrid("4", 21.8, 58.9, 39.5, 278)
            .irons(HeadLines.WHIN, "5", "PW", 0.4, "0.3").wedges("Sickle", -0.3, "50", "54", "58").rows);
        clubs.addAll(new SetWishes("D. Marrowick", LEFT, 3, "2026-05-22", "medium irons", "irons D2", 0, -0.4)
            .driver(9.3, 58.3, -0.3, 45, 252).fairway("3", 15, 57.2, -0.2, 43, 259).hybrid("4", 21.9, 59.1, 39.75, 277)
            .irons(HeadLines.SEDGE, "5", "PW", -0.3, "").wedges("Sickle", 0, "54", "58").rows);
        clubs.addAll(new SetWishes("E. Ashcutter", RIGHT, 2, "2026-05-21", "medium irons", "irons even", 0.25, 0.3)
            .driver(8.9, 58, -0.8, 45.25, 254).fairway("3", 15.2, 57.6, -0.6, 43, 258).hybrid("4", "", 22.1, 58.9, -0.5, 39.75, 276)
            .irons(HeadLines.SEDGE, "5", "GW", -0.2, "").wedges("Sickle", 0.4, "54", "58").rows);
        clubs.addAll(new SetWishes("T. Tolver", RIGHT, 4, "2026-05-23", "irons by the club", "irons D2", -0.25, -0.6)
            .driver(8.7, 57.2, 0.6, 44.75, 264).fairway("3", 15.2, 57.2, -0.4, 43, 262).fairway("5", 18.1, 57.7, 0.1, 42, 268)
            .irons(HeadLines.WHIN, "4", "PW", -0.4, "").wedges("Sickle", 0, "54", "58").rows);
        clubs.addAll(new SetWishes("K. Larkfield", RIGHT, 3, "2026-05-23", "light irons", "irons D1.5", 0, 0.4)
            .driver(10.4, 57.2, 0.4, 45, 241).fairway("3", 15.1, 57.5, 0, 42.75, 256).hybrid("4", 22.2, 58.8, 39.5, 274)
            .irons(HeadLines.SEDGE, "5", "PW", 0.3, "").wedges("Trowel", 0, "52", "56").rows);
        clubs.addAll(new SetWishes("M. Sandrow", RIGHT, 5, "", "light irons", "irons D1.5", -0.25, -0.3)
            .driver(10.6, 58.1, 0.3, 45.25, 236).fairway("5", 18.3, 58, -0.2, 41.75, 262).fairway("7", 21.6, 58.2, 0.6, 41.5, 264)
            .hybrid("4", "", 21.7, 58.3, 0.2, 39.25, 275).irons(HeadLines.SEDGE, "6", "PW", 0, "").evenGaps()
            .wedges("Trowel", -0.4, "52", "56").rows);
        return clubs;
    }

    /** The lines they refer to. */
    static List<Row> lines() {
        return List.of(line("firm irons", "frequency", "308", "9", "inch"),
            line("medium irons", "frequency", "307", "8.5", "inch"), line("light irons", "frequency", "303", "8", "inch"),
            line("irons by the club", "frequency", "309", "4.5", "club"), line("irons D2", "swing-weight", "D2", "0", "club"),
            line("irons D1.5", "swing-weight", "D1.5", "0", "club"), line("irons even", "butt-inertia", "2660", "0", "club"),
            line("even gaps", "loft", "31.5", "4.25", "club"));
    }

    static Row line(String name, String quantity, String value, String slope, String per) {
        return new Row().put("line", name).put("quantity", quantity).put("anchor_club", "7-iron").put("anchor_value", value)
            .put("slope", slope).put("per", per);
    }

    SetWishes driver(double loftDeg, double lieDeg, double faceDeg, double lengthIn, double cpm) {
        return wood(Category.DRIVER, "driver", "", loftDeg, lieDeg, number(faceDeg), "soled", lengthIn, "D2.5", cpm);
    }

    SetWishes fairway(String number, double loftDeg, double lieDeg, double faceDeg, double lengthIn, double cpm) {
        return wood(Category.FAIRWAY, number + "-wood", number, loftDeg, lieDeg, number(faceDeg), "soled", lengthIn, "D2.5",
            cpm);
    }

    /** A hybrid wanted as a wood is read. */
    SetWishes hybrid(String number, String which, double loftDeg, double lieDeg, double faceDeg, double lengthIn,
                             double cpm) {
        return wood(Category.HYBRID, number + "-hybrid" + which, number, loftDeg, lieDeg, number(faceDeg), "soled", lengthIn,
            "D2", cpm);
    }

    /** A hybrid wanted by the edge, as an iron is. */
    SetWishes hybrid(String number, double loftDeg, double lieDeg, double lengthIn, double cpm) {
        return wood(Category.HYBRID, number + "-hybrid", number, loftDeg, lieDeg, "", "edge", lengthIn, "D2", cpm);
    }

    private SetWishes wood(Category category, String club, String number, double loftDeg, double lieDeg, String faceDeg,
                           String reading, double lengthIn, String swing, double cpm) {
        rows.add(row(club, category, number, "", "").put("loft_deg", number(loftDeg)).put("lie_deg", number(lieDeg))
            .put("face_deg", faceDeg).put("reading", reading).put("bounce_deg", "").put("length_in", number(lengthIn))
            .put("swing_weight", swing).put("frequency_cpm", number(cpm)).put("frequency_line", "").put("swing_line", "")
            .put("loft_line", "").put("loft_tol_deg", category == Category.DRIVER ? "0.5" : "").put("frequency_tol_cpm", "3")
            .put("priority", Integer.toString(priority)).put("needed_by", neededBy).put("note", ""));
        return this;
    }

    /** From one number to another of a head model's design, all lofts weaker or stronger by as much. */
    SetWishes irons(HeadLine line, String from, String to, double weakerDeg, String loftTolDeg) {
        List<String> numbers = line.sizes().stream().map(HeadLine.Size::number).toList();
        for (int i = numbers.indexOf(from); i <= numbers.indexOf(to); i++) {
            HeadLine.Size size = line.size(numbers.get(i));
            boolean plain = Character.isDigit(size.number().charAt(0));
            double lengthIn = 37 + longerIn - IRON_STEP_IN * (i - numbers.indexOf("7"));
            rows.add(row(plain ? size.number() + "-iron" : size.number(), Category.IRON, size.number(), "irons", "must")
                .put("loft_deg", number(size.loftDeg() + weakerDeg)).put("lie_deg", number(size.lieDeg() + uprightDeg))
                .put("face_deg", "").put("reading", "edge").put("bounce_deg", number(size.bounceDeg()))
                .put("length_in", number(lengthIn)).put("swing_weight", "").put("frequency_cpm", "")
                .put("frequency_line", ironLine).put("swing_line", swingLine).put("loft_line", "")
                .put("loft_tol_deg", loftTolDeg).put("frequency_tol_cpm", "")
                .put("priority", Integer.toString(priority)).put("needed_by", neededBy).put("note", ""));
        }
        return this;
    }

    /** The irons' lofts from a gap table instead of the design. */
    private SetWishes evenGaps() {
        rows.stream().filter(row -> row.get("group").equals("irons"))
            .forEach(row -> row.put("loft_deg", "").put("loft_line", "even gaps"));
        return this;
    }

    /** Wedges of one model where that goes, with its bounce; a nominal loft is played weaker or stronger by as much. */
    private SetWishes wedges(String model, double weakerDeg, String... lofts) {
        return wedges(loft -> model.equals("Sickle") ? bounce(loft) : "12", 322, weakerDeg, lofts);
    }

    /** Wedges of one model where that goes, each loft with the bounce it is given. */
    SetWishes wedges(UnaryOperator<String> bounce, double cpm, double weakerDeg, String... lofts) {
        for (String loft : lofts) {
            rows.add(row(loft, Category.WEDGE, loft, "wedges", "prefer")
                .put("loft_deg", number(Double.parseDouble(loft) + weakerDeg)).put("lie_deg", number(64 + uprightDeg))
                .put("face_deg", "").put("reading", "edge").put("bounce_deg", bounce.apply(loft))
                .put("length_in", number(35.25 + longerIn)).put("swing_weight", "D4").put("frequency_cpm", number(cpm))
                .put("frequency_line", "").put("swing_line", "").put("loft_line", "")
                .put("loft_tol_deg", "").put("frequency_tol_cpm", "4")
                .put("priority", Integer.toString(Math.min(9, priority + 1))).put("needed_by", neededBy)
                .put("note", loft.equals("60") ? "after the course is seen" : ""));
        }
        return this;
    }

    /** The clubs wished for so far. */
    List<Row> rows() {
        return List.copyOf(rows);
    }

    private static String bounce(String loft) {
        return number(HeadLines.SICKLE.size(loft).bounceDeg());
    }

    private Row row(String club, Category category, String number, String group, String rule) {
        return new Row().put("player", player).put("club", club).put("category", category.word()).put("number", number)
            .put("hand", hand.word().toLowerCase(Locale.ROOT)).put("group", group).put("group_rule", rule);
    }

    private static String number(double value) {
        return Cells.number(value, 2);
    }
}
