package benchtwin.sets;

import java.util.List;
import org.optaplanner.core.api.domain.entity.PlanningEntity;
import org.optaplanner.core.api.domain.lookup.PlanningId;
import org.optaplanner.core.api.domain.valuerange.ValueRangeProvider;
import org.optaplanner.core.api.domain.variable.PlanningVariable;

/** One club of a set to be built: what the solver fills or leaves empty. Full or empty, never a head without a shaft. */
@PlanningEntity
final class BuildSlot {

    /** What the planning variable is called. */
    static final String OPTION = "option";

    @PlanningId
    private int index;
    private SetModel model;
    private Pins pins;
    @ValueRangeProvider(id = "options")
    private List<Option> options;
    @PlanningVariable(valueRangeProviderRefs = "options", nullable = true)
    private Option option;

    /** For the solver, which clones. */
    BuildSlot() {
    }

    /**
     * An empty slot.
     * @param index which slot of the model
     * @param model offers what the slot may be filled with
     * @param pins  choices fixed by hand
     */
    BuildSlot(int index, SetModel model, Pins pins) {
        this.index = index;
        this.model = model;
        this.pins = pins;
        this.options = model.options(index);
    }

    int index() {
        return index;
    }

    SlotGroup group() {
        return model.groups().get(model.groupOf(index));
    }

    long emptyCost() {
        return model.emptyCost(index);
    }

    /** The head pinned to this slot, null for none. */
    Integer pinnedHead() {
        return pins.head().get(index);
    }

    /** The shaft pinned to this slot, null for none. */
    Integer pinnedShaft() {
        return pins.shaft().get(index);
    }

    boolean isEmpty() {
        return option == null;
    }

    /** What fills it, null when it is empty. */
    Option option() {
        return option;
    }

    void fill(Option with) {
        option = with;
    }

    int head() {
        return option.head();
    }

    int shaft() {
        return option.shaft();
    }

    int headModel() {
        return model.headModel(option.head());
    }

    int shaftModel() {
        return model.shaftModel(option.shaft());
    }

    boolean usesHeadLeftOut() {
        return pins.headsLeft().contains(option.head());
    }

    boolean usesShaftLeftOut() {
        return pins.shaftsLeft().contains(option.shaft());
    }

    boolean lacksPinnedHead() {
        return pinnedHead() != null && (option == null || option.head() != pinnedHead());
    }

    boolean lacksPinnedShaft() {
        return pinnedShaft() != null && (option == null || option.shaft() != pinnedShaft());
    }

    @Override
    public String toString() {
        return "slot " + index;
    }
}
