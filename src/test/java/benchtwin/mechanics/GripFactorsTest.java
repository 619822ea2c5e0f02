package benchtwin.mechanics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import benchtwin.club.FrequencyReading;
import benchtwin.club.Shaft;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** What a shop's own pairs of readings teach of its machines. */
class GripFactorsTest {

    private static final double FREE = ReadShafts.LENGTH_MM - 127;

    private static FrequencyReading read(double cpm, double free, double grams, boolean over, String gauge) {
        return ReadShafts.reading(cpm, free, grams, over, OptionalDouble.empty(), gauge);
    }

    private static Shaft pair(double bare, double over, String gauge) {
        return ReadShafts.driverShaft(read(bare, FREE, 205, false, gauge), read(over, FREE, 205, true, gauge));
    }

    @Test
    void withoutPairsTheDefaultStands() {
        Shaft bareOnly = ReadShafts.driverShaft(ReadShafts.bare(255, FREE), ReadShafts.bare(300, 900));
        Shaft overOnly = ReadShafts.driverShaft(ReadShafts.gripped(255, FREE));
        Shaft onTwoGauges = ReadShafts.driverShaft(read(255, FREE, 205, false, "a"), read(249, FREE, 205, true, "b"));
        GripFactors found = GripFactors.learn(List.of(bareOnly, overOnly, onTwoGauges));
        assertThat(found.of(Optional.of("bench 1"))).isEqualTo(GripFactor.DEFAULT);
        assertThat(found.of(Optional.empty())).isEqualTo(GripFactor.DEFAULT);
        assertThat(found.learned()).isEmpty();
    }

    /**
     * By hand: 250 and 243.5 are 0.974; its variance is 0.974² · ((0.5/250)² + (0.5/243.5)²) + 0.003² = 1.679e-5, the prior's
     * 1e-4. Weights 59557 and 10000: (0.974 · 59557 + 0.98 · 10000) / 69557 = 0.97486, u = 1/√69557 = 0.00379.
     */
    @Test
    void onePairPullsTheDefaultAsFarAsItIsSure() {
        GripFactor found = GripFactors.learn(List.of(pair(250, 243.5, "bench 1"))).of(Optional.of("bench 1"));
        assertThat(found.value()).isCloseTo(0.97486, within(0.5e-5));
        assertThat(found.standardUncertainty()).isCloseTo(0.00379, within(0.5e-5));
        assertThat(found.pairs()).isEqualTo(1);
        assertThat(found.origin()).isEqualTo(Origin.MEASURED);
        assertThat(found.label()).isEqualTo("ratio of readings over a grip on bench 1");
    }

    @Test
    void everyGaugeHasItsOwnAndAnUnknownOneTheirs() {
        List<Shaft> shafts = new ArrayList<>();
        for (int k = 0; k < 5; k++) {
            shafts.add(pair(250 + k, (250 + k) * 0.97, "a"));
            shafts.add(pair(250 + k, (250 + k) * 0.99, "b"));
        }
        GripFactors found = GripFactors.learn(shafts);
        assertThat(found.of(Optional.of("a")).value()).isCloseTo(0.97, within(0.001));
        assertThat(found.of(Optional.of("b")).value()).isCloseTo(0.99, within(0.001));
        assertThat(found.of(Optional.empty()).value()).isCloseTo(0.98, within(0.001));
        assertThat(found.of(Optional.of("c"))).isEqualTo(found.of(Optional.empty()));
        assertThat(found.of(Optional.empty()).pairs()).isEqualTo(10);
        assertThat(found.learned()).extracting(GripFactor::pairs).containsExactly(5, 5);
    }

    /** A gripped reading at another free length and tip mass is compared through the model, and counts for less. */
    @Test
    void readingsInDifferentConditionsAreCarriedFirst() {
        double free = FREE - 40;
        double bareThere = ShaftStiffness.of(ReadShafts.driverShaft(ReadShafts.bare(250, FREE)), GripFactor.DEFAULT)
            .carriedCpm(ReadShafts.LENGTH_MM - free, 215).orElseThrow();
        Shaft apart = ReadShafts.driverShaft(ReadShafts.bare(250, FREE), read(bareThere * 0.97, free, 215, true, "bench 1"));
        GripFactor carried = GripFactors.learn(List.of(apart)).of(Optional.of("bench 1"));
        GripFactor alike = GripFactors.learn(List.of(pair(250, 250 * 0.97, "bench 1"))).of(Optional.of("bench 1"));
        assertThat(carried.pairs()).isEqualTo(1);
        assertThat(carried.standardUncertainty()).isGreaterThan(alike.standardUncertainty());
        assertThat(carried.value()).isBetween(alike.value(), 0.98);
    }

    /** Machines drawn from the prior, grips from their scatter, readings from theirs: 500 of them, so 95.4 ± 1.9 %. */
    @Test
    void twoStandardUncertaintiesHoldTheTruthInNineteenOfTwenty() {
        Random random = new Random(7);
        int inside = 0;
        int runs = 500;
        for (int run = 0; run < runs; run++) {
            double truth = 0.98 + 0.01 * random.nextGaussian();
            GripFactor found = GripFactors.learn(shafts(random, truth, 6)).of(Optional.of("bench 1"));
            inside += Math.abs(found.value() - truth) <= 2 * found.standardUncertainty() ? 1 : 0;
        }
        assertThat((double) inside / runs).isBetween(0.925, 0.985);
    }

    private static List<Shaft> shafts(Random random, double truth, int count) {
        List<Shaft> shafts = new ArrayList<>();
        for (int k = 0; k < count; k++) {
            double cpm = 230 + 40 * random.nextDouble();
            shafts.add(pair(cpm + 0.5 * random.nextGaussian(),
                cpm * (truth + 0.003 * random.nextGaussian()) + 0.5 * random.nextGaussian(), "bench 1"));
        }
        return shafts;
    }

    @Test
    void moreSurelyWithEveryPair() {
        double before = GripFactor.DEFAULT.standardUncertainty();
        List<Shaft> shafts = shafts(new Random(3), 0.976, 12);
        for (int k = 1; k <= shafts.size(); k++) {
            GripFactor found = GripFactors.learn(shafts.subList(0, k)).of(Optional.of("bench 1"));
            assertThat(found.standardUncertainty()).isLessThan(before);
            before = found.standardUncertainty();
        }
        assertThat(before).isLessThan(0.0015);
    }

    /** A shaft is one pair however often it was read: its grip is one grip. */
    @Test
    void readingOneGripTwiceIsNotTwoPairs() {
        Shaft twice = ReadShafts.driverShaft(ReadShafts.bare(250, FREE), read(243.5, FREE, 205, true, "bench 1"),
            ReadShafts.bare(285, FREE - 90), read(285 * 0.974, FREE - 90, 205, true, "bench 1"));
        GripFactor found = GripFactors.learn(List.of(twice)).of(Optional.of("bench 1"));
        assertThat(found.pairs()).isEqualTo(1);
        assertThat(found.standardUncertainty()).isGreaterThan(0.003);
    }

    /** An assembly rests on the factor it is given; a learned one leaves room for how the grip at hand differs. */
    @Test
    void anAssemblyUsesTheFactorItIsGiven() {
        GripFactor learned = GripFactors.learn(shafts(new Random(3), 0.97, 8)).of(Optional.of("bench 1"));
        Assembly club = new Assemblies(learned).of(Samples.driver(), ReadShafts.driverShaft(ReadShafts.gripped(250, FREE)),
            Optional.empty(), Optional.of(Samples.grip()));
        assertThat(club.get(Input.GRIP_FACTOR)).isEqualTo(learned.value());
        assertThat(club.factors()).filteredOn(f -> f.inputs().contains(Input.GRIP_FACTOR)).extracting(Factor::key)
            .containsExactly("gauge:bench 1:grip-factor", "grip:G:grip-factor");
        Assembly plain = Assembler.of(Samples.driver(), ReadShafts.driverShaft(ReadShafts.gripped(250, FREE)),
            Optional.empty(), Optional.of(Samples.grip()));
        assertThat(plain.factors()).filteredOn(f -> f.inputs().contains(Input.GRIP_FACTOR)).hasSize(1);
        assertThat(Stiffness.rootFromRaw(club) / Stiffness.rootFromRaw(plain))
            .isCloseTo(0.98 / learned.value(), within(1e-9));
    }

    @Test
    void aFactorThatCannotBeIsRefused() {
        assertThatThrownBy(() -> new GripFactor("k", "l", 0, 0.01, 0, Origin.DEFAULT))
            .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new GripFactor("k", "l", 0.98, Double.NaN, 0, Origin.DEFAULT))
            .isInstanceOf(IllegalArgumentException.class);
    }
}
