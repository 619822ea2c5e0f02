package benchtwin.club;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * How long a resin takes to cure against its temperature, as its maker states. Warmer is never slower.
 *
 * <p>Between two stated temperatures the logarithm of the time runs straight against 1/T, T in kelvin: Arrhenius' law, memory.
 * Between neighbours it runs one way, and it meets what is stated exactly. Beyond the outermost nothing is said.
 * @param resin its name
 * @param rows  at least one, by temperature, each temperature once
 */
public record ResinTable(String resin, List<Row> rows) {

    private static final double KELVIN = 273.15;
    /** What a thermometer that reads to a tenth cannot tell apart. */
    private static final double SAME_C = 0.05;

    /**
     * What is stated at one temperature.
     * @param temperatureC    °C, above absolute zero
     * @param handlingMinutes until the joint may be handled, minutes, above 0
     * @param fullCureMinutes until the full cure, minutes, at least as long
     */
    public record Row(double temperatureC, double handlingMinutes, double fullCureMinutes) {

        public Row {
            if (!(temperatureC > -KELVIN && Double.isFinite(temperatureC) && handlingMinutes > 0
                && fullCureMinutes >= handlingMinutes && Double.isFinite(fullCureMinutes))) {
                throw new IllegalArgumentException("%s °C: handled after %s min, cured after %s min".formatted(temperatureC,
                    handlingMinutes, fullCureMinutes));
            }
        }
    }

    public ResinTable {
        rows = rows.stream().sorted(Comparator.comparing(Row::temperatureC)).toList();
        if (rows.isEmpty()) {
            throw new IllegalArgumentException("resin %s: no cure time is stated".formatted(resin));
        }
        for (int k = 1; k < rows.size(); k++) {
            Row cold = rows.get(k - 1);
            Row warm = rows.get(k);
            if (!(warm.temperatureC() > cold.temperatureC() && warm.handlingMinutes() <= cold.handlingMinutes()
                && warm.fullCureMinutes() <= cold.fullCureMinutes())) {
                throw new IllegalArgumentException("resin %s: slower at %s °C than at %s °C".formatted(resin, warm.temperatureC(),
                    cold.temperatureC()));
            }
        }
    }

    /**
     * The times at a temperature.
     * @param temperatureC °C
     * @return the times there; empty outside what is stated
     */
    public Optional<Row> at(double temperatureC) {
        for (Row row : rows) {
            if (Math.abs(row.temperatureC() - temperatureC) <= SAME_C) {
                return Optional.of(new Row(temperatureC, row.handlingMinutes(), row.fullCureMinutes()));
            }
        }
        for (int k = 1; k < rows.size(); k++) {
            Row cold = rows.get(k - 1);
            Row warm = rows.get(k);
            if (temperatureC > cold.temperatureC() && temperatureC < warm.temperatureC()) {
                double share = (inverse(cold.temperatureC()) - inverse(temperatureC))
                    / (inverse(cold.temperatureC()) - inverse(warm.temperatureC()));
                return Optional.of(new Row(temperatureC, between(cold.handlingMinutes(), warm.handlingMinutes(), share),
                    between(cold.fullCureMinutes(), warm.fullCureMinutes(), share)));
            }
        }
        return Optional.empty();
    }

    /**
     * The lowest temperature that is stated.
     * @return °C
     */
    public double coldestC() {
        return rows.get(0).temperatureC();
    }

    /**
     * The highest temperature that is stated.
     * @return °C
     */
    public double warmestC() {
        return rows.get(rows.size() - 1).temperatureC();
    }

    private static double inverse(double temperatureC) {
        return 1 / (temperatureC + KELVIN);
    }

    private static double between(double cold, double warm, double share) {
        return cold * Math.pow(warm / cold, share);
    }
}
