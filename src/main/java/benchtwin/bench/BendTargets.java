package benchtwin.bench;

import benchtwin.club.Quantity;
import benchtwin.measure.PlainNumber;
import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.stream.Collectors;

/** Angles by name as one text, such as {@code lie=58.6 face=0.5}. */
final class BendTargets {

    private BendTargets() {
    }

    static String text(Map<Quantity, Double> anglesDeg) {
        return new java.util.TreeMap<>(anglesDeg).entrySet().stream().map(one -> one.getKey().word() + "=" + PlainNumber.text(one.getValue()))
            .collect(Collectors.joining(" "));
    }

    /** What such a text says; what it does not say well is left out. */
    static Map<Quantity, Double> read(String text) {
        Map<Quantity, Double> angles = new EnumMap<>(Quantity.class);
        for (String item : text.split(" ")) {
            for (Quantity quantity : Quantity.values()) {
                if (quantity.isAngle() && item.startsWith(quantity.word() + "=")) {
                    angles.put(quantity, Double.parseDouble(item.substring(quantity.word().length() + 1)));
                }
            }
        }
        return Collections.unmodifiableMap(angles);
    }
}
