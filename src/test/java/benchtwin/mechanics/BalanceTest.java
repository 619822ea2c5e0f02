package benchtwin.mechanics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import benchtwin.club.AngleReading;
import benchtwin.club.Category;
import benchtwin.club.Quantity;
import benchtwin.measure.SwingWeightText;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Mass, balance point, swing weight and inertia, worked by hand and against the shop's rules of thumb. */
class BalanceTest {

    private static final double ARITHMETIC = 1e-9;

    private static double[] predict(Assembly assembly, Setup setup) {
        return ClubModel.predict(assembly, setup, FrequencyCondition.BARE, Double.NaN, assembly.reading());
    }

    private static double of(double[] values, Quantity quantity) {
        return values[quantity.ordinal()];
    }

    /** D0 is 213.5 oz·in about 14 in: common practice, no source. 1 oz at 227.5 in is 213.5 oz·in. */
    @Test
    void dZeroIsTwoHundredAndThirteenAndAHalfOunceInches() {
        double ounce = 28.349523125;
        double moment = ounce * (213.5 + 14) * 25.4;
        assertThat(SwingWeightText.format(SwingWeight.points(ounce, moment))).contains("D0.0");
        assertThat(SwingWeight.momentOzIn(ounce, moment, SwingWeight.FULCRUM_12_MM)).isCloseTo(215.5, within(ARITHMETIC));
    }

    /**
     * Worked by hand: shaft 60 g uniform over 1168.4 mm from x = 3, grip 50 g at 106.8 mm, head 200 g at its centre of
     * gravity, adhesive 1 g half-way down the 32 mm insertion, ferrule 1.5 g at the hosel top (x = 1139.4).
     * L = 3 + 1168.4 + 32 = 1203.4. Head: 1203.4 − 40 + (40 cos 58° + 38) cos 58° + (40 sin 58° − 28) sin 58° = 1199.792.
     */
    @Test
    void aDriverAddedUpByHand() {
        double head = 1203.4 - 40 + (40 * Math.cos(Math.toRadians(58)) + 38) * Math.cos(Math.toRadians(58))
            + (40 * Math.sin(Math.toRadians(58)) - 28) * Math.sin(Math.toRadians(58));
        double moment = 60 * (3 + 1168.4 / 2) + 50 * 106.8 + 200 * head + 1 * (1139.4 + 16) + 1.5 * 1139.4;
        double[] values = predict(Samples.driverClub(), Setup.plain(0, 0));
        assertThat(of(values, Quantity.TOTAL_MASS)).isCloseTo(312.5, within(ARITHMETIC));
        assertThat(of(values, Quantity.BALANCE_POINT)).isCloseTo(moment / 312.5, within(1e-6));
        assertThat(of(values, Quantity.LENGTH)).isCloseTo(1203.4, within(ARITHMETIC));
    }

    /** Without a bend the head's centre of gravity lies near the ground point along the axis: the handbook's remark. */
    @ParameterizedTest
    @CsvSource({"DRIVER, 58", "IRON, 62.5"})
    void theDefaultCentreOfGravityLiesNearTheGroundPoint(Category category, double lieDeg) {
        CutClub club = new CutClub(category == Category.DRIVER ? Samples.driverClub() : Samples.ironClub(),
            Setup.plain(0, 0), 127);
        assertThat(club.headCgMm(lieDeg)).isCloseTo(club.lengthMm(lieDeg), within(6.0));
    }

    @Test
    void swingWeightIsLinearInEveryMass() {
        for (Factor factor : Samples.driverClub().factors()) {
            if (!factor.key().endsWith(":mass")) {
                continue;
            }
            double[] at = new double[3];
            for (int k = 0; k < 3; k++) {
                at[k] = of(predict(Samples.driverClub().moved(factor, 7.0 * k), Setup.plain(1, 0)), Quantity.SWING_WEIGHT);
            }
            assertThat(at[2] - at[1]).as(factor.label()).isCloseTo(at[1] - at[0], within(1e-9)).isNotZero();
        }
        double one = of(predict(Samples.driverClub(), Setup.plain(1, 2)), Quantity.SWING_WEIGHT);
        double two = of(predict(Samples.driverClub(), Setup.plain(1, 4)), Quantity.SWING_WEIGHT);
        double none = of(predict(Samples.driverClub(), Setup.plain(1, 0)), Quantity.SWING_WEIGHT);
        assertThat(two - one).isCloseTo(one - none, within(1e-9));
    }

    /** Rules of thumb (common practice, no source), inside the bands that the handbook states. */
    @ParameterizedTest
    @CsvSource({"true", "false"})
    void theRulesOfThumbHoldInTheirBands(boolean wood) {
        Assembly club = wood ? Assembler.of(Samples.driver(), Samples.driverShaft(255, 0, 54), Optional.empty(),
            Optional.of(Samples.grip())) : Samples.ironClub();   // a 45 1/4 in driver
        double lie = wood ? 58 : 62.5;
        double now = of(predict(club, Setup.plain(1, 0)), Quantity.SWING_WEIGHT);
        double twoGrams = of(predict(club, Setup.plain(1, 2)), Quantity.SWING_WEIGHT) - now;
        assertThat(twoGrams).as("+2 g in the head").isBetween(0.8, 1.3);
        double shorter = of(predict(club, new Setup(0, 12.7, 0, 0, 1, 0, 0, Setup.AS_READ)), Quantity.SWING_WEIGHT);
        double halfInch = now - shorter;
        assertThat(halfInch).as("+½ in").isBetween(2.2, 3.8);
        double grip = of(predict(club.moved(factor(club, "grip:G:mass"), 5), Setup.plain(1, 0)), Quantity.SWING_WEIGHT) - now;
        assertThat(grip).as("+5 g in the grip").isBetween(-1.1, -0.9);
        HoselTilt flat = wood ? HoselTilt.forWood(lie, lie - 4, 0) : HoselTilt.forIron(lie, lie - 4, 0);
        double flatter = of(predict(club, Setup.plain(1, 0).aimed(new Setup.Tilted(flat))), Quantity.SWING_WEIGHT) - now;
        assertThat(flatter).as("4° flatter").isBetween(0.4, 0.8);
    }

    private static Factor factor(Assembly club, String key) {
        return club.factors().stream().filter(f -> f.key().equals(key)).findFirst().orElseThrow();
    }

    /** Style example, worked by hand: 360 g balanced at 780 mm and 48 g at 110 mm balance at 701 mm. */
    @Test
    void aGripPullsTheBalancePointBack() {
        double moment = 360 * 780 + 48 * 110;
        assertThat(moment / (360 + 48)).isCloseTo(701, within(0.5));
        ShaftMass bar = ShaftMass.of(1560, 360, 780);
        assertThat((bar.momentGMm(0, 1560, 0) + 48 * 110) / (bar.massG(0, 1560) + 48)).isCloseTo(701, within(0.5));
    }

    /** A 7-iron is near 2,650 kg·cm² and a driver near 2,900: the handbook's figures. Ours are of 0.2 to 1 in longer clubs. */
    @Test
    void inertiaAboutTheButtIsOfTheRightSize() {
        Assembly driver = Assembler.of(Samples.driver(), Samples.driverShaft(255, 0, 46), Optional.empty(),
            Optional.of(Samples.grip()));
        assertThat(of(predict(driver, Setup.plain(1, 0)), Quantity.BUTT_INERTIA)).isBetween(2800.0, 3050.0);
        assertThat(of(predict(Samples.ironClub(), Setup.plain(1, 0)), Quantity.BUTT_INERTIA)).isBetween(2550.0, 2900.0);
    }

    /** A linear density fitted to mass and balance point gives both back, and a cut takes away what was there. */
    @ParameterizedTest
    @CsvSource({"400", "500", "620"})
    void theFittedDensityGivesMassAndBalanceBack(double balanceMm) {
        ShaftMass shaft = ShaftMass.of(1000, 60, balanceMm);
        assertThat(shaft.massG(0, 1000)).isCloseTo(60, within(ARITHMETIC));
        assertThat(shaft.momentGMm(0, 1000, 0) / 60).isCloseTo(balanceMm, within(1e-9));
        assertThat(shaft.massG(0, 30) + shaft.massG(30, 1000)).isCloseTo(60, within(ARITHMETIC));
        assertThat(shaft.at(0)).isPositive();
        assertThat(shaft.at(1000)).isPositive();
    }

    @Test
    void aMissingMassIsMissingAndNeverZero() {
        Assembly noGrip = Assembler.of(Samples.driver(), Samples.driverShaft(255, 0, 0), Optional.empty(), Optional.empty());
        double[] values = ClubModel.predict(noGrip, Setup.plain(1, 0), FrequencyCondition.BARE,
            Stiffness.rootFromRaw(noGrip), AngleReading.SOLED);
        assertThat(of(values, Quantity.SWING_WEIGHT)).isNaN();
        assertThat(of(values, Quantity.TOTAL_MASS)).isNaN();
        assertThat(of(values, Quantity.LENGTH)).isCloseTo(1203.4, within(ARITHMETIC));
    }
}
