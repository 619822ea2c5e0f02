package benchtwin.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import benchtwin.club.AngleReading;
import benchtwin.club.Category;
import benchtwin.club.Hand;
import benchtwin.club.Head;
import benchtwin.club.HeadMaterial;
import benchtwin.club.HeadSize;
import benchtwin.club.LengthMethod;
import benchtwin.club.MassProperties;
import benchtwin.club.Quantity;
import benchtwin.measure.Reading;
import benchtwin.mechanics.Samples;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Which limits a club is held against, and by what. */
class RuledClubTest {

    private static final Head PUTTER = Samples.head("P", Category.PUTTER, AngleReading.EDGE, 3, 71, 0, 350, 60, HeadMaterial.CARBON_STEEL);

    private static Head sized(Head head, Hand hand) {
        return new Head(head.tag(), head.model(), head.category(), head.number(), hand, head.angles(), head.offsetMm(), head.grind(),
            head.massG(), head.weighedWith(), head.bore(), head.seat(), head.material(), head.adjust(), head.ports(),
            head.hotMeltMaxG(), head.made(), head.bent(), new MassProperties(Optional.empty(), Optional.empty(), Optional.empty(),
                Samples.read(5000, 240), Samples.read(455, 2), Samples.read(245, 3)),
            new HeadSize(Samples.read(121, 0.5), Samples.read(117, 0.5), Samples.read(64, 0.5), Samples.read(90, 0.5)),
            head.condition(), head.keeping());
    }

    private static RuledClub.Readings read(double lengthMm, LengthMethod method, Double loftDeg, Double lieDeg) {
        return new RuledClub.Readings(Samples.read(lengthMm, 0.8), method, Optional.ofNullable(loftDeg).map(d -> Reading.of(d, 0.2)),
            Optional.ofNullable(lieDeg).map(d -> Reading.of(d, 0.2)));
    }

    private static Finding of(RuledClub club, Limit limit) {
        return club.findings().stream().filter(finding -> finding.limit() == limit).findFirst().orElseThrow();
    }

    private static List<Limit> limits(RuledClub club) {
        return club.findings().stream().map(Finding::limit).toList();
    }

    @Test
    void aPutterIsExceptedFromBothGreatestLengthsAndNothingElseFromTheLeast() {
        // published: Equipment Rules Part 2, 1c; Model Local Rule G-10: putters excepted from 48 and from 46 inches
        RuledClub putter = RuledClub.recorded(Category.PUTTER, false, read(1300, LengthMethod.AXIS, 3.0, 71.0), Optional.of(PUTTER));
        assertThat(limits(putter)).containsExactly(Limit.LENGTH_LEAST, Limit.PUTTER_LOFT_LEAST, Limit.PUTTER_LOFT_MOST,
            Limit.SHAFT_OFF_VERTICAL_LEAST, Limit.PUTTER_NECK_MOST);
        assertThat(putter.findings()).extracting(Finding::verdict).doesNotContain(Verdict.CLEARLY_BEYOND);
        RuledClub driver = RuledClub.recorded(Category.DRIVER, true, read(1300, LengthMethod.AXIS, 9.0, 58.0), Optional.empty());
        assertThat(of(driver, Limit.LENGTH_MOST).verdict()).isEqualTo(Verdict.CLEARLY_BEYOND);
        assertThat(of(driver, Limit.LENGTH_MOST_LOCAL).verdict()).isEqualTo(Verdict.CLEARLY_BEYOND);
        RuledClub iron = RuledClub.recorded(Category.IRON, false, read(440, LengthMethod.AXIS, 30.0, 60.0), Optional.empty());
        assertThat(limits(iron)).containsExactly(Limit.LENGTH_LEAST, Limit.LENGTH_MOST, Limit.LENGTH_MOST_LOCAL);
        assertThat(of(iron, Limit.LENGTH_LEAST).verdict()).isEqualTo(Verdict.CLEARLY_BEYOND);
    }

    @Test
    void aPuttersLengthRunsAlongTheAxisAndItsShaftLeansByWhatItsLieLeaves() {
        RuledClub putter = RuledClub.recorded(Category.PUTTER, false, read(870, LengthMethod.AXIS, -16.0, 80.1), Optional.of(PUTTER));
        assertThat(of(putter, Limit.LENGTH_LEAST).value().orElseThrow().value()).isEqualTo(870);
        assertThat(of(putter, Limit.LENGTH_LEAST).value().orElseThrow().mayReadLess()).isZero();
        assertThat(of(putter, Limit.PUTTER_LOFT_LEAST).verdict()).isEqualTo(Verdict.CLEARLY_BEYOND);
        assertThat(of(putter, Limit.SHAFT_OFF_VERTICAL_LEAST).margin().orElseThrow()).isCloseTo(-0.1, within(1e-9));
        assertThat(of(putter, Limit.SHAFT_OFF_VERTICAL_LEAST).verdict()).isEqualTo(Verdict.TOO_CLOSE);
    }

    @Test
    void anAngleNotReadOnTheClubIsItsHeads() {
        RuledClub putter = RuledClub.recorded(Category.PUTTER, false, read(870, LengthMethod.AXIS, null, null), Optional.of(PUTTER));
        assertThat(of(putter, Limit.PUTTER_LOFT_MOST).value().orElseThrow().value()).isEqualTo(3);
        assertThat(of(putter, Limit.SHAFT_OFF_VERTICAL_LEAST).value().orElseThrow().value()).isEqualTo(19);
    }

    /**
     * The length by hand from the published procedure's geometry: at a lie of 60° the planes meet at the ground point; at 58.3°,
     * a sole centre at 45 mm and a radius of 250 mm, t = (45 sin −1.7° − 250 (1 − cos 1.7°)) / sin 60° = −1.669 mm.
     */
    @Test
    void aLengthAlongTheAxisIsCarriedToThePlaneAndOneOfThePlaneIsNot() {
        RuledValue at60 = of(RuledClub.recorded(Category.DRIVER, true, read(1150, LengthMethod.AXIS, 9.0, 60.0), Optional.empty()),
            Limit.LENGTH_MOST).value().orElseThrow();
        assertThat(at60.value()).isCloseTo(1150, within(1e-9));
        assertThat(at60.mayReadLess()).isEqualTo(4);
        // 0.2° of lie move it by 45 cos 0° / sin 60° · 0.2° = 0.181 mm
        assertThat(at60.standardUncertainty()).isCloseTo(Math.hypot(0.8, 0.1814), within(1e-3));
        RuledValue driver = of(RuledClub.recorded(Category.DRIVER, true, read(1149.35, LengthMethod.RULER, 9.0, 58.3), Optional.empty()),
            Limit.LENGTH_MOST).value().orElseThrow();
        assertThat(driver.value()).isCloseTo(1149.35 + 1.669, within(1e-3));
        RuledValue byProcedure = of(RuledClub.recorded(Category.DRIVER, true, read(1149.35, LengthMethod.RULES60, 9.0, null),
            Optional.empty()), Limit.LENGTH_MOST).value().orElseThrow();
        assertThat(byProcedure.value()).isEqualTo(1149.35);
        assertThat(byProcedure.standardUncertainty()).isEqualTo(0.8);
        assertThat(byProcedure.mayReadLess()).isZero();
    }

    @Test
    void whatWasNeverMeasuredSaysWhatToDo() {
        RuledClub bare = RuledClub.recorded(Category.DRIVER, true, read(1150, LengthMethod.AXIS, 9.0, null), Optional.of(Samples.driver()));
        assertThat(bare.findings()).extracting(Finding::verdict).containsOnly(Verdict.NOT_MEASURED);
        assertThat(of(bare, Limit.LENGTH_MOST).lacking()).hasValueSatisfying(what -> assertThat(what).contains("read its lie"));
        assertThat(of(bare, Limit.VOLUME_MOST).lacking()).hasValueSatisfying(what -> assertThat(what).contains("volume"));
        RuledClub headless = RuledClub.recorded(Category.FAIRWAY, true, read(1080, LengthMethod.AXIS, 15.0, 57.0), Optional.empty());
        assertThat(of(headless, Limit.VOLUME_MOST).lacking()).hasValueSatisfying(what ->
            assertThat(what).startsWith("its head is not on record"));
        assertThat(of(headless, Limit.LENGTH_MOST).lacking()).isEmpty();
    }

    @Test
    void aWoodsHeadIsHeldAgainstEverySizeAndAHybridAsItIsRead() {
        RuledClub driver = RuledClub.recorded(Category.DRIVER, true, read(1150, LengthMethod.AXIS, 9.0, 58.0),
            Optional.of(sized(Samples.driver(), Hand.RIGHT)));
        assertThat(driver.findings()).extracting(Finding::verdict).containsOnly(Verdict.CLEARLY_WITHIN);
        RuledValue deep = of(driver, Limit.LONGER_THAN_DEEP).value().orElseThrow();
        assertThat(deep.value()).isEqualTo(4);
        assertThat(deep.standardUncertainty()).as("two readings of 0.5").isCloseTo(Math.sqrt(0.5), within(1e-12));
        assertThat(limits(RuledClub.recorded(Category.HYBRID, true, read(1030, LengthMethod.AXIS, 19.0, 58.0), Optional.empty())))
            .contains(Limit.VOLUME_MOST);
        assertThat(limits(RuledClub.recorded(Category.HYBRID, false, read(1030, LengthMethod.AXIS, 19.0, 58.0), Optional.empty())))
            .doesNotContain(Limit.VOLUME_MOST);
    }

    @Test
    void aLeftHandedHeadIsJudgedByTheSameNumbers() {
        Map<Quantity, Double> predicted = Map.of(Quantity.RULES_LENGTH, 1167.9, Quantity.LIE, 58.0, Quantity.LOFT, 9.0);
        Map<Quantity, Double> uncertainty = Map.of(Quantity.RULES_LENGTH, 0.8, Quantity.LIE, 0.2, Quantity.LOFT, 0.3);
        assertThat(RuledClub.planned(sized(Samples.driver(), Hand.LEFT), predicted, uncertainty).findings())
            .isEqualTo(RuledClub.planned(sized(Samples.driver(), Hand.RIGHT), predicted, uncertainty).findings());
    }

    @Test
    void aPlanIsWarnedOfWhatItWouldCrossOrComeTooCloseTo() {
        Map<Quantity, Double> uncertainty = Map.of(Quantity.RULES_LENGTH, 0.8, Quantity.LIE, 0.2, Quantity.LOFT, 0.3);
        Head head = sized(Samples.driver(), Hand.RIGHT);
        assertThat(EquipmentRules.warnings(head, Map.of(Quantity.RULES_LENGTH, 1150.0, Quantity.LIE, 58.0, Quantity.LOFT, 9.0),
            uncertainty)).isEmpty();
        assertThat(EquipmentRules.warnings(head, Map.of(Quantity.RULES_LENGTH, 1168.0, Quantity.LIE, 58.0, Quantity.LOFT, 9.0),
            uncertainty)).singleElement().asString().contains("too close to call: the rules say at most 1168.4 mm (46 in)", "local rule is in force");
        assertThat(EquipmentRules.warnings(head, Map.of(Quantity.RULES_LENGTH, 1240.0, Quantity.LIE, 58.0, Quantity.LOFT, 9.0),
            uncertainty)).hasSize(2).allMatch(warning -> warning.contains("clearly beyond"));
        assertThat(EquipmentRules.warnings(PUTTER, Map.of(Quantity.RULES_LENGTH, 1300.0, Quantity.LIE, 80.1, Quantity.LOFT, 3.0),
            uncertainty)).singleElement().asString().contains("shaft off vertical", "at least 10°");
        assertThat(EquipmentRules.warnings(PUTTER, Map.of(), Map.of())).as("what the head itself was read at is clear").isEmpty();
    }
}
