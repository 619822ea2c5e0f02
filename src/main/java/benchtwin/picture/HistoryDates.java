package benchtwin.picture;

import benchtwin.club.BenchTime;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.Locale;

/**
 * Dates as short as the span of a history lets them be.
 * @param first the first time of it
 * @param last  the last
 */
record HistoryDates(BenchTime first, BenchTime last) {

    /** Of a history where nothing has a time. */
    static final HistoryDates NONE = new HistoryDates(BenchTime.on(LocalDate.EPOCH), BenchTime.on(LocalDate.EPOCH));

    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMM", Locale.ENGLISH);
    private static final DateTimeFormatter DAY_AND_YEAR = DateTimeFormatter.ofPattern("d MMM uuuu", Locale.ENGLISH);
    /** Longer than a week, nobody asks for the hour. */
    private static final long DAYS_WITH_CLOCK = 8;

    /** The least that tells it from the other times of the history. */
    String brief(BenchTime when) {
        if (first.day().equals(last.day()) && when.hasTime()) {
            return when.clock();
        }
        String day = (first.day().getYear() == last.day().getYear() ? DAY : DAY_AND_YEAR).format(when.day());
        boolean clock = when.hasTime() && ChronoUnit.DAYS.between(first.day(), last.day()) <= DAYS_WITH_CLOCK;
        return clock ? day + " " + when.clock() : day;
    }

    /** From when to when, with the year. */
    String span() {
        if (first.equals(last)) {
            return full(first);
        }
        return "from " + full(first) + " to " + (first.day().equals(last.day()) && last.hasTime() ? last.clock() : full(last));
    }

    private static String full(BenchTime when) {
        return DAY_AND_YEAR.format(when.day()) + (when.hasTime() ? " " + when.clock() : "");
    }
}
