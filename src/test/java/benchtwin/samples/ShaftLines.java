package benchtwin.samples;

import static benchtwin.club.Category.DRIVER;
import static benchtwin.club.Category.FAIRWAY;
import static benchtwin.club.Category.HYBRID;
import static benchtwin.club.Category.IRON;
import static benchtwin.club.Category.PUTTER;
import static benchtwin.club.Category.WEDGE;
import static benchtwin.club.ShaftMaterial.GRAPHITE;
import static benchtwin.club.ShaftMaterial.STEEL;

import benchtwin.club.Category;
import benchtwin.club.TipKind;
import benchtwin.samples.ShaftLine.Profile;
import benchtwin.samples.ShaftLine.Sold;
import benchtwin.samples.ShaftLine.Tip;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** The shaft models of the sample workshop. Lengths, masses, frequencies: common practice, no source. */
final class ShaftLines {

    private static final Tip WOOD_TIP = new Tip(0.335, TipKind.PARALLEL, 3);
    static final Tip IRON_TIP = new Tip(0.370, TipKind.PARALLEL, 8);
    static final Tip TAPER_TIP = new Tip(0.355, TipKind.TAPER, 0);
    static final Profile PLAIN = new Profile(1, 1, 1);
    static final Profile FIRM_TIP = new Profile(1.08, 0.97, 1.02);
    static final Profile SOFT_TIP = new Profile(0.93, 1.03, 1);

    static final ShaftLine BROOK_60_S = wood("Brook 60 S", DRIVER, 0.495, PLAIN, new Sold("", 46, 60, 247, 4.2));
    static final ShaftLine BROOK_60_R = wood("Brook 60 R", DRIVER, 0.495, SOFT_TIP, new Sold("", 46, 58, 236, 4.6));
    static final ShaftLine BROOK_50_R = wood("Brook 50 R", DRIVER, 0.49, SOFT_TIP, new Sold("", 46, 51, 232, 5.2));
    static final ShaftLine GHYLL_65_S = wood("Ghyll 65 S", DRIVER, 0.485, FIRM_TIP, new Sold("", 46, 65.5, 249, 3.4));
    static final ShaftLine GHYLL_65_X = wood("Ghyll 65 X", DRIVER, 0.485, FIRM_TIP, new Sold("", 46, 66.5, 260, 3.2));
    static final ShaftLine BROOK_70_S = wood("Brook 70 S", FAIRWAY, 0.49, PLAIN, new Sold("", 43.5, 70, 265, 3.6));
    static final ShaftLine GHYLL_75_S = wood("Ghyll 75 S", FAIRWAY, 0.485, FIRM_TIP, new Sold("", 43.5, 75, 268, 3));
    static final ShaftLine LINDEN_85_S = new ShaftLine("Linden 85 S", GRAPHITE, Set.of(HYBRID),
        new Tip(0.370, TipKind.PARALLEL, 4), 0.600, 0.495, PLAIN, List.of(new Sold("", 41.5, 84, 285, 3)));
    static final ShaftLine EDDY_95_S = new ShaftLine("Eddy 95 S", GRAPHITE, Set.of(IRON), IRON_TIP, 0.600, 0.50,
        PLAIN, List.of(new Sold("", 40, 95, 281, 2.4)));
    static final ShaftLine SILL_105_S = new ShaftLine("Sill 105 S", STEEL, Set.of(IRON, WEDGE), IRON_TIP, 0.600, 0.495,
        SOFT_TIP, List.of(new Sold("", 40.5, 108, 280, 2.2)));
    static final ShaftLine STAITH_120_S = new ShaftLine("Staith 120 S", STEEL, Set.of(IRON, WEDGE), TAPER_TIP, 0.600,
        0.495, PLAIN, taperLengths(120, 293));
    static final ShaftLine ROD = new ShaftLine("Rod", STEEL, Set.of(PUTTER), new Tip(0.370, TipKind.PARALLEL, 12),
        0.580, 0.5, PLAIN, List.of(new Sold("", 35, 112, 330, 1.9)));

    private ShaftLines() {
    }

    static ShaftLine wood(String model, Category category, double balance, Profile profile, Sold sold) {
        return new ShaftLine(model, GRAPHITE, category == DRIVER ? Set.of(DRIVER) : Set.of(FAIRWAY), WOOD_TIP, 0.600,
            balance, profile, List.of(sold));
    }

    /** Half an inch and a few cpm from number to number, the mass the same. */
    static List<Sold> taperLengths(double massG, double cpmOfThe4) {
        List<Sold> lengths = new ArrayList<>();
        List<String> numbers = List.of("4", "5", "6", "7", "8", "9", "PW", "W");
        for (int i = 0; i < numbers.size(); i++) {
            lengths.add(new Sold(numbers.get(i), Math.max(36, 39 - 0.5 * i), massG, cpmOfThe4 + 8 * Math.min(i, 6), 1.9));
        }
        return List.copyOf(lengths);
    }
}
