package benchtwin.sets;

import java.util.List;
import java.util.OptionalDouble;

/**
 * A plan of sets.
 * @param players what each player gets
 * @param score   how good it is and could be
 * @param why     what each rule costs, dearest first
 * @param order   parts worth ordering, most useful first
 * @param pinCost what all pins together cost, squared tolerances; empty without pins; infinite when they leave a club out
 * @param notes   what was assumed and what runs short, in plain words
 */
public record SetAnswer(List<PlayerSet> players, PlanScore score, List<CostLine> why, List<OrderLine> order,
                        OptionalDouble pinCost, List<String> notes) {

    public SetAnswer {
        players = List.copyOf(players);
        why = List.copyOf(why);
        order = List.copyOf(order);
        notes = List.copyOf(notes);
    }
}
