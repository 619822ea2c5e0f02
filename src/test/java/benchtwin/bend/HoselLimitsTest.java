package benchtwin.bend;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import benchtwin.club.Adjust;
import benchtwin.club.AngleReading;
import benchtwin.club.BendHistory;
import benchtwin.club.Category;
import benchtwin.club.Head;
import benchtwin.club.HeadCondition;
import benchtwin.club.HeadMaterial;
import benchtwin.club.MadeAngles;
import benchtwin.mechanics.HoselTilt;
import benchtwin.mechanics.Samples;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** What a hosel has left. Limits are memory: the handbook's table. */
class HoselLimitsTest {

    private static Head iron(HeadMaterial material, Adjust adjust, HeadCondition condition, MadeAngles made,
                             BendHistory bent) {
        Head head = Samples.head("I", Category.IRON, AngleReading.EDGE, 34, 62.5, 5, 268, 30, material);
        return new Head(head.tag(), head.model(), head.category(), head.number(), head.hand(), head.angles(),
            head.offsetMm(), head.grind(), head.massG(), head.weighedWith(), head.bore(), head.seat(), material, adjust,
            head.ports(), head.hotMeltMaxG(), made, bent, head.mass(), head.size(), condition, head.keeping());
    }

    private static OptionalDouble of(double value) {
        return OptionalDouble.of(value);
    }

    @ParameterizedTest
    @CsvSource({"CARBON_STEEL, 3", "STAINLESS_431, 3", "STAINLESS_SOFT, 3", "STAINLESS_17_4, 2", "TITANIUM, 1.5",
        "HOLLOW, 1"})
    void aFreshHeadHasItsMaterialsLimitInEveryDirection(HeadMaterial material, double limit) {
        HoselLimits limits = HoselLimits.of(iron(material, Adjust.BEND, HeadCondition.NEW, MadeAngles.UNKNOWN,
            new BendHistory(of(0), of(0), of(0), of(0))));
        assertThat(limits).isEqualTo(new HoselLimits(limit, limit, limit, limit, false));
        assertThat(limits.allow(new HoselTilt(limit, -limit))).isTrue();
        assertThat(limits.allow(new HoselTilt(limit + 0.01, 0))).isFalse();
        assertThat(limits.allow(new HoselTilt(0, -limit - 0.01))).isFalse();
    }

    @ParameterizedTest
    @EnumSource(value = HeadMaterial.class, names = {"ALUMINIUM", "ZINC", "UNKNOWN"})
    void someMetalsAreNeverBent(HeadMaterial material) {
        assertThat(HoselLimits.of(iron(material, Adjust.BEND, HeadCondition.NEW, MadeAngles.UNKNOWN,
            BendHistory.UNRECORDED))).isEqualTo(HoselLimits.NONE);
    }

    @Test
    void crackedAndFixedHeadsAreNeverBent() {
        assertThat(HoselLimits.of(iron(HeadMaterial.CARBON_STEEL, Adjust.BEND, HeadCondition.CRACKED,
            MadeAngles.UNKNOWN, BendHistory.UNRECORDED))).isEqualTo(HoselLimits.NONE);
        assertThat(HoselLimits.of(iron(HeadMaterial.CARBON_STEEL, Adjust.FIXED, HeadCondition.NEW, MadeAngles.UNKNOWN,
            BendHistory.UNRECORDED))).isEqualTo(HoselLimits.NONE);
    }

    @Test
    void bendingBackUsesMetalToo() {
        HoselLimits limits = HoselLimits.of(iron(HeadMaterial.STAINLESS_17_4, Adjust.BEND, HeadCondition.USED,
            MadeAngles.UNKNOWN, new BendHistory(of(1.2), of(1.2), of(0), of(2.5))));
        assertThat(limits.uprightDeg()).isCloseTo(0.8, within(1e-12));
        assertThat(limits.flatDeg()).isCloseTo(0.8, within(1e-12));
        assertThat(limits.backDeg()).isZero();
    }

    /** Without a record the net change since the head was made stands in, and is marked: made at 61.0°, reads 62.5°. */
    @Test
    void theChangeSinceMadeStandsInForAMissingHistory() {
        HoselLimits limits = HoselLimits.of(iron(HeadMaterial.CARBON_STEEL, Adjust.BEND, HeadCondition.USED,
            new MadeAngles(of(34), of(61), OptionalDouble.empty()), BendHistory.UNRECORDED));
        assertThat(limits.historyAssumed()).isTrue();
        assertThat(limits.uprightDeg()).isCloseTo(1.5, within(1e-9));
        assertThat(limits.flatDeg()).isEqualTo(3);
    }
}
