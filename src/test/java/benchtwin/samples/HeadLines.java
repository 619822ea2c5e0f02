package benchtwin.samples;

import static benchtwin.club.Adjust.BEND;
import static benchtwin.club.Adjust.FIXED;
import static benchtwin.club.AngleReading.EDGE;
import static benchtwin.club.AngleReading.SOLED;
import static benchtwin.club.AngleReading.SQUARE;
import static benchtwin.club.Category.DRIVER;
import static benchtwin.club.Category.FAIRWAY;
import static benchtwin.club.Category.HYBRID;
import static benchtwin.club.Category.IRON;
import static benchtwin.club.Category.PUTTER;
import static benchtwin.club.Category.WEDGE;
import static benchtwin.club.HeadMaterial.ALUMINIUM;
import static benchtwin.club.HeadMaterial.CARBON_STEEL;
import static benchtwin.club.HeadMaterial.HOLLOW;
import static benchtwin.club.HeadMaterial.STAINLESS_17_4;
import static benchtwin.club.HeadMaterial.STAINLESS_431;
import static benchtwin.club.HeadMaterial.STAINLESS_SOFT;
import static benchtwin.club.HeadMaterial.TITANIUM;
import static benchtwin.club.TipKind.PARALLEL;
import static benchtwin.club.TipKind.TAPER;
import static benchtwin.samples.HeadLine.Fitting.bored;
import static benchtwin.samples.HeadLine.Fitting.sleeved;
import static benchtwin.samples.HeadLine.Size.edge;
import static benchtwin.samples.HeadLine.Size.wood;

import benchtwin.club.Port;
import java.util.List;

/**
 * The head models of the sample workshop. "Alder" and "Alder 2" look alike and their sleeves do not interchange. Lofts,
 * lies, masses: common practice, no source.
 */
final class HeadLines {

    private static final List<Port> TWO_M5 = List.of(new Port("M5", 3), new Port("M5", 8));
    private static final List<Port> ONE_M6 = List.of(new Port("M6", 10));
    private static final double UNMEASURED = Double.NaN;

    static final HeadLine ALDER_2 = new HeadLine("Alder 2", DRIVER, SOLED, TITANIUM, sleeved("lock-2", 50), TWO_M5, 0,
        456, List.of(wood("", 9, 58.5, -0.3, 185), wood("", 10.5, 58.5, 0, 185), wood("", 12, 59, 0.3, 185)));
    static final HeadLine ALDER = new HeadLine("Alder", DRIVER, SOLED, TITANIUM, sleeved("lock-1", 51), TWO_M5, 0, 455,
        List.of(wood("", 9, 58, -0.5, 185.5), wood("", 10.5, 58, 0, 185.5)));
    static final HeadLine TARN = new HeadLine("Tarn", DRIVER, SOLED, TITANIUM, sleeved("notch", 52), ONE_M6, 6, 448,
        List.of(wood("", 9, 57.5, 0, 186), wood("", 10.5, 57.5, 0.5, 186)));
    static final HeadLine BRACKEN = new HeadLine("Bracken", DRIVER, SOLED, TITANIUM, sleeved("quad", 49), ONE_M6, 0, 460,
        List.of(wood("", 9, 59, -1, 186.5), wood("", 10.5, 59, -0.5, 186.5)));
    static final HeadLine ADZE = new HeadLine("Adze", DRIVER, SQUARE, TITANIUM, bored(BEND, 0.340, PARALLEL, 33, 28),
        List.of(), 8, 440, List.of(wood("", 9, 57, 0, 201.5), wood("", 10.5, 57, 0.5, 201.5)));
    static final HeadLine PESTLE = new HeadLine("Pestle", DRIVER, SOLED, TITANIUM, bored(FIXED, 0.355, PARALLEL, 34, 30),
        List.of(), 5, 425, List.of(wood("", 10.5, 58, 1, 202)));

    static final HeadLine TARN_FAIRWAY = new HeadLine("Tarn", FAIRWAY, SOLED, STAINLESS_17_4, sleeved("notch", 46),
        ONE_M6, 4, UNMEASURED, List.of(wood("3", 15, 57.5, 0, 194), wood("5", 18, 58, 0.3, 197.5)));
    static final HeadLine BRACKEN_FAIRWAY = new HeadLine("Bracken", FAIRWAY, SOLED, STAINLESS_17_4,
        sleeved("quad-fairway", 45), List.of(), 5, UNMEASURED,
        List.of(wood("3", 15, 57.5, -0.5, 204), wood("5", 18.5, 58, -0.5, 208)));
    static final HeadLine LATHE = new HeadLine("Lathe", FAIRWAY, SOLED, STAINLESS_17_4,
        bored(BEND, 0.340, PARALLEL, 32, 29), List.of(), 5, UNMEASURED,
        List.of(wood("3", 15, 57, -0.5, 212), wood("5", 18, 57.5, 0, 216), wood("7", 21.5, 58, 0.5, 220)));
    static final HeadLine BURDOCK = new HeadLine("Burdock", FAIRWAY, SQUARE, TITANIUM,
        bored(FIXED, 0.355, PARALLEL, 34, 31), List.of(), 0, UNMEASURED, List.of(wood("3", 14.5, 57.5, 0, 211)));

    static final HeadLine BRACKEN_HYBRID = new HeadLine("Bracken", HYBRID, SOLED, STAINLESS_17_4,
        sleeved("quad-hybrid", 44), List.of(), 3, UNMEASURED,
        List.of(wood("3", 19, 58, 0, 222), wood("4", 22, 58.5, 0, 227)));
    static final HeadLine TEASEL = new HeadLine("Teasel", HYBRID, EDGE, STAINLESS_431,
        bored(BEND, 0.375, PARALLEL, 33, 30), List.of(), 4, UNMEASURED,
        List.of(edge("3", 19, 59, 2, 231, 1.5), edge("4", 22, 59.5, 2.5, 236, 1.5), edge("5", 25, 60, 3, 241, 1.5)));

    static final HeadLine WHIN = new HeadLine("Whin", IRON, EDGE, CARBON_STEEL, bored(BEND, 0.360, TAPER, 32, 30),
        List.of(), 0, UNMEASURED, List.of(edge("4", 24, 61, 3, 248, 2.8), edge("5", 27, 61.5, 3.5, 254.5, 2.6),
            edge("6", 30.5, 62, 4, 261.5, 2.4), edge("7", 34, 62.5, 4.5, 269, 2.2), edge("8", 38, 63, 5, 276, 2),
            edge("9", 42, 63.5, 5.5, 283.5, 1.8), edge("PW", 46, 64, 6, 291, 1.6)));
    static final HeadLine SEDGE = new HeadLine("Sedge", IRON, EDGE, STAINLESS_431, bored(BEND, 0.375, PARALLEL, 33, 31),
        List.of(), 0, UNMEASURED, List.of(edge("5", 25, 61, 3, 253, 4.5), edge("6", 28, 61.5, 3.5, 260, 4.2),
            edge("7", 31.5, 62, 4, 267.5, 3.8), edge("8", 35.5, 62.5, 5, 274.5, 3.4), edge("9", 40, 63, 6, 282, 3),
            edge("PW", 45, 63.5, 7, 289.5, 2.6), edge("GW", 50, 63.5, 9, 295, 2.2)));
    static final HeadLine KILN = new HeadLine("Kiln", IRON, EDGE, HOLLOW, bored(BEND, 0.375, PARALLEL, 32, 29), List.of(),
        0, UNMEASURED, List.of(edge("4", 21, 61, 2, 247, 3.8), edge("7", 30, 62.5, 4, 268, 3)));

    static final HeadLine SICKLE = new HeadLine("Sickle", WEDGE, EDGE, STAINLESS_SOFT, bored(BEND, 0.360, TAPER, 31, 30),
        List.of(), 0, UNMEASURED, List.of(edge("50", 50, 64, 8, 297, 1), edge("54", 54, 64, 12, 300, 0.8),
            edge("58", 58, 64, 9, 302, 0.5), edge("60", 60, 64, 7, 303, 0.4)));
    static final HeadLine TROWEL = new HeadLine("Trowel", WEDGE, EDGE, STAINLESS_17_4,
        bored(BEND, 0.375, PARALLEL, 32, 30), List.of(), 0, UNMEASURED,
        List.of(edge("52", 52, 63.5, 10, 299, 1.5), edge("56", 56, 63.5, 14, 302, 1.2)));

    static final HeadLine SPINDLE = new HeadLine("Spindle", PUTTER, EDGE, STAINLESS_SOFT,
        bored(BEND, 0.375, PARALLEL, 25, 60), List.of(), 0, UNMEASURED, List.of(edge("", 3, 71, UNMEASURED, 352, 30)));
    static final HeadLine HOD = new HeadLine("Hod", PUTTER, EDGE, ALUMINIUM, bored(FIXED, 0.375, PARALLEL, 25, 62),
        List.of(new Port("M6", 15), new Port("M6", 15)), 0, UNMEASURED,
        List.of(edge("", 2.5, 70, UNMEASURED, 330, 20)));

    private HeadLines() {
    }
}
