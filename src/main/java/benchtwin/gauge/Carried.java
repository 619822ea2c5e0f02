package benchtwin.gauge;

import java.util.List;

/**
 * A reading as it would stand on the reference gauge.
 * @param value  with its standard uncertainty: the reading's own and the offset's, added in squares
 * @param gauges   the gauges it rests on: the one it was read on, the reference, and those in between
 */
public record Carried(Estimate value, List<String> gauges) {

    public Carried {
        gauges = List.copyOf(gauges);
    }
}
