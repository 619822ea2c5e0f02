package benchtwin.bench;

import benchtwin.club.Grip;
import benchtwin.measure.Reading;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Gives each club the grip that keeps the sum of the changes of mass least. On a line the best pairing never crosses: with
 * clubs and grips in order of mass, each club's grip comes after that of the club before it.
 */
final class GripMatching {

    private GripMatching() {
    }

    /**
     * @param masses of the old grips, g; empty where one was never weighed
     * @param stock  the grips there are
     * @return one for each club, empty where they run out; unweighed clubs and grips go together last
     */
    static List<Optional<Grip>> nearest(List<Optional<Double>> masses, List<Grip> stock) {
        List<Grip> weighed = stock.stream().filter(grip -> grip.massG().isPresent())
            .sorted(Comparator.comparingDouble(GripMatching::massG).thenComparing(Grip::tag)).toList();
        List<Integer> known = IntStream.range(0, masses.size()).filter(k -> masses.get(k).isPresent()).boxed()
            .sorted(Comparator.comparingDouble(k -> masses.get(k).get())).toList();
        int served = Math.min(known.size(), weighed.size());
        List<Optional<Grip>> given = new ArrayList<>(Collections.nCopies(masses.size(), Optional.empty()));
        List<Grip> left = new ArrayList<>(stock);
        int[] chosen = chosen(known.subList(0, served).stream().mapToDouble(k -> masses.get(k).get()).toArray(),
            weighed.stream().mapToDouble(GripMatching::massG).toArray());
        for (int k = 0; k < served; k++) {
            given.set(known.get(k), Optional.of(weighed.get(chosen[k])));
            left.remove(weighed.get(chosen[k]));
        }
        for (int k = 0; k < masses.size() && !left.isEmpty(); k++) {
            if (given.get(k).isEmpty()) {
                given.set(k, Optional.of(left.remove(0)));
            }
        }
        return given;
    }

    /** For each club the grip's place, ascending: cost[i][j] is the least for the first i clubs out of the first j grips. */
    private static int[] chosen(double[] clubs, double[] grips) {
        double[][] cost = new double[clubs.length + 1][grips.length + 1];
        for (int i = 1; i <= clubs.length; i++) {
            Arrays.fill(cost[i], Double.POSITIVE_INFINITY);
            for (int j = i; j <= grips.length; j++) {
                cost[i][j] = Math.min(cost[i][j - 1], cost[i - 1][j - 1] + Math.abs(clubs[i - 1] - grips[j - 1]));
            }
        }
        int[] chosen = new int[clubs.length];
        int j = grips.length;
        for (int i = clubs.length; i > 0; i--) {
            while (j > i && cost[i][j - 1] <= cost[i][j]) {
                j--;
            }
            chosen[i - 1] = j - 1;
            j--;
        }
        return chosen;
    }

    private static double massG(Grip grip) {
        return grip.massG().map(Reading::value).orElseThrow();
    }
}
