package benchtwin.bench;

import benchtwin.book.BookEntry;
import benchtwin.book.BookProblem;
import benchtwin.book.CurrentReading;
import benchtwin.book.EventKind;
import benchtwin.book.NewEvent;
import benchtwin.book.NewReading;
import benchtwin.book.PartActs;
import benchtwin.book.State;
import benchtwin.book.StateOf;
import benchtwin.book.Thing;
import benchtwin.book.ThingKind;
import benchtwin.measure.PlainNumber;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** Enters weights that went in: out of the tray, those they took the place of back into it, and what the head has in its ports. */
final class WeightsIn {

    /** Weights are told apart by their mass to less than the drawer's steps of a gram. */
    private static final double SAME_G = 0.05;
    private static final String TIP = "tip";

    private final BookEntry entry;
    private final Thing job;
    private final Thing club;
    private final JobPlan.Club plan;
    private final PartActs parts;

    WeightsIn(BookEntry entry, Thing job, Thing club, JobPlan.Club plan) {
        this.entry = entry;
        this.job = job;
        this.club = club;
        this.plan = plan;
        this.parts = new PartActs(entry);
    }

    /**
     * Enters them.
     * @param head  the planned head, where it was the one used
     * @param inTip whether the planned shaft was the one used
     */
    void enter(Optional<Thing> head, boolean inTip) throws BookProblem {
        for (JobPlan.WeightIn weight : plan.weights()) {
            Thing kind = OpenBook.need(entry, ThingKind.WEIGHT, weight.tag());
            State known = entry.state(kind);
            String port = known.fact("port").orElse("");
            if (port.equals(TIP) ? !inTip : head.isEmpty()) {
                continue;
            }
            parts.buildIn(kind, club, Optional.of(job));
            OptionalDouble massG = number(known.fact("mass_g").orElse(""));
            if (!port.equals(TIP) && massG.isPresent()) {
                swapped(head.get(), port, massG.getAsDouble(), massG.getAsDouble() - weight.moreG());
            }
        }
    }

    private void swapped(Thing head, String port, double newG, double oldG) throws BookProblem {
        for (StateOf weight : entry.states(ThingKind.WEIGHT)) {
            OptionalDouble massG = number(weight.state().fact("mass_g").orElse(""));
            if (weight.state().fact("port").equals(Optional.of(port)) && massG.isPresent()
                && Math.abs(massG.getAsDouble() - oldG) < SAME_G) {
                parts.pull(weight.thing(), Map.of(), Optional.of(job));
                break;
            }
        }
        State known = entry.state(head);
        List<String> ports = list(known, "port");
        List<String> grams = new ArrayList<>(list(known, "port_g"));
        for (int k = 0; k < Math.min(ports.size(), grams.size()); k++) {
            OptionalDouble now = number(grams.get(k));
            if (ports.get(k).equals(port) && now.isPresent() && Math.abs(now.getAsDouble() - oldG) < SAME_G) {
                grams.set(k, PlainNumber.text(newG));
                break;
            }
        }
        String filled = String.join("+", grams);
        if (known.fact("port_g").equals(Optional.of(filled))) {
            return;
        }
        entry.add(head, NewEvent.of(EventKind.DESCRIBED).of(job).with(Map.of("port_g", filled)).reading(heavier(known, newG - oldG)));
    }

    /** A head that was weighed with its weights weighs otherwise now. */
    private List<NewReading> heavier(State head, double moreG) {
        Optional<CurrentReading> weighed = head.readings().stream().filter(one -> one.read().quantity().equals("mass_g")
            && Arrays.asList(one.read().condition().getOrDefault("weighed_with", "").split("\\+")).contains("weights"))
            .reduce((earlier, later) -> later);
        return weighed.map(one -> WorkedOut.reading(one.read(), one.read().value().orElseThrow() + moreG,
            one.read().uncertainty(), "worked out from the weights changed for " + job.name())).stream().toList();
    }

    private static List<String> list(State head, String fact) {
        return head.fact(fact).map(text -> List.of(text.split("\\+"))).orElse(List.of());
    }

    private static OptionalDouble number(String text) {
        try {
            return OptionalDouble.of(Double.parseDouble(text));
        } catch (NumberFormatException none) {
            return OptionalDouble.empty();
        }
    }
}
