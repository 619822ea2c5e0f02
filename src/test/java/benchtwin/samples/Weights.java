package benchtwin.samples;

import benchtwin.club.Keeping;
import benchtwin.club.Weight;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Weight screws and tip weights in the drawer. Some masses have run out. */
final class Weights {

    private static final int[][] M5 = {{2, 3}, {3, 4}, {4, 2}, {5, 3}, {6, 2}, {7, 3}, {8, 2}, {9, 2}, {10, 1}, {12, 1}};
    private static final int[][] M6 = {{5, 2}, {8, 3}, {10, 2}, {12, 2}, {13, 0}, {15, 2}, {20, 1}};
    private static final int[][] TIP = {{2, 12}, {4, 10}, {6, 6}, {9, 2}};

    private Weights() {
    }

    static List<Weight> all() {
        List<Weight> weights = new ArrayList<>();
        add(weights, "M5", M5, "screw tray");
        add(weights, "M6", M6, "screw tray");
        add(weights, Weight.TIP, TIP, "tip weight box");
        return weights;
    }

    private static void add(List<Weight> weights, String port, int[][] massAndCount, String place) {
        for (int[] each : massAndCount) {
            weights.add(new Weight(String.format(Locale.ROOT, "W-%02d", weights.size() + 1), port, each[0], each[1],
                new Keeping(Optional.empty(), Optional.of(place), Optional.empty(), Map.of())));
        }
    }
}
