package benchtwin.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Every limit just inside its edge, on it and just outside, for a value that is known exactly.
 *
 * <p>Edges: published, Equipment Rules Part 2, 1c (457.2 and 1219.2 mm), 4b (460 and 10 cm³, 5900 and 100 g·cm², 127 and
 * 71.12 mm, longer than deep), 1a, 1d and 2c (a putter's −15°, 10°, 10° and 127 mm); Model Local Rule G-10 (1168.4 mm).
 * Memory: 239 and 18 µs.
 */
class LimitEdgeTest {

    private static final String[] EDGES = {
        "length-least,             457.2,  +, 0,   true",
        "length-most,              1219.2, -, 0,   true",
        "length-most-local,        1168.4, -, 0,   true",
        "volume-most,              460,    -, 10,  true",
        "vertical-inertia-most,    5900,   -, 100, true",
        "heel-to-toe-most,         127,    -, 0,   true",
        "longer-than-deep,         0,      +, 0,   false",
        "sole-to-crown-most,       71.12,  -, 0,   true",
        "characteristic-time-most, 239,    -, 18,  true",
        "putter-loft-least,        -15,    +, 0,   true",
        "putter-loft-most,         10,     -, 0,   true",
        "shaft-off-vertical-least, 10,     +, 0,   true",
        "putter-neck-most,         127,    -, 0,   true"};

    /** Far less than any gauge reads, far more than arithmetic leaves. */
    private static final double JUST = 1e-4;

    private static Limit limit(String word) {
        return Arrays.stream(Limit.values()).filter(each -> each.word().equals(word)).findFirst().orElseThrow();
    }

    private static Finding exactly(Limit limit, double value) {
        return new Finding(limit, Optional.of(new RuledValue(value, 0, 0, "")), Optional.empty());
    }

    @Test
    void everyLimitHasItsEdgeHere() {
        Set<String> here = Arrays.stream(EDGES).map(line -> line.split(",")[0]).collect(Collectors.toCollection(TreeSet::new));
        assertThat(here).isEqualTo(Arrays.stream(Limit.values()).map(Limit::word).collect(Collectors.toCollection(TreeSet::new)));
    }

    @ParameterizedTest
    @MethodSource("edges")
    void insideOnAndOutsideTheEdge(String word, double edge, double inward, double allowance, boolean edgeIsWithin) {
        Limit limit = limit(word);
        double last = edge - inward * allowance;
        assertThat(exactly(limit, last + inward * JUST).verdict()).isEqualTo(Verdict.CLEARLY_WITHIN);
        assertThat(exactly(limit, last).verdict()).isEqualTo(edgeIsWithin ? Verdict.CLEARLY_WITHIN : Verdict.CLEARLY_BEYOND);
        assertThat(exactly(limit, last - inward * JUST).verdict()).isEqualTo(Verdict.CLEARLY_BEYOND);

        assertThat(exactly(limit, edge + inward * JUST).verdictOfLimitAlone()).isEqualTo(Verdict.CLEARLY_WITHIN);
        assertThat(exactly(limit, edge).verdictOfLimitAlone())
            .isEqualTo(edgeIsWithin ? Verdict.CLEARLY_WITHIN : Verdict.CLEARLY_BEYOND);
        assertThat(exactly(limit, edge - inward * JUST).verdictOfLimitAlone()).isEqualTo(Verdict.CLEARLY_BEYOND);
    }

    static Stream<Arguments> edges() {
        return Arrays.stream(EDGES).map(line -> line.split("\\s*,\\s*")).map(cells -> Arguments.of(
            cells[0], Double.parseDouble(cells[1]), cells[2].equals("+") ? 1.0 : -1.0, Double.parseDouble(cells[3]),
            Boolean.parseBoolean(cells[4])));
    }

    /** 18, 48 and 46 inches typed as inches are on the edge and not a rounding beyond it. */
    @ParameterizedTest
    @CsvSource({"length-least, 18", "length-most, 48", "length-most-local, 46"})
    void wholeInchesAreOnTheEdge(String word, double inches) {
        Finding finding = exactly(limit(word), inches * 25.4);
        assertThat(finding.margin().orElseThrow()).isZero();
        assertThat(finding.verdict()).isEqualTo(Verdict.CLEARLY_WITHIN);
    }

    @Test
    void onlyTheCharacteristicTimeIsRecalled() {
        assertThat(Arrays.stream(Limit.values()).filter(limit -> limit.source().mark().equals("memory")))
            .containsExactly(Limit.CHARACTERISTIC_TIME_MOST);
    }
}
