package benchtwin.mechanics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import benchtwin.club.AngleReading;
import benchtwin.club.Quantity;
import java.util.Optional;
import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What must hold for the frequency of any shaft and club. */
class BeamPropertyTest {

    static LongStream seeds() {
        return LongStream.range(1, 21);
    }

    /** Accuracy asked: within 0.1 cpm for real shafts. Against an independent integration of the same equation. */
    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void agreesWithAnIndependentSolution(long seed) {
        Random random = new Random(seed);
        double free = 850 + 250 * random.nextDouble();
        double tip = 8 + 2 * random.nextDouble();
        double parallel = 200 * random.nextDouble();
        TaperedTube tube = new TaperedTube(tip, 15.2, parallel, 1168);
        double scale = 60 + 60 * random.nextDouble();
        double start = 0.05 + 0.02 * random.nextDouble();
        double slope = -2e-5 * random.nextDouble();
        TipBody body = new TipBody(3, 20, 400).with(190 + 120 * random.nextDouble(), 40 + 30 * random.nextDouble());
        Beam beam = Beam.of(free, s -> scale * tube.at(free - s), s -> start + slope * s, free - parallel);
        double reference = ShootingReference.cpm(free / 1000, x -> scale * tube.at(free - 1000 * x),
            x -> start + slope * 1000 * x, body);
        assertThat(beam.firstMode(body).cpm()).isCloseTo(reference, within(1e-3));
    }

    @Test
    void fourTimesTheStiffnessDoublesTheFrequency() {
        Beam one = Beam.of(1000, s -> 30, s -> 0.06);
        Beam four = Beam.of(1000, s -> 120, s -> 0.06);
        assertThat(four.firstMode(TipBody.point(205)).cpm())
            .isCloseTo(2 * one.firstMode(TipBody.point(205)).cpm(), within(1e-9));
    }

    /** The handbook's figures for a 46 in, 60 g, 255 cpm driver shaft: +11.5, +6.5 and −0.6 cpm. */
    @Test
    void trimsAndTipMassMoveTheFrequencyAsTheHandbookSays() {
        Assembly shaft = Samples.driverClub();
        double root = Stiffness.rootFromRaw(shaft);
        assertThat(rawCpm(shaft, 0, 0, 205) * root).isCloseTo(255, within(1e-9));
        assertThat(rawCpm(shaft, 25.4, 0, 205) * root - 255).isCloseTo(11.5, within(0.05));
        assertThat(rawCpm(shaft, 0, 25.4, 205) * root - 255).isCloseTo(6.5, within(0.05));
        assertThat(rawCpm(shaft, 0, 0, 206) * root - 255).isCloseTo(-0.6, within(0.05));
    }

    private static double rawCpm(Assembly assembly, double tipTrim, double buttCut, double tipMass) {
        double length = assembly.get(Input.SHAFT_LENGTH_MM);
        ShaftMass density = ShaftMass.of(length, assembly.get(Input.SHAFT_MASS_G), assembly.get(Input.SHAFT_BALANCE_MM));
        return CutClub.beam(assembly, density, buttCut + 127, length - tipTrim - buttCut - 127)
            .firstMode(TipBody.point(tipMass)).cpm();
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void aTipTrimAndAButtCutAlwaysRaiseTheFrequency(long seed) {
        Random random = new Random(seed);
        Assembly club = Assembler.of(Samples.driver(), Samples.driverShaft(225 + 60 * random.nextDouble(),
            20 * random.nextDouble(), 40 * random.nextDouble()), Optional.empty(), Optional.of(Samples.grip()));
        double root = Stiffness.rootFromRaw(club);
        double before = 0;
        for (double cut = 0; cut <= 50; cut += 3.175) {
            double cpm = clubCpm(club, new Setup(cut, 0, 0, 0, 1, 0, 0, Setup.AS_READ), root);
            assertThat(cpm).isGreaterThan(before);
            before = cpm;
        }
        before = 0;
        for (double cut = 0; cut <= 60; cut += 1) {
            double cpm = clubCpm(club, new Setup(0, cut, 0, 0, 1, 0, 0, Setup.AS_READ), root);
            assertThat(cpm).isGreaterThan(before);
            before = cpm;
        }
    }

    private static double clubCpm(Assembly club, Setup setup, double root) {
        return ClubModel.predict(club, setup, FrequencyCondition.BARE, root, AngleReading.SOLED)[
            Quantity.FREQUENCY.ordinal()];
    }

    /** The stiffness scaled to a club's own reading gives that reading back, over a grip and with any clamp. */
    @Test
    void theScaleGivesItsOwnReadingBack() {
        Assembly club = Samples.driverClub();
        Setup setup = Setup.plain(1, 3);
        FrequencyCondition condition = new FrequencyCondition(120, true);
        double root = Stiffness.rootFromClub(club, setup, condition, 247.3);
        assertThat(ClubModel.predict(club, setup, condition, root, AngleReading.SOLED)[Quantity.FREQUENCY.ordinal()])
            .isCloseTo(247.3, within(1e-6));
    }

    /** What the search relies on: tangents at two masses lie below λ between them, the chord above. */
    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void tangentsAndChordBracketTheMode(long seed) {
        Random random = new Random(seed);
        CutClub club = new CutClub(Samples.driverClub(), Setup.plain(1, 0), 127);
        double cg = club.headCgMm(58) + 6 * random.nextDouble() - 3;
        double beyond = club.beyondHoselMm(cg);
        double most = 4 + 25 * random.nextDouble();
        Mode light = club.unitMode(cg, 0);
        Mode heavy = club.unitMode(cg, most);
        for (double grams = 0; grams <= most; grams += most / 10) {
            double exact = club.unitMode(cg, grams).lambda();
            double below = Math.max(tangent(light, grams, beyond), tangent(heavy, grams - most, beyond));
            double above = light.lambda() + (heavy.lambda() - light.lambda()) * grams / most;
            assertThat(below).isLessThanOrEqualTo(exact * (1 + 1e-10));
            assertThat(above).isGreaterThanOrEqualTo(exact * (1 - 1e-10));
            assertThat(Mode.cpm(below) - Mode.cpm(above)).as("width of the bracket, unit-scale cpm × 10 is about cpm")
                .isLessThan(0.01);
        }
    }

    private static double tangent(Mode mode, double grams, double beyond) {
        return mode.lambdaTangent(grams, grams * beyond, grams * beyond * beyond);
    }

    /** Rayleigh's principle: a little more stiffness in one stretch raises the frequency by half its share of the energy. */
    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void energySharesAreTheSlopesOfTheFrequency(long seed) {
        Random random = new Random(seed);
        double corner = 200 + 600 * random.nextDouble();
        TipBody body = TipBody.point(150 + 150 * random.nextDouble());
        double step = 1e-4;
        Beam.Bending bending = stiffened(corner, 0).bending(body);
        double share = 0;
        double all = 0;
        for (int k = 0; k < bending.energyShares().length; k++) {
            all += bending.energyShares()[k];
            share += k < PanelRule.NODES ? bending.energyShares()[k] : 0;   // the first panel ends at the corner
        }
        double slope = Math.log(stiffened(corner, step).firstMode(body).cpm() / stiffened(corner, -step).firstMode(body).cpm())
            / (2 * step);
        assertThat(all).isCloseTo(1, within(1e-12));
        assertThat(share / 2).isCloseTo(slope, within(1e-4));
    }

    private static Beam stiffened(double cornerMm, double by) {
        // each panel keeps its own side of the corner: a place on the corner itself counts half a step either way
        return Beam.of(1000, s -> (20 + 0.04 * s) * (s < cornerMm - 1e-9 ? 1 + by : s > cornerMm + 1e-9 ? 1 : 1 + by / 2),
            s -> 0.06, cornerMm);
    }

    /** Twist of a uniform bar is proportional to its length: textbook. */
    @Test
    void torqueOfAUniformBarFollowsItsLength() {
        Beam whole = Beam.of(1000, s -> 40, s -> 0.06);
        Beam shorter = Beam.of(900, s -> 40, s -> 0.06);
        assertThat(shorter.complianceIntegral() / whole.complianceIntegral()).isCloseTo(0.9, within(1e-12));
    }

    @Test
    void aTipTrimTakesTheMostTwistAway() {
        Assembly club = Samples.driverClub();
        double whole = new CutClub(club, Setup.plain(1, 0), 127).torqueDeg();
        double tip = new CutClub(club, new Setup(25.4, 0, 0, 0, 1, 0, 0, Setup.AS_READ), 127).torqueDeg();
        double butt = new CutClub(club, new Setup(0, 25.4, 0, 0, 1, 0, 0, Setup.AS_READ), 127).torqueDeg();
        assertThat(whole).isEqualTo(4.5);
        assertThat(tip).isLessThan(butt);
        assertThat(butt).isLessThan(whole);
    }
}
