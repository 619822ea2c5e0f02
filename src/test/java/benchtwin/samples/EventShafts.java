package benchtwin.samples;

import static benchtwin.club.Category.FAIRWAY;
import static benchtwin.club.Category.HYBRID;
import static benchtwin.club.Category.IRON;
import static benchtwin.club.Category.WEDGE;
import static benchtwin.club.ShaftMaterial.GRAPHITE;
import static benchtwin.club.ShaftMaterial.STEEL;
import static benchtwin.club.TipKind.PARALLEL;
import static benchtwin.samples.ShaftLines.FIRM_TIP;
import static benchtwin.samples.ShaftLines.PLAIN;
import static benchtwin.samples.ShaftLines.SOFT_TIP;

import benchtwin.club.ShaftMaterial;
import benchtwin.samples.ShaftLine.Profile;
import benchtwin.samples.ShaftLine.Sold;
import benchtwin.samples.ShaftLine.Tip;
import java.util.List;
import java.util.Set;

/**
 * The shaft models that an event's truck carries, the sample workshop's among them: most in several flexes. Lengths, masses,
 * frequencies: common practice, no source.
 */
final class EventShafts {

    static final List<ShaftLine> DRIVERS = List.of(ShaftLines.BROOK_50_R, ShaftLines.BROOK_60_R, ShaftLines.BROOK_60_S,
        ShaftLines.GHYLL_65_S, ShaftLines.GHYLL_65_X);
    static final List<ShaftLine> FAIRWAYS = List.of(
        ShaftLines.wood("Brook 70 R", FAIRWAY, 0.49, SOFT_TIP, new Sold("", 43.5, 68, 255, 3.9)), ShaftLines.BROOK_70_S,
        ShaftLines.GHYLL_75_S, ShaftLines.wood("Ghyll 75 X", FAIRWAY, 0.485, FIRM_TIP, new Sold("", 43.5, 76, 277, 2.8)));
    static final List<ShaftLine> HYBRIDS = List.of(hybrid("Linden 85 R", SOFT_TIP, new Sold("", 41.5, 82, 276, 3.3)),
        ShaftLines.LINDEN_85_S, hybrid("Linden 95 X", FIRM_TIP, new Sold("", 41.5, 95, 294, 2.7)));
    static final List<ShaftLine> PARALLEL_IRONS = List.of(
        iron("Sike 75 R", GRAPHITE, SOFT_TIP, new Sold("", 40, 76, 264, 2.9)),
        iron("Eddy 85 R", GRAPHITE, PLAIN, new Sold("", 40, 86, 272, 2.6)), ShaftLines.EDDY_95_S,
        iron("Sill 105 R", STEEL, SOFT_TIP, new Sold("", 40.5, 106, 271, 2.3)), ShaftLines.SILL_105_S,
        iron("Sill 105 X", STEEL, PLAIN, new Sold("", 40.5, 109, 288, 2.1)),
        iron("Leat 110 S", STEEL, FIRM_TIP, new Sold("", 40.5, 111, 282, 2)),
        iron("Leat 110 X", STEEL, FIRM_TIP, new Sold("", 40.5, 113, 290, 1.9)));
    static final List<ShaftLine> TAPER_IRONS = List.of(taper("Rill 95 R", SOFT_TIP, 97, 281),
        taper("Staith 105 R", PLAIN, 107, 284), taper("Rill 115 S", FIRM_TIP, 116, 290), ShaftLines.STAITH_120_S,
        taper("Staith 120 X", PLAIN, 122, 302));

    private EventShafts() {
    }

    private static ShaftLine hybrid(String model, Profile profile, Sold sold) {
        return new ShaftLine(model, GRAPHITE, Set.of(HYBRID), new Tip(0.370, PARALLEL, 4), 0.600, 0.495, profile,
            List.of(sold));
    }

    private static ShaftLine iron(String model, ShaftMaterial material, Profile profile, Sold sold) {
        return new ShaftLine(model, material, Set.of(IRON, WEDGE), ShaftLines.IRON_TIP, 0.600, 0.495, profile,
            List.of(sold));
    }

    private static ShaftLine taper(String model, Profile profile, double massG, double cpmOfThe4) {
        return new ShaftLine(model, STEEL, Set.of(IRON, WEDGE), ShaftLines.TAPER_TIP, 0.600, 0.495, profile,
            ShaftLines.taperLengths(massG, cpmOfThe4));
    }
}
