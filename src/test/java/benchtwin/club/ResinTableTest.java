package benchtwin.club;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import java.util.stream.IntStream;

class ResinTableTest {

    private static final ResinTable TWO = new ResinTable("slow", List.of(row(15, 720, 2880), row(25, 240, 1440)));

    private static ResinTable.Row row(double celsius, double handling, double full) {
        return new ResinTable.Row(celsius, handling, full);
    }

    /**
     * By hand: 1/288.15 K = 0.003470415, 1/293.15 K = 0.003411223, 1/298.15 K = 0.003354016 per kelvin, so 20 °C lies
     * 0.000059192 / 0.000116399 = 0.508527 of the way; 720 min · (240/720)^0.508527 = 411.8 min and
     * 2880 min · (1/2)^0.508527 = 2024.5 min. A straight line would say 480 and 2160.
     */
    @Test
    void runsStraightInLogTimeAgainstOneOverKelvin() {
        ResinTable.Row at = TWO.at(20).orElseThrow();

        assertThat(at.handlingMinutes()).isCloseTo(411.8, within(0.1));
        assertThat(at.fullCureMinutes()).isCloseTo(2024.5, within(0.5));
    }

    @Test
    void meetsWhatIsStatedAndSaysNothingBeyond() {
        assertThat(TWO.at(15)).contains(row(15, 720, 2880));
        assertThat(TWO.at(25)).contains(row(25, 240, 1440));
        assertThat(TWO.at(14.9)).isEmpty();
        assertThat(TWO.at(25.1)).isEmpty();
        ResinTable one = new ResinTable("quick", List.of(row(23, 5, 60)));
        assertThat(one.at(23)).isPresent();
        assertThat(one.at(22)).isEmpty();
    }

    static List<Integer> seeds() {
        return IntStream.rangeClosed(1, 20).boxed().toList();
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void warmerIsNeverSlowerAndEveryStatedPointIsMet(int seed) {
        Random random = new Random(seed);
        List<ResinTable.Row> rows = new ArrayList<>();
        double handling = 50 + 3000 * random.nextDouble();
        double full = handling * (1 + 5 * random.nextDouble());
        double celsius = random.nextDouble() * 10;
        for (int k = 0; k < 2 + random.nextInt(4); k++) {
            rows.add(row(celsius, handling, full));
            celsius += 0.5 + 10 * random.nextDouble();
            handling *= random.nextInt(4) == 0 ? 1 : 0.3 + 0.7 * random.nextDouble();
            full = Math.max(handling, full * (random.nextInt(4) == 0 ? 1 : 0.3 + 0.7 * random.nextDouble()));
        }
        ResinTable table = new ResinTable("any", rows);
        rows.forEach(row -> assertThat(table.at(row.temperatureC())).contains(row));
        ResinTable.Row before = table.at(table.coldestC()).orElseThrow();
        for (int k = 1; k <= 500; k++) {
            double at = table.coldestC() + (table.warmestC() - table.coldestC()) * k / 500;
            ResinTable.Row now = table.at(at).orElseThrow();
            assertThat(now.handlingMinutes()).isLessThanOrEqualTo(before.handlingMinutes() * (1 + 1e-12));
            assertThat(now.fullCureMinutes()).isLessThanOrEqualTo(before.fullCureMinutes() * (1 + 1e-12));
            before = now;
        }
    }

    @Test
    void refusesWhatCannotBe() {
        assertThatIllegalArgumentException().isThrownBy(() -> new ResinTable("x", List.of())).withMessageContaining("no cure time");
        assertThatIllegalArgumentException().isThrownBy(() -> new ResinTable("x", List.of(row(15, 60, 600), row(20, 61, 500))))
            .withMessageContaining("slower at 20.0 °C than at 15.0 °C");
        assertThatIllegalArgumentException().isThrownBy(() -> row(20, 60, 59));
        assertThatIllegalArgumentException().isThrownBy(() -> row(Double.NaN, 60, 600));
    }
}
