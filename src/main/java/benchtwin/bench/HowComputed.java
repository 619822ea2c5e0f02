package benchtwin.bench;

import benchtwin.club.Quantity;
import benchtwin.club.QuantityText;
import benchtwin.match.Ranked;
import benchtwin.match.Workings;
import benchtwin.measure.LengthText;
import benchtwin.measure.Reading;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How one number was computed: what went in, how sure each is, where it came from, by which formula.
 * @param quantity   which
 * @param value      the number, in the quantity's unit
 * @param u          its standard uncertainty, before the reading that judges the finished club
 * @param judgingU   standard uncertainty of that reading; 0 where there is none
 * @param read       whether the number was read on the built club, and not computed
 * @param predicted  what was computed; empty when an input is missing
 * @param formula    by which
 * @param conditions how the quantity is to be read
 * @param doings     what the plan does to it
 * @param influences what it rests on, the largest share of the uncertainty first
 * @param carried    what is carried over from the old club
 * @param old        what the old club measured
 */
public record HowComputed(Quantity quantity, double value, double u, double judgingU, boolean read, OptionalDouble predicted,
                          Formula formula, List<String> conditions, List<Workings.Doing> doings, List<Workings.Influence> influences,
                          Optional<Workings.CarriedOver> carried, Optional<Reading> old) {

    private static final double SAME = 1e-9;

    public HowComputed {
        conditions = List.copyOf(conditions);
        doings = List.copyOf(doings);
        influences = List.copyOf(influences);
    }

    /**
     * How a number of an option was computed.
     * @param option   the option
     * @param club     what the club is called that it is made of
     * @param quantity which number
     * @return how
     * @throws BadInput when the option has no such number
     */
    public static HowComputed of(Ranked option, String club, Quantity quantity) throws BadInput {
        Double value = option.predicted().get(quantity);
        if (value == null) {
            throw new BadInput("the %s of this build cannot be computed: a reading it takes is missing".formatted(
                QuantityText.name(quantity)));
        }
        Workings workings = option.workings();
        OptionalDouble predicted = workings.predicted(quantity);
        boolean read = predicted.isEmpty() || Math.abs(predicted.getAsDouble() - value) > SAME;
        return new HowComputed(quantity, value, option.uncertainty().getOrDefault(quantity, 0.0), workings.judgingU(quantity), read, predicted,
            Formula.of(quantity, workings.reading(), workings.condition().overGrip()), conditions(club, quantity, workings),
            workings.doings(quantity), workings.influences(quantity), workings.carried(quantity),
            workings.old(quantity));
    }

    /**
     * Whether any input is a default that stands in for a measurement.
     * @return true when one is
     */
    public boolean restsOnDefault() {
        return influences.stream().anyMatch(one -> one.origin() == Workings.From.DEFAULT);
    }

    private static List<String> conditions(String club, Quantity quantity, Workings workings) {
        List<String> conditions = new ArrayList<>();
        switch (quantity) {
            case LOFT, LIE, FACE, BOUNCE -> conditions.add("angles read " + workings.reading().word());
            case LENGTH -> conditions.add("along the axis, from the end of the cap to the ground");
            case FREQUENCY -> {
                conditions.add("%s in in the clamp, %s".formatted(LengthText.inchesAndSixteenths(workings.condition().clampMm()),
                    workings.condition().overGrip() ? "over the grip" : "on the bare butt"));
                conditions.add(workings.isScaledByOldClub() ? "stiffness scaled to the newest reading of " + club
                    : "stiffness scaled to the raw shaft's own reading");
            }
            case TORQUE -> conditions.add("under 1 ft·lbf");
            default -> { }
        }
        return conditions;
    }
}
