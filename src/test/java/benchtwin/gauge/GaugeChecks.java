package benchtwin.gauge;

import benchtwin.PublishedCheck;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;

/** The published values that the statistics of gauges are held to. */
public final class GaugeChecks {

    private static final String STRD = "NIST StRD, analysis of variance, ";
    private static final String POOLING = "NIST/SEMATECH e-Handbook of Statistical Methods, 2.4.4.4, example of repeatability";
    private static final String BOOST = "Boost C++ Libraries, Math, confidence limits of a standard deviation";
    private static final String GRUBBS_TABLE = "Chemistry LibreTexts, analytical reference tables, appendix 7";
    private static final String GRUBBS_CASE =
        "uranium data of Tietjen and Moore 1972 as worked in the manual of @stdlib/stats-incr-grubbs";
    private static final String LEVEL_NET = "Ghilani and Wolf, Adjustment Computations, example 12.1, heights from A";
    private static final String LEVEL_NET_KRUMM =
        "the same net in Krumm, Geodetic Network Adjustment Examples 3.5 (2020), example 2.1";
    private static final String SCALED_MEAN = "what a weighted average means to the Particle Data Group, science20.com";
    private static final String GAUGE = "gauge";
    private static final String FOUR_DECIMALS = "four decimals printed";
    private static final String THREE_DECIMALS = "three decimals printed";

    private GaugeChecks() {
    }

    /**
     * Every check.
     * @return in the order the page shows them
     */
    public static List<PublishedCheck> all() {
        List<PublishedCheck> checks = new ArrayList<>(pooled());
        checks.addAll(intervals());
        checks.addAll(slips());
        checks.addAll(offsets());
        checks.addAll(networks());
        return checks;
    }

    private static List<PublishedCheck> pooled() {
        return List.of(
            new PublishedCheck("scatter within five instruments", STRD + "SiRstv", 1.04076068334656E-01,
                sd(StrdData.SI_RSTV), 1e-13, "15 digits printed, less what numbers near 196 lose"),
            new PublishedCheck("scatter within two instruments", STRD + "AtmWtAg", 1.51048314446410E-05,
                sd(StrdData.ATM_WT_AG), 1e-13, "15 digits printed, less what numbers near 108 lose"),
            new PublishedCheck("scatter within nine groups, values near 1", STRD + "SmLs01", 0.1, sd(StrdData.smLs("1")),
                1e-15, "exact by construction"),
            new PublishedCheck("… near 1 000 000", STRD + "SmLs04", 0.1, sd(StrdData.smLs("1000000")), 1e-10,
                "such numbers are stored to 1e-10"),
            new PublishedCheck("… near 1 000 000 000 000", STRD + "SmLs07", 0.1, sd(StrdData.smLs("1000000000000")), 1e-4,
                "such numbers are stored to 1e-4"),
            new PublishedCheck("scatter of one series, values near 10 000 000", "NIST StRD, univariate, NumAcc4", 0.1,
                sd(new double[][] {StrdData.numAcc4()}), 2e-9, "such numbers are stored to 2e-9"),
            new PublishedCheck("scatter of a probe over five wafers", POOLING, 0.10290, pooledWafers().standardDeviation(),
                0.5e-5, "five decimals printed"),
            new PublishedCheck("… its degrees of freedom", POOLING, 300, pooledWafers().degreesOfFreedom(), 0, "exact"));
    }

    private static Repeatability repeatability(List<GaugeReading> readings) {
        return Repeatability.of(GAUGE, Readings.LOFT, OptionalDouble.empty(), readings).found().orElseThrow();
    }

    private static double sd(double[][] groups) {
        return repeatability(Readings.ofParts(GAUGE, groups)).standardDeviation();
    }

    /**
     * The page prints sums of squares of five wafers, each from twelve days of six readings. Six readings, three a above
     * and three a below their mean, have a sum of squares of 6a².
     */
    private static Repeatability pooledWafers() {
        double[] sumsOfSquares = {0.48115, 0.69209, 0.48483, 1.21752, 0.30076};
        List<GaugeReading> readings = new ArrayList<>();
        for (int wafer = 0; wafer < sumsOfSquares.length; wafer++) {
            double a = Math.sqrt(sumsOfSquares[wafer] / 12 / 6);
            for (int day = 0; day < 12; day++) {
                for (int i = 0; i < 6; i++) {
                    readings.add(new GaugeReading("wafer " + wafer, Readings.LOFT, "", GAUGE, Readings.DAY.plusDays(day),
                        95 + (i % 2 == 0 ? a : -a), 0));
                }
            }
        }
        return repeatability(readings);
    }

    private static List<PublishedCheck> intervals() {
        List<PublishedCheck> checks = new ArrayList<>();
        int[] readings = {6, 10, 100};
        double[] lowest = {0.6242, 0.6878, 0.8780};
        double[] highest = {2.4526, 1.8256, 1.1617};
        for (int i = 0; i < readings.length; i++) {
            Repeatability found = repeatability(Readings.of("P", GAUGE, alternating(readings[i])));
            String what = "95 %% interval of a standard deviation, %d readings, ".formatted(readings[i]);
            checks.add(new PublishedCheck(what + "lowest", BOOST, lowest[i], found.lowest() / found.standardDeviation(),
                0.5e-4, FOUR_DECIMALS));
            checks.add(new PublishedCheck(what + "highest", BOOST, highest[i], found.highest() / found.standardDeviation(),
                0.5e-4, FOUR_DECIMALS));
        }
        return checks;
    }

    private static double[] alternating(int count) {
        double[] values = new double[count];
        for (int i = 0; i < count; i++) {
            values[i] = i % 2 == 0 ? 10 : 11;
        }
        return values;
    }

    private static List<PublishedCheck> slips() {
        LargestDeviation uranium = repeatability(Readings.of("P", GAUGE,
            199.31, 199.53, 200.19, 200.82, 201.92, 201.95, 202.18, 245.57)).largest().orElseThrow();
        return List.of(
            new PublishedCheck("largest of eight deviations, in standard deviations", GRUBBS_CASE, 2.4688,
                grubbs(uranium.weighed(), 8), 0.5e-4, FOUR_DECIMALS),
            new PublishedCheck("… limit at 5 %", GRUBBS_CASE, 2.1266, grubbsLimit(8, 0.05), 0.5e-4,
                FOUR_DECIMALS),
            new PublishedCheck("limit of the largest deviation, 10 readings, 5 %", GRUBBS_TABLE, 2.290,
                grubbsLimit(10, 0.05), 0.5e-3, THREE_DECIMALS),
            new PublishedCheck("… 10 readings, 1 %", GRUBBS_TABLE, 2.482, grubbsLimit(10, 0.01), 0.5e-3,
                THREE_DECIMALS),
            new PublishedCheck("… 6 readings, 1 %", GRUBBS_TABLE, 1.973, grubbsLimit(6, 0.01), 0.5e-3,
                THREE_DECIMALS));
    }

    /** Grubbs weighs a deviation by the standard deviation alone, where ours divides by √(1 − 1/n) as well. */
    private static double grubbs(double weighed, int readings) {
        return weighed * Math.sqrt(1 - 1.0 / readings);
    }

    private static double grubbsLimit(int readings, double falseAlarm) {
        return grubbs(SlipTest.limit(readings, readings - 1, falseAlarm), readings);
    }

    private static List<PublishedCheck> offsets() {
        WeightedMean mean = WeightedMean.of(new double[] {10, 30}, new double[] {4, 5});
        return List.of(
            new PublishedCheck("two instruments, (offset over its uncertainty)² = F", STRD + "AtmWtAg",
                1.59467335677930E+01, silverF(), 1e-6, "15 digits printed, less what numbers near 108 lose in 1e-5"),
            new PublishedCheck("five parts, (Birge ratio)² = F", STRD + "SiRstv", 1.18046237440255, fiveInstrumentsF(),
                1e-10, "15 digits printed, less what the reference's uncertainty adds"),
            new PublishedCheck("weighted mean of 10 ± 4 and 30 ± 5", SCALED_MEAN, 17.80, mean.value(), 0.5e-2,
                "two decimals printed"),
            new PublishedCheck("… its internal uncertainty", SCALED_MEAN, 3.12, mean.internal(), 0.5e-2,
                "two decimals printed"));
    }

    /** One part on two gauges: the square of what its means differ by, over its variance, is F. */
    private static double silverF() {
        List<GaugeReading> readings = Readings.all(Readings.of("P", "one", StrdData.ATM_WT_AG[0]),
            Readings.of("P", "two", StrdData.ATM_WT_AG[1]));
        Offset offset = Offset.of(accepted("one", readings), accepted("two", readings), Readings.LOFT, readings)
            .found().orElseThrow();
        return Math.pow(offset.value() / offset.standardUncertainty(), 2);
    }

    private static Gauge accepted(String gauge, List<GaugeReading> readings) {
        return Repeatability.of(gauge, Readings.LOFT, OptionalDouble.empty(), readings).found().orElseThrow().accepted();
    }

    /** Five parts that a nearly perfect reference finds equal: what the gauge's means scatter, over what it repeats. */
    private static double fiveInstrumentsF() {
        double[][] reference = new double[5][];
        Arrays.fill(reference, new double[] {196});
        List<GaugeReading> readings = Readings.all(Readings.ofParts(GAUGE, StrdData.SI_RSTV),
            Readings.ofParts("reference", reference));
        Offset offset = Offset.of(repeatability(readings).accepted(), new Gauge("reference", 1e-9, OptionalDouble.empty()),
            Readings.LOFT, readings).found().orElseThrow();
        return Math.pow(offset.agreement().birgeRatio().orElseThrow(), 2);
    }

    private static List<PublishedCheck> networks() {
        GaugeNetwork net = levelNet();
        double ratio = net.agreement().birgeRatio().orElseThrow();
        List<PublishedCheck> checks = new ArrayList<>();
        checks.add(new PublishedCheck("network of four, first offset", LEVEL_NET, 10.5127, offset(net, "B").value(), 0.5e-4,
            FOUR_DECIMALS));
        checks.add(new PublishedCheck("… second", LEVEL_NET, 15.8725, offset(net, "C").value(), 0.5e-4, FOUR_DECIMALS));
        checks.add(new PublishedCheck("… third", LEVEL_NET, 7.3476, offset(net, "D").value(), 0.5e-4, FOUR_DECIMALS));
        checks.add(new PublishedCheck("… Birge ratio", LEVEL_NET_KRUMM, 0.6512, ratio, 0.5e-4, FOUR_DECIMALS));
        String why = "two decimals of a millimetre printed";
        checks.add(new PublishedCheck("… uncertainty of the first offset, times the ratio, mm", LEVEL_NET_KRUMM, 2.30,
            1000 * offset(net, "B").standardUncertainty() * ratio, 0.5e-2, why));
        checks.add(new PublishedCheck("… of the second", LEVEL_NET_KRUMM, 2.64,
            1000 * offset(net, "C").standardUncertainty() * ratio, 0.5e-2, why));
        checks.add(new PublishedCheck("… of the third", LEVEL_NET_KRUMM, 1.76,
            1000 * offset(net, "D").standardUncertainty() * ratio, 0.5e-2, why));
        return checks;
    }

    private static Estimate offset(GaugeNetwork net, String gauge) {
        return net.offset(gauge).found().orElseThrow();
    }

    /** A level net is a network of gauges: a height difference is an offset. Metres; A stands at 437.596. */
    static GaugeNetwork levelNet() {
        return GaugeNetwork.of(Readings.LOFT, "A", List.of(), List.of(rise("A", "B", 10.509, 0.006),
            rise("B", "C", 5.360, 0.004), rise("C", "D", -8.523, 0.005), rise("D", "A", -7.348, 0.003),
            rise("B", "D", -3.167, 0.004), rise("A", "C", 15.881, 0.012)));
    }

    private static Link rise(String from, String to, double metres, double uncertainty) {
        return new Link(Readings.LOFT, to, from, metres, uncertainty);
    }
}
