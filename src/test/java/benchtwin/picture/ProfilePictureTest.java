package benchtwin.picture;

import static benchtwin.picture.ParsedSvg.number;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import benchtwin.picture.ParsedSvg.Ruler;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;

class ProfilePictureTest {

    /** Coordinates are written to 0.001 px; two of them make a place on the ruler. */
    private static final double WRITTEN_PX = 0.003;
    private static final Pattern POINT = Pattern.compile("([ML])\\s*(-?[\\d.]+)[ ,](-?[\\d.]+)");

    @Test
    void theFitAndItsKnotsStandWhereTheAxesPutThem() {
        ProfilePicture picture = Ladders.profile(true);
        ParsedSvg svg = new ParsedSvg(picture.svg());
        Ruler mm = svg.ruler("axis", true);
        Ruler nm2 = svg.ruler("stiffness-axis", false);
        List<double[]> line = points(svg.only("fitted", "path"));
        List<Element> knots = svg.in("knot", "circle");
        assertThat(knots).hasSameSizeAs(picture.knots());
        assertThat(line).hasSameSizeAs(picture.fitted());
        for (int i = 0; i < knots.size(); i++) {
            StiffnessPoint point = picture.fitted().get(i);
            assertThat(number(knots.get(i), "cx")).isCloseTo(mm.place(point.fromTipMm()), within(WRITTEN_PX));
            assertThat(number(knots.get(i), "cy")).isCloseTo(nm2.place(point.stiffnessNm2()), within(WRITTEN_PX));
            assertThat(line.get(i)[0]).isCloseTo(number(knots.get(i), "cx"), within(WRITTEN_PX));
            assertThat(line.get(i)[1]).isCloseTo(number(knots.get(i), "cy"), within(WRITTEN_PX));
        }
    }

    @Test
    void theBandIsOneStandardUncertaintyEitherWay() {
        ProfilePicture picture = Ladders.profile(true);
        ParsedSvg svg = new ParsedSvg(picture.svg());
        Ruler nm2 = svg.ruler("stiffness-axis", false);
        List<Element> outlines = svg.in("band", "path");
        List<double[]> fill = points(outlines.get(0));
        List<double[]> lower = points(outlines.get(1));
        List<double[]> upper = points(outlines.get(2));
        for (int i = 0; i < picture.fitted().size(); i++) {
            StiffnessPoint point = picture.fitted().get(i);
            double u = point.standardUncertaintyNm2().orElseThrow();
            assertThat(lower.get(i)[1]).isCloseTo(nm2.place(point.stiffnessNm2() - u), within(WRITTEN_PX));
            assertThat(upper.get(i)[1]).isCloseTo(nm2.place(point.stiffnessNm2() + u), within(WRITTEN_PX));
            assertThat(fill.get(i)).as("there along the upper edge").isEqualTo(upper.get(i));
            assertThat(fill.get(fill.size() - 1 - i)).as("and back along the lower").isEqualTo(lower.get(i));
        }
    }

    @Test
    void everyResidualStandsAtItsFreeLengthWithItsWhisker() {
        ProfilePicture picture = Ladders.profile(false);
        ParsedSvg svg = new ParsedSvg(picture.svg());
        Ruler mm = svg.ruler("residuals-axis", true);
        Ruler cpm = svg.ruler("cpm-axis", false);
        assertThat(mm.px()).as("one scale of millimetres for both plots").isEqualTo(svg.ruler("axis", true).px());
        assertThat(number(svg.only("zero", "line"), "y1")).isCloseTo(cpm.place(0), within(WRITTEN_PX));
        List<Element> dots = svg.in("residual", "circle");
        List<Element> whiskers = svg.in("whisker", "line");
        assertThat(dots).hasSameSizeAs(picture.residuals());
        for (int i = 0; i < dots.size(); i++) {
            ReadingResidual reading = picture.residuals().get(i);
            assertThat(number(dots.get(i), "cx")).isCloseTo(mm.place(reading.freeLengthMm()), within(WRITTEN_PX));
            assertThat(number(dots.get(i), "cy")).isCloseTo(cpm.place(reading.residualCpm()), within(WRITTEN_PX));
            assertThat(number(whiskers.get(3 * i), "y1"))
                .isCloseTo(cpm.place(reading.residualCpm() - 2 * reading.standardUncertaintyCpm()), within(WRITTEN_PX));
            assertThat(number(whiskers.get(3 * i), "y2"))
                .isCloseTo(cpm.place(reading.residualCpm() + 2 * reading.standardUncertaintyCpm()), within(WRITTEN_PX));
        }
    }

    @Test
    void whatIsNotGivenIsNotDrawn() {
        ProfilePicture sure = Ladders.profile(false);
        ParsedSvg svg = new ParsedSvg(new ProfilePicture("t", sure.fitted(), sure.knots(), List.of(), sure.residuals()).svg());
        assertThat(svg.in("band", "path")).isEmpty();
        assertThat(svg.in("default-shape", "path")).isEmpty();
        assertThat(svg.texts()).doesNotContain("default shape", "± 1 standard uncertainty");
        assertThat(new ParsedSvg(sure.svg()).in("default-shape", "path")).hasSize(1);
    }

    @Test
    void theTableBehindItHoldsEveryNumber() {
        ParsedSvg svg = new ParsedSvg(Ladders.profile(true).svg());
        assertThat(svg.words("title")).isEqualTo("Shaft P-07 is stiffer in the middle than its default shape");
        assertThat(svg.words("desc")).contains("1.50 N·m² ± 0.25 at 0 mm", "6.10 N·m² ± 0.25 at 1150 mm",
            "Default shape: 1.40 N·m² at 0 mm", "−0.60 cpm, ± 1.00 (twice the standard uncertainty), at 914 mm free length",
            "+0.40 cpm, ± 1.80", "+0.30 cpm", "+0.20 cpm");
        assertThat(svg.texts()).contains("bending stiffness EI, N·m²", "distance from the tip of the shaft as it lies, mm",
            "free length of the reading, tip to clamp face, mm");
    }

    @Test
    void residualsOfNothingStillHaveAnAxis() {
        ProfilePicture some = Ladders.profile(false);
        ParsedSvg svg = new ParsedSvg(new ProfilePicture("t", some.fitted(), some.knots(), List.of(), List.of(new ReadingResidual(900, 0, 0)))
            .svg());
        assertThat(number(svg.only("residual", "circle"), "cy")).isEqualTo(number(svg.only("zero", "line"), "y1"));
    }

    @Test
    void theBitmapHasItsKnotsWhereTheTextHasThem() throws IOException {
        ProfilePicture picture = Ladders.profile(true);
        assertThat(picture.svg()).isEqualTo(Ladders.profile(true).svg());
        BufferedImage image = ImageIO.read(new ByteArrayInputStream(picture.png()));
        for (Element knot : new ParsedSvg(picture.svg()).in("knot", "circle")) {
            int x = (int) Math.round(number(knot, "cx"));
            int y = (int) Math.round(number(knot, "cy"));
            assertThat(image.getRGB(x + 2, y + 2)).isEqualTo(Look.ACCENT.getRGB());
        }
    }

    @Test
    void aProfileRunsFromTipToButtAndHasReadings() {
        StiffnessPoint tip = StiffnessPoint.of(0, 1.5);
        StiffnessPoint butt = StiffnessPoint.of(1150, 6);
        List<ReadingResidual> readings = List.of(new ReadingResidual(900, 0, 0));
        assertThatIllegalArgumentException().isThrownBy(() -> new ProfilePicture("t", List.of(butt, tip), List.of(tip, butt), List.of(), readings))
            .withMessage("a fitted profile must go from tip to butt, but 0.0 mm follows 1150.0 mm");
        assertThatIllegalArgumentException().isThrownBy(() -> new ProfilePicture("t", List.of(tip), List.of(tip, butt), List.of(), readings))
            .withMessage("a fitted profile needs at least two places along the shaft");
        assertThatIllegalArgumentException().isThrownBy(() -> new ProfilePicture("t", List.of(tip, butt), List.of(tip, butt), List.of(), List.of()))
            .withMessage("a fitted profile needs the readings it was fitted to");
        assertThatIllegalArgumentException().isThrownBy(() -> StiffnessPoint.of(300, Double.NaN))
            .withMessage("a stiffness at 300.0 mm from the tip of NaN is not above 0");
        assertThatIllegalArgumentException().isThrownBy(() -> new ReadingResidual(900, Double.NaN, 0))
            .withMessage("a residual of NaN at 900.0 mm is no number");
    }

    private static List<double[]> points(Element path) {
        List<double[]> points = new ArrayList<>();
        Matcher matcher = POINT.matcher(path.getAttribute("d"));
        while (matcher.find()) {
            points.add(new double[] {Double.parseDouble(matcher.group(2)), Double.parseDouble(matcher.group(3))});
        }
        return points;
    }
}
