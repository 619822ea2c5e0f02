package benchtwin.rules;

import static benchtwin.rules.Verdict.CLEARLY_BEYOND;
import static benchtwin.rules.Verdict.CLEARLY_WITHIN;
import static benchtwin.rules.Verdict.NOT_MEASURED;
import static benchtwin.rules.Verdict.TOO_CLOSE;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import java.util.SplittableRandom;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Verdicts of what is known with an uncertainty. */
class FindingTest {

    private static Finding of(Limit limit, double value, double u, double mayReadLess) {
        return new Finding(limit, Optional.of(new RuledValue(value, u, mayReadLess, "")), Optional.empty());
    }

    /** Guarded acceptance and rejection by hand: the limit 127, u 0.5, so U 1: within to 126, beyond from 128. */
    @ParameterizedTest
    @CsvSource({"125.999, CLEARLY_WITHIN", "126, CLEARLY_WITHIN", "126.001, TOO_CLOSE", "127, TOO_CLOSE",
        "127.999, TOO_CLOSE", "128, CLEARLY_BEYOND", "128.001, CLEARLY_BEYOND"})
    void clearIsWhatTheExpandedUncertaintyLeavesOnOneSide(double mm, Verdict verdict) {
        assertThat(of(Limit.HEEL_TO_TOE_MOST, mm, 0.5, 0).verdict()).isEqualTo(verdict);
        // mirrored at a limit from below: 10° off the vertical
        assertThat(of(Limit.SHAFT_OFF_VERTICAL_LEAST, 10 + 127 - mm, 0.5, 0).verdict()).isEqualTo(verdict);
    }

    @Test
    void theAllowanceCountsAndTheLimitAloneIsShown() {
        Finding head = of(Limit.VOLUME_MOST, 463, 1, 0);
        assertThat(head.margin().orElseThrow()).isEqualTo(-3);
        assertThat(head.marginWithAllowance().orElseThrow()).isEqualTo(7);
        assertThat(head.verdictOfLimitAlone()).isEqualTo(CLEARLY_BEYOND);
        assertThat(head.verdict()).isEqualTo(CLEARLY_WITHIN);
    }

    /**
     * The chance against a general-purpose library's normal distribution (Hipparchus), and the verdict against that chance:
     * clear is at least Φ(2) = 0.977250 sure. Seed 106.
     */
    @Test
    void theVerdictIsTheChanceOfANormalDistribution() {
        SplittableRandom random = new SplittableRandom(106);
        int[] seen = new int[3];
        for (int k = 0; k < 2000; k++) {
            double u = random.nextDouble(0.2, 3);
            double value = random.nextDouble(120, 134);
            Finding finding = of(Limit.HEEL_TO_TOE_MOST, value, u, 0);
            double chance = new NormalDistribution(value, u).cumulativeProbability(127);
            assertThat(finding.chanceWithin().orElseThrow()).isCloseTo(chance, within(1e-9));
            Verdict expected = chance >= 0.9772499 ? CLEARLY_WITHIN : chance <= 0.0227501 ? CLEARLY_BEYOND : TOO_CLOSE;
            assertThat(finding.verdict()).as("%s ± %s", value, u).isEqualTo(expected);
            seen[expected.ordinal()]++;
        }
        assertThat(seen).doesNotContain(0);
    }

    /** Φ(1), Φ(0), Φ(−2): the printed table of the normal distribution, four decimals. */
    @ParameterizedTest
    @CsvSource({"126, 0.8413", "127, 0.5", "129, 0.0228"})
    void theChanceIsTheTables(double mm, double printed) {
        assertThat(of(Limit.HEEL_TO_TOE_MOST, mm, 1, 0).chanceWithin().orElseThrow()).isCloseTo(printed, within(0.5e-4));
    }

    @Test
    void anExactValueHasNoChanceButOneOrNone() {
        assertThat(of(Limit.HEEL_TO_TOE_MOST, 127, 0, 0).chanceWithin().orElseThrow()).isEqualTo(1);
        assertThat(of(Limit.LONGER_THAN_DEEP, 0, 0, 0).chanceWithin().orElseThrow()).isZero();
    }

    /** The procedure may read up to 4 mm less: 1170 may be 1166, so it is not clearly past 1168.4; 1174.5 is. */
    @Test
    void whatTheProcedureMayReadLessIsNoClearMiss() {
        assertThat(of(Limit.LENGTH_MOST_LOCAL, 1170, 0.5, 0).verdict()).isEqualTo(CLEARLY_BEYOND);
        assertThat(of(Limit.LENGTH_MOST_LOCAL, 1170, 0.5, 4).verdict()).isEqualTo(TOO_CLOSE);
        assertThat(of(Limit.LENGTH_MOST_LOCAL, 1170, 0.5, 4).restsOnProcedure()).isTrue();
        assertThat(of(Limit.LENGTH_MOST_LOCAL, 1174.5, 0.5, 4).verdict()).isEqualTo(CLEARLY_BEYOND);
        assertThat(of(Limit.LENGTH_MOST_LOCAL, 1174.5, 0.5, 4).restsOnProcedure()).isFalse();
        assertThat(of(Limit.LENGTH_MOST_LOCAL, 1167.3, 0.5, 4).verdict()).isEqualTo(CLEARLY_WITHIN);
        assertThat(of(Limit.LENGTH_LEAST, 460, 0.5, 4).verdict()).as("may read 456 against 457.2").isEqualTo(TOO_CLOSE);
        assertThat(of(Limit.LENGTH_LEAST, 462.3, 0.5, 4).verdict()).isEqualTo(CLEARLY_WITHIN);
    }

    @Test
    void whatWasNotMeasuredIsNotJudged() {
        Finding finding = new Finding(Limit.VOLUME_MOST, Optional.empty(), Optional.of("read it"));
        assertThat(finding.verdict()).isEqualTo(NOT_MEASURED);
        assertThat(finding.verdictOfLimitAlone()).isEqualTo(NOT_MEASURED);
        assertThat(finding.margin()).isEmpty();
        assertThat(finding.chanceWithin()).isEmpty();
        assertThat(finding.restsOnProcedure()).isFalse();
    }

    @Test
    void aValueIsANumber() {
        assertThatThrownBy(() -> new RuledValue(Double.NaN, 0, 0, "")).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new RuledValue(1, -1, 0, "")).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new RuledValue(1, Double.NaN, 0, "")).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new RuledValue(1, 0, Double.NaN, "")).isInstanceOf(IllegalArgumentException.class);
    }
}
