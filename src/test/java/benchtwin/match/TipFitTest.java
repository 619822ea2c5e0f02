package benchtwin.match;

import static org.assertj.core.api.Assertions.assertThat;

import benchtwin.club.StepKind;
import benchtwin.club.TipKind;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Tips and bores. Bounds are memory: 0.05 to 0.25 mm of play bonds, more takes a shim, less takes reaming. */
class TipFitTest {

    @ParameterizedTest
    @CsvSource({"8.55, ", "8.75, ", "8.76, SHIM", "9.40, SHIM", "8.54, REAM", "8.25, REAM"})
    void playDecidesTheStep(double boreMm, StepKind step) {
        TipFit.Fit fit = TipFit.of(8.5, TipKind.PARALLEL, boreMm, TipKind.PARALLEL);
        assertThat(fit.fits()).isTrue();
        assertThat(fit.step().orElse(null)).isEqualTo(step);
    }

    @ParameterizedTest
    @CsvSource({"9.6", "8.1"})
    void whatNoShimFillsAndNoReamerOpensDoesNotFit(double boreMm) {
        assertThat(TipFit.of(8.5, TipKind.PARALLEL, boreMm, TipKind.PARALLEL).fits()).isFalse();
    }

    @Test
    void aParallelTipInATaperBoreIsReamed() {
        assertThat(TipFit.of(9.0, TipKind.PARALLEL, 9.1, TipKind.TAPER).step()).contains(StepKind.REAM);
    }

    @Test
    void anOverHoselShaftGoesOnlyOverAHosel() {
        assertThat(TipFit.of(9.5, TipKind.OVER_HOSEL, 9.4, TipKind.OVER_HOSEL).fits()).isTrue();
        assertThat(TipFit.of(9.5, TipKind.OVER_HOSEL, 9.6, TipKind.PARALLEL).fits()).isFalse();
    }
}
