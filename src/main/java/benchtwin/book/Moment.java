package benchtwin.book;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeParseException;
import java.time.temporal.ChronoUnit;

/**
 * When something happened: a day, where nobody wrote down the hour, or an instant. In order, a day comes before the
 * instants of it.
 * @param text {@code 2026-05-03} or {@code 2026-05-03T09:15:00.000Z}
 */
public record Moment(String text) implements Comparable<Moment> {

    private static final DateTimeFormatter INSTANT =
        DateTimeFormatter.ofPattern("uuuu-MM-dd'T'HH:mm:ss.SSS'Z'").withZone(ZoneOffset.UTC);
    private static final int DAY_LENGTH = "2026-05-03".length();

    public Moment {
        try {
            if (text.length() == DAY_LENGTH) {
                LocalDate.parse(text);
            } else if (!text.equals(INSTANT.format(Instant.parse(text)))) {
                throw new IllegalArgumentException("an instant is kept to the thousandth in UTC, not as " + text);
            }
        } catch (DateTimeParseException neither) {
            throw new IllegalArgumentException("neither a day nor an instant: " + text, neither);
        }
    }

    /**
     * A day of which the hour is not known.
     * @param day the day
     * @return the moment
     */
    public static Moment on(LocalDate day) {
        return new Moment(day.toString());
    }

    /**
     * An instant, to the thousandth of a second.
     * @param instant the instant
     * @return the moment
     */
    public static Moment at(Instant instant) {
        return new Moment(INSTANT.format(instant.truncatedTo(ChronoUnit.MILLIS)));
    }

    /**
     * Whether only the day is known.
     * @return false for an instant
     */
    public boolean isDay() {
        return text.length() == DAY_LENGTH;
    }

    /**
     * The day it fell on.
     * @param zone where the workshop is
     * @return the day
     */
    public LocalDate day(ZoneId zone) {
        return isDay() ? LocalDate.parse(text) : LocalDate.ofInstant(Instant.parse(text), zone);
    }

    @Override
    public int compareTo(Moment other) {
        return text.compareTo(other.text);
    }
}
