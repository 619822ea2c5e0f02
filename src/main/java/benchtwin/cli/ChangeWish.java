package benchtwin.cli;

import benchtwin.bench.BadInput;
import benchtwin.bench.ChangeService.Amount;
import benchtwin.club.Quantity;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Reads what a change asks for: {@code loft=+0.5 lie=58 length=-1/4 grip=G-12}. A value with a sign is a change, one
 * without is where to end; {@code to:} before a signed one makes it where to end, as in {@code face=to:-0.5}.
 */
final class ChangeWish {

    private static final String TO = "to:";

    private final Map<Quantity, Amount> amounts = new EnumMap<>(Quantity.class);
    private Optional<String> gripTag = Optional.empty();
    private Optional<Amount> gripMass = Optional.empty();

    private ChangeWish() {
    }

    static ChangeWish read(List<String> texts) throws BadInput {
        ChangeWish wish = new ChangeWish();
        for (String typed : texts) {
            // the minus this program prints is not the one on the keyboard; somebody will copy it
            String text = typed.replace('\u2212', '-');
            String[] pair = text.split("=", 2);
            if (pair.length != 2 || pair[1].isBlank()) {
                throw new BadInput("\"%s\" is not of the form quantity=value, such as loft=+0.5, lie=58 or grip=G-12"
                    .formatted(text));
            }
            if (pair[0].strip().toLowerCase(Locale.ROOT).equals("grip")) {
                wish.grip(text, pair[1].strip());
            } else {
                wish.amount(text, pair[0].strip(), pair[1].strip());
            }
        }
        return wish;
    }

    Map<Quantity, Amount> amounts() {
        return amounts;
    }

    Optional<String> gripTag() {
        return gripTag;
    }

    Optional<Amount> gripMass() {
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
                number, Figures.name(quantity), QuantityList.expected(quantity, true, true)));
        }
        if (amounts.put(quantity, new Amount(parsed.getAsDouble(), relative)) != null) {
            throw new BadInput("%s is asked for twice".formatted(Figures.name(quantity)));
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
