package benchtwin.samples;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Random;

/** Seeded chance. One for each purpose, so that more of one thing does not change another. */
final class Draw {

    private final long seed;
    private final Random random;

    Draw(long seed) {
        this.seed = seed;
        this.random = new Random(seed);
    }

    /** Chance of its own for a named purpose; the same name gives the same again. */
    Draw of(String purpose) {
        return new Draw(seed * 31 + purpose.hashCode());
    }

    /** Normal about a centre, drawn again until it lies within {@code most} of it. */
    double near(double centre, double standardDeviation, double most) {
        double off;
        do {
            off = random.nextGaussian() * standardDeviation;
        } while (Math.abs(off) > most);
        return centre + off;
    }

    /** The same, rounded as a gauge shows it. */
    double read(double centre, double standardDeviation, double most, int decimals) {
        return round(near(centre, standardDeviation, most), decimals);
    }

    double between(double least, double most) {
        return least + random.nextDouble() * (most - least);
    }

    boolean chance(double probability) {
        return random.nextDouble() < probability;
    }

    <T> T pick(List<T> from) {
        return from.get(random.nextInt(from.size()));
    }

    Random random() {
        return random;
    }

    /** Exactly the number that the rounded text reads as. */
    static double round(double value, int decimals) {
        return Double.isNaN(value) ? value
            : BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_EVEN).doubleValue();
    }
}
