package benchtwin.bench;

import benchtwin.bend.BendAdvice;
import benchtwin.bend.BendDirection;
import benchtwin.bend.Springback;
import benchtwin.bend.Working;
import benchtwin.club.AngleReading;
import benchtwin.club.Quantity;
import benchtwin.club.QuantityText;
import java.util.Arrays;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;

/** What a bend is called, and what to do next, in bench words. */
public final class BendWords {

    private static final double HARDLY_MOVES_DEG = 0.05;
    /** Chances are said in so many heads. */
    private static final int TEN = 10;
    private static final double RARE = 0.005;

    private BendWords() {
    }

    static BendDirection direction(String word) {
        return Arrays.stream(BendDirection.values()).filter(one -> one.word().equals(word)).findFirst().orElseThrow();
    }

    static Working working(String word) {
        return Arrays.stream(Working.values()).filter(one -> one.word().equals(word)).findFirst().orElseThrow();
    }

    static String asked(BendDirection direction, double askedDeg, String reading) {
        return "%s %s".formatted(degrees(askedDeg), direction.benchWord(!reading.equals(AngleReading.EDGE.word())));
    }

    /**
     * An angle or a tilt.
     * @param value degrees
     * @return with two decimals, such as {@code 1.30°}
     */
    public static String degrees(double value) {
        return String.format(Locale.ROOT, "%.2f°", value);
    }

    /**
     * What an ask says.
     * @param ask  the advice
     * @param wood whether the head is read as a wood
     * @return {@code ask for 1.30° upright to get about 0.95°}
     */
    public static String ask(BendAdvice.Ask ask, boolean wood) {
        return "ask for %s %s to get about %s".formatted(degrees(ask.askedDeg()), ask.direction().benchWord(wood),
            degrees(Math.max(0, ask.expectedDeg())));
    }

    /**
     * The same against the last bend in this direction, where the ask is only felt.
     * @param ratio the ask as a part of the last one, above 0
     * @return {@code about half of that again}
     */
    public static String againstTheLast(double ratio) {
        double[] parts = {0.25, 1 / 3.0, 0.5, 2 / 3.0, 0.75, 1, 1.25, 1.5, 2, 3};
        String[] words = {"a quarter of", "a third of", "half of", "two thirds of", "three quarters of", "as much as",
            "a quarter more than", "half more than", "twice", "three times"};
        int nearest = 0;
        for (int k = 1; k < parts.length; k++) {
            if (Math.abs(Math.log(parts[k] / ratio)) < Math.abs(Math.log(parts[nearest] / ratio))) {
                nearest = k;
            }
        }
        return "about %s the last push that way".formatted(words[nearest]);
    }

    /**
     * How sure an ask is.
     * @param ask the advice
     * @return {@code 8 in 10 within tolerance, 1 in 30 past it}
     */
    public static String chances(BendAdvice.Ask ask) {
        long within = Math.round(TEN * ask.tilt().withinChance());
        String right = within == 0 ? "hardly ever within tolerance at once"
            : within == TEN ? "nearly always within tolerance" : "%d in 10 within tolerance".formatted(within);
        double beyond = ask.tilt().beyondChance();
        return right + ", " + (beyond < RARE ? "hardly ever past it" : "1 in %d past it".formatted(Math.round(1 / beyond)));
    }

    /**
     * What an ask rests on.
     * @param known what is known of the metal this way
     * @param direction which way
     * @param wood  whether the head is read as a wood
     * @return {@code rests on 4 bends of this model this way}
     */
    public static String restsOn(Springback known, BendDirection direction, boolean wood) {
        return known.trials() == 0 ? "rests on the metal alone: no bend of this model %s is on record"
            .formatted(direction.benchWord(wood))
            : "rests on %d %s of this model %s".formatted(known.trials(), known.trials() == 1 ? "bend" : "bends",
                direction.benchWord(wood));
    }

    /**
     * Angles beside the one asked for that an ask moves, or leaves off.
     * @param ask    the advice
     * @param nowDeg the angles now
     * @param wood   whether the head is read as a wood
     * @return {@code loft follows to 10.1°}; empty when nothing else moves
     */
    public static String alongWith(BendAdvice.Ask ask, Map<Quantity, Double> nowDeg, boolean wood) {
        Quantity asked = ask.direction().quantity(wood);
        return Arrays.stream(Quantity.values()).filter(Quantity::isAngle).filter(quantity -> quantity != asked
                && nowDeg.containsKey(quantity) && ask.foreseenDeg().containsKey(quantity)
                && Math.abs(ask.foreseenDeg().get(quantity) - nowDeg.get(quantity)) >= HARDLY_MOVES_DEG)
            .map(quantity -> "%s goes along to %s".formatted(QuantityText.name(quantity),
                QuantityText.value(quantity, ask.foreseenDeg().get(quantity)))).collect(Collectors.joining(", "));
    }

    /**
     * Why there is no further bend.
     * @param limit what stands in the way
     * @param wood  whether the head is read as a wood
     * @return a sentence
     */
    public static String stop(BendAdvice.PastLimit limit, boolean wood) {
        return "Stop: this needs %s more hosel tilt %s, and the hosel has %s left that way.".formatted(
            degrees(limit.direction().part(limit.needed())), towards(limit.direction(), wood), degrees(limit.leftDeg()));
    }

    /**
     * The same where no ask is safe.
     * @param risky what is feared
     * @param wood  whether the head is read as a wood
     * @return a sentence
     */
    public static String stop(BendAdvice.TooRisky risky, boolean wood) {
        return risky.atLimit() ? "Stop: any push of use %s may take the hosel past its limit.".formatted(towards(risky.direction(), wood))
            : "Stop: any push of use %s passes the tolerance too easily, as surely as these angles can be read. A surer gauge, "
                .formatted(towards(risky.direction(), wood)) + "a wider tolerance or more risk would allow one.";
    }

    private static String towards(BendDirection direction, boolean wood) {
        String word = direction.benchWord(wood);
        return word.equals(direction.word()) ? word : "%s (%s)".formatted(direction.word(), word);
    }
}
