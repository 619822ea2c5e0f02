package benchtwin.samples;

import benchtwin.club.Adjust;
import benchtwin.club.Category;
import benchtwin.club.Hand;
import benchtwin.club.HeadCondition;
import benchtwin.club.WeighedWith;
import java.util.List;
import java.util.Set;

/** Makes heads of a line, each with its own scatter and its own story. Scatter: memory. */
final class HeadMaker {

    /** A nominal 9.0° driver measures 8.3° to 9.8°. */
    private static final double WOOD_LOFT_SD_DEG = 0.35;
    private static final double WOOD_LOFT_MOST_DEG = 0.75;
    private static final double WOOD_LIE_SD_DEG = 0.45;
    private static final double FACE_SD_DEG = 0.6;
    private static final double IRON_SD_DEG = 0.4;
    private static final double MASS_SD_G = 1.2;
    private static final double MASS_MOST_G = 3;

    private final Draw draw;

    HeadMaker(Draw draw) {
        this.draw = draw;
    }

    /** A head as it came, bent for somebody now and then if it can be. */
    HeadDraft make(HeadLine line, String size, Hand hand) {
        HeadDraft head = new HeadDraft(line, line.size(size), hand);
        HeadLine.Size design = head.size;
        boolean wood = line.reading().isWood();
        head.loftDeg = wood ? draw.read(design.loftDeg() + 0.05, WOOD_LOFT_SD_DEG, WOOD_LOFT_MOST_DEG, 1)
            : draw.read(design.loftDeg(), IRON_SD_DEG, 0.9, 1);
        head.lieDeg = draw.read(design.lieDeg(), wood ? WOOD_LIE_SD_DEG : IRON_SD_DEG, 1, 1);
        if (wood) {
            head.faceDeg = draw.read(design.faceDeg(), FACE_SD_DEG, 1.5, 1);
            head.madeFaceDeg = design.faceDeg();
        } else if (!Double.isNaN(design.bounceDeg())) {
            head.bounceDeg = draw.read(design.bounceDeg(), IRON_SD_DEG, 1, 1);
        }
        head.madeLoftDeg = design.loftDeg();
        head.madeLieDeg = design.lieDeg();
        head.offsetMm = draw.read(design.offsetMm(), 0.15, 0.4, 1);
        weigh(head);
        head.toGroundMm = draw.read(line.fitting().toGroundMm(), 0.3, 0.8, 1);
        head.depthMm = draw.read(line.fitting().depthMm(), 0.3, 0.8, 1);
        if (line.fitting().adjust() == Adjust.SLEEVE) {
            head.readAtSetting = line.fitting().seat().orElseThrow().startsWith("notch") ? "1" : "1/1";
        }
        if (line.category() == Category.DRIVER) {
            head.volumeCm3 = draw.read(line.volumeCm3(), 2, 4, 0);
            head.verticalGCm2 = draw.chance(0.5) ? 10 * draw.read(485, 20, 60, 0) : Double.NaN;
            head.ctUs = draw.chance(0.6) ? draw.read(241, 5, 14, 0) : Double.NaN;
        }
        if (draw.chance(0.4)) {
            head.condition = HeadCondition.USED;
        }
        if (line.category() == Category.WEDGE) {
            head.grind = draw.pick(List.of("full sole", "heel relief", "trailing edge relief"));
        }
        return head;
    }

    private void weigh(HeadDraft head) {
        double bare = draw.near(head.size.massG(), MASS_SD_G, MASS_MOST_G);
        boolean withWeights = !head.ports.isEmpty() && draw.chance(0.7);
        head.weighedWith = Set.of(withWeights ? WeighedWith.WEIGHTS : WeighedWith.BARE);
        head.massG = Draw.round(bare + (withWeights ? head.portsG() : 0), 1);
    }

    /** Measured where the weight lies in it, near where the shop's defaults put it. */
    void measureCentreOfGravity(HeadDraft head, double toeMm, double upMm, double transverseGCm2) {
        head.cgToeMm = draw.read(toeMm, 0.8, 2, 1);
        head.cgUpMm = draw.read(upMm, 0.6, 1.5, 1);
        head.transverseGCm2 = 10 * draw.read(transverseGCm2 / 10, 8, 20, 0);
    }

    /** Bent on the bench before, every direction written down. */
    static void bend(HeadDraft head, double uprightDeg, double flatDeg, double forwardDeg, double backDeg) {
        head.bentUprightDeg = uprightDeg;
        head.bentFlatDeg = flatDeg;
        head.bentForwardDeg = forwardDeg;
        head.bentBackDeg = backDeg;
        head.lieDeg = Draw.round(head.lieDeg + uprightDeg - flatDeg, 1);
        if (!head.line.reading().isWood()) {
            head.loftDeg = Draw.round(head.loftDeg + forwardDeg - backDeg, 1);
            head.bounceDeg = Draw.round(head.bounceDeg + forwardDeg - backDeg, 1);
            head.offsetMm = Draw.round(head.offsetMm - (forwardDeg - backDeg) * 0.5, 1);
        } else {
            head.faceDeg = Draw.round(head.faceDeg - 1.9 * (forwardDeg - backDeg), 1);
        }
        if (uprightDeg + flatDeg + forwardDeg + backDeg > 0) {
            head.condition = HeadCondition.USED;
        }
    }
}
