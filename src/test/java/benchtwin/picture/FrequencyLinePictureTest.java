package benchtwin.picture;

import static benchtwin.picture.ParsedSvg.number;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import benchtwin.picture.ParsedSvg.Ruler;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;

class FrequencyLinePictureTest {

    /** Coordinates are written to 0.001 px; two of them make a place on the ruler. */
    private static final double WRITTEN_PX = 0.003;

    private final SetTarget at37 = new SetTarget(308, 2, Optional.of("firm irons"));
    private final SetTarget at36 = new SetTarget(317, 3, Optional.of("firm irons"));

    @Test
    void dotsWhiskersAndTargetsStandWhereTheAxesPutThem() {
        FrequencyLinePicture picture = Sets.frequency("P. Quillby", 14);
        ParsedSvg svg = new ParsedSvg(picture.svg());
        Ruler inches = svg.ruler("axis", true);
        Ruler cpm = svg.ruler("cpm-axis", false);
        List<FrequencyPoint> right = picture.clubs().stream().filter(p -> p.isPlaced() && p.club().side() == 0).toList();
        List<Element> dots = svg.in("dot", "circle");
        assertThat(dots).hasSameSizeAs(right).hasSize(11);
        for (int i = 0; i < dots.size(); i++) {
            at(inches, number(dots.get(i), "cx"), right.get(i).lengthMm().orElseThrow() / 25.4);
            at(cpm, number(dots.get(i), "cy"), right.get(i).club().value().orElseThrow());
        }
        Element driversWhisker = svg.in("whisker", "line").get(0);
        at(cpm, number(driversWhisker, "y1"), 251.4 - 1);
        at(cpm, number(driversWhisker, "y2"), 251.4 + 1);
        List<Element> ofDriversTarget = svg.in("club-target", "line").subList(0, 3);
        at(cpm, number(ofDriversTarget.get(0), "y1"), 254);
        at(cpm, number(ofDriversTarget.get(1), "y1"), 248);
        at(cpm, number(ofDriversTarget.get(2), "y1"), 251);
    }

    @Test
    void theLongestClubIsAtTheLeftAndTheHighestFrequencyOnTop() {
        ParsedSvg svg = new ParsedSvg(Sets.frequency("P. Quillby", 14).svg());
        List<Element> dots = svg.in("dot", "circle");
        assertThat(number(dots.get(0), "cx")).as("driver left of the 58").isLessThan(number(dots.get(10), "cx"));
        assertThat(number(dots.get(0), "cy")).as("and below it").isGreaterThan(number(dots.get(10), "cy"));
        assertThat(svg.texts()).contains("playing length, inches", "frequency, cpm (on the bare butt, 5 in in the clamp)");
    }

    @Test
    void aLineRunsThroughItsTargetsWithinItsBand() {
        ParsedSvg svg = new ParsedSvg(Sets.frequency("P", Sets.at(37, Sets.built("7-iron", 309, 0, at37)),
            Sets.at(36, Sets.built("9-iron", 316, 0, at36))).svg());
        Ruler inches = svg.ruler("axis", true);
        Ruler cpm = svg.ruler("cpm-axis", false);
        List<double[]> line = ParsedSvg.corners(svg.only("target-line", "path"));
        List<double[]> upper = ParsedSvg.corners(svg.in("line-band", "path").get(1));
        List<double[]> lower = ParsedSvg.corners(svg.in("line-band", "path").get(2));
        double[] lengths = {37, 36};
        double[][] targets = {{308, 310, 306}, {317, 320, 314}};
        for (int i = 0; i < 2; i++) {
            at(inches, line.get(i + 1)[0], lengths[i]);
            at(cpm, line.get(i + 1)[1], targets[i][0]);
            at(cpm, upper.get(i + 1)[1], targets[i][1]);
            at(cpm, lower.get(i + 1)[1], targets[i][2]);
        }
        double slope = (line.get(2)[1] - line.get(1)[1]) / (line.get(2)[0] - line.get(1)[0]);
        assertThat(line.get(0)[1]).as("it goes on straight").isCloseTo(line.get(1)[1] + slope * (line.get(0)[0] - line.get(1)[0]),
            within(4 * WRITTEN_PX));
        assertThat(svg.texts()).contains("line: firm irons", "target line and its tolerance").doesNotContain("target of one club");
        assertThat(svg.in("club-target", "line")).isEmpty();
    }

    @Test
    void aTargetStandsAtTheLengthItHoldsFor() {
        SetPoint club = Sets.built("driver", 250, 0, Sets.target(252, 3));
        ParsedSvg svg = new ParsedSvg(Sets.frequency("P",
            new FrequencyPoint(club, OptionalDouble.of(45.5 * 25.4), OptionalDouble.of(45 * 25.4))).svg());
        Ruler inches = svg.ruler("axis", true);
        Element joiner = svg.only("joiner", "line");
        at(inches, number(joiner, "x1"), 45.5);
        at(inches, number(joiner, "x2"), 45);
        at(svg.ruler("cpm-axis", false), number(joiner, "y2"), 252);
        at(inches, number(svg.only("dot", "circle"), "cx"), 45.5);
    }

    @Test
    void aLineOfOneLengthIsShownAsTargetsOfItsClubs() {
        ParsedSvg svg = new ParsedSvg(Sets.frequency("P", Sets.at(37, Sets.built("7-iron", 309, 0, at37)),
            Sets.at(37, Sets.built("7-iron", 306.5, 0, at37))).svg());
        assertThat(svg.in("target-line", "path")).isEmpty();
        assertThat(svg.in("joiner", "line")).hasSize(2);
        assertThat(svg.texts()).contains("target of one club").doesNotContain("target line and its tolerance");
        assertThat(svg.texts().stream().filter("7-iron"::equals)).as("one name each, though they are the same").hasSize(2);
    }

    @Test
    void outOfToleranceIsAnArrowThatPointsTheWayAndANumber() throws IOException {
        FrequencyLinePicture picture = Sets.frequency("P", Sets.at(43, Sets.built("3-wood", 254.8, 0, Sets.target(260, 3))),
            Sets.at(37, Sets.built("7-iron", 311.1, 0, at37)));
        ParsedSvg svg = new ParsedSvg(picture.svg());
        Ruler cpm = svg.ruler("cpm-axis", false);
        assertThat(svg.in("dot", "circle")).isEmpty();
        List<double[]> low = ParsedSvg.corners(svg.in("arrow", "path").get(0));
        List<double[]> high = ParsedSvg.corners(svg.in("arrow", "path").get(1));
        assertThat(low.get(0)[1]).as("its point is below its back").isGreaterThan(low.get(1)[1]).isGreaterThan(cpm.place(254.8));
        assertThat(high.get(0)[1]).as("its point is above its back").isLessThan(high.get(1)[1]).isLessThan(cpm.place(311.1));
        at(cpm, (low.get(0)[1] + low.get(1)[1] + low.get(2)[1]) / 3, 254.8);
        at(cpm, (high.get(0)[1] + high.get(1)[1] + high.get(2)[1]) / 3, 311.1);
        assertThat(svg.texts()).contains("3-wood: −5.2 cpm", "7-iron: +3.1 cpm", "out of tolerance, too low or too high");
        assertThat(picture.title()).isEqualTo("P: frequency against length, 0 of 2 clubs in tolerance");
        BufferedImage image = ImageIO.read(new ByteArrayInputStream(picture.png()));
        int x = (int) Math.round(low.get(0)[0]);
        assertThat(image.getRGB(x, (int) Math.round(cpm.place(254.8)))).isEqualTo(Look.STOP.getRGB());
    }

    @Test
    void aClubNotBuiltIsAnOpenTarget() {
        ParsedSvg svg = new ParsedSvg(Sets.frequency("P", Sets.at(37, Sets.notBuilt("7-iron", at37)),
            Sets.at(36, Sets.built("9-iron", 317, 0, at36))).svg());
        List<double[]> diamond = ParsedSvg.corners(svg.in("not-built", "path").get(1));
        at(svg.ruler("axis", true), diamond.get(1)[0], 37);
        at(svg.ruler("cpm-axis", false), diamond.get(0)[1], 308);
        assertThat(svg.texts()).contains("target of a club not built", "7-iron");
        assertThat(svg.in("dot", "circle")).hasSize(1);
    }

    @Test
    void whatHasNoPlaceIsNamedBelow() {
        FrequencyPoint unknownLength = new FrequencyPoint(Sets.built("60", 325, 0, null), OptionalDouble.empty(), OptionalDouble.empty());
        FrequencyLinePicture picture = Sets.frequency("P", Sets.at(37, Sets.built("7-iron", 308, 0, at37)),
            Sets.at(34, Sets.notKnown("putter", null)), unknownLength, Sets.at(36, Sets.notBuilt("9-iron", null)));
        assertThat(new ParsedSvg(picture.svg()).in("note", "text").get(0).getTextContent()).isEqualTo("Not on the picture: putter"
            + " (frequency not known), 60 (length not known), 9-iron (not built, no target).");
        assertThat(picture.inWords()).endsWith("putter at 34 in: frequency not known. 60, length not known: 325.0 cpm. 9-iron at"
            + " 36 in: not built.");
    }

    @Test
    void aClubReadsAsOneSentence() {
        assertThat(Sets.frequency("P", Sets.at(35.25, Sets.built("PW", 311.14, 0.6, at37))).inWords())
            .isEqualTo("frequency, cpm (on the bare butt, 5 in in the clamp). PW at 35 1/4 in: 311.1 cpm, ± 1.2 (twice the standard"
                + " uncertainty), +3.1 from 308.0 cpm ± 2.0 on line firm irons, too high.");
    }

    @Test
    void equalValuesStillHaveAxes() {
        FrequencyPoint one = Sets.at(37, Sets.built("7-iron", 308, 0, Sets.target(308, 0)));
        ParsedSvg svg = new ParsedSvg(Sets.frequency("P", one, one, one).svg());
        svg.in("dot", "circle").forEach(dot -> at(svg.ruler("cpm-axis", false), number(dot, "cy"), 308));
        assertThat(svg.ruler("axis", true).values()).anyMatch(inches -> inches > 37).anyMatch(inches -> inches < 37);
    }

    private static void at(Ruler ruler, double px, double value) {
        assertThat(px).as("place of %s", value).isCloseTo(ruler.place(value), within(WRITTEN_PX));
    }
}
