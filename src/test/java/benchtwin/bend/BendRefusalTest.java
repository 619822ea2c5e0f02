package benchtwin.bend;

import static org.assertj.core.api.Assertions.assertThat;

import benchtwin.club.Adjust;
import benchtwin.club.AngleReading;
import benchtwin.club.Category;
import benchtwin.club.Head;
import benchtwin.club.HeadCondition;
import benchtwin.club.HeadMaterial;
import benchtwin.mechanics.Samples;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Heads that are never bent. The handbook's table of limits and its cautions; common practice, no source. */
class BendRefusalTest {

    private static Head head(HeadMaterial material, Adjust adjust, HeadCondition condition) {
        Head head = Samples.head("I", Category.IRON, AngleReading.EDGE, 34, 62.5, 5, 268, 30, material);
        return new Head(head.tag(), head.model(), head.category(), head.number(), head.hand(), head.angles(), head.offsetMm(),
            head.grind(), head.massG(), head.weighedWith(), head.bore(), head.seat(), material, adjust, head.ports(), head.hotMeltMaxG(),
            head.made(), head.bent(), head.mass(), head.size(), condition, head.keeping());
    }

    @ParameterizedTest
    @EnumSource(value = HeadMaterial.class, names = {"ALUMINIUM", "ZINC", "UNKNOWN"}, mode = EnumSource.Mode.EXCLUDE)
    void aSoundHeadOfMetalThatBendsIsBent(HeadMaterial material) {
        assertThat(BendRefusal.of(head(material, Adjust.BEND, HeadCondition.USED))).isEmpty();
    }

    @ParameterizedTest
    @EnumSource(HeadMaterial.class)
    void aCrackedHeadIsNeverBentWhateverItIsMadeOf(HeadMaterial material) {
        BendRefusal refusal = BendRefusal.of(head(material, Adjust.BEND, HeadCondition.CRACKED)).orElseThrow();
        assertThat(refusal.answered()).isFalse();
        assertThat(refusal.reason()).contains("cracked");
        assertThat(HoselLimits.of(head(material, Adjust.BEND, HeadCondition.CRACKED), 3)).isEqualTo(HoselLimits.NONE);
    }

    @ParameterizedTest
    @EnumSource(value = HeadMaterial.class, names = {"ALUMINIUM", "ZINC"})
    void zincAndAluminiumAreNeverBent(HeadMaterial material) {
        assertThat(BendRefusal.of(head(material, Adjust.BEND, HeadCondition.NEW)).orElseThrow().answered()).isFalse();
    }

    @Test
    void somebodyMayAnswerForAnUnknownMetalOnly() {
        assertThat(BendRefusal.of(head(HeadMaterial.UNKNOWN, Adjust.BEND, HeadCondition.NEW)).orElseThrow().answered()).isTrue();
        assertThat(BendRefusal.of(head(HeadMaterial.UNKNOWN, Adjust.FIXED, HeadCondition.NEW)).orElseThrow().answered()).isFalse();
        assertThat(HoselLimits.of(head(HeadMaterial.UNKNOWN, Adjust.BEND, HeadCondition.NEW), 1).uprightDeg()).isEqualTo(1);
    }
}
