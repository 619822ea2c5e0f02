package benchtwin.book;

import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
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
    /** How an instant is written: 0 for a digit. */
    private static final String INSTANT_FORM = "0000-00-00T00:00:00.000Z";

    public Moment {
        try {
            if (text.length() == DAY_LENGTH) {
                day(text);
            } else if (!isInstant(text) && !text.equals(INSTANT.format(Instant.parse(text)))) {
                throw new IllegalArgumentException("an instant is kept to the thousandth in UTC, not as " + text);
            }
        } catch (DateTimeException neither) {
            throw new IllegalArgumentException("neither a day nor an instant: " + text, neither);
        }
    }

    /** The day at the beginning of a text, read by hand: books hold hundreds of thousands. */
    private static LocalDate day(String text) {
        for (int i = 0; i < DAY_LENGTH; i++) {
            if (!fits(text, i)) {
                throw new DateTimeException(text);
            }
        }
        return LocalDate.of(number(text, 0, 4), number(text, 5, 7), number(text, 8, 10));
    }

    private static boolean fits(String text, int at) {
        char form = INSTANT_FORM.charAt(at);
        char found = text.charAt(at);
        return form == '0' ? found >= '0' && found <= '9' : found == form;
    }

    private static int number(String text, int from, int to) {
        int number = 0;
        for (int i = from; i < to; i++) {
            number = 10 * number + text.charAt(i) - '0';
        }
        return number;
    }

    /** Whether it is an instant as this writes them; a text that is not may still have a fault worth telling apart. */
    private static boolean isInstant(String text) {
        if (text.length() != INSTANT_FORM.length()) {
            return false;
        }
        for (int i = DAY_LENGTH; i < text.length(); i++) {
            if (!fits(text, i)) {
                return false;
            }
        }
        try {
            day(text);
        } catch (DateTimeException noDay) {
            return false;
        }
        return number(text, 11, 13) < 24 && number(text, 14, 16) < 60 && number(text, 17, 19) < 60;
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
        return isDay() ? day(text) : LocalDate.ofInstant(Instant.parse(text), zone);
    }

    @Override
    public int compareTo(Moment other) {
        return text.compareTo(other.text);
    }
}
