package benchtwin.match;

import benchtwin.club.AddedMasses;
import benchtwin.club.Adjust;
import benchtwin.club.AngleReading;
import benchtwin.club.BendHistory;
import benchtwin.club.Bore;
import benchtwin.club.Category;
import benchtwin.club.ClubRow;
import benchtwin.club.ClubState;
import benchtwin.club.FrequencyReading;
import benchtwin.club.Grip;
import benchtwin.club.Hand;
import benchtwin.club.Head;
import benchtwin.club.HeadAngles;
import benchtwin.club.HeadCondition;
import benchtwin.club.HeadMaterial;
import benchtwin.club.HeadSize;
import benchtwin.club.Inventory;
import benchtwin.club.Keeping;
import benchtwin.club.LengthMethod;
import benchtwin.club.MadeAngles;
import benchtwin.club.MassProperties;
import benchtwin.club.Port;
import benchtwin.club.RecordedClub;
import benchtwin.club.Ring;
import benchtwin.club.Shaft;
import benchtwin.club.ShaftCondition;
import benchtwin.club.ShaftMaterial;
import benchtwin.club.Sleeve;
import benchtwin.club.SleeveSeat;
import benchtwin.club.TipKind;
import benchtwin.club.WeighedWith;
import benchtwin.club.Weight;
import benchtwin.measure.Reading;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Random;
import java.util.Set;

/**
 * Seeded invented stock of one model and hand, for properties, brute force and benchmarks: a driver whose head is on record,
 * its shaft in a 6 × 5 sleeve, and heads of which a share takes that sleeve and the rest is bored, most of them bendable.
 */
public final class RandomStock {

    private static final double INCH = 25.4;

    private final Random random;

    /**
     * @param seed same seed, same stock
     */
    public RandomStock(long seed) {
        this.random = new Random(seed);
    }

    static Optional<Reading> read(double value, double u) {
        return Optional.of(Reading.of(value, u));
    }

    private double about(double middle, double sigma, double step) {
        return Math.rint((middle + sigma * random.nextGaussian()) / step) * step;
    }

    /** The sleeve: outer ring of 6, inner of 5. */
    public static Sleeve sleeve() {
        return new Sleeve("KEEL-30", Set.of("KEEL"), Optional.empty(), 8.6, read(34, 0.3), read(10, 0.3), read(8, 0.1),
            true, List.of(new Ring(0.8, 6, 0), new Ring(0.6, 5, 0)), List.of(), OptionalInt.of(4), Keeping.UNRECORDED);
    }

    /** A head that takes the sleeve. */
    public Head sleeved(String tag) {
        return head(tag, HeadCondition.NEW, true, about(9.3, 0.35, 0.1), about(58, 0.4, 0.1), about(0, 0.5, 0.1),
            about(192, 1.2, 0.1));
    }

    /** A bored head, bendable unless its material is not. */
    public Head bored(String tag) {
        return head(tag, HeadCondition.NEW, false, about(9.3, 0.35, 0.1), about(58, 0.4, 0.1), about(0, 0.5, 0.1),
            about(198, 1.2, 0.1));
    }

    private Head head(String tag, HeadCondition condition, boolean sleeved, double loft, double lie, double face,
                      double mass) {
        return new Head(tag, "Alder", Category.DRIVER, Optional.of("1"), Hand.RIGHT,
            new HeadAngles(AngleReading.SOLED, read(loft, 0.3), read(lie, 0.2), read(face, 0.4), Optional.empty()),
            OptionalDouble.empty(), Optional.empty(), read(mass, 0.1), Set.of(WeighedWith.BARE),
            sleeved ? Optional.empty() : Optional.of(new Bore(8.65, TipKind.PARALLEL, read(about(34, 0.3, 0.1), 0.3),
                read(about(30, 0.4, 0.1), 0.3))),
            sleeved ? Optional.of(new SleeveSeat("KEEL", read(about(46, 0.3, 0.1), 0.3), Optional.of("1/1")))
                : Optional.empty(),
            HeadMaterial.TITANIUM, sleeved ? Adjust.SLEEVE : Adjust.BEND, List.of(new Port("P8", 4)),
            random.nextInt(7), MadeAngles.UNKNOWN, BendHistory.UNRECORDED, MassProperties.UNMEASURED, HeadSize.UNMEASURED, condition,
            Keeping.UNRECORDED);
    }

    /** A raw 46 in driver shaft; {@code fitted} ones are cut, with the sleeve and a grip on. */
    public Shaft shaft(String tag, boolean fitted) {
        double raw = 46 * INCH;
        double cut = fitted ? 78 : 0;
        double length = raw - cut;
        double mass = about(60, 0.8, 0.1) * length / raw;
        return new Shaft(tag, "Brook", ShaftMaterial.GRAPHITE, Set.of(Category.DRIVER), Optional.empty(), raw,
            read(mass, 0.1), read(length * (0.48 + 0.004 * random.nextGaussian()), 0.8), read(about(4.5, 0.2, 0.1), 0.1),
            8.5, TipKind.PARALLEL, 15.2, 76, 0, cut,
            List.of(new FrequencyReading(Reading.of(about(255 + cut / 4, 2, 0.5), 0.5), OptionalDouble.of(127),
                OptionalDouble.empty(), OptionalDouble.of(205), false, OptionalDouble.empty())),
            fitted ? Optional.of("KEEL-30") : Optional.empty(), fitted ? Optional.of("G") : Optional.empty(),
            Optional.empty(), 0, fitted ? ShaftCondition.PULLED : ShaftCondition.NEW, Keeping.UNRECORDED);
    }

    /** A 50 g grip. */
    public static Grip grip() {
        return new Grip("G", "Moss", read(50, 0.1), OptionalDouble.of(267), OptionalDouble.of(3),
            OptionalDouble.empty(), false, Optional.empty(), Keeping.UNRECORDED);
    }

    /** Port weights from 2 to 12 g and two tip weights. */
    public static List<Weight> weights() {
        return List.of(new Weight("W2", "P8", 2, 3, Keeping.UNRECORDED), new Weight("W6", "P8", 6, 3, Keeping.UNRECORDED),
            new Weight("W9", "P8", 9, 1, Keeping.UNRECORDED), new Weight("T2", "tip", 2, 5, Keeping.UNRECORDED));
    }

    /** The cracked driver, with what it last measured. */
    public static RecordedClub club(Head head, Shaft shaft, double swingWeight, double cpm, double totalMass,
                                    double length) {
        return new RecordedClub("DR", "Rowan Ash", Category.DRIVER, Optional.of("1"), Hand.RIGHT,
            List.of(row(head, shaft, LocalDate.of(2026, 5, 3), ClubState.IN_PLAY, swingWeight, cpm, totalMass, length),
                row(head, shaft, LocalDate.of(2026, 6, 1), ClubState.DAMAGED, swingWeight, cpm, totalMass, length)));
    }

    private static ClubRow row(Head head, Shaft shaft, LocalDate on, ClubState state, double swingWeight, double cpm,
                               double totalMass, double length) {
        return new ClubRow(on, state, Optional.of(head.tag()), Optional.of(shaft.tag()), Optional.of("G"),
            Optional.of("KEEL-30"), Optional.of("1/1"), Optional.of(head.angles()), read(length, 0.8), LengthMethod.AXIS,
            read(swingWeight, 0.2), Optional.of(new FrequencyReading(Reading.of(cpm, 0.5), OptionalDouble.of(127),
                OptionalDouble.empty(), OptionalDouble.empty(), true, OptionalDouble.empty())),
            read(totalMass, 0.1), AddedMasses.ONE_LAYER, Optional.empty(), Optional.empty(), Map.of());
    }

    /** A workshop with so many heads, a share of them sleeved, and so many raw shafts. */
    public Inventory inventory(int heads, double sleevedShare, int shafts) {
        List<Head> all = new ArrayList<>();
        Head old = head("OLD", HeadCondition.CRACKED, true, 9.2, 58.1, -0.3, 192.3);
        all.add(old);
        for (int k = 0; k < heads; k++) {
            String tag = "H-%06d".formatted(k);
            all.add(random.nextDouble() < sleevedShare ? sleeved(tag) : bored(tag));
        }
        Shaft kept = shaft("KEPT", true);
        List<Shaft> drawer = new ArrayList<>(List.of(kept));
        for (int k = 0; k < shafts; k++) {
            drawer.add(shaft("S-%06d".formatted(k), random.nextInt(8) == 0));
        }
        return new Inventory(all, drawer, List.of(grip()), List.of(sleeve()), weights(),
            List.of(club(old, kept, 32.0, 250, 312.5, 1150)));
    }
}
