package benchtwin.samples;

import benchtwin.club.Hand;
import benchtwin.samples.CsvTable.Row;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * What the players of an event want built: thirteen clubs each, in one of four mixes of woods, hybrids and irons. Tastes run
 * together, so that players want the same parts: most irons are of one school of loft, most frequencies on two lines. Every
 * eighth player is left-handed. Frequencies: common practice, no source; on the bare butt.
 */
final class EventWishes {

    private static final List<String> PLAYERS = List.of("J. Quillby", "L. Wexcombe", "A. Penhollow", "D. Marrowick",
        "E. Ashcutter", "T. Tolver", "K. Larkfield", "M. Sandrow", "B. Thistlecombe", "C. Oxenlade", "F. Harnwold",
        "G. Pellowby", "H. Cresswick", "I. Marshlow", "N. Feltwick", "O. Undermere");
    private static final int EVERY_WHICH_LEFT = 8;
    private static final List<String> DAYS = List.of("2026-05-21", "2026-05-22", "2026-05-23");

    /** How stiff a player has the clubs: the name of the iron line, and about where the others are wanted, cpm. */
    private record Flex(String line, double driver, double fairway, double hybrid, double wedge) {
    }

    private static final Flex LIGHT = new Flex("light irons", 240, 256, 273, 314);
    private static final Flex MEDIUM = new Flex("medium irons", 248, 260, 277, 320);
    private static final Flex FIRM = new Flex("firm irons", 254, 264, 281, 324);
    private static final Flex STRONG = new Flex("strong irons", 263, 270, 287, 330);
    private static final List<Flex> FLEXES = List.of(LIGHT, MEDIUM, MEDIUM, FIRM, FIRM, FIRM, STRONG);

    private final List<Row> clubs = new ArrayList<>();

    EventWishes(Draw draw, int players) {
        for (int player = 0; player < players; player++) {
            clubs.addAll(set(draw.of("player " + player), PLAYERS.get(player),
                player % EVERY_WHICH_LEFT == 1 ? Hand.LEFT : Hand.RIGHT));
        }
    }

    List<Row> clubs() {
        return List.copyOf(clubs);
    }

    /** The lines they refer to. */
    List<Row> lines() {
        return Stream.of(SetWishes.line("light irons", "frequency", "298", "8", "inch"),
            SetWishes.line("medium irons", "frequency", "304", "8.5", "inch"),
            SetWishes.line("firm irons", "frequency", "310", "9", "inch"),
            SetWishes.line("strong irons", "frequency", "318", "9", "inch"),
            SetWishes.line("irons D1.5", "swing-weight", "D1.5", "0", "club"),
            SetWishes.line("irons D2", "swing-weight", "D2", "0", "club"),
            SetWishes.line("irons D3", "swing-weight", "D3", "0", "club")).filter(line -> clubs.stream().anyMatch(club ->
                List.of(club.get("frequency_line"), club.get("swing_line")).contains(line.get("line")))).toList();
    }

    private static List<Row> set(Draw own, String player, Hand hand) {
        Flex flex = own.pick(FLEXES);
        double longerIn = own.pick(List.of(-0.25, 0.0, 0.0, 0.25));
        double uprightDeg = own.read(0, 0.4, 0.8, 1);
        SetWishes set = new SetWishes(player, hand, 1 + own.random().nextInt(5), own.pick(DAYS), flex.line(),
            own.pick(List.of("irons D1.5", "irons D2", "irons D2", "irons D3")), longerIn, uprightDeg);
        int mix = own.random().nextInt(4);
        set.driver(round(own.between(8.7, 10.7)), round(own.between(57.2, 58.8)), round(own.between(-0.8, 0.4)),
            45 + longerIn, cpm(own, flex.driver()));
        set.fairway("3", round(own.between(14.8, 15.4)), round(own.between(57, 57.8)), round(own.between(-0.5, 0.2)),
            43 + longerIn, cpm(own, flex.fairway()));
        if (mix >= 2) {
            set.fairway("5", round(own.between(18, 18.6)), round(own.between(57.6, 58.2)), round(own.between(-0.4, 0.3)),
                42.25 + longerIn, cpm(own, flex.fairway() + 4));
        }
        if (mix <= 1) {
            hybrid(set, own, flex, "3", 19, 40.25 + longerIn, 0);
        }
        if (mix == 1 || mix == 2) {
            hybrid(set, own, flex, "4", 22, 39.75 + longerIn, 3);
        }
        HeadLine irons = hand == Hand.LEFT ? own.pick(EventHeads.LEFT_IRONS)
            : EventHeads.IRONS.get((int) (EventHeads.IRONS.size() * own.between(0, 1) * own.between(0.4, 1)));
        set.irons(irons, mix == 1 || mix == 2 ? "5" : "4", "PW", round(own.between(-0.4, 0.4)), "");
        HeadLine soles = own.chance(0.6) ? HeadLines.SICKLE : EventHeads.DIBBER;
        return set.wedges(loft -> Cells.number(soles.size(loft).bounceDeg(), 1), cpm(own, flex.wedge()),
            round(own.between(-0.4, 0.4)), soles == EventHeads.DIBBER ? new String[] {"52", "56", "60"}
                : new String[] {"50", "54", "58"}).rows();
    }

    /** Every second one wanted as an iron is read, the others as a wood is. */
    private static void hybrid(SetWishes set, Draw own, Flex flex, String number, double loftDeg, double lengthIn,
                               double stifferCpm) {
        double loft = round(own.between(loftDeg - 0.3, loftDeg + 0.4));
        double lie = round(own.between(58.2, 59.2));
        double cpm = cpm(own, flex.hybrid() + stifferCpm);
        if (own.chance(0.5)) {
            set.hybrid(number, loft, lie, lengthIn, cpm);
        } else {
            set.hybrid(number, "", loft, lie, round(own.between(-0.4, 0.2)), lengthIn, cpm);
        }
    }

    private static double cpm(Draw own, double about) {
        return own.read(about, 1.5, 3, 0);
    }

    private static double round(double value) {
        return Draw.round(value, 1);
    }

    /** How many clubs are wished for of a category, number, hand and reading, as the file writes them. */
    int count(String category, String number, String hand, String reading) {
        return (int) clubs.stream().filter(row -> row.get("category").equals(category) && row.get("number").equals(number)
            && row.get("hand").equals(hand) && row.get("reading").equals(reading)).count();
    }
}
