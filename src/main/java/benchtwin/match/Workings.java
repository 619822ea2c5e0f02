package benchtwin.match;

import benchtwin.club.AngleReading;
import benchtwin.club.Head;
import benchtwin.club.Quantity;
import benchtwin.club.Wanted;
import benchtwin.measure.Reading;
import benchtwin.mechanics.Assembly;
import benchtwin.mechanics.Factor;
import benchtwin.mechanics.FrequencyCondition;
import benchtwin.mechanics.Input;
import benchtwin.mechanics.Origin;
import benchtwin.mechanics.Setup;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * What the prediction of one plan rests on, quantity by quantity: what goes in and what each thing does to the outcome. Worked
 * out when it is asked for.
 */
public final class Workings {

    /** A change smaller than this, in the quantity's unit, is rounding. */
    private static final double NOTHING = 1e-9;
    /** An input is tried at one per cent more, to see whether it matters. */
    private static final double A_LITTLE = 0.01;

    private final TwinModel twin;
    private final FoundPlan plan;
    private final double[] predicted;
    private final List<Contribution> contributions;

    Workings(TwinModel twin, FoundPlan plan, double[] predicted, List<Contribution> contributions) {
        this.twin = twin;
        this.plan = plan;
        this.predicted = predicted.clone();
        this.contributions = List.copyOf(contributions);
    }

    /**
     * One thing a quantity rests on.
     * @param what   what it is
     * @param value  what was used; empty for what has only an uncertainty
     * @param unit   of the value, as a screen writes it; empty for a ratio
     * @param u      its standard uncertainty, in the unit; 0 for what is taken as exact
     * @param origin where it came from
     * @param moves  what one standard uncertainty of it does to the quantity, in the quantity's unit, with sign
     * @param share  of the variance of the prediction, 0 to 1
     */
    public record Influence(String what, OptionalDouble value, String unit, double u, From origin, double moves, double share) {
    }

    /** Where a thing a prediction rests on came from. */
    public enum From {
        /** It was measured. */
        MEASURED("measured"),
        /** It follows from another record. */
        DERIVED("derived"),
        /** A default stands in for a measurement. */
        DEFAULT("default");

        private final String word;

        From(String word) {
            this.word = word;
        }

        /**
         * The word on screen.
         * @return lower case
         */
        public String word() {
            return word;
        }

        static From of(Origin origin) {
            return switch (origin) {
                case MEASURED -> MEASURED;
                case DERIVED -> DERIVED;
                case DEFAULT -> DEFAULT;
            };
        }
    }

    /**
     * Something the plan, or what the club carries already, does to a quantity.
     * @param what  what it is, with its amount
     * @param moves what the quantity would be less without it, in its unit
     */
    public record Doing(String what, double moves) {
    }

    /**
     * The miss of the model on the old club, which the new one gets too.
     * @param measured what the old club measured
     * @param modelled what the model says of it
     */
    public record CarriedOver(Reading measured, double modelled) {

        /**
         * What is carried over.
         * @return measured less modelled
         */
        public double amount() {
            return measured.value() - modelled;
        }
    }

    /**
     * What was predicted, whatever was read since.
     * @param quantity which
     * @return in its unit, what is carried over included; empty when an input is missing
     */
    public OptionalDouble predicted(Quantity quantity) {
        double value = predicted[quantity.ordinal()];
        return Double.isNaN(value) ? OptionalDouble.empty() : OptionalDouble.of(value);
    }

    /**
     * What is carried over from the old club.
     * @param quantity which
     * @return empty where nothing is
     */
    public Optional<CarriedOver> carried(Quantity quantity) {
        double amount = twin.carried()[quantity.ordinal()];
        Quantity readAs = quantity == Quantity.RULES_LENGTH ? Quantity.LENGTH : quantity;
        return amount == 0 ? Optional.empty() : twin.old().map(old -> old.measured().get(readAs))
            .map(reading -> new CarriedOver(reading, reading.value() - amount));
    }

    /**
     * Whether the frequency is scaled to the old club's own reading, and not to a raw shaft's.
     * @return true where the shaft stays and its club was read
     */
    public boolean isScaledByOldClub() {
        return twin.isScaledByOldClub();
    }

    /**
     * How its angles are read.
     * @return the reading
     */
    public AngleReading reading() {
        return twin.loftIn();
    }

    /**
     * How its frequency is read.
     * @return clamp, and whether over the grip
     */
    public FrequencyCondition condition() {
        return twin.condition();
    }

    /**
     * What the old club measured.
     * @param quantity which
     * @return empty without an old club, or where it was not read
     */
    public Optional<Reading> old(Quantity quantity) {
        return twin.old().map(club -> club.measured().get(quantity));
    }

    /**
     * How far what the finished club reads may be from what is predicted.
     * @param quantity which
     * @return one standard deviation: of the prediction and of the reading that judges it together
     */
    public double readU(Quantity quantity) {
        return Propagation.u(contributions, quantity, true);
    }

    /**
     * The chance that the finished club reads one quantity inside its tolerance, whatever the others read.
     * @param quantity which
     * @param wanted   what is wanted of it
     * @return 0 to 1; empty when it cannot be predicted
     */
    public OptionalDouble chance(Quantity quantity, Wanted wanted) {
        OptionalDouble value = predicted(quantity);
        if (value.isEmpty()) {
            return value;
        }
        double off = wanted.deviation(value.getAsDouble());
        double u = readU(quantity) / wanted.tolerance();
        return OptionalDouble.of(NormalBox.probability(new double[][] {{u * u}}, new double[] {-1 - off}, new double[] {1 - off}));
    }

    /**
     * How sure the reading is that will judge the finished club.
     * @param quantity which
     * @return its standard uncertainty; 0 where it is not read
     */
    public double judgingU(Quantity quantity) {
        return contributions.stream().filter(Contribution::judging).mapToDouble(one -> Math.abs(one.perSigma()[quantity.ordinal()]))
            .max().orElse(0);
    }

    /**
     * Everything a quantity rests on.
     * @param quantity which
     * @return what is uncertain, the largest share first, then what is taken as exact
     */
    public List<Influence> influences(Quantity quantity) {
        double u = Propagation.u(contributions, quantity, false);
        List<Influence> all = new ArrayList<>();
        for (Contribution one : contributions) {
            double moves = one.perSigma()[quantity.ordinal()];
            if (!one.judging() && Math.abs(moves) > NOTHING) {
                all.add(influence(one, quantity, moves, moves * moves / (u * u)));
            }
        }
        all.sort(Comparator.comparingDouble(one -> -one.share()));
        exact(quantity, all);
        return List.copyOf(all);
    }

    private Influence influence(Contribution one, Quantity quantity, double moves, double share) {
        if (one.factor().isPresent()) {
            Factor factor = one.factor().get();
            boolean beside = factor.inputs().contains(Input.CG_ALONG_MM);
            return new Influence(beside ? one.label() + ", along the axis" : one.label(),
                beside ? OptionalDouble.empty() : OptionalDouble.of(factor.value()), factor.inputs().get(0).unit(), factor.u(),
                From.of(factor.origin()), moves, share);
        }
        Optional<Reading> old = one.key().startsWith("old:") ? twin.old().map(club -> club.measured().get(
            quantity == Quantity.RULES_LENGTH ? Quantity.LENGTH : quantity)) : Optional.empty();
        return new Influence(one.label(), old.map(reading -> OptionalDouble.of(reading.value())).orElse(OptionalDouble.empty()),
            quantity.unit(), old.map(Reading::standardUncertainty).orElse(Math.abs(moves)),
            old.isPresent() ? From.MEASURED : From.DEFAULT, moves, share);
    }

    /** Inputs without an uncertainty of their own that the quantity feels. */
    private void exact(Quantity quantity, List<Influence> all) {
        Assembly fresh = plan.candidate().assembly();
        Set<Input> uncertain = EnumSet.noneOf(Input.class);
        fresh.factors().stream().filter(factor -> factor.u() > 0).forEach(factor -> uncertain.addAll(factor.inputs()));
        for (Input input : Input.values()) {
            double value = fresh.get(input);
            if (uncertain.contains(input) || Double.isNaN(value) || value == 0) {
                continue;
            }
            Factor alone = new Factor(input.name(), input.name(), List.of(input), value, 0, 0, Origin.MEASURED);
            double other = twin.predict(fresh.moved(alone, A_LITTLE * value), plan.setup())[quantity.ordinal()];
            if (Math.abs(other - predicted[quantity.ordinal()]) > NOTHING) {
                all.add(new Influence(name(input), OptionalDouble.of(value), input.unit(), 0, origin(input), 0, 0));
            }
        }
    }

    private static String name(Input input) {
        return switch (input) {
            case HEAD_OFFSET_MM -> "offset of the head";
            case CG_TOE_MM -> "centre of gravity of the head, toward the toe";
            case CG_UP_MM -> "centre of gravity of the head, above the ground";
            case TRANSVERSE_INERTIA_G_CM2 -> "transverse inertia of the head";
            case GRIP_MIDDLE_MM -> "middle of the grip, where tape counts";
            case CAP_MM -> "cap of the grip";
            default -> input.name().toLowerCase(Locale.ROOT).replaceFirst("_(deg|mm|g|cpm)$", "").replace('_', ' ');
        };
    }

    private From origin(Input input) {
        Head head = plan.candidate().head();
        return switch (input) {
            case CG_TOE_MM -> head.mass().cgToeMm().isPresent() ? From.MEASURED : From.DEFAULT;
            case CG_UP_MM -> head.mass().cgUpMm().isPresent() ? From.MEASURED : From.DEFAULT;
            case GRIP_MIDDLE_MM, GRIP_CG_MM -> From.DERIVED;
            default -> From.MEASURED;
        };
    }

    /**
     * What the plan does to a quantity.
     * @param quantity which
     * @return cuts, masses, tape and angles that move it, each by itself
     */
    public List<Doing> doings(Quantity quantity) {
        Setup all = plan.setup();
        List<Doing> list = new ArrayList<>();
        amount(list, quantity, "%.1f mm off the tip", all.tipTrimMm(), with(all, 0, all.buttCutMm(), all.tapeLayers(), all.tipWeightG()));
        amount(list, quantity, "%.1f mm off the butt", all.buttCutMm(), with(all, all.tipTrimMm(), 0, all.tapeLayers(), all.tipWeightG()));
        amount(list, quantity, "an extension of %.1f mm", all.extensionMm(), new Setup(all.tipTrimMm(), all.buttCutMm(), 0, 0,
            all.tapeLayers(), all.headAddedG(), all.tipWeightG(), all.aim()));
        amount(list, quantity, "%.0f × tape under the grip", all.tapeLayers(),
            with(all, all.tipTrimMm(), all.buttCutMm(), 0, all.tipWeightG()));
        amount(list, quantity, "%.1f g in the ports and on the head", all.headAddedG(), all.withHeadAdded(0));
        amount(list, quantity, "a tip weight of %.1f g", all.tipWeightG(), with(all, all.tipTrimMm(), all.buttCutMm(), all.tapeLayers(), 0));
        if (!all.aim().equals(Setup.AS_READ)) {
            String setting = plan.angle().setting();
            add(list, quantity, setting == null ? "the bend" : "the sleeve set at " + setting, all.aimed(Setup.AS_READ));
        }
        return List.copyOf(list);
    }

    private static Setup with(Setup all, double tipTrimMm, double buttCutMm, double tapeLayers, double tipWeightG) {
        return new Setup(tipTrimMm, buttCutMm, all.extensionMm(), all.extensionMassG(), tapeLayers, all.headAddedG(), tipWeightG,
            all.aim());
    }

    private void amount(List<Doing> list, Quantity quantity, String words, double amount, Setup without) {
        if (amount != 0) {
            add(list, quantity, String.format(Locale.ROOT, words, amount), without);
        }
    }

    private void add(List<Doing> list, Quantity quantity, String words, Setup without) {
        double moves = predicted[quantity.ordinal()] - twin.predict(plan.candidate().assembly(), without)[quantity.ordinal()];
        if (Math.abs(moves) > NOTHING) {
            list.add(new Doing(words, moves));
        }
    }
}
