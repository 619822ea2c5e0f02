package benchtwin.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** Invented ladders and profiles to draw. */
final class Ladders {

    private Ladders() {
    }

    static Rung rung(String tag, double untrimmedCpm, double trimmedCpm, String trim) {
        return new Rung(tag, "Plain Reed 60", OptionalDouble.of(untrimmedCpm), trimmedCpm, 0.7, OptionalDouble.empty(),
            trim, "");
    }

    static LadderPicture of(Rung... rungs) {
        return new LadderPicture("Shafts near 252", "Frequency, cpm: 127 mm clamp on the bare butt, 200 g head", 252, 2,
            List.of(rungs));
    }

    /** As many rungs as asked for, three cpm apart by fives, all different. */
    static LadderPicture high(int rungs) {
        List<Rung> list = new ArrayList<>();
        for (int i = 0; i < rungs; i++) {
            double target = 246 + 3 * (i % 5);
            double trimmed = target + 0.4 * Math.sin(i * 2.1);
            list.add(new Rung("P-%02d".formatted(i + 1),
                i % 4 == 3 ? "Long Meadow Tapered Graphite Wood 65" : "Plain Reed 60",
                i % 7 == 6 ? OptionalDouble.empty() : OptionalDouble.of(trimmed - 4 - 3.3 * (i % 4)), trimmed,
                0.5 + 0.1 * (i % 3), OptionalDouble.of(target),
                i % 3 == 0 ? "3/8 in tip, 21 mm butt" : "%d mm butt".formatted(12 + i),
                i % 6 == 5 ? "already in the right sleeve" : ""));
        }
        return new LadderPicture("%d shafts, three cpm apart around 252".formatted(rungs),
            "Frequency, cpm: 127 mm clamp on the bare butt, 200 g head", 252, 2, list);
    }

    static ProfilePicture profile(boolean sure) {
        double[] mm = {0, 200, 400, 600, 800, 1000, 1150};
        double[] ei = {1.5, 1.9, 2.7, 3.8, 4.7, 5.6, 6.1};
        List<StiffnessPoint> fitted = new ArrayList<>();
        List<StiffnessPoint> shape = new ArrayList<>();
        for (int i = 0; i < mm.length; i++) {
            fitted.add(new StiffnessPoint(mm[i], ei[i],
                sure ? OptionalDouble.of(0.1 + 0.05 * Math.abs(i - 3)) : OptionalDouble.empty()));
            shape.add(StiffnessPoint.of(mm[i], 1.4 + 4.2 * mm[i] / 1150));
        }
        return new ProfilePicture("Shaft P-07 is stiffer in the middle than its default shape", fitted, fitted, shape,
            List.of(
            new ReadingResidual(1016, 0.3, 0.5), new ReadingResidual(914.4, -0.6, 0.5), new ReadingResidual(812.8, 0.2, 0.6),
            new ReadingResidual(711.2, 0.4, 0.9)));
    }
}
