package benchtwin.samples;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import benchtwin.club.Category;
import benchtwin.club.ShaftMaterial;
import benchtwin.club.TipKind;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** The bench that the sample shafts were read on, on a rod whose answers are printed. */
class ShaftGaugeTest {

    private static final double LENGTH_MM = 1000;
    private static final double MASS_G = 60;
    /** The same all along: tip as thick as the butt, stiffness 1 up to scale. */
    private static final ShaftGauge ROD = new ShaftGauge(new ShaftLine("rod", ShaftMaterial.STEEL,
        Set.of(Category.IRON), new ShaftLine.Tip(0.6, TipKind.PARALLEL, 3), 0.6, 0.5, new ShaftLine.Profile(1, 1, 1),
        List.of()), LENGTH_MM, MASS_G, LENGTH_MM / 2);

    /** ω·√(μL⁴/EI). */
    private static double squareOfBetaL(double tipMassG) {
        return ROD.frequency(0, LENGTH_MM, tipMassG) * Math.sqrt(MASS_G / LENGTH_MM * Math.pow(LENGTH_MM, 4));
    }

    /** Thomson, Theory of Vibration with Applications, app. D, clamped-free: 3.5160; the grid costs a few of the last. */
    @Test
    void aBareUniformRodReadsThePrintedFirstMode() {
        assertThat(squareOfBetaL(0)).isCloseTo(3.5160, within(3e-4));
    }

    /** Mathematical Problems in Engineering 2017, art. 1568019, table 1, end mass equal to the beam's: 1.557298. */
    @Test
    void aUniformRodWithItsOwnMassOnTheTipReadsThePrintedFirstMode() {
        assertThat(squareOfBetaL(MASS_G)).isCloseTo(1.557298, within(1e-4));
    }

    /** Worked by hand: 60 g a metre balanced at half: a stretch from 200 to 700 mm weighs 30 g and balances at 250 mm. */
    @Test
    void aStretchOfAUniformRodWeighsItsShareAndBalancesInTheMiddle() {
        assertThat(ROD.massG(200, 700)).isCloseTo(30, within(1e-9));
        assertThat(ROD.balanceMm(200, 700)).isCloseTo(250, within(1e-9));
    }
}
