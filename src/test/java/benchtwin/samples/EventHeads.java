package benchtwin.samples;

import static benchtwin.club.Adjust.BEND;
import static benchtwin.club.AngleReading.EDGE;
import static benchtwin.club.AngleReading.SOLED;
import static benchtwin.club.Category.HYBRID;
import static benchtwin.club.Category.IRON;
import static benchtwin.club.Category.WEDGE;
import static benchtwin.club.HeadMaterial.CARBON_STEEL;
import static benchtwin.club.HeadMaterial.HOLLOW;
import static benchtwin.club.HeadMaterial.STAINLESS_17_4;
import static benchtwin.club.HeadMaterial.STAINLESS_431;
import static benchtwin.club.HeadMaterial.STAINLESS_SOFT;
import static benchtwin.club.TipKind.PARALLEL;
import static benchtwin.club.TipKind.TAPER;
import static benchtwin.samples.HeadLine.Fitting.bored;
import static benchtwin.samples.HeadLine.Size.edge;
import static benchtwin.samples.HeadLine.Size.wood;

import benchtwin.club.Category;
import benchtwin.club.HeadMaterial;
import benchtwin.club.TipKind;
import java.util.ArrayList;
import java.util.List;

/**
 * The head models that an event's truck carries beside the sample workshop's: irons from 4 to PW in three schools of loft,
 * wedges in two, one more hybrid. Lofts, lies, masses: common practice, no source.
 */
final class EventHeads {

    private static final double UNMEASURED = Double.NaN;
    private static final List<String> NUMBERS = List.of("4", "5", "6", "7", "8", "9", "PW");
    /** Lighter or heavier than the 7, g. */
    private static final double[] FROM_THE_7_G = {-21, -14.5, -7.5, 0, 7, 14.5, 22};
    private static final double[] WEAK = {24, 27, 30.5, 34, 38, 42, 46};
    private static final double[] MIDDLING = {22, 25, 28.5, 32, 36, 40.5, 45};
    private static final double[] STRONG = {20, 23, 26.5, 30, 34.5, 39, 44};

    private static final HeadLine FURROW = iron("Furrow", CARBON_STEEL, TAPER, WEAK, 62.3, 4.3, 269.5, 2.4);
    private static final HeadLine HEDDLE = iron("Heddle", STAINLESS_431, PARALLEL, WEAK, 62.6, 4.7, 268.5, 3);
    private static final HeadLine OSIER = iron("Osier", STAINLESS_SOFT, TAPER, WEAK, 62.5, 4.4, 268, 2.1);
    private static final HeadLine MALLOW = iron("Mallow", STAINLESS_431, PARALLEL, MIDDLING, 62.2, 4.2, 267.5, 3.4);
    private static final HeadLine POLLARD = iron("Pollard", CARBON_STEEL, TAPER, MIDDLING, 62.5, 4.5, 268.5, 2.8);
    private static final HeadLine QUERN = iron("Quern", STAINLESS_17_4, PARALLEL, MIDDLING, 62, 4, 267, 3.6);
    private static final HeadLine TANSY = iron("Tansy", STAINLESS_17_4, PARALLEL, STRONG, 62.3, 4.3, 266.5, 4.2);
    private static final HeadLine WITHY = iron("Withy", HOLLOW, PARALLEL, STRONG, 62.5, 4.5, 267.5, 3.2);
    private static final HeadLine YARROW = iron("Yarrow", STAINLESS_431, TAPER, STRONG, 62.4, 4.4, 268, 3.8);

    static final List<HeadLine> IRONS = List.of(HeadLines.WHIN, FURROW, HEDDLE, OSIER, MALLOW, POLLARD, QUERN, TANSY, WITHY,
        YARROW);
    static final List<HeadLine> LEFT_IRONS = List.of(HeadLines.WHIN, HEDDLE, MALLOW, TANSY);

    private static final HeadLine MATTOCK = wedge("Mattock", STAINLESS_431, PARALLEL,
        List.of(edge("50", 50, 64, 8, 297, 1.2), edge("54", 54, 64, 11.5, 300, 1), edge("58", 58, 64, 9.5, 302, 0.7)));
    private static final HeadLine BILLHOOK = wedge("Billhook", CARBON_STEEL, TAPER,
        List.of(edge("50", 50, 64, 8.5, 296, 0.9), edge("54", 54, 64, 12, 299.5, 0.8), edge("58", 58, 64, 8.5, 301.5, 0.6)));
    static final HeadLine DIBBER = wedge("Dibber", STAINLESS_SOFT, TAPER,
        List.of(edge("52", 52, 64, 10, 298.5, 1), edge("56", 56, 64, 13.5, 301, 0.8), edge("60", 60, 64, 8, 303, 0.5)));
    private static final HeadLine RIDDLE = wedge("Riddle", STAINLESS_431, PARALLEL,
        List.of(edge("52", 52, 63.8, 10.5, 298, 1.3), edge("56", 56, 63.8, 14, 301.5, 1.1),
            edge("60", 60, 63.8, 8, 303, 0.9)));

    static final List<HeadLine> WEDGES = List.of(HeadLines.SICKLE, MATTOCK, BILLHOOK, HeadLines.TROWEL, DIBBER, RIDDLE);
    static final List<HeadLine> LEFT_WEDGES = List.of(HeadLines.SICKLE, MATTOCK, DIBBER, RIDDLE);
    static final List<HeadLine> DRIVERS = List.of(HeadLines.ALDER_2, HeadLines.ALDER, HeadLines.TARN, HeadLines.BRACKEN,
        HeadLines.ADZE, HeadLines.PESTLE);
    static final List<HeadLine> FAIRWAYS = List.of(HeadLines.TARN_FAIRWAY, HeadLines.BRACKEN_FAIRWAY, HeadLines.LATHE,
        HeadLines.BURDOCK);
    static final List<HeadLine> HYBRIDS = List.of(HeadLines.BRACKEN_HYBRID, HeadLines.TEASEL,
        new HeadLine("Harrow", HYBRID, SOLED, STAINLESS_431, bored(BEND, 0.375, PARALLEL, 33, 30), List.of(), 4, UNMEASURED,
            List.of(wood("3", 19, 58.2, -0.2, 232), wood("4", 22, 58.7, 0, 237))));

    private EventHeads() {
    }

    /** From 4 to PW, lies and bounces half a degree and offsets a fifth of a millimetre apart. */
    private static HeadLine iron(String model, HeadMaterial material, TipKind tip, double[] loftsDeg, double lieOfThe7Deg,
                                 double bounceOfThe7Deg, double massOfThe7G, double offsetOfThe7Mm) {
        List<HeadLine.Size> sizes = new ArrayList<>();
        for (int i = 0; i < NUMBERS.size(); i++) {
            int after = i - NUMBERS.indexOf("7");
            sizes.add(edge(NUMBERS.get(i), loftsDeg[i], lieOfThe7Deg + 0.5 * after, bounceOfThe7Deg + 0.5 * after,
                massOfThe7G + FROM_THE_7_G[i], offsetOfThe7Mm - 0.2 * after));
        }
        return ofEdge(model, IRON, material, tip, List.copyOf(sizes));
    }

    private static HeadLine wedge(String model, HeadMaterial material, TipKind tip, List<HeadLine.Size> sizes) {
        return ofEdge(model, WEDGE, material, tip, sizes);
    }

    private static HeadLine ofEdge(String model, Category category, HeadMaterial material, TipKind tip,
                                   List<HeadLine.Size> sizes) {
        HeadLine.Fitting fitting = bored(BEND, tip == TAPER ? 0.360 : 0.375, tip, 32, 30);
        return new HeadLine(model, category, EDGE, material, fitting, List.of(), 0, UNMEASURED, sizes);
    }
}
