package benchtwin.bench;

import benchtwin.bend.BendGoal;
import benchtwin.club.Head;
import benchtwin.club.Quantity;
import benchtwin.club.QuantityText;
import benchtwin.club.Wanted;
import benchtwin.measure.Reading;
import benchtwin.stock.MeasuredColumns;
import benchtwin.stock.StockKind;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** Where a head is to go, how near, and how well it is read on the way. */
final class BendAims {

    /** Nobody reads an angle better. Memory. */
    private static final double LEAST_UNCERTAINTY_DEG = 0.01;

    private final Workshop workshop;
    private final Optional<OpenBook> book;
    private final Head head;
    private final BendService.Wish wish;

    /**
     * @param workshop the stock
     * @param book     the book, for gauges; none where the stock is in files
     * @param head     the head
     * @param wish     how the session is wanted
     */
    BendAims(Workshop workshop, Optional<OpenBook> book, Head head, BendService.Wish wish) {
        this.workshop = workshop;
        this.book = book;
        this.head = head;
        this.wish = wish;
    }

    /** The angles on record, degrees. */
    Map<Quantity, Double> recorded() {
        Map<Quantity, Double> angles = new EnumMap<>(Quantity.class);
        readings().forEach((quantity, reading) -> angles.put(quantity, reading.value()));
        return angles;
    }

    private Map<Quantity, Reading> readings() {
        Map<Quantity, Reading> readings = new EnumMap<>(Quantity.class);
        head.angles().loftDeg().ifPresent(reading -> readings.put(Quantity.LOFT, reading));
        head.angles().lieDeg().ifPresent(reading -> readings.put(Quantity.LIE, reading));
        head.angles().faceDeg().ifPresent(reading -> readings.put(Quantity.FACE, reading));
        head.angles().bounceDeg().ifPresent(reading -> readings.put(Quantity.BOUNCE, reading));
        return readings;
    }

    /**
     * Where the head is to go: as typed, else as a plan has it, else as its last session had it.
     * @param recordedDeg the angles it starts from
     * @param planned     what a plan bends it to
     * @param own         bends of it so far
     */
    Map<Quantity, Double> target(Map<Quantity, Double> recordedDeg, Optional<Map<Quantity, Double>> planned, List<BendJournal.Kept> own)
        throws BadInput {
        Map<Quantity, Double> typed = new EnumMap<>(Quantity.class);
        typed.putAll(wish.to());
        for (Map.Entry<Quantity, Double> by : wish.by().entrySet()) {
            Double from = recordedDeg.get(by.getKey());
            if (from == null) {
                throw new BadInput("the %s of head %s is not on record, so it cannot be changed by an amount: %s"
                    .formatted(QuantityText.name(by.getKey()), head.tag(), workshop.asks(ToDo.BEND_ANGLE)));
            }
            if (typed.put(by.getKey(), hundredths(from + by.getValue())) != null) {
                throw new BadInput("%s %s".formatted(QuantityText.name(by.getKey()), workshop.asks(ToDo.TO_AND_CHANGE)));
            }
        }
        for (Map.Entry<Quantity, Double> wanted : typed.entrySet()) {
            refuseUnsteered(wanted.getKey());
            AskedRange.check(wanted.getKey(), wanted.getValue());
        }
        if (!typed.isEmpty()) {
            return typed;
        }
        if (planned.isPresent()) {
            return planned.get();
        }
        if (!own.isEmpty() && !own.get(own.size() - 1).targetDeg().isEmpty()) {
            return own.get(own.size() - 1).targetDeg();
        }
        throw new BadInput("no angles were given for head %s, no plan bends it, and none of its sessions is open: %s"
            .formatted(head.tag(), workshop.asks(ToDo.BEND_ANGLES, head.isWood() ? "lie=58.5,face=0" : "loft=34,lie=62.5")));
    }

    private void refuseUnsteered(Quantity quantity) throws BadInput {
        if (BendGoal.steered(head.angles().reading()).contains(quantity)) {
            return;
        }
        throw new BadInput(switch (quantity) {
            case LOFT -> "a wood's loft is not bent: soled it stays, square it follows the face. Give lie and face";
            case FACE -> "an iron is bent in loft and lie; it has no face angle";
            case BOUNCE -> "bounce follows the loft one for one: give the loft";
            default -> "a bend changes %s, not %s".formatted(head.isWood() ? "lie and face" : "loft and lie", QuantityText.name(quantity));
        });
    }

    static double hundredths(double angle) {
        return Math.rint(angle * 100) / 100;
    }

    /** As typed, as the plan has them, or as usual. */
    Map<Quantity, Double> tolerances(Map<Quantity, Double> target, Optional<JobPlan.Club> planned) {
        Map<Quantity, Double> tolerances = new EnumMap<>(Quantity.class);
        target.keySet().forEach(quantity -> tolerances.put(quantity, wish.tolerance().getOrDefault(quantity,
            planned.map(club -> club.wanted().get(quantity)).map(Wanted::tolerance).orElse(quantity.defaultTolerance()))));
        return tolerances;
    }

    /** How well each steered angle is read: as said, as the gauge is trusted, as the reading on record was, or as usual. */
    Map<Quantity, Double> uncertainties() throws BadInput {
        Map<Quantity, Double> uncertainties = new EnumMap<>(Quantity.class);
        Map<Quantity, Reading> readings = readings();
        for (Quantity quantity : BendGoal.steered(head.angles().reading())) {
            String column = quantity.word() + "_deg";
            OptionalDouble gauge = wish.gauge().isEmpty() || book.isEmpty() ? OptionalDouble.empty()
                : book.get().read(view -> GaugeReference.of(view).uncertainty(wish.gauge().get(), column));
            double usual = readings.containsKey(quantity) ? readings.get(quantity).standardUncertainty()
                : MeasuredColumns.uncertainty(StockKind.HEADS, column, head.isWood());
            uncertainties.put(quantity, Math.max(LEAST_UNCERTAINTY_DEG,
                wish.uncertainty().getOrDefault(quantity, gauge.orElse(usual))));
        }
        return uncertainties;
    }
}
