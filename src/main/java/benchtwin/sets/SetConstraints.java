package benchtwin.sets;

import static org.optaplanner.core.api.score.buildin.hardmediumsoftlong.HardMediumSoftLongScore.ONE_HARD;
import static org.optaplanner.core.api.score.buildin.hardmediumsoftlong.HardMediumSoftLongScore.ONE_MEDIUM;
import static org.optaplanner.core.api.score.buildin.hardmediumsoftlong.HardMediumSoftLongScore.ONE_SOFT;
import static org.optaplanner.core.api.score.stream.ConstraintCollectors.count;
import static org.optaplanner.core.api.score.stream.ConstraintCollectors.countDistinct;
import static org.optaplanner.core.api.score.stream.ConstraintCollectors.sumLong;
import static org.optaplanner.core.api.score.stream.Joiners.equal;
import static org.optaplanner.core.api.score.stream.Joiners.filtering;

import java.util.List;
import java.util.function.Function;
import org.optaplanner.core.api.score.stream.Constraint;
import org.optaplanner.core.api.score.stream.ConstraintFactory;
import org.optaplanner.core.api.score.stream.ConstraintProvider;

/**
 * What a plan of sets is worth: the only definition of its score. Hard points say that it cannot be built so, medium points
 * that clubs are missing, soft points how far it is from what was asked for; each level counts only where the one above is
 * equal. The weights of the soft ones are in {@link SlotGroup}. Public only because the solver makes one by reflection.
 */
public final class SetConstraints implements ConstraintProvider {

    static final String HEAD_TWICE = "two clubs want one head";
    static final String SHAFT_TWICE = "two clubs want one shaft";
    static final String HEAD_MODELS_DIFFER = "head models differ in a group that must share";
    static final String SHAFT_MODELS_DIFFER = "shaft models differ in a group that must share";
    static final String PINNED_HEAD_MISSING = "pinned head not in its club";
    static final String PINNED_SHAFT_MISSING = "pinned shaft not in its club";
    static final String PINNED_HEAD_ELSEWHERE = "pinned head in another club";
    static final String PINNED_SHAFT_ELSEWHERE = "pinned shaft in another club";
    static final String HEAD_LEFT_OUT = "head used that is to be left out";
    static final String SHAFT_LEFT_OUT = "shaft used that is to be left out";
    static final String UNBUILT = "club left unbuilt";
    static final String OFF_TARGET = "club off its targets, and the effort of building it";
    static final String FREQUENCIES_UNLIKE = "frequencies of a group not alike";
    static final String SWING_UNLIKE = "swing weights of a group not alike";
    static final String SHAFT_MASSES_UNLIKE = "shaft masses of a group not alike";
    static final String MORE_HEAD_MODELS = "more than one head model in a group that prefers one";
    static final String MORE_SHAFT_MODELS = "more than one shaft model in a group that prefers one";

    /** In the order in which they are shown. */
    static final List<String> NAMES = List.of(HEAD_TWICE, SHAFT_TWICE, HEAD_MODELS_DIFFER, SHAFT_MODELS_DIFFER,
        PINNED_HEAD_MISSING, PINNED_SHAFT_MISSING, PINNED_HEAD_ELSEWHERE, PINNED_SHAFT_ELSEWHERE, HEAD_LEFT_OUT,
        SHAFT_LEFT_OUT, UNBUILT, OFF_TARGET, FREQUENCIES_UNLIKE, SWING_UNLIKE, SHAFT_MASSES_UNLIKE, MORE_HEAD_MODELS,
        MORE_SHAFT_MODELS);

    @Override
    public Constraint[] defineConstraints(ConstraintFactory factory) {
        return new Constraint[] {
            headAtMostOnce(factory), shaftAtMostOnce(factory),
            groupSharesHeadModel(factory), groupSharesShaftModel(factory),
            pinnedHeadInPlace(factory), pinnedShaftInPlace(factory),
            pinnedHeadNowhereElse(factory), pinnedShaftNowhereElse(factory),
            noHeadLeftOut(factory), noShaftLeftOut(factory),
            everyClubBuilt(factory), nearTargets(factory),
            frequenciesAlike(factory), swingWeightsAlike(factory), shaftMassesAlike(factory),
            fewHeadModels(factory), fewShaftModels(factory)
        };
    }

    /** Hard: 1 point for each pair of clubs with the same head. */
    Constraint headAtMostOnce(ConstraintFactory factory) {
        return factory.forEachUniquePair(BuildSlot.class, equal(BuildSlot::head))
            .penalizeLong(ONE_HARD, (one, other) -> 1)
            .asConstraint(HEAD_TWICE);
    }

    /** Hard: 1 point for each pair of clubs with the same shaft. */
    Constraint shaftAtMostOnce(ConstraintFactory factory) {
        return factory.forEachUniquePair(BuildSlot.class, equal(BuildSlot::shaft))
            .penalizeLong(ONE_HARD, (one, other) -> 1)
            .asConstraint(SHAFT_TWICE);
    }

    /** Hard: 1 point for each head model beyond the first in a group that must share. */
    Constraint groupSharesHeadModel(ConstraintFactory factory) {
        return sharesModel(factory, BuildSlot::headModel, HEAD_MODELS_DIFFER);
    }

    /** Hard: 1 point for each shaft model beyond the first in a group that must share. */
    Constraint groupSharesShaftModel(ConstraintFactory factory) {
        return sharesModel(factory, BuildSlot::shaftModel, SHAFT_MODELS_DIFFER);
    }

    private static Constraint sharesModel(ConstraintFactory factory, Function<BuildSlot, Integer> model, String name) {
        return factory.forEach(BuildSlot.class)
            .filter(slot -> slot.group().sameModels())
            .groupBy(BuildSlot::group, countDistinct(model))
            .filter((group, models) -> models > 1)
            .penalizeLong(ONE_HARD, (group, models) -> models - 1)
            .asConstraint(name);
    }

    /** Hard: 1 point for a club without the head pinned to it; left unbuilt is without. */
    Constraint pinnedHeadInPlace(ConstraintFactory factory) {
        return factory.forEachIncludingNullVars(BuildSlot.class)
            .filter(BuildSlot::lacksPinnedHead)
            .penalizeLong(ONE_HARD, slot -> 1)
            .asConstraint(PINNED_HEAD_MISSING);
    }

    /** Hard: 1 point for a club without the shaft pinned to it; left unbuilt is without. */
    Constraint pinnedShaftInPlace(ConstraintFactory factory) {
        return factory.forEachIncludingNullVars(BuildSlot.class)
            .filter(BuildSlot::lacksPinnedShaft)
            .penalizeLong(ONE_HARD, slot -> 1)
            .asConstraint(PINNED_SHAFT_MISSING);
    }

    /** Hard: 1 point for each club that has a head pinned to another. */
    Constraint pinnedHeadNowhereElse(ConstraintFactory factory) {
        return factory.forEachIncludingNullVars(BuildSlot.class)
            .filter(slot -> slot.pinnedHead() != null)
            .join(BuildSlot.class, equal(BuildSlot::pinnedHead, BuildSlot::head), filtering((pinned, user) -> pinned != user))
            .penalizeLong(ONE_HARD, (pinned, user) -> 1)
            .asConstraint(PINNED_HEAD_ELSEWHERE);
    }

    /** Hard: 1 point for each club that has a shaft pinned to another. */
    Constraint pinnedShaftNowhereElse(ConstraintFactory factory) {
        return factory.forEachIncludingNullVars(BuildSlot.class)
            .filter(slot -> slot.pinnedShaft() != null)
            .join(BuildSlot.class, equal(BuildSlot::pinnedShaft, BuildSlot::shaft),
                filtering((pinned, user) -> pinned != user))
            .penalizeLong(ONE_HARD, (pinned, user) -> 1)
            .asConstraint(PINNED_SHAFT_ELSEWHERE);
    }

    /** Hard: 1 point for each club with a head that is to be left out. */
    Constraint noHeadLeftOut(ConstraintFactory factory) {
        return factory.forEach(BuildSlot.class)
            .filter(BuildSlot::usesHeadLeftOut)
            .penalizeLong(ONE_HARD, slot -> 1)
            .asConstraint(HEAD_LEFT_OUT);
    }

    /** Hard: 1 point for each club with a shaft that is to be left out. */
    Constraint noShaftLeftOut(ConstraintFactory factory) {
        return factory.forEach(BuildSlot.class)
            .filter(BuildSlot::usesShaftLeftOut)
            .penalizeLong(ONE_HARD, slot -> 1)
            .asConstraint(SHAFT_LEFT_OUT);
    }

    /** Medium: a club left unbuilt costs what its priority makes it weigh, more where something is pinned to it. */
    Constraint everyClubBuilt(ConstraintFactory factory) {
        return factory.forEachIncludingNullVars(BuildSlot.class)
            .filter(BuildSlot::isEmpty)
            .penalizeLong(ONE_MEDIUM, BuildSlot::emptyCost)
            .asConstraint(UNBUILT);
    }

    /** Soft: a club's squared miss and effort; 1,000,000 points are one squared tolerance. */
    Constraint nearTargets(ConstraintFactory factory) {
        return factory.forEach(BuildSlot.class)
            .penalizeLong(ONE_SOFT, slot -> slot.option().cost())
            .asConstraint(OFF_TARGET);
    }

    /** Soft: weight times the squares of the frequency residuals about their group's mean, rounded down. */
    Constraint frequenciesAlike(ConstraintFactory factory) {
        return alike(factory, Residual.FREQUENCY, FREQUENCIES_UNLIKE);
    }

    /** Soft: weight times the squares of the swing weight residuals about their group's mean, rounded down. */
    Constraint swingWeightsAlike(ConstraintFactory factory) {
        return alike(factory, Residual.SWING, SWING_UNLIKE);
    }

    /** Soft: weight times the squares of the shaft mass residuals about their group's mean, rounded down. */
    Constraint shaftMassesAlike(ConstraintFactory factory) {
        return alike(factory, Residual.SHAFT_MASS, SHAFT_MASSES_UNLIKE);
    }

    private static Constraint alike(ConstraintFactory factory, Residual residual, String name) {
        int kind = residual.ordinal();
        return factory.forEach(BuildSlot.class)
            .filter(slot -> slot.group().weights()[kind] > 0)
            .groupBy(BuildSlot::group, count(), sumLong(slot -> slot.option().residual(kind)),
                sumLong(slot -> (long) slot.option().residual(kind) * slot.option().residual(kind)))
            .penalizeLong(ONE_SOFT, (group, clubs, sum, square) ->
                SlotGroup.spread(group.weights()[kind], clubs, sum, square))
            .asConstraint(name);
    }

    /** Soft: what the group says for each head model beyond the first, where it only prefers to share. */
    Constraint fewHeadModels(ConstraintFactory factory) {
        return fewModels(factory, BuildSlot::headModel, MORE_HEAD_MODELS);
    }

    /** Soft: what the group says for each shaft model beyond the first, where it only prefers to share. */
    Constraint fewShaftModels(ConstraintFactory factory) {
        return fewModels(factory, BuildSlot::shaftModel, MORE_SHAFT_MODELS);
    }

    private static Constraint fewModels(ConstraintFactory factory, Function<BuildSlot, Integer> model, String name) {
        return factory.forEach(BuildSlot.class)
            .filter(slot -> !slot.group().sameModels() && slot.group().modelCost() > 0)
            .groupBy(BuildSlot::group, countDistinct(model))
            .filter((group, models) -> models > 1)
            .penalizeLong(ONE_SOFT, (group, models) -> group.modelCost() * (models - 1))
            .asConstraint(name);
    }
}
