package benchtwin.picture;

import static benchtwin.picture.ParsedSvg.number;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import benchtwin.club.AngleReading;
import benchtwin.club.Category;
import benchtwin.club.Hand;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.LongStream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Element;

class HeadSketchPictureTest {

    /** Coordinates are written to 0.001 px; over a line of 60 px that is 0.002°. */
    private static final double READ_OFF_DEG = 0.005;
    private static final double READ_OFF_MM = 0.01;
    private static final double BAR_MM = 20;

    /** Read off the drawing with a protractor, as it were: trigonometry on the coordinates in the file. */
    @Test
    void everyAngleIsDrawnAsItIs() {
        ParsedSvg wood = new ParsedSvg(Heads.driver(Hand.RIGHT, Heads.wood(9.3, 58, 0.5), Heads.wood(9.3, 58.6, -2.5)).svg());
        assertThat(directionDeg(wood.only("shaft-axis", "line"))).isCloseTo(58.6, within(READ_OFF_DEG));
        assertThat(directionDeg(wood.only("loft-arc", "line"))).as("the face leans back from the target at the right")
            .isCloseTo(90 + 9.3, within(READ_OFF_DEG));
        assertThat(directionDeg(wood.in("face-line", "line").get(0))).as("closed: the toe leans toward the target at the left")
            .isCloseTo(90 + 2.5, within(READ_OFF_DEG));
        ParsedSvg iron = new ParsedSvg(Heads.iron(Heads.iron(33, 62.5, 5), Heads.iron(32, 62.5, 4)).svg());
        assertThat(directionDeg(iron.only("shaft-axis", "line"))).isCloseTo(62.5, within(READ_OFF_DEG));
        assertThat(directionDeg(iron.only("loft-arc", "line"))).isCloseTo(90 + 32, within(READ_OFF_DEG));
        List<double[]> sole = ParsedSvg.corners(iron.only("after-sole", "path"));
        assertThat(Math.toDegrees(Math.atan2(sole.get(2)[1] - sole.get(1)[1], sole.get(1)[0] - sole.get(2)[0])))
            .as("the trailing edge lies lower").isCloseTo(4, within(READ_OFF_DEG));
    }

    /** Handbook, section 3: the axis turns about the bend point, 40 mm up a wood's axis, and the sole stays put. */
    @Test
    void theHoselIsBentAboutItsBendPointToScale() {
        ParsedSvg svg = new ParsedSvg(Heads.driver(Hand.RIGHT, Heads.wood(9, 56, 0), Heads.wood(9, 60, 0)).svg());
        Element bar = svg.in("scale-bar", "line").get(0);
        double pxPerMm = (number(bar, "x2") - number(bar, "x1")) / BAR_MM;
        Element disc = svg.in("centre-of-gravity", "circle").get(0);
        double groundY = number(svg.in("ground", "line").get(1), "y1");
        assertThat((groundY - number(disc, "cy")) / pxPerMm).as("CG, mm up").isCloseTo(28, within(READ_OFF_MM));
        double oldGroundX = number(disc, "cx") + 38 * pxPerMm;
        double bendX = oldGroundX + 40 * Math.cos(Math.toRadians(56)) * pxPerMm;
        double bendUpPx = 40 * Math.sin(Math.toRadians(56)) * pxPerMm;
        Element axis = svg.only("shaft-axis", "line");
        assertThat(number(axis, "y1")).isCloseTo(groundY, within(READ_OFF_MM));
        assertThat((number(axis, "x1") + bendUpPx / Math.tan(Math.toRadians(60)) - bendX) / pxPerMm)
            .as("the axis passes through the bend point, mm").isCloseTo(0, within(READ_OFF_MM));
    }

    @Test
    void aLeftHandedHeadIsTheMirrorImage() {
        SketchAngles before = Heads.wood(9.3, 58, 0.5);
        SketchAngles after = Heads.wood(9.3, 58.6, -2.5);
        ParsedSvg right = new ParsedSvg(Heads.driver(Hand.RIGHT, before, after).svg());
        ParsedSvg left = new ParsedSvg(Heads.driver(Hand.LEFT, before, after).svg());
        for (String part : List.of("shaft-axis", "loft-arc", "face-line")) {
            assertThat(directionDeg(left.in(part, "line").get(0))).as(part)
                .isCloseTo(180 - directionDeg(right.in(part, "line").get(0)), within(READ_OFF_DEG));
        }
        for (int i = 0; i < 2; i++) {
            assertThat(directionDeg(left.in("wider", "line").get(i)))
                .isCloseTo(180 - directionDeg(right.in("wider", "line").get(i)), within(READ_OFF_DEG));
        }
    }

    @ParameterizedTest
    @CsvSource({"0.05, 50", "0.3, 50", "0.5, 50", "0.6, 20", "-1, 20", "2.5, 10", "-5, 5", "9, 2", "14, 1"})
    void aChangeIsDrawnAsManyTimesWiderAsItSays(double changeDeg, int times) {
        ParsedSvg svg = new ParsedSvg(Heads.driver(Hand.RIGHT, Heads.wood(9, 60, 0), Heads.wood(9, 60 + changeDeg, 0)).svg());
        List<Element> lines = svg.in("wider", "line");
        assertThat(lines).hasSize(2);
        assertThat(directionDeg(lines.get(0))).isCloseTo(60, within(READ_OFF_DEG));
        assertThat(directionDeg(lines.get(1))).isCloseTo(60 + times * changeDeg, within(READ_OFF_DEG));
        assertThat(svg.texts()).contains(times == 1 ? "change as wide as it is" : "change drawn " + times + " × as wide");
    }

    @Test
    void theTitleSaysWhatIsBentAndTheTableEveryNumber() {
        HeadSketchPicture picture = Heads.driver(Hand.LEFT, Heads.wood(9.3, 58, 0.5), Heads.wood(9.3, 58.65, 0.1));
        assertThat(picture.title()).isEqualTo("Head D-1: lie 0.65° upright, face 0.4° closed");
        ParsedSvg svg = new ParsedSvg(picture.svg());
        assertThat(svg.words("title")).isEqualTo(picture.title());
        assertThat(svg.words("desc")).isEqualTo("A left-handed driver, its angles read soled. Loft: 9.3°, stays. Lie: 58.0° before, "
            + "58.65° after, 0.65° upright. Face: 0.5° before, 0.1° after, 0.4° closed. CG 38.0 mm toward the toe from G, 28.0 mm up. "
            + "Playing length 45\u00a01/4\u00a0in from the cap to G.");
        assertThat(svg.texts()).contains("Loft, soled", "58.65°", "was 58.0°", "0.65° upright", "stays", "45\u00a01/4\u00a0in to G");
        assertThat(Heads.iron(Heads.iron(33, 62, 5), Heads.iron(31, 61, 3)).title())
            .isEqualTo("Head I-7: loft 2.0° strong, lie 1.0° flat, bounce 2.0° less");
        assertThat(Heads.iron(Heads.iron(33, 62, 5), Heads.iron(33.5, 62, 5.5)).title())
            .isEqualTo("Head I-7: loft 0.5° weak, bounce 0.5° more");
        assertThat(Heads.driver(Hand.RIGHT, Heads.wood(9, 58, 0), Heads.wood(9, 58.004, 0.4)).title())
            .isEqualTo("Head D-1: face 0.4° open");
    }

    @Test
    void nothingChangedHasNoBeforeAndNothingMeasuredSaysSo() {
        SketchAngles angles = Heads.wood(9, 58, 0);
        ParsedSvg same = new ParsedSvg(Heads.driver(Hand.RIGHT, angles, angles).svg());
        assertThat(same.words("title")).endsWith("its angles stay as they are");
        assertThat(same.in("before-head", "path")).isEmpty();
        assertThat(same.in("wider", "line")).isEmpty();
        assertThat(same.texts()).doesNotContain("before", "after");
        SketchAngles none = new SketchAngles(OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty(),
            OptionalDouble.empty());
        HeadSketchPicture bare = new HeadSketchPicture("Head P-1", Category.PUTTER, AngleReading.EDGE, Hand.RIGHT, none, none,
            SketchSizes.UNMEASURED);
        ParsedSvg svg = new ParsedSvg(bare.svg());
        assertThat(bare.title()).isEqualTo("Head P-1: no angle of it was measured");
        assertThat(bare.inWords()).contains("Lie: not measured, drawn at 70.0°.", "Centre of gravity (CG) not measured.",
            "Playing length not known.");
        assertThat(svg.texts()).contains("not measured", "drawn at 70.0°").doesNotContain("70.0°", "Bounce", "Face", "CG");
    }

    static LongStream seeds() {
        return LongStream.range(0, 150);
    }

    @ParameterizedTest(name = "head of seed {0}")
    @MethodSource("seeds")
    void noWordsStandOnOthersOrLeaveTheSheet(long seed) {
        ParsedSvg svg = new ParsedSvg(Heads.any(seed).svg());
        List<Element> texts = svg.textElements();
        Rectangle2D sheet = new Rectangle2D.Double(0, 0, svg.width(), svg.height());
        for (int i = 0; i < texts.size(); i++) {
            Rectangle2D box = ParsedSvg.box(texts.get(i));
            assertThat(sheet.contains(box)).as("%s at %s", texts.get(i).getTextContent(), box).isTrue();
            for (int k = 0; k < i; k++) {
                assertThat(box.intersects(ParsedSvg.box(texts.get(k)))).as("%s on %s", texts.get(i).getTextContent(),
                    texts.get(k).getTextContent()).isFalse();
            }
        }
    }

    @Test
    void theBitmapIsOfTheSameSize() throws IOException {
        HeadSketchPicture picture = Heads.driver(Hand.RIGHT, Heads.wood(9, 58, 0), Heads.wood(9, 59, 0));
        BufferedImage image = ImageIO.read(new ByteArrayInputStream(picture.png()));
        ParsedSvg svg = new ParsedSvg(picture.svg());
        assertThat(image.getWidth()).isEqualTo((int) svg.width());
        assertThat(image.getHeight()).isEqualTo((int) svg.height());
        assertThat(picture.svg()).isEqualTo(picture.svg());
    }

    @Test
    void numbersThatCannotBeAreRefused() {
        assertThatIllegalArgumentException().isThrownBy(() -> Heads.wood(9, 96, 0))
            .withMessage("a lie of 96.0° cannot be drawn; expected 20 to 95");
        assertThatIllegalArgumentException().isThrownBy(() -> Heads.wood(Double.NaN, 58, 0)).withMessageContaining("a loft of NaN");
        assertThatIllegalArgumentException().isThrownBy(() -> new SketchSizes(OptionalDouble.empty(), OptionalDouble.empty(),
            OptionalDouble.empty(), OptionalDouble.of(0), OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty()));
        assertThatIllegalArgumentException().isThrownBy(() -> new HeadSketchPicture(" ", Category.IRON, AngleReading.EDGE,
            Hand.RIGHT, Heads.iron(30, 60, 3), Heads.iron(30, 60, 3), SketchSizes.UNMEASURED)).withMessageContaining("subject");
    }

    /** From its first to its second end, degrees from the right, up positive. */
    private static double directionDeg(Element line) {
        return Math.toDegrees(Math.atan2(number(line, "y1") - number(line, "y2"), number(line, "x2") - number(line, "x1")));
    }
}
