package benchtwin.bench;

import benchtwin.bench.ChangeService.Amount;
import benchtwin.club.Quantity;
import benchtwin.club.QuantityText;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads what a change asks for: {@code loft=+0.5 lie=58 length=-1/4 grip=G-12}. A value with a sign is a change, one
 * without is where to end; {@code to:} before a signed one makes it where to end, as in {@code face=to:-0.5}. In one line it is
 * typed as one speaks: {@code loft +0.5, swing weight D2}.
 */
public final class ChangeWish {

    private static final String TO = "to:";
    private static final String GRIP = "grip";
    /** A quantity and its value without a blank between them. */
    private static final Pattern JOINED = Pattern.compile("([\\p{L} _-]*\\p{L})(?=[+-]?[.\\d])");

    private final Map<Quantity, Amount> amounts = new EnumMap<>(Quantity.class);
    private Optional<String> gripTag = Optional.empty();
    private Optional<Amount> gripMass = Optional.empty();

    private ChangeWish() {
    }

    /**
     * Reads a line as it is typed into one field.
     * @param line wishes with a comma or semicolon between them, each a quantity and a value, with {@code =} or without
     * @return what it asks for
     * @throws BadInput when it cannot be read
     */
    public static ChangeWish typed(String line) throws BadInput {
        List<String> pairs = new ArrayList<>();
        // a comma in front of a digit is a decimal comma: the next wish begins with a word
        for (String piece : line.replaceAll("(\\d)\\s*,(?=\\d)", "$1.").split("[,;]|\\s+and\\s+")) {
            if (!piece.isBlank()) {
                pairs.add(pair(piece.strip()));
            }
        }
        if (pairs.isEmpty()) {
            throw new BadInput("nothing is asked for yet: type a quantity and a value, such as loft +0.5, or lie 58, or grip G-012");
        }
        return read(pairs);
    }

    /** {@code swing weight D2} as {@code swing weight=D2}; what has an equals sign already stays. */
    private static String pair(String piece) {
        if (piece.contains("=")) {
            return piece;
        }
        String spaced = piece.replace('\u2212', '-');
        Matcher joined = JOINED.matcher(spaced);
        if (joined.lookingAt() && isAskable(joined.group(1))) {
            spaced = joined.group(1) + " " + spaced.substring(joined.end());
        }
        for (int end = spaced.length(); end > 0; end = spaced.lastIndexOf(' ', end - 1)) {
            String words = spaced.substring(0, end).strip();
            if (isAskable(words)) {
                String value = spaced.substring(end).strip().replaceFirst("^(?i:to)\\s*:?\\s*", TO);
                return words + "=" + value.replaceFirst("\\s*(°|deg|cpm|pt|g)$", "");
            }
        }
        return piece;
    }

    private static boolean isAskable(String words) {
        return words.equalsIgnoreCase(GRIP) || QuantityList.OF_CHANGES.knows(words);
    }

    /**
     * Reads wishes.
     * @param texts each of the form {@code quantity=value}
     * @return what they ask for
     * @throws BadInput when one cannot be read
     */
    public static ChangeWish read(List<String> texts) throws BadInput {
        ChangeWish wish = new ChangeWish();
        for (String typed : texts) {
            // the minus this program prints is not the one on the keyboard; somebody will copy it
            String text = typed.replace('\u2212', '-');
            String[] pair = text.split("=", 2);
            if (pair.length != 2 || pair[1].isBlank()) {
                throw new BadInput("\"%s\" is not of the form quantity=value, such as loft=+0.5, lie=58 or grip=G-12"
                    .formatted(text));
            }
            if (pair[0].strip().toLowerCase(Locale.ROOT).equals(GRIP)) {
                wish.grip(text, pair[1].strip());
            } else {
                wish.amount(text, pair[0].strip(), pair[1].strip());
            }
        }
        return wish;
    }

    /**
     * Amounts asked for.
     * @return by quantity
     */
    public Map<Quantity, Amount> amounts() {
        return amounts;
    }

    /**
     * Another grip, by tag.
     * @return empty when none is asked for by tag
     */
    public Optional<String> gripTag() {
        return gripTag;
    }

    /**
     * Another grip, by mass in g.
     * @return empty when none is asked for by mass
     */
    public Optional<Amount> gripMass() {
        return gripMass;
    }

    private void amount(String text, String word, String value) throws BadInput {
        Quantity quantity = QuantityList.OF_CHANGES.quantity(text, word);
        boolean to = value.toLowerCase(Locale.ROOT).startsWith(TO);
        String number = to ? value.substring(TO.length()).strip() : value;
        boolean relative = !to && isSigned(number);
        OptionalDouble parsed = QuantityList.value(quantity, number, true, !relative);
        if (parsed.isEmpty() || !Double.isFinite(parsed.getAsDouble())) {
            throw new BadInput("%s: \"%s\" is not a value for %s; expected %s, with a sign for a change".formatted(text,
                number, QuantityText.name(quantity), QuantityList.expected(quantity, true, true)));
        }
        if (amounts.put(quantity, new Amount(parsed.getAsDouble(), relative)) != null) {
            throw new BadInput("%s is asked for twice".formatted(QuantityText.name(quantity)));
        }
    }

    private void grip(String text, String value) throws BadInput {
        if (gripTag.isPresent() || gripMass.isPresent()) {
            throw new BadInput("the grip is asked for twice");
        }
        String number = value.replaceFirst("\\s*g$", "");
        try {
            double grams = Double.parseDouble(number);
            if (!Double.isFinite(grams)) {
                throw new BadInput("%s: expected a grip's tag, or its mass in g such as 52 or +5".formatted(text));
            }
            gripMass = Optional.of(new Amount(grams, isSigned(number)));
        } catch (NumberFormatException aTag) {
            gripTag = Optional.of(value);
        }
    }

    private static boolean isSigned(String number) {
        return number.startsWith("+") || number.startsWith("-");
    }
}
