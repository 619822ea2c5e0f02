package benchtwin.bend;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import benchtwin.club.HeadMaterial;
import benchtwin.samples.Norris;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Springback against figures from outside. */
class SpringbackPublishedTest {

    /** Moves every value as far from 0 as a bend that got something is; a line's slope does not see it. */
    private static final double LIFTED = 1000;
    /** A prior so wide that it says nothing, but for the digits it costs: 1e6 squared against 1e-2 leaves eight. */
    private static final SpringbackPrior WIDE = new SpringbackPrior(0, 1e3, 0, 1e5);

    @Test
    void norrisWithAPriorThatSaysNothing() {
        Springback known = Springback.of(WIDE);
        for (int k = 0; k < Norris.X.length; k++) {
            known = known.after(new BendTrial(Norris.X[k], Norris.Y[k] + LIFTED, 0.05, Working.LIVE));
        }
        assertThat(known.gain()).isCloseTo(1.00211681802045, within(1e-7));
        assertThat(-known.lossDeg() - LIFTED).isCloseTo(-0.262323073774029, within(1e-4));
        assertThat(known.trials()).isEqualTo(36);
    }

    /**
     * Kalpakjian and Schmid, Manufacturing Engineering and Technology, the worked example on springback: 20-gauge steel sheet
     * bent to 0.5 in, yield 40,000 psi, modulus 29 million psi, thickness 0.0359 in, gives R_f 0.531 in. Memory: the formula's
     * source is the handbook's, the example was not looked up. Any units do, as long as they agree.
     */
    @Test
    void theTextbooksSheetOfSteel() {
        assertThat(0.5 / ElasticRecovery.staying(0.5, 40_000, 29e6, 0.0359)).isCloseTo(0.531, within(0.5e-3));
    }

    /** The handbook's table: a 13 mm hosel bent over 15 mm by 2°; yields and moduli from memory, as there. */
    @ParameterizedTest
    @CsvSource({"350, 205000, 0.83", "650, 200000, 0.68", "1100, 196000, 0.47", "850, 114000, 0.32"})
    void theHandbooksFourMetals(double yieldMpa, double elasticMpa, double stays) {
        assertThat(ElasticRecovery.ofHosel(15, 2, yieldMpa, elasticMpa, 13)).isCloseTo(stays, within(0.5e-2));
    }

    /** The priors of loss are what the formula gives back of 2°, to the 0.05° they are rounded to. */
    @ParameterizedTest
    @CsvSource({"CARBON_STEEL, 350, 205000", "STAINLESS_431, 650, 200000", "STAINLESS_17_4, 1100, 196000", "TITANIUM, 850, 114000"})
    void thePriorsAgreeWithTheFormula(HeadMaterial material, double yieldMpa, double elasticMpa) {
        double lost = 2 * (1 - ElasticRecovery.ofHosel(15, 2, yieldMpa, elasticMpa, 13));
        assertThat(SpringbackPrior.of(material).lossDeg()).isCloseTo(lost, within(0.025));
    }

    @Test
    void aBarBentLessThanItsYieldGivesEverythingBack() {
        assertThat(ElasticRecovery.staying(1, 0.5, 1, 1)).isZero();
        assertThat(ElasticRecovery.staying(2, 0.5, 1, 1)).isZero();
        assertThat(ElasticRecovery.staying(0.99, 0.5, 1, 1)).isPositive();
    }
}
