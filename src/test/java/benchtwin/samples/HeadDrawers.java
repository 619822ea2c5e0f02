package benchtwin.samples;

import static benchtwin.club.Hand.LEFT;
import static benchtwin.club.Hand.RIGHT;

import benchtwin.club.Adjust;
import benchtwin.club.Category;
import benchtwin.club.Hand;
import benchtwin.club.Head;
import benchtwin.club.HeadCondition;
import benchtwin.club.HeadMaterial;
import benchtwin.club.WeighedWith;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;

/** The heads in the drawers, but for the Alder 2 drivers of 9.0°: those are {@link OakesDrawer}. */
final class HeadDrawers {

    private static final List<String> PLAYERS = List.of("J. Quillby", "E. Ashcutter", "K. Larkfield", "M. Sandrow");
    private static final Consumer<HeadDraft> AS_IT_IS = head -> { };

    private final Draw draw;
    private final Shelf<Head> shelf;

    HeadDrawers(Draw draw, Shelf<Head> shelf) {
        this.draw = draw;
        this.shelf = shelf;
    }

    void fill() {
        drivers();
        fairways();
        hybrids();
        irons();
        wedges();
        putters();
    }

    /** What came in for the sets of the week: enough for most of them. One full left-handed iron set for two who want one. */
    void fillForSets() {
        for (HeadLine.Size size : HeadLines.WHIN.sizes()) {
            more(size.number().equals("4") || size.number().equals("7") ? 1 : 2, HeadLines.WHIN, size.number(), RIGHT);
        }
        for (HeadLine.Size size : HeadLines.SEDGE.sizes()) {
            more(switch (size.number()) {
                case "7", "GW" -> 1;
                case "5" -> 2;
                case "8" -> 4;
                default -> 3;
            }, HeadLines.SEDGE, size.number(), RIGHT);
            more(switch (size.number()) {
                case "7" -> 0;
                case "GW" -> 2;
                default -> 1;
            }, HeadLines.SEDGE, size.number(), LEFT);
        }
        more(1, HeadLines.SICKLE, "50", RIGHT);
        more(2, HeadLines.SICKLE, "54", RIGHT);
        more(3, HeadLines.SICKLE, "58", RIGHT);
        more(1, HeadLines.SICKLE, "54", LEFT);
        more(1, HeadLines.TROWEL, "52", RIGHT);
        more(2, HeadLines.TROWEL, "56", RIGHT);
        more(1, HeadLines.TROWEL, "56", LEFT);
    }

    private void drivers() {
        several(7, HeadLines.ALDER_2, "10.5", RIGHT);
        several(2, HeadLines.ALDER_2, "12", RIGHT);
        several(4, HeadLines.ALDER_2, "9", LEFT);
        several(2, HeadLines.ALDER_2, "10.5", LEFT);
        several(5, HeadLines.ALDER, "9", RIGHT);
        several(3, HeadLines.ALDER, "10.5", RIGHT);
        several(1, HeadLines.ALDER, "9", LEFT);
        several(4, HeadLines.TARN, "9", RIGHT);
        several(3, HeadLines.TARN, "10.5", RIGHT);
        one("bare tarn", HeadLines.TARN, "10.5", RIGHT, head -> {
            head.weighedWith = Set.of(WeighedWith.SCREW);
            head.massG = Draw.round(head.size.massG() + 2, 1);
            head.note = "weighed with the sleeve's screw, weight out";
        });
        several(2, HeadLines.TARN, "9", LEFT);
        several(4, HeadLines.BRACKEN, "9", RIGHT);
        several(3, HeadLines.BRACKEN, "10.5", RIGHT);
        several(1, HeadLines.BRACKEN, "10.5", LEFT);
        several(3, HeadLines.ADZE, "9", RIGHT);
        one("worn adze", HeadLines.ADZE, "9", RIGHT, head -> {
            bend(head, 1.3, 0.3, 0.2, 1.1);
            head.note = "near its limit upright and back";
        });
        several(4, HeadLines.ADZE, "10.5", RIGHT);
        several(1, HeadLines.ADZE, "10.5", LEFT);
        several(3, HeadLines.PESTLE, "10.5", RIGHT);
    }

    private void fairways() {
        several(4, HeadLines.TARN_FAIRWAY, "3", RIGHT);
        several(3, HeadLines.TARN_FAIRWAY, "5", RIGHT);
        several(1, HeadLines.TARN_FAIRWAY, "3", LEFT);
        several(3, HeadLines.BRACKEN_FAIRWAY, "3", RIGHT);
        several(2, HeadLines.BRACKEN_FAIRWAY, "5", RIGHT);
        several(1, HeadLines.BRACKEN_FAIRWAY, "3", LEFT);
        several(5, HeadLines.LATHE, "3", RIGHT);
        one("near lathe", HeadLines.LATHE, "3", RIGHT, head -> {
            head.loftDeg = 15.3;
            head.lieDeg = 56.9;
            head.faceDeg = -0.3;
            unbent(head);
        });
        one("worn lathe", HeadLines.LATHE, "3", RIGHT, head -> {
            head.loftDeg = 15.1;
            head.lieDeg = 56.6;
            bend(head, 1.9, 0.6, 0.5, 0);
            head.note = "almost no upright bend left";
        });
        several(3, HeadLines.LATHE, "5", RIGHT);
        several(2, HeadLines.LATHE, "7", RIGHT);
        several(2, HeadLines.LATHE, "3", LEFT);
        several(2, HeadLines.BURDOCK, "3", RIGHT);
    }

    private void hybrids() {
        several(2, HeadLines.BRACKEN_HYBRID, "3", RIGHT);
        several(3, HeadLines.BRACKEN_HYBRID, "4", RIGHT);
        several(1, HeadLines.BRACKEN_HYBRID, "4", LEFT);
        several(2, HeadLines.TEASEL, "3", RIGHT);
        several(2, HeadLines.TEASEL, "4", RIGHT);
        one("unread teasel", HeadLines.TEASEL, "4", RIGHT, head -> {
            head.lieDeg = Double.NaN;
            head.note = "lie gauge was away";
        });
        several(2, HeadLines.TEASEL, "5", RIGHT);
        several(1, HeadLines.TEASEL, "4", LEFT);
    }

    private void irons() {
        for (HeadLine.Size size : HeadLines.WHIN.sizes()) {
            several(2, HeadLines.WHIN, size.number(), RIGHT);
        }
        one("worn whin", HeadLines.WHIN, "7", RIGHT, head -> {
            bend(head, 0.5, 2.8, 1, 1.4);
            head.note = "bent flat twice; near its limit";
        });
        several(1, HeadLines.WHIN, "7", LEFT);
        for (HeadLine.Size size : HeadLines.SEDGE.sizes()) {
            several(size.number().equals("7") ? 3 : 1, HeadLines.SEDGE, size.number(), RIGHT);
        }
        several(3, HeadLines.SEDGE, "7", LEFT);
        several(1, HeadLines.SEDGE, "9", LEFT);
        several(2, HeadLines.KILN, "4", RIGHT);
        several(2, HeadLines.KILN, "7", RIGHT);
        one("unknown kiln", HeadLines.KILN, "7", RIGHT, head -> {
            head.material = HeadMaterial.UNKNOWN;
            head.note = "bought in a lot; metal not known";
        });
    }

    private void wedges() {
        several(2, HeadLines.SICKLE, "50", RIGHT);
        several(3, HeadLines.SICKLE, "54", RIGHT);
        several(3, HeadLines.SICKLE, "58", RIGHT);
        several(1, HeadLines.SICKLE, "60", RIGHT);
        several(1, HeadLines.SICKLE, "58", LEFT);
        several(2, HeadLines.TROWEL, "52", RIGHT);
        several(2, HeadLines.TROWEL, "56", RIGHT);
    }

    private void putters() {
        several(3, HeadLines.SPINDLE, "3", RIGHT);
        several(2, HeadLines.HOD, "2.5", RIGHT);
        several(1, HeadLines.HOD, "2.5", LEFT);
    }

    /** So many of a size, each with what chance tells of it. */
    void several(int count, HeadLine line, String size, Hand hand) {
        for (int i = 1; i <= count; i++) {
            one("%s %s %d".formatted(line.category().word(), size, i), line, size, hand, AS_IT_IS);
        }
    }

    private void more(int count, HeadLine line, String size, Hand hand) {
        for (int i = 1; i <= count; i++) {
            one("%s %s came in later %d".formatted(line.category().word(), size, i), line, size, hand, AS_IT_IS);
        }
    }

    /** One head with the story told for it, or, where none is told, one that chance tells. */
    private void one(String name, HeadLine line, String size, Hand hand, Consumer<HeadDraft> story) {
        Draw own = draw.of(name + line.model() + hand);
        HeadDraft head = new HeadMaker(own).make(line, size, hand);
        head.place = "%s drawer %d".formatted(line.category().word(),
            hand == LEFT ? 9 : 1 + Math.abs(line.model().hashCode() % 3));
        if (story == AS_IT_IS) {
            chanceStory(own, head);
        } else {
            story.accept(head);
        }
        shelf.add(head::toHead);
    }

    private static void chanceStory(Draw own, HeadDraft head) {
        boolean bends = head.line.fitting().adjust() == Adjust.BEND;
        if (bends && own.chance(0.25)) {
            double most = head.line.material() == HeadMaterial.TITANIUM || head.line.material() == HeadMaterial.HOLLOW
                ? 0.6 : 1.2;
            boolean upright = own.chance(0.5);
            double lie = Draw.round(own.between(0.3, most), 1);
            double other = Draw.round(own.between(0, most / 2), 1);
            bend(head, upright ? lie : 0, upright ? 0 : lie, other, 0);
        } else if (bends && own.chance(0.6)) {
            unbent(head);
        }
        if (own.chance(0.07)) {
            head.reservedFor = own.pick(PLAYERS);
        }
        if (own.chance(0.05)) {
            head.massG = Double.NaN;
            head.weighedWith = Set.of();
        } else if (own.chance(0.05) && head.line.category() != Category.PUTTER) {
            head.faceDeg = Double.NaN;
            head.bounceDeg = Double.NaN;
        } else if (own.chance(0.04)) {
            head.depthMm = Double.NaN;
            head.toGroundMm = Double.NaN;
            head.readAtSetting = "";
        } else if (own.chance(0.02)) {
            head.condition = HeadCondition.CRACKED;
            head.note = "hairline at the sole; scrap";
        }
        if (own.chance(0.08) && head.line.category() != Category.PUTTER) {
            measureCentreOfGravity(own, head);
        }
    }

    private static void measureCentreOfGravity(Draw own, HeadDraft head) {
        double[] toeUpInertia = switch (head.line.category()) {
            case DRIVER -> new double[] {38.5, 28.5, 3000};
            case FAIRWAY -> new double[] {36, 20.5, 1900};
            case HYBRID -> new double[] {34, 17.5, 1700};
            case IRON, WEDGE, PUTTER -> new double[] {32.5, 19.5, 1400};
        };
        new HeadMaker(own).measureCentreOfGravity(head, toeUpInertia[0], toeUpInertia[1], toeUpInertia[2]);
    }

    private static void unbent(HeadDraft head) {
        bend(head, 0, 0, 0, 0);
    }

    private static void bend(HeadDraft head, double upright, double flat, double forward, double back) {
        HeadMaker.bend(head, upright, flat, forward, back);
    }

    /** The misfiled one: a fairway wood that somebody entered as a driver. Only what it measures gives it away. */
    void misfiled() {
        HeadLine line = HeadLines.LATHE;
        HeadLine asDriver = new HeadLine(line.model(), Category.DRIVER, line.reading(), line.material(), line.fitting(),
            line.ports(), line.hotMeltMaxG(), 178, List.of(HeadLine.Size.wood("", 15, 57, -0.5, 212)));
        HeadDraft head = new HeadMaker(draw.of("misfiled")).make(asDriver, "15", RIGHT);
        head.place = "fairway drawer 2";
        head.verticalGCm2 = Double.NaN;
        head.ctUs = Double.NaN;
        shelf.add(head::toHead);
    }
}
