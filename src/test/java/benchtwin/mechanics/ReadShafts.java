package benchtwin.mechanics;

import benchtwin.club.Category;
import benchtwin.club.FrequencyReading;
import benchtwin.club.Keeping;
import benchtwin.club.Shaft;
import benchtwin.club.ShaftCondition;
import benchtwin.club.ShaftMaterial;
import benchtwin.club.TipKind;
import benchtwin.measure.Reading;
import benchtwin.measure.Taken;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.DoubleUnaryOperator;

/** Shafts of 46 in and 60 g for tests, read as a test wants. */
final class ReadShafts {

    static final double LENGTH_MM = 46 * 25.4;
    static final double MASS_G = 60;
    static final double TIP_MASS_G = 205;

    private ReadShafts() {
    }

    /** A shaft balanced at a share of its length. */
    static Shaft shaft(double tipMm, double buttMm, double parallelMm, double balanceShare, List<FrequencyReading> readings) {
        return new Shaft("P", "Brook", ShaftMaterial.GRAPHITE, Set.of(Category.DRIVER), Optional.empty(), LENGTH_MM,
            Samples.read(MASS_G, 0.1), Samples.read(LENGTH_MM * balanceShare, 0.8), Samples.read(4.5, 0.1), tipMm,
            TipKind.PARALLEL, buttMm, parallelMm, 0, 0, readings, Optional.empty(), Optional.empty(), Optional.empty(), 0,
            ShaftCondition.NEW, Keeping.UNRECORDED);
    }

    /** The handbook's driver shaft: 8.5 mm tip, 15.2 mm butt, 76 mm parallel tip, uniform mass. */
    static Shaft driverShaft(FrequencyReading... readings) {
        return shaft(8.5, 15.2, 76, 0.5, List.of(readings));
    }

    static FrequencyReading bare(double cpm, double freeMm) {
        return reading(cpm, freeMm, TIP_MASS_G, false, OptionalDouble.empty(), "bench 1");
    }

    static FrequencyReading gripped(double cpm, double freeMm) {
        return reading(cpm, freeMm, TIP_MASS_G, true, OptionalDouble.empty(), "bench 1");
    }

    static FrequencyReading reading(double cpm, double freeMm, double tipMassG, boolean overGrip, OptionalDouble planeDeg,
                                    String gauge) {
        return new FrequencyReading(new Reading(cpm, 0.5, new Taken(Optional.empty(), Optional.of(gauge), Optional.empty())),
            OptionalDouble.empty(), OptionalDouble.of(freeMm), OptionalDouble.of(tipMassG), overGrip, planeDeg);
    }

    /** Frequency of a shaft of known stiffness (N·m², of mm from its tip) by an independent integration. */
    static double cpm(DoubleUnaryOperator stiffness, double balanceShare, double freeMm) {
        ShaftMass mass = ShaftMass.of(LENGTH_MM, MASS_G, LENGTH_MM * balanceShare);
        return ShootingReference.cpm(freeMm / 1000, x -> stiffness.applyAsDouble(freeMm - 1000 * x),
            x -> mass.at(LENGTH_MM - freeMm + 1000 * x), TipBody.point(TIP_MASS_G));
    }

    static List<FrequencyReading> read(DoubleUnaryOperator stiffness, double balanceShare, double... freeMm) {
        return Arrays.stream(freeMm).mapToObj(free -> bare(cpm(stiffness, balanceShare, free), free)).toList();
    }
}
