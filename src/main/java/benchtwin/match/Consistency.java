package benchtwin.match;

import benchtwin.club.Quantity;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** Says when an old club measures so far from what its parts add up to that its record is in doubt. */
final class Consistency {

    /** Beyond these the record of the parts is more likely wrong than the model. Memory. */
    private static final Map<Quantity, Double> DOUBTFUL = new EnumMap<>(Map.of(Quantity.LENGTH, 4.0,
        Quantity.SWING_WEIGHT, 1.5, Quantity.TOTAL_MASS, 3.0, Quantity.FREQUENCY, 8.0));

    private Consistency() {
    }

    /**
     * Sentences on what is in doubt.
     * @param carried measured less modelled, by quantity
     * @return none when the record agrees with itself
     */
    static List<String> doubts(double[] carried) {
        List<String> doubts = new ArrayList<>();
        DOUBTFUL.forEach((quantity, most) -> {
            double off = carried[quantity.ordinal()];
            if (Math.abs(off) > most) {
                doubts.add(String.format(Locale.ROOT,
                    "the old club's %s measures %.1f %s %s than its parts add up to: check its record and its parts",
                    quantity.word().replace('-', ' '), Math.abs(off), quantity.unit(), off > 0 ? "more" : "less"));
            }
        });
        return doubts;
    }

    /**
     * A sentence when a shaft's raw reading and its built club's disagree by more than a frequency's tolerance.
     * @param cpm what the raw reading would make the club read, less what it read; NaN where one of the two is missing
     * @return none when they agree
     */
    static List<String> disagreement(double cpm) {
        if (!(Math.abs(cpm) > Quantity.FREQUENCY.defaultTolerance())) {
            return List.of();
        }
        return List.of(String.format(Locale.ROOT,
            "the shaft's raw reading would make the old club read %.1f cpm %s than it did: the club's own reading is used",
            Math.abs(cpm), cpm > 0 ? "more" : "less"));
    }
}
