package benchtwin.mechanics;

import java.util.List;

/**
 * The scale on a shaft's stiffness shape from one or more readings: the mean of ln(read / unit-scale), each weighed by its
 * relative uncertainty. Readings over a grip share the grip factor's uncertainty, so they are averaged among themselves first
 * and join the bare ones with it.
 * @param root                √scale on the bare butt
 * @param relativeUncertainty of the root; when every reading was over a grip, without the factor's own
 */
record LevelFit(double root, double relativeUncertainty) {

    /**
     * Finds the scale.
     * @param shaft    the shaft with its shape
     * @param readings at least one
     * @param grip     the grip factor
     * @return the scale; NaN when the shaft was not weighed
     */
    static LevelFit of(LyingShaft shaft, List<CombinedReading> readings, GripFactor grip) {
        boolean anyBare = readings.stream().anyMatch(reading -> !reading.overGrip());
        double shared = anyBare ? grip.relativeUncertainty() * grip.relativeUncertainty() : 0;
        double[] logs = new double[readings.size()];
        double[] sum = new double[2];
        double[] weight = new double[2];
        for (int i = 0; i < logs.length; i++) {
            CombinedReading reading = readings.get(i);
            int over = reading.overGrip() ? 1 : 0;
            double bare = reading.cpm() / (reading.overGrip() ? grip.value() : 1);
            logs[i] = Math.log(bare / shaft.unitCpm(reading.freeLengthMm(), reading.tipMassG()));
            sum[over] += logs[i] / variance(reading);
            weight[over] += 1 / variance(reading);
        }
        double total = 0;
        double totalWeight = 0;
        for (int over = 0; over < 2; over++) {
            if (weight[over] > 0) {
                double joint = 1 / (1 / weight[over] + over * shared);
                total += sum[over] / weight[over] * joint;
                totalWeight += joint;
            }
        }
        double mean = total / totalWeight;
        double chiSquare = 0;
        for (int i = 0; i < logs.length; i++) {
            double expected = variance(readings.get(i)) + (readings.get(i).overGrip() ? shared : 0);
            chiSquare += (logs[i] - mean) * (logs[i] - mean) / expected;
        }
        // readings that disagree by more than they say make their mean less sure
        double stretch = Math.max(1, chiSquare / Math.max(1, logs.length - 1));
        return new LevelFit(Math.exp(mean), Math.sqrt(stretch / totalWeight));
    }

    private static double variance(CombinedReading reading) {
        double relative = Math.max(ProfileFit.LEAST_U_CPM, reading.standardUncertaintyCpm()) / reading.cpm();
        return relative * relative;
    }
}
