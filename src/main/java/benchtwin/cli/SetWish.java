package benchtwin.cli;

import benchtwin.bench.BadInput;
import benchtwin.bench.SetService;
import benchtwin.sets.PlanLimits;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads what a plan of sets is asked with: pins, and when to stop. */
final class SetWish {

    private static final Duration USUAL_TIME = Duration.ofSeconds(30);
    private static final double MOST_HOURS = 24;
    private static final int MOST_ROUNDS = 1_000_000;
    private static final double MILLIS_A_SECOND = 1000;
    private static final double MILLIS_A_MINUTE = 60_000;
    private static final Pattern TIME = Pattern.compile("(\\d{1,9}(?:\\.\\d{1,6})?)\\s*(ms|s|m|min)");
    private static final Pattern GAP = Pattern.compile("(\\d{1,3}(?:\\.\\d{1,6})?)\\s*%?");
    /** The equals sign that ends the club's name. */
    private static final Pattern PART_FOLLOWS = Pattern.compile("=\\s*(?=(?:head|shaft)\\s*:)", Pattern.CASE_INSENSITIVE);
    private static final String PIN_EXPECTED = "expected a club and its parts, such as \"7-iron=head:H-012,shaft:S-034\"";

    private SetWish() {
    }

    /**
     * When the search ends. Rounds without a time are not cut short by the clock, so that they come to the same anywhere.
     * @param time   as typed, or null
     * @param gap    as typed, or null
     * @param rounds or null
     * @param seed   any
     * @return the limits
     * @throws BadInput naming the option and what was expected
     */
    static PlanLimits limits(String time, String gap, Integer rounds, long seed) throws BadInput {
        if (rounds != null && (rounds < 0 || rounds > MOST_ROUNDS)) {
            throw new BadInput("--rounds %d: expected 0 to %d".formatted(rounds, MOST_ROUNDS));
        }
        Duration limit = time != null ? time(time) : rounds == null ? USUAL_TIME : Duration.ZERO;
        return new PlanLimits(limit, gap == null ? 0 : gapPercent(gap),
            rounds == null ? OptionalInt.empty() : OptionalInt.of(rounds), seed);
    }

    private static Duration time(String text) throws BadInput {
        Matcher matcher = TIME.matcher(text.strip().toLowerCase(Locale.ROOT));
        if (matcher.matches()) {
            double unit = switch (matcher.group(2)) {
                case "ms" -> 1;
                case "s" -> MILLIS_A_SECOND;
                default -> MILLIS_A_MINUTE;
            };
            long millis = Math.round(Double.parseDouble(matcher.group(1)) * unit);
            if (millis > 0 && millis <= MOST_HOURS * 60 * MILLIS_A_MINUTE) {
                return Duration.ofMillis(millis);
            }
        }
        throw new BadInput("--time \"%s\": expected a time with its unit, such as 30s, 2m or 500ms, at most 24 hours"
            .formatted(text));
    }

    private static double gapPercent(String text) throws BadInput {
        Matcher matcher = GAP.matcher(text.strip());
        if (matcher.matches() && Double.parseDouble(matcher.group(1)) < 100) {
            return Double.parseDouble(matcher.group(1));
        }
        throw new BadInput("--gap \"%s\": expected per cent from 0 to below 100, such as 1%%".formatted(text));
    }

    /**
     * Pins.
     * @param texts such as {@code 7-iron=head:H-012,shaft:S-034} or {@code J. Quillby/7-iron=head:H-012}
     * @return as typed, not looked up
     * @throws BadInput with every text that is not a pin
     */
    static List<SetService.Pin> pins(List<String> texts) throws BadInput {
        List<SetService.Pin> pins = new ArrayList<>();
        List<String> faults = new ArrayList<>();
        for (String text : texts) {
            String[] pair = PART_FOLLOWS.split(text, 2);
            if (pair.length != 2 || pair[0].isBlank()) {
                faults.add("--pin \"%s\": %s".formatted(text, PIN_EXPECTED));
                continue;
            }
            Optional<SetService.Pin> pin = pin(pair[0].strip(), pair[1]);
            pin.ifPresentOrElse(pins::add, () -> faults.add("--pin \"%s\": %s".formatted(text, PIN_EXPECTED)));
        }
        if (!faults.isEmpty()) {
            throw new BadInput(faults);
        }
        return pins;
    }

    private static Optional<SetService.Pin> pin(String club, String parts) {
        Optional<String> head = Optional.empty();
        Optional<String> shaft = Optional.empty();
        for (String part : parts.split(",", -1)) {
            String[] pair = part.split(":", 2);
            String kind = pair[0].strip().toLowerCase(Locale.ROOT);
            if (pair.length != 2 || pair[1].isBlank()) {
                return Optional.empty();
            }
            if (kind.equals("head") && head.isEmpty()) {
                head = Optional.of(pair[1].strip());
            } else if (kind.equals("shaft") && shaft.isEmpty()) {
                shaft = Optional.of(pair[1].strip());
            } else {
                return Optional.empty();
            }
        }
        return Optional.of(new SetService.Pin(club, head, shaft));
    }
}
