package benchtwin.match;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** A fitted line against certified values. */
class FittedLinePublishedTest {

    /** NIST Statistical Reference Datasets, linear regression, "Norris"; typed from public test suites, which agree. */
    private static final double[] NORRIS_X = {0.2, 337.4, 118.2, 884.6, 10.1, 226.5, 666.3, 996.3, 448.6, 777.0, 558.2, 0.4,
        0.6, 775.5, 666.9, 338.0, 447.5, 11.6, 556.0, 228.1, 995.8, 887.6, 120.2, 0.3, 0.3, 556.8, 339.1, 887.2, 999.0, 779.0,
        11.1, 118.3, 229.2, 669.1, 448.9, 0.5};
    private static final double[] NORRIS_Y = {0.1, 338.8, 118.1, 888.0, 9.2, 228.1, 668.5, 998.5, 449.1, 778.9, 559.2, 0.3,
        0.1, 778.1, 668.8, 339.3, 448.9, 10.8, 557.7, 228.3, 998.0, 888.8, 119.6, 0.3, 0.6, 557.6, 339.3, 888.0, 998.5, 778.9,
        10.2, 117.6, 228.9, 668.4, 449.2, 0.2};
    /** Certified to fifteen digits; the data, up to 1000, are held to about 1e-13 and the sums of 36 lose a digit or two. */
    private static final double ARITHMETIC = 1e-11;

    @Test
    void norrisOfTheStatisticalReferenceDatasets() {
        FittedLine line = FittedLine.through(NORRIS_X, NORRIS_Y);
        assertThat(line.slope()).isCloseTo(1.00211681802045, within(ARITHMETIC));
        assertThat(line.at(0)).isCloseTo(-0.262323073774029, within(ARITHMETIC));
    }

    @Test
    void aLineNeedsTwoPlacesAndAValueForEach() {
        assertThatIllegalArgumentException().isThrownBy(() -> FittedLine.through(new double[] {37, 37}, new double[] {1, 2}))
            .withMessage("a line needs two different places");
        assertThatIllegalArgumentException().isThrownBy(() -> FittedLine.through(new double[] {37}, new double[] {1, 2}))
            .withMessage("1 places and 2 values make no line");
    }
}
