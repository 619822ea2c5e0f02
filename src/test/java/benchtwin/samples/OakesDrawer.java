package benchtwin.samples;

import benchtwin.club.Hand;
import benchtwin.club.Head;
import benchtwin.club.HeadCondition;
import benchtwin.club.Port;
import benchtwin.club.Sleeve;
import benchtwin.club.WeighedWith;
import benchtwin.mechanics.HoselTilt;
import benchtwin.mechanics.SleeveSettings;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * The Alder 2 drivers of 9.0°: what there is to replace N. Oakes's cracked one. One can be set to its angles within a
 * tenth of a degree, four come near (two of them alike to the tenth), and the rest are wrong each in its way.
 */
final class OakesDrawer {

    private static final HeadLine LINE = HeadLines.ALDER_2;
    private static final double LOFT_TOLERANCE_DEG = 0.25;
    private static final double LIE_TOLERANCE_DEG = 0.25;
    private static final double FACE_TOLERANCE_DEG = 0.5;

    private final Draw draw;
    private final Shelf<Head> shelf;
    private final Sleeve sleeve;
    private final HeadDraft old;
    private final double loftDeg;
    private final double lieDeg;
    private final double faceDeg;

    OakesDrawer(Draw draw, Shelf<Head> shelf, BuiltClub oakes) {
        this.draw = draw;
        this.shelf = shelf;
        this.sleeve = oakes.sleeve().orElseThrow();
        this.old = oakes.headDraft();
        this.loftDeg = oakes.lastRead("loft_deg");
        this.lieDeg = oakes.lastRead("lie_deg");
        this.faceDeg = oakes.lastRead("face_deg");
    }

    void fill() {
        shelf.add(nearPerfect()::toHead);
        for (int i = 1; i <= 3; i++) {
            HeadDraft good = within("good " + i, 0.3, 0.7);
            shelf.add(good::toHead);
            if (i == 3) {
                HeadDraft alike = within("good " + i, 0.3, 0.7);
                alike.massG = Draw.round(good.massG + 0.1, 1);
                alike.faceDeg = Draw.round(good.faceDeg - 0.1, 1);
                shelf.add(alike::toHead);
            }
        }
        for (int i = 1; i <= 5; i++) {
            shelf.add(within("wrong loft " + i, 1.2, 5)::toHead);
        }
        HeadDraft promised = within("promised", 0.1, 0.5);
        promised.reservedFor = "E. Ashcutter";
        shelf.add(promised::toHead);
        HeadDraft cracked = within("cracked", 0.1, 0.8);
        cracked.condition = HeadCondition.CRACKED;
        cracked.note = "hairline behind the face; scrap";
        shelf.add(cracked::toHead);
        HeadDraft noFace = within("no face", 0.2, 0.8);
        noFace.faceDeg = Double.NaN;
        noFace.note = "face not read yet";
        shelf.add(noFace::toHead);
        HeadDraft noMass = within("no mass", 0.2, 0.8);
        noMass.massG = Double.NaN;
        noMass.weighedWith = Set.of();
        shelf.add(noMass::toHead);
        HeadDraft noSetting = within("no setting", 0.6, 1.5);
        noSetting.readAtSetting = "";
        noSetting.note = "setting it was read at not written down";
        shelf.add(noSetting::toHead);
        HeadDraft measured = within("measured", 0.7, 1.1);
        new HeadMaker(draw.of("cg")).measureCentreOfGravity(measured, 38.5, 28.5, 3000);
        shelf.add(measured::toHead);
    }

    /** As heavy as the old one within a screw, and its angles at another setting than the old one's. */
    private HeadDraft nearPerfect() {
        HeadDraft head = make(draw.of("near-perfect"));
        head.loftDeg = loftDeg;
        double least = Double.POSITIVE_INFINITY;
        for (double lie = LINE.size("9").lieDeg() - 0.8; lie < LINE.size("9").lieDeg() + 0.8; lie += 0.1) {
            for (double face = -1.5; face < 1; face += 0.1) {
                double miss = miss(Draw.round(lie, 1), Draw.round(face, 1));
                boolean another = Math.abs(lie - old.lieDeg) > 0.25 && Math.abs(face - old.faceDeg) > 0.35;
                if (another && miss < least) {
                    least = miss;
                    head.lieDeg = Draw.round(lie, 1);
                    head.faceDeg = Draw.round(face, 1);
                }
            }
        }
        head.ports = List.of(new Port("M5", 3), new Port("M5", 7));
        head.weighedWith = Set.of(WeighedWith.WEIGHTS);
        double oldBareG = old.massG - (old.weighedWith.contains(WeighedWith.WEIGHTS) ? old.portsG() : 0);
        head.massG = Draw.round(oldBareG + old.portsG() - 1.1, 1);
        head.toGroundMm = Draw.round(old.toGroundMm + 0.2, 1);
        return head;
    }

    /** Drawn until the best setting comes within a band of misses, in tolerances. */
    private HeadDraft within(String name, double least, double most) {
        Draw own = draw.of(name);
        while (true) {
            HeadDraft head = make(own);
            double loft = (head.loftDeg - loftDeg) / LOFT_TOLERANCE_DEG;
            double total = Math.sqrt((loft * loft + miss(head.lieDeg, head.faceDeg)) / 3);
            if (total >= least && total <= most) {
                return head;
            }
        }
    }

    private static HeadDraft make(Draw draw) {
        HeadDraft head = new HeadMaker(draw).make(LINE, "9", Hand.RIGHT);
        head.place = "driver drawer 1";
        return head;
    }

    /** Squared miss of lie and face at the best setting. */
    private double miss(double lie, double face) {
        double least = Double.POSITIVE_INFINITY;
        HoselTilt from = SleeveSettings.tilt(sleeve, "1/1", Hand.RIGHT).orElseThrow();
        for (String setting : SleeveSettings.labels(sleeve)) {
            Optional<HoselTilt> to = SleeveSettings.tilt(sleeve, setting, Hand.RIGHT);
            HoselTilt tilt = to.orElseThrow().minus(from);
            double offLie = (tilt.woodLieDeg(lie) - lieDeg) / LIE_TOLERANCE_DEG;
            double offFace = (face - tilt.woodYawDeg(lie) - faceDeg) / FACE_TOLERANCE_DEG;
            least = Math.min(least, offLie * offLie + offFace * offFace);
        }
        return least;
    }
}
