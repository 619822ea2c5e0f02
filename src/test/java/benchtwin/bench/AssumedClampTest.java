package benchtwin.bench;

import static org.assertj.core.api.Assertions.assertThat;

import benchtwin.club.FrequencyReading;
import benchtwin.club.Inventory;
import benchtwin.club.Shaft;
import benchtwin.mechanics.GripFactor;
import benchtwin.mechanics.ShaftStiffness;
import benchtwin.stock.StockFiles;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What is assumed of readings whose clamp nobody wrote down, on the sample drawers. */
class AssumedClampTest {

    private static final double FIVE_INCHES_MM = 5 * 25.4;
    /** How far an assumed clamp may be from the true one. */
    private static final double QUARTER_INCH_MM = 25.4 / 4;
    /** The rule behind the doubt knows the free length and nothing else of a shaft, so it is held to a factor. */
    private static final double FACTOR = 1.5;

    private final Inventory stock = samples();

    private static Inventory samples() {
        try {
            return Workshop.load(StockFiles.inFolder(Path.of("inventory-samples")), false).inventory();
        } catch (BadInput broken) {
            throw new IllegalStateException(broken);
        }
    }

    private static boolean lacksCondition(FrequencyReading reading) {
        return reading.clampMm().isEmpty() && reading.freeLengthMm().isEmpty();
    }

    @Test
    void onlyShaftsWithAReadingWithoutItsClampAreMarked() {
        AssumedClamp.Assumed assumed = AssumedClamp.of(stock, FIVE_INCHES_MM);
        assertThat(assumed.marked()).isNotEmpty().containsExactlyInAnyOrderElementsOf(stock.shafts().stream()
            .filter(s -> s.frequencies().stream().anyMatch(AssumedClampTest::lacksCondition)).map(Shaft::tag).toList());
        assertThat(assumed.inventory().shafts()).hasSameSizeAs(stock.shafts());
        stock.shafts().stream().filter(s -> !assumed.marked().contains(s.tag()))
            .forEach(s -> assertThat(assumed.inventory().shaft(s.tag()).orElseThrow()).isSameAs(s));
    }

    @Test
    void whatWasReadStaysAndOnlyItsDoubtGrows() {
        AssumedClamp.Assumed assumed = AssumedClamp.of(stock, FIVE_INCHES_MM);
        for (String tag : assumed.marked()) {
            List<FrequencyReading> before = stock.shaft(tag).orElseThrow().frequencies();
            List<FrequencyReading> after = assumed.inventory().shaft(tag).orElseThrow().frequencies();
            assertThat(after).hasSameSizeAs(before);
            for (int k = 0; k < before.size(); k++) {
                if (!lacksCondition(before.get(k))) {
                    assertThat(after.get(k)).isEqualTo(before.get(k));
                    continue;
                }
                assertThat(after.get(k).cpm().value()).isEqualTo(before.get(k).cpm().value());
                assertThat(after.get(k).cpm().taken()).isEqualTo(before.get(k).cpm().taken());
                assertThat(after.get(k).clampMm()).hasValue(FIVE_INCHES_MM);
                assertThat(after.get(k).cpm().standardUncertainty())
                    .isGreaterThan(before.get(k).cpm().standardUncertainty());
            }
        }
    }

    @Test
    void aClampThatHoldsHalfTheShaftIsNotAssumed() {
        double longestMm = stock.shafts().stream().mapToDouble(Shaft::lengthMm).max().orElseThrow();
        assertThat(AssumedClamp.of(stock, longestMm / 2).marked()).isEmpty();
    }

    /** Every model of the drawers once: heavy and light, steel and graphite, driver to wedge. */
    static Stream<Shaft> oneOfEveryModel() {
        Map<String, Shaft> byModel = new TreeMap<>();
        samples().shafts().stream().filter(s -> s.massG().isPresent() && s.frequencies().size() == 1)
            .filter(s -> s.frequencies().get(0).clampMm().isPresent() && s.frequencies().get(0).tipMassG().isPresent()
                && !s.frequencies().get(0).overGrip())
            .forEach(s -> byModel.putIfAbsent(s.model(), s));
        return byModel.values().stream();
    }

    /** What a clamp a quarter inch further in or out does to the very shaft, by the beam everything else is worked out with. */
    @ParameterizedTest
    @MethodSource("oneOfEveryModel")
    void theDoubtIsWhatAQuarterInchInTheClampMakes(Shaft shaft) {
        FrequencyReading read = shaft.frequencies().get(0);
        double clampMm = read.clampMm().orElseThrow();
        double tipMassG = read.tipMassG().orElseThrow();
        ShaftStiffness stiffness = ShaftStiffness.of(shaft, GripFactor.DEFAULT);
        double shorterCpm = stiffness.carriedCpm(clampMm + QUARTER_INCH_MM, tipMassG).orElseThrow();
        double longerCpm = stiffness.carriedCpm(clampMm - QUARTER_INCH_MM, tipMassG).orElseThrow();
        double byTheBeamCpm = (shorterCpm - longerCpm) / 2;

        Shaft forgotten = shaft.withFrequencies(List.of(new FrequencyReading(read.cpm(), OptionalDouble.empty(),
            OptionalDouble.empty(), read.tipMassG(), false, read.planeDeg())));
        Inventory drawer = new Inventory(List.of(), List.of(forgotten), List.of(), List.of(), List.of(), List.of());
        double u = AssumedClamp.of(drawer, clampMm).inventory().shafts().get(0).frequencies().get(0).cpm()
            .standardUncertainty();
        double doubtCpm = Math.sqrt(Math.pow(u, 2) - Math.pow(read.cpm().standardUncertainty(), 2));
        assertThat(doubtCpm / byTheBeamCpm).isBetween(1 / FACTOR, FACTOR);
    }
}
