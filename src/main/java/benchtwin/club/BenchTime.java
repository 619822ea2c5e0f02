package benchtwin.club;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.format.DateTimeFormatter;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;

/**
 * When something happened, by the clock at the bench. In order, a day without a time comes before the times of that day.
 * @param day  the day, from year 1 to 9999
 * @param time the time on it, where somebody wrote it down
 */
public record BenchTime(LocalDate day, Optional<LocalTime> time) implements Comparable<BenchTime> {

    private static final int LAST_YEAR = 9999;
    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);
    private static final Comparator<BenchTime> ORDER = Comparator.comparing(BenchTime::day)
        .thenComparing(BenchTime::hasTime).thenComparing(BenchTime::start);

    public BenchTime {
        if (day.getYear() < 1 || day.getYear() > LAST_YEAR) {
            throw new IllegalArgumentException("the year of %s is not from 1 to %d".formatted(day, LAST_YEAR));
        }
    }

    /**
     * A day of which the time is not known.
     * @param day the day
     * @return then
     */
    public static BenchTime on(LocalDate day) {
        return new BenchTime(day, Optional.empty());
    }

    /**
     * A day and a time.
     * @param when by the clock at the bench
     * @return then
     */
    public static BenchTime at(LocalDateTime when) {
        return new BenchTime(when.toLocalDate(), Optional.of(when.toLocalTime()));
    }

    /**
     * Whether more than the day is known.
     * @return false for a day alone
     */
    public boolean hasTime() {
        return time.isPresent();
    }

    /**
     * The first it can have been.
     * @return the time itself, or the start of the day
     */
    public LocalDateTime start() {
        return day.atTime(time.orElse(LocalTime.MIDNIGHT));
    }

    /**
     * The time as a clock shows it.
     * @return {@code 09:15}, or nothing where only the day is known
     */
    public String clock() {
        return time.map(CLOCK::format).orElse("");
    }

    /**
     * Day and time as pages write them.
     * @return {@code 2026-05-03 09:15}, or {@code 2026-05-03}
     */
    public String text() {
        return hasTime() ? day + " " + clock() : day.toString();
    }

    @Override
    public int compareTo(BenchTime other) {
        return ORDER.compare(this, other);
    }
}
