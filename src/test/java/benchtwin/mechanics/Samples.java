package benchtwin.mechanics;

import benchtwin.club.Adjust;
import benchtwin.club.AngleReading;
import benchtwin.club.BendHistory;
import benchtwin.club.Bore;
import benchtwin.club.Category;
import benchtwin.club.FrequencyReading;
import benchtwin.club.Grip;
import benchtwin.club.Hand;
import benchtwin.club.Head;
import benchtwin.club.HeadAngles;
import benchtwin.club.HeadCondition;
import benchtwin.club.HeadMaterial;
import benchtwin.club.HeadSize;
import benchtwin.club.Keeping;
import benchtwin.club.MadeAngles;
import benchtwin.club.MassProperties;
import benchtwin.club.Shaft;
import benchtwin.club.ShaftCondition;
import benchtwin.club.ShaftMaterial;
import benchtwin.club.TipKind;
import benchtwin.measure.Reading;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/** Plain parts for tests: invented, round numbers. */
public final class Samples {

    private Samples() {
    }

    public static Optional<Reading> read(double value, double u) {
        return Optional.of(Reading.of(value, u));
    }

    /** A bored head with the angles, mass and bore given; the rest unrecorded. */
    public static Head head(String tag, Category category, AngleReading reading, double loftDeg, double lieDeg,
                            double faceOrBounceDeg, double massG, double boreToGroundMm, HeadMaterial material) {
        boolean wood = reading.isWood();
        return new Head(tag, "Alder", category, Optional.of("1"), Hand.RIGHT,
            new HeadAngles(reading, read(loftDeg, wood ? 0.3 : 0.2), read(lieDeg, 0.2),
                wood ? read(faceOrBounceDeg, 0.4) : Optional.empty(),
                wood ? Optional.empty() : read(faceOrBounceDeg, 0.2)),
            OptionalDouble.empty(), Optional.empty(), read(massG, 0.1), Set.of(),
            Optional.of(new Bore(wood ? 8.6 : 9.5, TipKind.PARALLEL, read(32, 0.3), read(boreToGroundMm, 0.3))),
            Optional.empty(), material, Adjust.BEND, List.of(), 6, MadeAngles.UNKNOWN, BendHistory.UNRECORDED,
            MassProperties.UNMEASURED, HeadSize.UNMEASURED, HeadCondition.NEW, Keeping.UNRECORDED);
    }

    /** A 58°-lie, 9.5° titanium driver head of 200 g. */
    public static Head driver() {
        return head("D", Category.DRIVER, AngleReading.SOLED, 9.5, 58, 0, 200, 32, HeadMaterial.TITANIUM);
    }

    /** A 62.5°-lie, 34° carbon steel 7-iron head of 268 g. */
    public static Head sevenIron() {
        return head("I7", Category.IRON, AngleReading.EDGE, 34, 62.5, 5, 268, 30, HeadMaterial.CARBON_STEEL);
    }

    /** The handbook's driver shaft: 46 in, 60 g, 8.5 mm tip, 15.2 mm butt, 76 mm parallel tip, uniform mass. */
    public static Shaft driverShaft(double cpm, double tipCutMm, double buttCutMm) {
        double raw = 46 * 25.4;
        double length = raw - tipCutMm - buttCutMm;
        return new Shaft("S", "Brook", ShaftMaterial.GRAPHITE, Set.of(Category.DRIVER), Optional.empty(), raw,
            read(60 * length / raw, 0.1), read(length / 2, 0.8), read(4.5, 0.1), 8.5, TipKind.PARALLEL, 15.2, 76,
            tipCutMm, buttCutMm, List.of(new FrequencyReading(Reading.of(cpm, 0.5), OptionalDouble.of(127),
                OptionalDouble.empty(), OptionalDouble.of(205), false, OptionalDouble.empty())),
            Optional.empty(), Optional.empty(), Optional.empty(), 0, ShaftCondition.NEW, Keeping.UNRECORDED);
    }

    /** A 37 in, 100 g steel iron shaft. */
    public static Shaft ironShaft() {
        double raw = 37 * 25.4;
        return new Shaft("T", "Ridge", ShaftMaterial.STEEL, Set.of(Category.IRON), Optional.empty(), raw,
            read(100, 0.1), read(raw * 0.48, 0.8), read(2, 0.1), 9.4, TipKind.PARALLEL, 15.2, 200, 0, 0,
            List.of(new FrequencyReading(Reading.of(310, 0.5), OptionalDouble.of(127), OptionalDouble.empty(),
                OptionalDouble.of(205), false, OptionalDouble.empty())),
            Optional.empty(), Optional.empty(), Optional.empty(), 0, ShaftCondition.NEW, Keeping.UNRECORDED);
    }

    /** A 50 g grip, 267 mm long, 3 mm cap. */
    public static Grip grip() {
        return new Grip("G", "Moss", read(50, 0.1), OptionalDouble.of(267), OptionalDouble.of(3),
            OptionalDouble.empty(), false, Optional.empty(), Keeping.UNRECORDED);
    }

    /** The driver, bare of tape. */
    public static Assembly driverClub() {
        return Assembler.of(driver(), driverShaft(255, 0, 0), Optional.empty(), Optional.of(grip()));
    }

    /** The 7-iron, bare of tape. */
    public static Assembly ironClub() {
        return Assembler.of(sevenIron(), ironShaft(), Optional.empty(), Optional.of(grip()));
    }
}
