package benchtwin.bench;

import benchtwin.club.ResinTable;
import benchtwin.measure.TemperatureText;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.format.DateTimeParseException;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What a ticket is worked out with.
 * @param resin        the cure times of the resin that is used
 * @param temperatureC the temperature at the bench, °C
 * @param start        when the work begins, by the clock at the bench; empty for now
 */
public record TicketWish(Optional<ResinTable> resin, OptionalDouble temperatureC, Optional<LocalDateTime> start) {

    private static final double COLDEST_C = -20;
    private static final double WARMEST_C = 150;
    private static final int WITHOUT_FIRST_ZERO = "2026-05-20T9:00".length();

    /**
     * A temperature as it was typed.
     * @param typed  {@code 18C} or {@code 64F}
     * @param called what messages call the place where it was typed
     * @return °C
     * @throws BadInput when it is none
     */
    public static double celsius(String typed, String called) throws BadInput {
        OptionalDouble read = TemperatureText.celsius(typed);
        if (read.isEmpty() || !(read.getAsDouble() >= COLDEST_C && read.getAsDouble() <= WARMEST_C)) {
            throw new BadInput("%s \"%s\": expected a temperature from -20 to 150 °C, such as 18C or 64F".formatted(called, typed));
        }
        return read.getAsDouble();
    }

    /**
     * A start as it was typed.
     * @param typed  {@code 2026-05-20 09:00}, or {@code 09:00} for today
     * @param today  the day it is
     * @param called what messages call the place where it was typed
     * @return the moment by the clock at the bench
     * @throws BadInput when it is none
     */
    public static LocalDateTime start(String typed, LocalDate today, String called) throws BadInput {
        String text = typed.strip().replaceFirst("\\s+", "T");
        try {
            return text.contains("-") ? LocalDateTime.parse(text.length() == WITHOUT_FIRST_ZERO ? text.replace("T", "T0") : text)
                : today.atTime(LocalTime.parse(text.length() == "9:00".length() ? "0" + text : text));
        } catch (DateTimeParseException neither) {
            throw new BadInput("%s \"%s\": expected a day and an hour, 2026-05-20 09:00, or 09:00 for today".formatted(called, typed));
        }
    }
}
