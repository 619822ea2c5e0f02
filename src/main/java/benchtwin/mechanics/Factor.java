package benchtwin.mechanics;

import java.util.List;

/**
 * One uncertain thing behind a prediction. Two builds that share a part share its factors, by key, and so their errors
 * cancel where the builds are compared.
 * @param key         identity, such as {@code head:H-012:lie}
 * @param label       what it is, for people: {@code lie of head H-012}
 * @param inputs      the inputs it moves, each by itself times 1
 * @param value       what is used, in the input's unit
 * @param u           standard uncertainty, same unit, 0 or more
 * @param uMeasured   standard uncertainty once it has been measured with the usual gauge, at most {@code u}
 * @param origin      measured, derived or default
 */
public record Factor(String key, String label, List<Input> inputs, double value, double u, double uMeasured,
                     Origin origin) {

    public Factor {
        inputs = List.copyOf(inputs);
        if (!(u >= 0 && uMeasured >= 0)) {
            throw new IllegalArgumentException("factor %s has an uncertainty of %s".formatted(key, u));
        }
        uMeasured = Math.min(u, uMeasured);
    }
}
