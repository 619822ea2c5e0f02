package benchtwin.bend;

import benchtwin.club.HeadMaterial;
import java.util.Optional;
import java.util.Random;

/**
 * Bends made-up heads by two habits and counts: asking each time for what is left, and asking what {@link AskPolicy} says. Each
 * model of head has metal of its own; its heads come one after the other, so that what one taught serves the next.
 */
public final class BendSimulation {

    /** Heads of one model. */
    public static final int HEADS_A_MODEL = 10;
    /** What the heads need, degrees: evenly spread between. */
    private static final double LEAST_NEED_DEG = 0.5;
    private static final double MOST_NEED_DEG = 2.5;
    private static final double TOLERANCE_DEG = 0.25;
    /** Nobody bends a head more often. */
    static final int MOST_BENDS = 100;

    /** Made-up metals. */
    public enum Metal {
        /** Follows by a gain, and loses nothing: N(0.8, 0.15). */
        GAIN("follows a gain of 0.65 to 0.95"),
        /** Follows wholly but for a loss between 0.1° and 0.7°. */
        LOSS("loses a fixed 0.1° to 0.7°");

        private static final double GAIN_MEAN = 0.8;
        private static final double GAIN_SPREAD = 0.15;
        private static final double LEAST_LOSS_DEG = 0.1;
        private static final double MOST_LOSS_DEG = 0.7;

        private final String words;

        Metal(String words) {
            this.words = words;
        }

        /**
         * What it does, in words.
         * @return never empty
         */
        public String words() {
            return words;
        }

        private Law law(Random random) {
            return this == GAIN ? new Law(GAIN_MEAN + GAIN_SPREAD * random.nextGaussian(), 0)
                : new Law(1, LEAST_LOSS_DEG + (MOST_LOSS_DEG - LEAST_LOSS_DEG) * random.nextDouble());
        }
    }

    /**
     * What is simulated.
     * @param metal      what the metal does
     * @param working    how the ask is held
     * @param readingDeg standard uncertainty of a reading, degrees, above 0
     */
    public record Scene(Metal metal, Working working, double readingDeg) {

        public Scene {
            if (!(readingDeg > 0)) {
                throw new IllegalArgumentException("a reading that is exact is no reading: expected an uncertainty above 0");
            }
        }
    }

    private record Law(double gain, double lossDeg) {
    }

    /** Whatever decides the next ask: what is left by the last reading, toward the target; empty to stop. */
    private interface Habit {
        Optional<Double> ask(boolean onward, double leftDeg);

        default void got(boolean onward, double askedDeg, double gotDeg) {
        }
    }

    private final Scene scene;
    private final Random random;
    private final BendTally tally = new BendTally(MOST_BENDS);

    private BendSimulation(Scene scene, long seed) {
        this.scene = scene;
        this.random = new Random(seed);
    }

    /**
     * Bends heads by asking each time for what is left.
     * @param scene  what is simulated
     * @param models how many models, 1 or more
     * @param seed   of the random numbers
     * @return what came out
     */
    public static BendTally naive(Scene scene, int models, long seed) {
        return new BendSimulation(scene, seed).run(models, () -> (onward, left) -> Optional.of(left));
    }

    /**
     * Bends heads as the policy says, from the prior of unknown metal on.
     * @param scene  what is simulated
     * @param models how many models, 1 or more
     * @param seed   of the random numbers
     * @param policy the policy
     * @return what came out
     */
    public static BendTally learning(Scene scene, int models, long seed, AskPolicy policy) {
        return new BendSimulation(scene, seed).run(models, () -> new Learner(scene, policy));
    }

    private BendTally run(int models, java.util.function.Supplier<Habit> habits) {
        for (int model = 0; model < models; model++) {
            Law law = scene.metal().law(random);
            Habit habit = habits.get();
            for (int head = 0; head < HEADS_A_MODEL; head++) {
                bend(law, habit, LEAST_NEED_DEG + (MOST_NEED_DEG - LEAST_NEED_DEG) * random.nextDouble());
            }
        }
        return tally;
    }

    private void bend(Law law, Habit habit, double needDeg) {
        double truly = 0;
        double read = reading(truly);
        boolean passed = false;
        int bends = 0;
        boolean stopped = false;
        while (Math.abs(needDeg - read) > TOLERANCE_DEG && bends < MOST_BENDS && !stopped) {
            boolean onward = needDeg > read;
            Optional<Double> ask = habit.ask(onward, Math.abs(needDeg - read));
            stopped = ask.isEmpty();
            if (ask.isPresent()) {
                double asked = ask.get();
                double scatter = scene.working().scatterDeg(asked) * random.nextGaussian();
                double got = Math.max(0, law.gain() * asked - law.lossDeg() + scatter);
                truly += onward ? got : -got;
                bends++;
                passed |= onward ? truly > needDeg + TOLERANCE_DEG : truly < needDeg - TOLERANCE_DEG;
                double before = read;
                read = reading(truly);
                habit.got(onward, asked, onward ? read - before : before - read);
            }
        }
        tally.head(bends, passed, Math.abs(needDeg - truly) <= TOLERANCE_DEG, stopped);
    }

    private double reading(double truly) {
        return truly + scene.readingDeg() * random.nextGaussian();
    }

    /** Learns each way on its own. */
    private static final class Learner implements Habit {

        private final Scene scene;
        private final AskPolicy policy;
        private final Springback[] known = {
            Springback.of(SpringbackPrior.of(HeadMaterial.UNKNOWN)), Springback.of(SpringbackPrior.of(HeadMaterial.UNKNOWN))};

        Learner(Scene scene, AskPolicy policy) {
            this.scene = scene;
            this.policy = policy;
        }

        @Override
        public Optional<Double> ask(boolean onward, double leftDeg) {
            return policy.next(known[onward ? 0 : 1], scene.working(), leftDeg, TOLERANCE_DEG, scene.readingDeg(),
                Double.MAX_VALUE).map(NextBend::askedDeg);
        }

        @Override
        public void got(boolean onward, double askedDeg, double gotDeg) {
            int way = onward ? 0 : 1;
            known[way] = known[way].after(new BendTrial(askedDeg, gotDeg, scene.readingDeg(), scene.working()));
        }
    }
}
