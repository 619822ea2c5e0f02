package benchtwin.bench;

import benchtwin.club.Quantity;
import benchtwin.club.QuantityText;
import benchtwin.club.Wanted;
import benchtwin.match.Pick;
import benchtwin.match.ShaftAnswer;
import benchtwin.measure.LengthText;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/** How a choice of shafts is spoken of, on a terminal and on a page alike. */
public final class ShaftsWords {

    private static final String NO_BREAK = "\u00a0";

    private ShaftsWords() {
    }

    /**
     * What is chosen for.
     * @param answer the answer
     * @return a line
     */
    public static String title(ShaftAnswer answer) {
        return "Shafts for head %s (%s%s), %s".formatted(answer.request().head().tag(), answer.request().head().category().word(),
            answer.request().head().number().map(n -> " " + n).orElse(""), answer.reference().isPresent()
                ? "as stiff there as " + answer.request().club().shaft().orElseThrow().tag() + " is in " + answer.request().club().name()
                : "for a target written out");
    }

    /**
     * What is wanted, and how the frequency is read.
     * @param answer the answer
     * @return a sentence
     */
    public static String wanted(ShaftAnswer answer) {
        String over = answer.readOverGrip() ? "over the grip" : "on the bare butt";
        String clamped = (LengthText.inchesAndSixteenths(answer.clampMm()) + " in in the clamp).").replace(" ", NO_BREAK);
        return "Wanted: " + answer.target().wanted().entrySet().stream()
            .map(e -> QuantityText.name(e.getKey()) + " " + QuantityText.value(e.getKey(), e.getValue().value()))
            .collect(Collectors.joining(", ")) + " (frequency %s, %s".formatted(over, clamped);
    }

    /**
     * How the old shaft's frequency moves into the new build.
     * @param answer the answer
     * @return a sentence; empty where nothing was carried
     */
    public static Optional<String> carried(ShaftAnswer answer) {
        Wanted old = answer.request().club().target().of(Quantity.FREQUENCY).orElse(null);
        if (answer.reference().isEmpty() || old == null || answer.request().written().containsKey(Quantity.FREQUENCY)) {
            return Optional.empty();
        }
        String moved = QuantityText.difference(Quantity.FREQUENCY,
            answer.target().of(Quantity.FREQUENCY).orElseThrow().value() - old.value());
        return Optional.of("That is what the old shaft would measure in this build: it reads %s in %s%s.".formatted(
            QuantityText.value(Quantity.FREQUENCY, old.value()), answer.request().club().name(),
            moved.equals("0") ? ", and here the same" : ", and head, insertion, grip and length move it by " + moved));
    }

    /**
     * What is done to the head.
     * @param answer the answer
     * @return a sentence
     */
    public static String headWork(ShaftAnswer answer) {
        return answer.headWork().isEmpty() ? "The head is taken as it is."
            : "On the head, for every one of them: " + String.join(" ", answer.headWork());
    }

    /**
     * How many were considered, and how many were ruled out and why.
     * @param answer the answer
     * @return sentences
     */
    public static String considered(ShaftAnswer answer) {
        return "Considered %s, every tip trim of each.%s".formatted(
            answer.considered() == 1 ? "1 shaft" : answer.considered() + " shafts", OptionWords.ruledOut(answer.ruledOut()));
    }

    /**
     * Whether rungs are picked.
     * @param answer the answer
     * @return true for a ladder
     */
    public static boolean isLadder(ShaftAnswer answer) {
        return answer.request().picking().pick() == Pick.LADDER;
    }

    /**
     * A rung.
     * @param cpm from the target
     * @return with its sign, a decimal only where there is one
     */
    public static String rung(double cpm) {
        String text = String.format(Locale.ROOT, cpm == Math.rint(cpm) ? "%.0f" : "%.1f", Math.abs(cpm));
        return cpm == 0 ? "0" : (cpm < 0 ? "−" : "+") + text;
    }
}
