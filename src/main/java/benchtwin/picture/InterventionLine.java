package benchtwin.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * The line above the strips with what was done: a tick for each thing at its time, with its words on a pole above it. The
 * words start right of their pole, above those of every later thing whose pole they span; where that makes a high stair, the
 * first so many hang to the left instead, above the earlier ones they span. Either way no words touch others or a pole,
 * whatever their number. Where they would take too much of the page, the ticks have numbers instead, and the words a list.
 */
final class InterventionLine {

    private static final double EARLY_PX = 250;
    private static final double LATE_PX = 340;
    private static final double START_X = Look.MARGIN_PX;
    /** To the right of the axis there is room for words of the last things done. */
    private static final double END_X = Look.WIDTH_PX - Look.MARGIN_PX;
    private static final double FROM_POLE_PX = 8;
    private static final double BETWEEN_PX = 8;
    private static final double ASIDE_PX = 14;
    private static final double LOWEST_PX = 14;
    private static final double MOST_PX = 250;
    /** Lower than this, all words hang to the right. */
    private static final double CALM_PX = 130;
    /** More than these never fit. */
    private static final int MOST_FLAGS = 24;
    private static final double TICK_PX = 8;
    private static final double TOUCHING_PX = 5;
    private static final double NUMBERS_PX = 30;

    private final TimeScale time;
    private final List<Tick> ticks = new ArrayList<>();
    private final List<Flag> flags;
    private final List<RowOfWords<Tick>> numbers;
    private final double lineY;

    /** One thing done and where it stands. */
    private record Tick(int number, Intervention what, double x) {
    }

    /** Words, with where they start and how high they stand above the line. */
    private record Flag(Tick tick, TextBlock words, double leftX, double abovePx) {

        double topPx() {
            return abovePx + words.heightPx();
        }
    }

    /**
     * Lays it out.
     * @param all   oldest first, at least one
     * @param time  the axis
     * @param dates how dates are written
     * @param topPx where it starts
     */
    InterventionLine(List<Intervention> all, TimeScale time, HistoryDates dates, double topPx) {
        this.time = time;
        for (Intervention what : all) {
            ticks.add(new Tick(ticks.size() + 1, what, time.px(what.when())));
        }
        List<Flag> tried = flags(dates);
        double highest = highest(tried);
        flags = highest > MOST_PX ? List.of() : tried;
        numbers = flags.isEmpty() ? numbers() : List.of();
        lineY = topPx + (flags.isEmpty() ? NUMBERS_PX : highest + BETWEEN_PX);
    }

    /** All to the right where that is low enough, else the lowest there is. */
    private List<Flag> flags(HistoryDates dates) {
        List<Flag> lowest = lowest(dates, 0);
        if (highest(lowest) <= CALM_PX || ticks.size() > MOST_FLAGS) {
            return lowest;
        }
        for (int toTheLeft = 1; toTheLeft <= ticks.size(); toTheLeft++) {
            List<Flag> tried = lowest(dates, toTheLeft);
            if (highest(tried) < highest(lowest) - 1) {
                lowest = tried;
            }
        }
        return lowest;
    }

    /** With the words broken early, or late, whichever is lower. */
    private List<Flag> lowest(HistoryDates dates, int toTheLeft) {
        List<Flag> early = flags(dates, toTheLeft, EARLY_PX);
        List<Flag> late = flags(dates, toTheLeft, LATE_PX);
        return highest(late) < highest(early) ? late : early;
    }

    private static double highest(List<Flag> flags) {
        return flags.stream().mapToDouble(Flag::topPx).max().orElseThrow();
    }

    private List<Flag> flags(HistoryDates dates, int toTheLeft, double widthPx) {
        List<Flag> left = new ArrayList<>();
        for (Tick tick : ticks.subList(0, toTheLeft)) {
            double endX = tick.x() - FROM_POLE_PX;
            TextBlock words = words(tick, dates, Math.min(widthPx, endX - START_X));
            double fromX = endX - words.widthPx();
            left.add(new Flag(tick, words, fromX, above(left.stream().filter(earlier -> earlier.tick().x() > fromX - ASIDE_PX))));
        }
        List<Flag> right = new ArrayList<>();
        for (int i = ticks.size() - 1; i >= toTheLeft; i--) {
            Tick tick = ticks.get(i);
            double fromX = tick.x() + FROM_POLE_PX;
            TextBlock words = words(tick, dates, Math.min(widthPx, END_X - fromX));
            double endX = fromX + words.widthPx() + ASIDE_PX;
            right.add(0, new Flag(tick, words, fromX, above(right.stream().filter(later -> later.tick().x() < endX))));
        }
        left.addAll(right);
        return left;
    }

    private static TextBlock words(Tick tick, HistoryDates dates, double atMostPx) {
        return TextBlock.of(dates.brief(tick.what().when()) + ": " + tick.what().words(), Look.TEXT, atMostPx);
    }

    private static double above(Stream<Flag> spanned) {
        return spanned.mapToDouble(flag -> flag.topPx() + BETWEEN_PX).max().orElse(LOWEST_PX);
    }

    /** A number above each tick, ticks that touch taken together; one that has no room is left to be counted. */
    private List<RowOfWords<Tick>> numbers() {
        List<RowOfWords<Tick>> row = new ArrayList<>();
        for (int from = 0; from < ticks.size(); ) {
            int to = from + 1;
            while (to < ticks.size() && ticks.get(to).x() - ticks.get(from).x() < TOUCHING_PX) {
                to++;
            }
            RowOfWords<Tick> next = RowOfWords.about(ticks.subList(from, to), Tick::x, InterventionLine::numbers, START_X, END_X);
            if (row.isEmpty() || !row.get(row.size() - 1).touches(next)) {
                row.add(next);
            }
            from = to;
        }
        return row;
    }

    private static String numbers(List<Tick> together) {
        int first = together.get(0).number();
        int last = together.get(together.size() - 1).number();
        return first == last ? Integer.toString(first) : first + "–" + last;
    }

    /** Where the line is. */
    double lineY() {
        return lineY;
    }

    /** Whether the words stand in a list, by number. */
    boolean isNumbered() {
        return flags.isEmpty();
    }

    void drawWords(Sheet sheet) {
        sheet.part("done-line", g -> Marks.line(g, Look.INK, Look.RULE, time.fromX(), lineY, time.toX(), lineY));
        TextBlock name = TextBlock.line("what was done", Look.STRONG);
        sheet.part("quantity", g -> name.draw(g, Look.INK, Look.MARGIN_PX, lineY - 8));
        for (Flag flag : flags) {
            double x = flag.tick().x();
            sheet.part("pole", g -> Marks.line(g, Look.QUIET, Look.RULE, x, lineY - flag.topPx() + 2, x, lineY));
            sheet.part("done", g -> flag.words().draw(g, Look.INK, flag.leftX(), lineY - flag.topPx()));
        }
        numbers.forEach(words -> words.draw(sheet, "done-number", lineY - NUMBERS_PX));
    }

    /** The ticks, and, as long as they are few, from each a line down through the strips. */
    void drawTicks(Sheet sheet, double bottomY) {
        for (Tick tick : ticks) {
            if (ticks.size() <= MOST_FLAGS) {
                sheet.part("done-through", g -> Marks.line(g, Look.QUIET, Look.DASHED, tick.x(), lineY, tick.x(), bottomY));
            }
            sheet.part("done-tick", g -> {
                Marks.line(g, Look.INK, Look.MOVE, tick.x(), lineY, tick.x(), lineY + TICK_PX);
                Marks.line(g, Look.INK, Look.MOVE, tick.x(), bottomY - TICK_PX, tick.x(), bottomY);
            });
        }
    }
}
