package benchtwin.match;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import benchtwin.samples.Norris;
import org.junit.jupiter.api.Test;

/** A fitted line against certified values. */
class FittedLinePublishedTest {

    /** Certified to fifteen digits; the data, up to 1000, are held to about 1e-13 and the sums of 36 lose a digit or two. */
    private static final double ARITHMETIC = 1e-11;

    @Test
    void norrisOfTheStatisticalReferenceDatasets() {
        FittedLine line = FittedLine.through(Norris.X, Norris.Y);
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
