package benchtwin.picture;

import benchtwin.club.BenchTime;
import java.awt.Graphics2D;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/** An axis of time: where a moment stands, with ticks at round times. Two lines: the tick's own, and what it lies within. */
final class TimeScale {

    /** Room left at each end, as a part of the span. */
    private static final double ROOM = 0.035;
    private static final long LEAST_SPAN_S = 4L * 3600;
    private static final long LEAST_SPAN_OF_DAYS_S = 4L * 86_400;
    private static final double BETWEEN_PX = 16;
    private static final double TICK_PX = 6;
    private static final int MOST_TICKS = 60;

    private final double fromX;
    private final double toX;
    private final double fromS;
    private final double toS;
    private final TimeStep step;
    private final List<LocalDateTime> ticks;
    private final List<Within> within;

    /** Words beneath the tick they are centred on. */
    private record Within(double x, String words) {

        /** Centred on a tick, but not to the left of the axis. */
        static Within of(double tickX, String words, double fromX) {
            return new Within(Math.max(tickX, fromX + TextBlock.widthPx(words, Look.TEXT) / 2), words);
        }

        double leftX() {
            return x - TextBlock.widthPx(words, Look.TEXT) / 2;
        }

        double rightX() {
            return x + TextBlock.widthPx(words, Look.TEXT) / 2;
        }
    }

    /**
     * A scale that shows everything.
     * @param times at least one, oldest first
     * @param fromX where it starts, px
     * @param toX   where it ends, px
     */
    TimeScale(List<BenchTime> times, double fromX, double toX) {
        this.fromX = fromX;
        this.toX = toX;
        double first = seconds(times.get(0).start());
        double last = seconds(times.get(times.size() - 1).start());
        long least = times.stream().allMatch(BenchTime::hasTime) ? LEAST_SPAN_S : LEAST_SPAN_OF_DAYS_S;
        double missing = Math.max(0, least - (last - first)) / 2;
        double room = (last - first + 2 * missing) * ROOM;
        fromS = first - missing - room;
        toS = last + missing + room;
        boolean clock = times.stream().anyMatch(BenchTime::hasTime);
        step = TimeStep.finestFirst().stream().filter(by -> clock || by.isOfDays()).filter(this::hasRoom).findFirst()
            .orElse(TimeStep.finestFirst().get(TimeStep.finestFirst().size() - 1));
        ticks = ticks(step);
        within = within();
    }

    private static double seconds(LocalDateTime time) {
        return time.toEpochSecond(ZoneOffset.UTC);
    }

    private List<LocalDateTime> ticks(TimeStep by) {
        List<LocalDateTime> found = new ArrayList<>();
        LocalDateTime tick = by.atOrBefore(LocalDateTime.ofEpochSecond((long) Math.ceil(fromS), 0, ZoneOffset.UTC));
        while (seconds(tick) <= toS) {
            if (seconds(tick) >= fromS && tick.getYear() >= 1) {
                found.add(tick);
            }
            tick = by.next(tick);
        }
        return found;
    }

    private boolean hasRoom(TimeStep by) {
        if ((toS - fromS) / by.seconds() > MOST_TICKS) {
            return false;
        }
        List<LocalDateTime> all = ticks(by);
        return IntStream.range(1, all.size()).allMatch(i -> px(all.get(i)) - px(all.get(i - 1))
            >= (width(by, all.get(i)) + width(by, all.get(i - 1))) / 2 + BETWEEN_PX);
    }

    private static double width(TimeStep by, LocalDateTime tick) {
        return TextBlock.widthPx(by.label(tick), Look.TEXT);
    }

    /** In the longest form in which all have room; the first, which may stand in the middle of its day, gives way. */
    private List<Within> within() {
        List<Within> fitting = List.of();
        int forms = ticks.isEmpty() ? 0 : step.within(ticks.get(0)).size();
        for (int form = 0; form < forms; form++) {
            List<Within> all = new ArrayList<>();
            String before = "";
            for (LocalDateTime tick : ticks) {
                String key = step.within(tick).get(0);
                if (!key.equals(before)) {
                    all.add(Within.of(px(tick), step.within(tick).get(form), fromX));
                    before = key;
                }
            }
            if (all.size() > 1 && touch(all.get(0), all.get(1))) {
                all.remove(0);
            }
            fitting = all;
            if (IntStream.range(1, all.size()).noneMatch(i -> touch(all.get(i - 1), all.get(i)))) {
                break;
            }
        }
        return apart(fitting);
    }

    private static List<Within> apart(List<Within> all) {
        List<Within> kept = new ArrayList<>();
        for (Within one : all) {
            if (kept.isEmpty() || !touch(kept.get(kept.size() - 1), one)) {
                kept.add(one);
            }
        }
        return kept;
    }

    private static boolean touch(Within left, Within right) {
        return left.rightX() + BETWEEN_PX > right.leftX();
    }

    /** Where a moment stands, px; a day alone at its start. */
    double px(BenchTime when) {
        return px(when.start());
    }

    private double px(LocalDateTime time) {
        return fromX + (seconds(time) - fromS) / (toS - fromS) * (toX - fromX);
    }

    double fromX() {
        return fromX;
    }

    double toX() {
        return toX;
    }

    /** Height it takes below its line, px. */
    double heightPx() {
        return TICK_PX + 4 + Look.TEXT.getSize() * 1.3 * (within.isEmpty() ? 1 : 2);
    }

    /** Thin lines down from above, so that a tick far below can be read. */
    void drawGrid(Graphics2D g, double topY, double bottomY) {
        ticks.forEach(tick -> Marks.line(g, Look.BAND, Look.RULE, px(tick), topY, px(tick), bottomY));
    }

    void draw(Sheet sheet, double y) {
        sheet.part("axis", g -> {
            Marks.line(g, Look.INK, Look.RULE, fromX, y, toX, y);
            for (LocalDateTime tick : ticks) {
                Marks.line(g, Look.INK, Look.RULE, px(tick), y, px(tick), y + TICK_PX);
                centred(g, step.label(tick), px(tick), y + TICK_PX + 4);
            }
        });
        if (!within.isEmpty()) {
            sheet.part("axis-within", g -> within.forEach(words ->
                centred(g, words.words(), words.x(), y + TICK_PX + 4 + Look.TEXT.getSize() * 1.3)));
        }
    }

    private static void centred(Graphics2D g, String words, double x, double topY) {
        TextBlock text = TextBlock.line(words, Look.TEXT);
        text.draw(g, Look.INK, x - text.widthPx() / 2, topY);
    }
}
