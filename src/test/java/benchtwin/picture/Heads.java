package benchtwin.picture;

import benchtwin.club.AngleReading;
import benchtwin.club.Category;
import benchtwin.club.Hand;
import java.util.OptionalDouble;
import java.util.Random;

/** Invented heads for sketches. */
final class Heads {

    private Heads() {
    }

    static SketchAngles wood(double loftDeg, double lieDeg, double faceDeg) {
        return new SketchAngles(OptionalDouble.of(loftDeg), OptionalDouble.of(lieDeg), OptionalDouble.of(faceDeg),
            OptionalDouble.empty());
    }

    static SketchAngles iron(double loftDeg, double lieDeg, double bounceDeg) {
        return new SketchAngles(OptionalDouble.of(loftDeg), OptionalDouble.of(lieDeg), OptionalDouble.empty(),
            OptionalDouble.of(bounceDeg));
    }

    static SketchSizes measured() {
        return new SketchSizes(OptionalDouble.of(38), OptionalDouble.of(28), OptionalDouble.empty(), OptionalDouble.of(61),
            OptionalDouble.of(455), OptionalDouble.empty(), OptionalDouble.of(1149.35));
    }

    static HeadSketchPicture driver(Hand hand, SketchAngles before, SketchAngles after) {
        return new HeadSketchPicture("Head D-1", Category.DRIVER, AngleReading.SOLED, hand, before, after, measured());
    }

    static HeadSketchPicture iron(SketchAngles before, SketchAngles after) {
        return new HeadSketchPicture("Head I-7", Category.IRON, AngleReading.EDGE, Hand.RIGHT, before, after, measured());
    }

    /** Any head there could be, some of its numbers missing. */
    static HeadSketchPicture any(long seed) {
        Random random = new Random(seed);
        Category category = Category.values()[random.nextInt(Category.values().length)];
        boolean wood = category == Category.DRIVER || category == Category.FAIRWAY
            || category == Category.HYBRID && random.nextBoolean();
        AngleReading reading = !wood ? AngleReading.EDGE : random.nextBoolean() ? AngleReading.SOLED : AngleReading.SQUARE;
        OptionalDouble loft = some(random, category == Category.WEDGE ? 45 : 1, category == Category.WEDGE ? 64 : 30);
        OptionalDouble lie = some(random, 54, 74);
        OptionalDouble face = wood ? some(random, -6, 6) : OptionalDouble.empty();
        OptionalDouble bounce = wood ? OptionalDouble.empty() : some(random, -3, 15);
        SketchAngles before = new SketchAngles(loft, lie, face, bounce);
        SketchAngles after = new SketchAngles(moved(random, loft), moved(random, lie), moved(random, face), moved(random, bounce));
        SketchSizes sizes = new SketchSizes(some(random, 28, 42), some(random, 12, 30), some(random, -1, 8), some(random, 45, 95),
            some(random, 200, 470), some(random, 800, 1200), some(random, 800, 1200));
        return new HeadSketchPicture("Head X-" + seed + ", " + category.word(), category, reading,
            Hand.values()[random.nextInt(2)], before, after, sizes);
    }

    private static OptionalDouble some(Random random, double least, double most) {
        double value = Math.rint((least + random.nextDouble() * (most - least)) * 20) / 20;
        return random.nextInt(6) == 0 ? OptionalDouble.empty() : OptionalDouble.of(value);
    }

    private static OptionalDouble moved(Random random, OptionalDouble deg) {
        double by = random.nextInt(3) == 0 ? 0 : Math.rint(random.nextGaussian() * 30) / 20;
        return deg.isPresent() ? OptionalDouble.of(deg.getAsDouble() + by) : deg;
    }
}
