package benchtwin.picture;

import java.time.DayOfWeek;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.time.temporal.TemporalAdjusters;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * How far apart the ticks of an axis of time are: at full minutes, at hours from midnight, at days, on Mondays, at firsts of
 * a month, at years.
 * @param unit  what is counted
 * @param count how many of them from one tick to the next
 */
record TimeStep(ChronoUnit unit, int count) {

    private static final List<TimeStep> FINEST_FIRST = Stream.of(of(ChronoUnit.MINUTES, 15, 30), of(ChronoUnit.HOURS, 1, 2, 3, 6, 12),
        of(ChronoUnit.DAYS, 1, 2), of(ChronoUnit.WEEKS, 1), of(ChronoUnit.MONTHS, 1, 2, 3, 6),
        of(ChronoUnit.YEARS, 1, 2, 5, 10, 20, 50, 100, 200, 500, 1000, 2000, 5000)).flatMap(steps -> steps).toList();

    private static Stream<TimeStep> of(ChronoUnit unit, int... counts) {
        return IntStream.of(counts).mapToObj(count -> new TimeStep(unit, count));
    }

    static List<TimeStep> finestFirst() {
        return FINEST_FIRST;
    }

    /** Whether it is of whole days, so that it asks for no clock. */
    boolean isOfDays() {
        return unit.isDateBased();
    }

    /** About how long it is, s. */
    long seconds() {
        return count * unit.getDuration().getSeconds();
    }

    /** The last tick at or before a time. */
    LocalDateTime atOrBefore(LocalDateTime time) {
        LocalDateTime day = time.truncatedTo(ChronoUnit.DAYS);
        return switch (unit) {
            case MINUTES -> time.truncatedTo(ChronoUnit.HOURS).plusMinutes(time.getMinute() / count * count);
            case HOURS -> day.plusHours(time.getHour() / count * count);
            case DAYS -> day.minusDays(Math.floorMod(day.toLocalDate().toEpochDay(), count));
            case WEEKS -> day.with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY));
            case MONTHS -> day.withDayOfMonth(1).minusMonths((time.getMonthValue() - 1) % count);
            default -> day.withDayOfYear(1).withYear(Math.floorDiv(time.getYear(), count) * count);
        };
    }

    LocalDateTime next(LocalDateTime tick) {
        return unit == ChronoUnit.YEARS ? tick.withYear((Math.floorDiv(tick.getYear(), count) + 1) * count) : tick.plus(count, unit);
    }

    /** What stands at the tick. */
    String label(LocalDateTime tick) {
        return switch (unit) {
            case MINUTES, HOURS -> written("HH:mm", tick);
            case DAYS -> written(count == 1 ? "EEE d" : "d", tick);
            case WEEKS -> written("d", tick);
            case MONTHS -> written("MMM", tick);
            default -> Integer.toString(tick.getYear());
        };
    }

    /** What stands beneath the first tick of a day, a month or a year; long forms first; none under years. */
    List<String> within(LocalDateTime tick) {
        return switch (unit) {
            case MINUTES, HOURS -> List.of(written("EEE d MMM uuuu", tick), written("EEE d MMM", tick), written("d MMM", tick));
            case DAYS, WEEKS -> List.of(written("MMMM uuuu", tick), written("MMM uuuu", tick), written("MMM", tick));
            case MONTHS -> List.of(written("uuuu", tick));
            default -> List.of();
        };
    }

    private static String written(String pattern, LocalDateTime tick) {
        return DateTimeFormatter.ofPattern(pattern, Locale.ENGLISH).format(tick);
    }
}
