package benchtwin.mechanics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import benchtwin.club.Shaft;
import java.util.List;
import java.util.Optional;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Trims of a uniform tube against the exact solution for the shorter beam. */
class ExactTrimTest {

    /** Accuracy asked: 0.05 % against exact solutions. */
    private static final Percentage ASKED = Percentage.withPercentage(0.05);
    private static final double STIFFNESS_NM2 = 40;
    private static final double DENSITY = ReadShafts.MASS_G / ReadShafts.LENGTH_MM;
    private static final double FREE = ReadShafts.LENGTH_MM - 127;

    private static Shaft uniform() {
        double cpm = UniformCantilever.cpm(STIFFNESS_NM2, DENSITY, FREE, TipBody.point(205));
        return ReadShafts.shaft(12, 12, 0, 0.5, List.of(ReadShafts.bare(cpm, FREE)));
    }

    private static Assembly club() {
        return Assembler.of(Samples.driver(), uniform(), Optional.empty(), Optional.of(Samples.grip()));
    }

    /** The reference itself: printed 1.557298 for an end mass equal to the beam's, 3.5160 without one. */
    @Test
    void theReferenceGivesThePrintedValues() {
        assertThat(Math.pow(UniformCantilever.beta(0.06, 1000, TipBody.point(60)), 2)).isCloseTo(1.557298, within(0.5e-6));
        assertThat(Math.pow(UniformCantilever.beta(0.06, 1000, TipBody.NONE), 2)).isCloseTo(3.5160, within(0.5e-4));
    }

    @Test
    void theStiffnessIsFoundFromOneReading() {
        assertThat(Math.pow(Stiffness.rootFromRaw(club()), 2)).isCloseTo(STIFFNESS_NM2, ASKED);
    }

    /** A raw shaft, trimmed, with the point mass of the gauge on it: the stretch of the shaft that {@link CutClub} cuts out. */
    @ParameterizedTest(name = "tip {0} mm, butt {1} mm, {2} g")
    @CsvSource({"0, 0, 205", "25.4, 0, 205", "0, 25.4, 205", "12.7, 50.8, 205", "76.2, 101.6, 250", "50.8, 0, 0"})
    void aTrimmedRawShaftReadsWhatTheShorterBeamDoes(double tipTrim, double buttCut, double tipMass) {
        Assembly club = club();
        ShaftMass mass = ShaftMass.of(ReadShafts.LENGTH_MM, ReadShafts.MASS_G, ReadShafts.LENGTH_MM / 2);
        double free = FREE - tipTrim - buttCut;
        double ours = CutClub.beam(club, mass, buttCut + 127, free).firstMode(TipBody.point(tipMass)).cpm()
            * Stiffness.rootFromRaw(club);
        assertThat(ours).isCloseTo(UniformCantilever.cpm(STIFFNESS_NM2, DENSITY, free, TipBody.point(tipMass)), ASKED);
    }

    /**
     * The same in a club: 32 mm are in the hosel and move with the head as one body, added up here by hand: shaft in the hosel,
     * 1 g of adhesive half-way down, 1.5 g of ferrule at the top, the head's 200 g and what is put in it.
     */
    @ParameterizedTest(name = "tip {0} mm, butt {1} mm, +{2} g")
    @CsvSource({"0, 0, 0", "25.4, 0, 0", "0, 25.4, 0", "38.1, 60.3, 8"})
    void aTrimmedShaftInAClubReadsWhatTheShorterBeamDoes(double tipTrim, double buttCut, double addedG) {
        Assembly club = club();
        CutClub cut = new CutClub(club, new Setup(tipTrim, buttCut, 0, 0, 1, 0, 0, Setup.AS_READ), 127);
        double cg = cut.headCgMm(58);
        double top = 3 + ReadShafts.LENGTH_MM - tipTrim - buttCut - 32;
        double inHosel = DENSITY * 32;
        double beyond = cg - top;
        double head = 200 + addedG;
        TipBody body = new TipBody(inHosel + 1 + 1.5 + head, inHosel * 16 + 1 * 16 + head * beyond,
            inHosel * 32 * 32 / 3 + 1 * 16 * 16 + head * beyond * beyond);
        double exact = UniformCantilever.cpm(STIFFNESS_NM2, DENSITY, FREE - tipTrim - buttCut - 32, body);
        assertThat(cut.unitMode(cg, addedG).cpm() * Stiffness.rootFromRaw(club)).isCloseTo(exact, ASKED);
    }
}
