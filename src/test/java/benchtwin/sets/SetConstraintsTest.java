package benchtwin.sets;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.reflect.Field;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.BiFunction;
import org.junit.jupiter.api.Test;
import org.optaplanner.core.api.score.stream.Constraint;
import org.optaplanner.core.api.score.stream.ConstraintFactory;
import org.optaplanner.test.api.score.stream.ConstraintVerifier;

/**
 * Every constraint broken, at its limit and kept. Slots 0 to 2 must share models, 3 to 5 prefer to and say so, 6 and 7 need
 * not care. Heads and shafts 0 and 1 are of model 0, 2 and 3 of model 1, 4 and 5 of model 2, 6 and 7 of model 3.
 */
class SetConstraintsTest {

    private static final int[] MODELS = {0, 0, 1, 1, 2, 2, 3, 3};
    private static final SetModel MODEL = new SetModel(List.of(
        new SlotGroup(List.of(0, 1, 2), true, new long[] {2, 3, 5}, 0),
        new SlotGroup(List.of(3, 4, 5), false, new long[] {1, 0, 0}, 300_000),
        new SlotGroup(List.of(6, 7), false, new long[] {0, 1, 7}, 0)),
        new long[] {700, 600, 500, 400, 300, 200, 100, 1}, MODELS, MODELS, Collections.nCopies(8, List.of()));

    private final ConstraintVerifier<SetConstraints, SetProblem> verifier =
        ConstraintVerifier.build(new SetConstraints(), SetProblem.class, BuildSlot.class);

    @Test
    void headInTwoClubs() {
        verifier.verifyThat(SetConstraints::headAtMostOnce).given(filled(0, 4, 0), filled(6, 4, 1)).penalizesBy(1);
    }

    @Test
    void headInThreeClubsIsThreePairs() {
        verifier.verifyThat(SetConstraints::headAtMostOnce)
            .given(filled(0, 4, 0), filled(1, 4, 1), filled(6, 4, 2), filled(7, 5, 3)).penalizesBy(3);
    }

    @Test
    void headOnceAndEmptyClubs() {
        verifier.verifyThat(SetConstraints::headAtMostOnce)
            .given(filled(0, 4, 3), filled(1, 3, 4), empty(2), empty(3)).penalizesBy(0);
    }

    @Test
    void shaftInTwoClubs() {
        verifier.verifyThat(SetConstraints::shaftAtMostOnce).given(filled(0, 0, 4), filled(6, 1, 4)).penalizesBy(1);
    }

    @Test
    void shaftInThreeClubsIsThreePairs() {
        verifier.verifyThat(SetConstraints::shaftAtMostOnce)
            .given(filled(0, 0, 4), filled(1, 1, 4), filled(6, 2, 4), filled(7, 3, 5)).penalizesBy(3);
    }

    @Test
    void shaftOnceAndEmptyClubs() {
        verifier.verifyThat(SetConstraints::shaftAtMostOnce)
            .given(filled(0, 4, 3), filled(1, 3, 4), empty(2), empty(3)).penalizesBy(0);
    }

    @Test
    void headModelsThatMustBeOne() {
        verifier.verifyThat(SetConstraints::groupSharesHeadModel)
            .given(filled(0, 0, 0), filled(1, 2, 2), filled(2, 1, 4)).penalizesBy(1);
        verifier.verifyThat(SetConstraints::groupSharesHeadModel)
            .given(filled(0, 0, 0), filled(1, 2, 0), filled(2, 4, 0)).penalizesBy(2);
    }

    @Test
    void oneHeadModelWhateverTheShafts() {
        verifier.verifyThat(SetConstraints::groupSharesHeadModel)
            .given(filled(0, 0, 0), filled(1, 1, 2), empty(2)).penalizesBy(0);
    }

    @Test
    void headModelsOfGroupsThatOnlyPrefer() {
        verifier.verifyThat(SetConstraints::groupSharesHeadModel)
            .given(filled(3, 0, 0), filled(4, 2, 0), filled(6, 4, 0), filled(7, 6, 0)).penalizesBy(0);
    }

    @Test
    void headModelsOfDifferentGroups() {
        verifier.verifyThat(SetConstraints::groupSharesHeadModel)
            .given(filled(0, 0, 0), filled(3, 2, 0), filled(6, 4, 0)).penalizesBy(0);
    }

    @Test
    void shaftModelsThatMustBeOne() {
        verifier.verifyThat(SetConstraints::groupSharesShaftModel)
            .given(filled(0, 0, 0), filled(1, 2, 2), filled(2, 4, 1)).penalizesBy(1);
        verifier.verifyThat(SetConstraints::groupSharesShaftModel)
            .given(filled(0, 0, 0), filled(1, 0, 2), filled(2, 0, 4)).penalizesBy(2);
    }

    @Test
    void oneShaftModelWhateverTheHeads() {
        verifier.verifyThat(SetConstraints::groupSharesShaftModel)
            .given(filled(0, 0, 0), filled(1, 2, 1), empty(2)).penalizesBy(0);
    }

    @Test
    void shaftModelsOfGroupsThatOnlyPrefer() {
        verifier.verifyThat(SetConstraints::groupSharesShaftModel)
            .given(filled(3, 0, 0), filled(4, 0, 2), filled(6, 0, 4), filled(7, 0, 6)).penalizesBy(0);
    }

    @Test
    void pinnedHeadReplacedByAnother() {
        verifier.verifyThat(SetConstraints::pinnedHeadInPlace).given(filled(0, 2, 3, pinned())).penalizesBy(1);
    }

    @Test
    void pinnedHeadOfAnEmptySlot() {
        verifier.verifyThat(SetConstraints::pinnedHeadInPlace).given(empty(0, pinned())).penalizesBy(1);
    }

    @Test
    void pinnedHeadInPlaceWhateverTheShaft() {
        verifier.verifyThat(SetConstraints::pinnedHeadInPlace).given(filled(0, 3, 7, pinned())).penalizesBy(0);
    }

    @Test
    void slotsWithoutAPinnedHead() {
        verifier.verifyThat(SetConstraints::pinnedHeadInPlace)
            .given(filled(2, 7, 7, pinned()), empty(3, pinned())).penalizesBy(0);
    }

    @Test
    void pinnedShaftReplacedByAnother() {
        verifier.verifyThat(SetConstraints::pinnedShaftInPlace).given(filled(0, 3, 2, pinned())).penalizesBy(1);
    }

    @Test
    void pinnedShaftOfAnEmptySlot() {
        verifier.verifyThat(SetConstraints::pinnedShaftInPlace).given(empty(0, pinned())).penalizesBy(1);
    }

    @Test
    void pinnedShaftInPlaceWhateverTheHead() {
        verifier.verifyThat(SetConstraints::pinnedShaftInPlace).given(filled(0, 7, 5, pinned())).penalizesBy(0);
    }

    @Test
    void slotsWithoutAPinnedShaft() {
        verifier.verifyThat(SetConstraints::pinnedShaftInPlace)
            .given(filled(1, 7, 7, pinned()), empty(3, pinned())).penalizesBy(0);
    }

    @Test
    void pinnedHeadInOtherClubs() {
        verifier.verifyThat(SetConstraints::pinnedHeadNowhereElse)
            .given(empty(0, pinned()), filled(4, 3, 0, pinned()), filled(6, 3, 1, pinned())).penalizesBy(2);
    }

    @Test
    void pinnedHeadInItsClubAndAnother() {
        verifier.verifyThat(SetConstraints::pinnedHeadNowhereElse)
            .given(filled(0, 3, 5, pinned()), filled(4, 3, 0, pinned())).penalizesBy(1);
    }

    @Test
    void pinnedHeadOnlyInItsClub() {
        verifier.verifyThat(SetConstraints::pinnedHeadNowhereElse)
            .given(filled(0, 3, 5, pinned()), filled(4, 5, 3, pinned())).penalizesBy(0);
    }

    @Test
    void pinnedShaftInOtherClubs() {
        verifier.verifyThat(SetConstraints::pinnedShaftNowhereElse)
            .given(empty(0, pinned()), filled(4, 0, 5, pinned()), filled(6, 1, 5, pinned())).penalizesBy(2);
    }

    @Test
    void pinnedShaftInItsClubAndAnother() {
        verifier.verifyThat(SetConstraints::pinnedShaftNowhereElse)
            .given(filled(0, 3, 5, pinned()), filled(4, 0, 5, pinned())).penalizesBy(1);
    }

    @Test
    void pinnedShaftOnlyInItsClub() {
        verifier.verifyThat(SetConstraints::pinnedShaftNowhereElse)
            .given(filled(0, 3, 5, pinned()), filled(4, 5, 3, pinned())).penalizesBy(0);
    }

    @Test
    void headLeftOut() {
        verifier.verifyThat(SetConstraints::noHeadLeftOut)
            .given(filled(5, 6, 0, pinned()), filled(6, 6, 1, pinned())).penalizesBy(2);
        verifier.verifyThat(SetConstraints::noHeadLeftOut)
            .given(filled(5, 5, 6, pinned()), empty(6, pinned())).penalizesBy(0);
    }

    @Test
    void shaftLeftOut() {
        verifier.verifyThat(SetConstraints::noShaftLeftOut)
            .given(filled(5, 0, 4, pinned()), filled(6, 1, 4, pinned())).penalizesBy(2);
        verifier.verifyThat(SetConstraints::noShaftLeftOut)
            .given(filled(5, 4, 5, pinned()), empty(6, pinned())).penalizesBy(0);
    }

    @Test
    void unbuiltClubsCostTheirPriority() {
        verifier.verifyThat(SetConstraints::everyClubBuilt)
            .given(empty(0), empty(7), filled(2, 0, 0), filled(3, 1, 1)).penalizesBy(701);
        verifier.verifyThat(SetConstraints::everyClubBuilt).given(filled(2, 0, 0), filled(3, 1, 1)).penalizesBy(0);
    }

    @Test
    void clubsCostTheirPlans() {
        verifier.verifyThat(SetConstraints::nearTargets)
            .given(filled(option(0, 250_000, 9, 9, 9)), filled(option(3, 4_000_000, 9, 9, 9)), empty(6))
            .penalizesBy(4_250_000);
        verifier.verifyThat(SetConstraints::nearTargets).given(filled(option(0, 0, 9, 9, 9)), empty(6)).penalizesBy(0);
    }

    /** By hand: residuals 10, 20, 60 are 20, 10 and 30 from their mean of 30; 400 + 100 + 900 = 1400 squares. */
    @Test
    void spreadIsTheWeightTimesTheSquaresAboutTheMean() {
        spread(SetConstraints::frequenciesAlike, 2 * 1400, option(0, 0, 10, 0, 0), option(1, 0, 20, 0, 0), option(2, 0, 60, 0, 0));
        spread(SetConstraints::swingWeightsAlike, 3 * 1400, option(0, 0, 0, 10, 0), option(1, 0, 0, 20, 0), option(2, 0, 0, 60, 0));
        spread(SetConstraints::shaftMassesAlike, 5 * 1400, option(0, 0, 0, 0, 10), option(1, 0, 0, 0, 20), option(2, 0, 0, 0, 60));
    }

    /** By hand: residuals 0, 0 and 1 have 2/3 squares about 1/3; times 2, 3 and 5 that is 4/3, 2 and 10/3. */
    @Test
    void spreadIsRoundedDown() {
        spread(SetConstraints::frequenciesAlike, 1, option(0, 0, 0, 0, 0), option(1, 0, 0, 0, 0), option(2, 0, 1, 0, 0));
        spread(SetConstraints::swingWeightsAlike, 2, option(0, 0, 0, 0, 0), option(1, 0, 0, 0, 0), option(2, 0, 0, 1, 0));
        spread(SetConstraints::shaftMassesAlike, 3, option(0, 0, 0, 0, 0), option(1, 0, 0, 0, 0), option(2, 0, 0, 0, 1));
    }

    @Test
    void aCommonOffsetIsNoSpread() {
        spread(SetConstraints::frequenciesAlike, 0, option(0, 0, -70, 1, 2), option(1, 0, -70, 3, 4), option(2, 0, -70, 5, 6));
        spread(SetConstraints::swingWeightsAlike, 0, option(0, 0, 1, -70, 2), option(1, 0, 3, -70, 4), option(2, 0, 5, -70, 6));
        spread(SetConstraints::shaftMassesAlike, 0, option(0, 0, 1, 2, -70), option(1, 0, 3, 4, -70), option(2, 0, 5, 6, -70));
    }

    @Test
    void aSingleClubIsNoSpread() {
        verifier.verifyThat(SetConstraints::frequenciesAlike)
            .given(filled(option(0, 0, 70, 70, 70)), empty(1), empty(2)).penalizesBy(0);
    }

    @Test
    void groupsSpreadApart() {
        verifier.verifyThat(SetConstraints::frequenciesAlike)
            .given(filled(option(0, 0, 10, 0, 0)), filled(option(1, 0, 30, 0, 0)),
                filled(option(3, 0, 100, 0, 0)), filled(option(4, 0, 300, 0, 0)))
            .penalizesBy(2 * 200 + 20_000);
    }

    @Test
    void groupsThatDoNotAskForIt() {
        verifier.verifyThat(SetConstraints::swingWeightsAlike)
            .given(filled(option(3, 0, 0, 0, 0)), filled(option(4, 0, 0, 99, 0))).penalizesBy(0);
        verifier.verifyThat(SetConstraints::frequenciesAlike)
            .given(filled(option(6, 0, 0, 0, 0)), filled(option(7, 0, 99, 0, 0))).penalizesBy(0);
        verifier.verifyThat(SetConstraints::shaftMassesAlike)
            .given(filled(option(3, 0, 0, 0, 0)), filled(option(4, 0, 0, 0, 99))).penalizesBy(0);
    }

    @Test
    void headModelsBeyondTheFirst() {
        verifier.verifyThat(SetConstraints::fewHeadModels)
            .given(filled(3, 0, 0), filled(4, 2, 0), filled(5, 4, 0)).penalizesBy(600_000);
        verifier.verifyThat(SetConstraints::fewHeadModels)
            .given(filled(3, 0, 0), filled(4, 2, 0), filled(5, 1, 0)).penalizesBy(300_000);
        verifier.verifyThat(SetConstraints::fewHeadModels)
            .given(filled(3, 0, 0), filled(4, 1, 2), empty(5)).penalizesBy(0);
    }

    @Test
    void headModelsWhereTheyMustBeOneOrNeedNot() {
        verifier.verifyThat(SetConstraints::fewHeadModels)
            .given(filled(0, 0, 0), filled(1, 2, 0), filled(6, 4, 0), filled(7, 6, 0)).penalizesBy(0);
    }

    @Test
    void shaftModelsBeyondTheFirst() {
        verifier.verifyThat(SetConstraints::fewShaftModels)
            .given(filled(3, 0, 0), filled(4, 0, 2), filled(5, 0, 4)).penalizesBy(600_000);
        verifier.verifyThat(SetConstraints::fewShaftModels)
            .given(filled(3, 0, 0), filled(4, 0, 2), filled(5, 0, 1)).penalizesBy(300_000);
        verifier.verifyThat(SetConstraints::fewShaftModels)
            .given(filled(3, 0, 0), filled(4, 2, 1), empty(5)).penalizesBy(0);
    }

    @Test
    void shaftModelsWhereTheyMustBeOneOrNeedNot() {
        verifier.verifyThat(SetConstraints::fewShaftModels)
            .given(filled(0, 0, 0), filled(1, 0, 2), filled(6, 0, 4), filled(7, 0, 6)).penalizesBy(0);
    }

    @Test
    void everyConstraintIsNamedAndShown() {
        List<String> names = new ArrayList<>();
        for (Field field : SetConstraints.class.getDeclaredFields()) {
            if (field.getType() == String.class) {
                names.add(read(field));
            }
        }
        assertThat(SetConstraints.NAMES).containsExactlyInAnyOrderElementsOf(names).doesNotHaveDuplicates();
    }

    private static String read(Field field) {
        try {
            return (String) field.get(null);
        } catch (IllegalAccessException e) {
            throw new AssertionError(e);
        }
    }

    private void spread(BiFunction<SetConstraints, ConstraintFactory, Constraint> constraint, long points,
            Option... options) {
        Object[] slots = Arrays.stream(options).map(SetConstraintsTest::filled).toArray();
        verifier.verifyThat(constraint).given(slots).penalizesBy(points);
    }

    /** Head 3 is slot 0's, head 4 slot 1's, shaft 5 slot 0's, shaft 7 slot 2's; head 6 and shaft 4 are not to be used. */
    private static Pins pinned() {
        return new Pins(Map.of(0, 3, 1, 4), Map.of(0, 5, 2, 7), Set.of(6), Set.of(4));
    }

    private static Option option(int slot, long cost, int frequency, int swing, int shaftMass) {
        return new Option(slot, slot, slot, cost, frequency, swing, shaftMass);
    }

    private static BuildSlot filled(Option option) {
        BuildSlot slot = empty(option.slot());
        slot.fill(option);
        return slot;
    }

    private static BuildSlot filled(int slot, int head, int shaft) {
        return filled(slot, head, shaft, Pins.none());
    }

    private static BuildSlot filled(int slot, int head, int shaft, Pins pins) {
        BuildSlot filled = empty(slot, pins);
        filled.fill(new Option(slot, head, shaft, 1000, 10 * slot, 20 * slot, 30 * slot));
        return filled;
    }

    private static BuildSlot empty(int slot) {
        return empty(slot, Pins.none());
    }

    private static BuildSlot empty(int slot, Pins pins) {
        return new BuildSlot(slot, MODEL, pins);
    }
}
