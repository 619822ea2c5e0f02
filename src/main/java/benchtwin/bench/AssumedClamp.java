package benchtwin.bench;

import benchtwin.club.FrequencyReading;
import benchtwin.club.Inventory;
import benchtwin.club.Shaft;
import benchtwin.measure.Reading;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;

/**
 * Gives readings without clamp and free length the clamp somebody says they were taken in, and the doubt that goes with
 * it.
 */
final class AssumedClamp {

    /** How far an assumed clamp may be from the true one, mm (¼ in). Memory. */
    private static final double ASSUMED_CLAMP_U_MM = 6.35;
    /**
     * A uniform cantilever with a mass at its end goes as its length to the power −1.5 (Thomson, Theory of Vibration with
     * Applications, app. D). A shaft is several times as stiff at the butt, where the length is lost, as at the tip, and goes
     * as −1.0 to −1.1 by the beam it is worked out with. Between the two: ours.
     */
    private static final double LENGTH_POWER = 1.25;

    private AssumedClamp() {
    }

    /**
     * The stock with its bare readings' clamps assumed.
     * @param inventory the stock
     * @param marked    tags of the shafts a reading of which now rests on the assumption
     */
    record Assumed(Inventory inventory, Set<String> marked) {
    }

    static Assumed of(Inventory stock, double clampMm) {
        Set<String> marked = new TreeSet<>();
        List<Shaft> shafts = new ArrayList<>();
        for (Shaft shaft : stock.shafts()) {
            boolean any = shaft.frequencies().stream().anyMatch(AssumedClamp::lacksCondition);
            if (any && clampMm < shaft.lengthMm() / 2) {
                marked.add(shaft.tag());
                shafts.add(shaft.withFrequencies(shaft.frequencies().stream()
                    .map(f -> lacksCondition(f) ? assumed(f, shaft, clampMm) : f).toList()));
            } else {
                shafts.add(shaft);
            }
        }
        return new Assumed(new Inventory(stock.heads(), shafts, stock.grips(), stock.sleeves(), stock.weights(),
            stock.clubs()), marked);
    }

    private static boolean lacksCondition(FrequencyReading reading) {
        return reading.clampMm().isEmpty() && reading.freeLengthMm().isEmpty();
    }

    private static FrequencyReading assumed(FrequencyReading reading, Shaft shaft, double clampMm) {
        double cpm = reading.cpm().value();
        double doubt = cpm * LENGTH_POWER * ASSUMED_CLAMP_U_MM / (shaft.lengthMm() - clampMm);
        Reading wider = new Reading(cpm, Math.hypot(reading.cpm().standardUncertainty(), doubt), reading.cpm().taken());
        return new FrequencyReading(wider, OptionalDouble.of(clampMm), reading.freeLengthMm(), reading.tipMassG(),
            reading.overGrip(), reading.planeDeg());
    }
}
