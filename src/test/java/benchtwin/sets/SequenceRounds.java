package benchtwin.sets;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BooleanSupplier;

/** The plainest rounds: one group after the other, with what the ones before have left. */
final class SequenceRounds implements Rounds {

    private final SetModel model;
    private final Prices prices;
    private final List<Option[]> accepted = new ArrayList<>();
    private Option[] best;
    private int done;

    SequenceRounds(SetModel model) {
        this.model = model;
        prices = Prices.none(model);
    }

    @Override
    public boolean next(BooleanSupplier stop) {
        SlotGroup group = model.groups().get(done);
        GroupBound bound = new GroupBound(model, new GroupSolver(model, group));
        Option[] plan = best == null ? new Option[model.slots()] : best.clone();
        for (Option option : bound.quick(prices, bound.middle()).used()) {
            plan[option.slot()] = option;
            prices.ban(option);
        }
        best = plan;
        done++;
        return done < model.groups().size();
    }

    @Override
    public Option[] best() {
        return best;
    }

    @Override
    public int done() {
        return done;
    }

    @Override
    public void accept(Option[] better) {
        accepted.add(better);
        best = better;
    }

    List<Option[]> accepted() {
        return accepted;
    }
}
