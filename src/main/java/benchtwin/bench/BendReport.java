package benchtwin.bench;

import benchtwin.bend.AskPolicy;
import benchtwin.bend.BendSimulation;
import benchtwin.bend.BendTally;
import benchtwin.bend.Working;
import benchtwin.picture.BendCount;
import benchtwin.picture.BendCountPicture;
import benchtwin.picture.Picture;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * Bends needed on made-up heads, by the habit of asking for what is left and by this program's advice.
 * @param models  models in each scene, each with metal of its own
 * @param seed    of the random numbers
 * @param scenes  what came out
 */
public record BendReport(int models, long seed, List<Scene> scenes) {

    /** Parts of a distribution: 1, 2, 3, 4, and 5 or more. */
    public static final int PARTS = 5;
    private static final double[] READINGS_DEG = {0.05, 0.15};

    /**
     * One metal, read in one way.
     * @param scene   what was simulated
     * @param naive   by the habit
     * @param advised by the advice
     */
    public record Scene(BendSimulation.Scene scene, BendTally naive, BendTally advised) {

        /**
         * What was simulated, in words.
         * @return never empty
         */
        public String words() {
            return String.format(Locale.ROOT, "Metal that %s; read to %.2f°; %s", scene.metal().words(), scene.readingDeg(),
                scene.working().word());
        }
    }

    public BendReport {
        scenes = List.copyOf(scenes);
    }

    /**
     * Runs it.
     * @param models models in each scene, 1 or more
     * @param seed   of the random numbers
     * @param risk   the most chance there may be of passing the far end of a tolerance
     * @return the report
     */
    public static BendReport run(int models, long seed, double risk) {
        List<Scene> scenes = new ArrayList<>();
        AskPolicy policy = new AskPolicy(AskPolicy.STEP_DEG, risk);
        for (Working working : Working.values()) {
            for (double reading : READINGS_DEG) {
                for (BendSimulation.Metal metal : BendSimulation.Metal.values()) {
                    BendSimulation.Scene scene = new BendSimulation.Scene(metal, working, reading);
                    scenes.add(new Scene(scene, BendSimulation.naive(scene, models, seed),
                        BendSimulation.learning(scene, models, seed, policy)));
                }
            }
        }
        return new BendReport(models, seed, scenes);
    }

    /**
     * The distributions drawn.
     * @return the picture
     */
    public Picture picture() {
        double most = scenes.stream().mapToDouble(scene -> scene.advised().meanBends()).max().orElseThrow();
        double naive = scenes.stream().mapToDouble(scene -> scene.naive().meanBends()).max().orElseThrow();
        return new BendCountPicture(String.format(Locale.ROOT, "Advised, heads take up to %.1f bends on average; asking for what is left, up to %.1f",
            most, naive), scenes.stream().map(scene -> new BendCountPicture.Scene(scene.words(),
                List.of(count("ask for what is left", scene.naive()), count("as advised", scene.advised())))).toList());
    }

    private static BendCount count(String habit, BendTally tally) {
        return new BendCount(habit, String.format(Locale.ROOT, "%.1f %% passed, %.1f %% right", 100 * tally.passedShare(),
            100 * tally.rightShare()), shares(tally), tally.meanBends());
    }

    /**
     * A tally's distribution.
     * @param tally the tally
     * @return shares of heads that took 1 bend or none, 2, 3, 4, and 5 or more
     */
    public static List<Double> shares(BendTally tally) {
        List<Double> shares = new ArrayList<>();
        for (int k = 1; k <= PARTS; k++) {
            shares.add(tally.share(k == 1 ? 0 : k, k == PARTS ? Integer.MAX_VALUE : k));
        }
        return shares;
    }

    /**
     * The report as JSON.
     * @return JSON text, indented; the names are documented in docs/json.md and stay
     */
    public String json() {
        ObjectNode root = Json.object();
        root.put("models", models);
        root.put("headsPerModel", BendSimulation.HEADS_A_MODEL);
        root.put("seed", seed);
        ArrayNode array = root.putArray("scenes");
        for (Scene scene : scenes) {
            ObjectNode node = array.addObject();
            node.put("metal", scene.scene().metal().name().toLowerCase(Locale.ROOT));
            node.put("working", scene.scene().working().word());
            node.put("readingDeg", scene.scene().readingDeg());
            tally(node.putObject("naive"), scene.naive());
            tally(node.putObject("advised"), scene.advised());
        }
        return Json.answer(root);
    }

    private static void tally(ObjectNode node, BendTally tally) {
        node.put("meanBends", Json.rounded(tally.meanBends()));
        ArrayNode shares = node.putArray("shareByBends");
        shares(tally).forEach(share -> shares.add(Json.rounded(share)));
        node.put("passedFarEnd", Json.rounded(tally.passedShare()));
        node.put("inTolerance", Json.rounded(tally.rightShare()));
        node.put("leftUnsafe", Json.rounded(tally.stoppedShare()));
    }
}
