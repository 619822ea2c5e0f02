package benchtwin.bench;

import benchtwin.book.CurrentReading;
import benchtwin.book.State;
import benchtwin.club.AngleReading;
import benchtwin.club.Category;
import benchtwin.club.Hand;
import benchtwin.club.Quantity;
import benchtwin.club.Word;
import benchtwin.mechanics.WoodLoft;
import benchtwin.picture.HeadSketchPicture;
import benchtwin.picture.SketchAngles;
import benchtwin.picture.SketchSizes;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** The head of a plan as it was read last, and as the plan makes it. */
final class TicketSketch {

    private static final List<Quantity> ANGLES = List.of(Quantity.LOFT, Quantity.LIE, Quantity.FACE, Quantity.BOUNCE);
    /** A change that rounds to nothing is none. */
    private static final double HARDLY_DEG = 0.005;

    private TicketSketch() {
    }

    /**
     * The sketch.
     * @param tag  the head's tag
     * @param head the head as the book has it
     * @param plan what is done with it
     * @return empty where no angle changes, or it is not known how they are read
     */
    static Optional<HeadSketchPicture> of(String tag, State head, JobPlan.Club plan) {
        Optional<Category> category = word(head, "category", Category.values());
        if (category.isEmpty() || plan.reading().isEmpty()) {
            return Optional.empty();
        }
        Map<Quantity, Double> before = read(head, plan.reading().get());
        boolean changes = ANGLES.stream().anyMatch(angle -> before.containsKey(angle) && plan.predicted().containsKey(angle)
            && Math.abs(before.get(angle) - plan.predicted().get(angle)) > HARDLY_DEG);
        if (!changes) {
            return Optional.empty();
        }
        SketchSizes sizes = new SketchSizes(number(head, "cg_toe_mm"), number(head, "cg_up_mm"), number(head, "offset_mm"),
            OptionalDouble.empty(), number(head, "volume_cm3"), OptionalDouble.empty(), value(plan.predicted(), Quantity.LENGTH));
        try {
            return Optional.of(new HeadSketchPicture("Head " + tag, category.get(), plan.reading().get(),
                word(head, "hand", Hand.values()).orElse(Hand.RIGHT), angles(before), angles(plan.predicted()), sizes));
        } catch (IllegalArgumentException cannotBeDrawn) {
            return Optional.empty();
        }
    }

    /** What the head reads now, a wood's loft in the reading the plan speaks of. */
    private static Map<Quantity, Double> read(State head, AngleReading asked) {
        Map<Quantity, Double> values = new EnumMap<>(Quantity.class);
        Map<Quantity, String> how = new EnumMap<>(Quantity.class);
        for (Quantity angle : ANGLES) {
            String column = ReadColumn.of(angle).orElseThrow().column();
            head.readings().stream().filter(one -> one.read().quantity().equals(column)).reduce((earlier, later) -> later)
                .map(CurrentReading::read).ifPresent(read -> {
                    values.put(angle, read.value().orElseThrow());
                    how.put(angle, read.condition().getOrDefault("reading", asked.word()));
                });
        }
        boolean other = values.containsKey(Quantity.LOFT) && !how.get(Quantity.LOFT).equals(asked.word());
        if (other && asked.isWood() && values.containsKey(Quantity.LIE) && values.containsKey(Quantity.FACE)) {
            values.put(Quantity.LOFT, asked == AngleReading.SQUARE
                ? WoodLoft.squareDeg(values.get(Quantity.LOFT), values.get(Quantity.FACE), values.get(Quantity.LIE))
                : WoodLoft.soledDeg(values.get(Quantity.LOFT), values.get(Quantity.FACE), values.get(Quantity.LIE)));
        } else if (other) {
            values.remove(Quantity.LOFT);
        }
        return values;
    }

    private static SketchAngles angles(Map<Quantity, Double> values) {
        return new SketchAngles(value(values, Quantity.LOFT), value(values, Quantity.LIE), value(values, Quantity.FACE),
            value(values, Quantity.BOUNCE));
    }

    private static OptionalDouble value(Map<Quantity, Double> values, Quantity quantity) {
        Double value = values.get(quantity);
        return value == null ? OptionalDouble.empty() : OptionalDouble.of(value);
    }

    private static OptionalDouble number(State head, String name) {
        return TicketParts.number(head, name).map(OptionalDouble::of).orElse(OptionalDouble.empty());
    }

    private static <W extends Word> Optional<W> word(State head, String fact, W[] words) {
        return head.fact(fact).flatMap(text -> Arrays.stream(words).filter(one -> one.word().equals(text)).findFirst());
    }
}
