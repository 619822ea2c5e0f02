package benchtwin.bench;

import benchtwin.measure.PlainNumber;
import java.util.Map;

/** What is put down of a club besides its readings: how much of something it can have. */
public final class ClubFacts {

    /** Ours: wide, to catch a slip of the keyboard. Layers, and g. */
    private static final Map<String, Double> MOST = Map.of("tape_layers", 20.0, "tip_weight_g", 30.0, "tape_g", 60.0, "melt_g", 60.0);

    private ClubFacts() {
    }

    /**
     * Whether it is an amount; else a text.
     * @param name its name in the book
     * @return true for layers of tape and added masses
     */
    public static boolean isAmount(String name) {
        return MOST.containsKey(name);
    }

    /**
     * An amount as the book keeps it.
     * @param name   its name in the book
     * @param called what it was typed in
     * @param typed  layers or g
     * @return to a tenth
     * @throws BadInput when no club has as much
     */
    public static String amount(String name, String called, double typed) throws BadInput {
        double most = MOST.get(name);
        double tenths = Math.rint(typed * 10) / 10;
        if (!(typed >= 0 && typed <= most)) {
            throw new BadInput("%s %s: expected 0 to %.0f".formatted(called, Double.toString(tenths), most));
        }
        return PlainNumber.text(tenths);
    }
}
