package benchtwin.picture;

import static benchtwin.picture.ParsedSvg.number;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import benchtwin.picture.ParsedSvg.Ruler;
import java.awt.geom.Rectangle2D;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;

class LoftGapPictureTest {

    /** Coordinates are written to 0.001 px; two of them make a place on the ruler. */
    private static final double WRITTEN_PX = 0.003;

    private static SetPoint club(String name, double loftDeg, double targetDeg) {
        return Sets.built(name, loftDeg, 0.1, Sets.target(targetDeg, 0.25));
    }

    private static LoftGapPicture of(SetPoint... clubs) {
        return new LoftGapPicture("P. Quillby", 0.5, List.of(clubs));
    }

    @Test
    void theGapIsWrittenBetweenNeighboursOnAStepFromLoftToLoft() {
        ParsedSvg svg = new ParsedSvg(of(club("7-iron", 34.1, 34), club("8-iron", 38.2, 38), club("9-iron", 41.9, 42)).svg());
        Ruler deg = svg.ruler("axis", true);
        assertThat(svg.in("gap-words", "text").stream().map(Element::getTextContent)).containsExactly("4.1°", "3.7°");
        List<Element> dots = svg.in("dot", "circle");
        List<Element> steps = svg.in("gap", "line");
        double[] loftDeg = {34.1, 38.2, 41.9};
        for (int i = 0; i < 3; i++) {
            at(deg, number(dots.get(i), "cx"), loftDeg[i]);
            at(deg, number(svg.in("target", "line").get(i), "x1"), 34 + 4 * i);
        }
        for (int i = 0; i < 2; i++) {
            Element across = steps.get(3 * i + 2);
            at(deg, number(across, "x1"), loftDeg[i]);
            at(deg, number(across, "x2"), loftDeg[i + 1]);
            Rectangle2D words = ParsedSvg.box(svg.in("gap-words", "text").get(i));
            assertThat(words.getCenterY()).isBetween(number(dots.get(i), "cy"), number(dots.get(i + 1), "cy"));
            assertThat(words.getMinX()).as("clear of the dots").isGreaterThan(number(dots.get(i + 1), "cx") + Look.DOT_RADIUS_PX);
        }
        assertThat(svg.in("uneven-gap", "line")).isEmpty();
        assertThat(svg.texts()).doesNotContain("uneven gap");
    }

    @Test
    void aGapFarFromThatOfTheTargetsIsHeavyAndSaysSo() {
        LoftGapPicture picture = of(club("7-iron", 34, 34), club("8-iron", 36.8, 38), club("9-iron", 42, 42));
        ParsedSvg svg = new ParsedSvg(picture.svg());
        assertThat(svg.in("gap-words", "text").stream().map(Element::getTextContent))
            .containsExactly("2.8°, 4.0° wanted", "5.2°, 4.0° wanted");
        assertThat(svg.in("gap-words", "text")).allMatch(text -> ParsedSvg.font(text).isBold());
        assertThat(svg.in("uneven-gap", "line")).hasSize(6);
        assertThat(svg.texts()).contains("uneven gap");
        assertThat(picture.title()).isEqualTo("P. Quillby: lofts and gaps, 2 of 3 clubs in tolerance, 2 gaps uneven");
        assertThat(picture.inWords()).contains("8-iron: 36.80°, ± 0.20 (twice the standard uncertainty), −1.20 from 38.00° ± 0.25,"
            + " too low. Gap to the next: 5.2°, too large, 4.0° wanted.");
    }

    @Test
    void aGapAtTheLimitIsEvenAndOneJustPastItIsNot() {
        assertThat(of(club("a", 34, 34), club("b", 38.5, 38)).gaps().get(0).orElseThrow().side()).isZero();
        assertThat(of(club("a", 34, 34), club("b", 38.51, 38)).gaps().get(0).orElseThrow().side()).isEqualTo(1);
        assertThat(of(club("a", 34, 34), club("b", 37.5, 38)).gaps().get(0).orElseThrow().side()).isZero();
        assertThat(of(club("a", 34, 34), club("b", 37.49, 38)).gaps().get(0).orElseThrow().side()).isEqualTo(-1);
    }

    @Test
    void twinsHaveNoGapAndWithoutATargetNoneIsUneven() {
        LoftGapPicture picture = of(club("4-hybrid", 21, 21), club("4-hybrid backup", 21, 21), Sets.built("9-iron", 42, 0, null));
        assertThat(new ParsedSvg(picture.svg()).in("gap-words", "text").stream().map(Element::getTextContent))
            .containsExactly("0.0°", "21.0°");
        assertThat(picture.title()).doesNotContain("uneven");
    }

    @Test
    void noGapIsWrittenWhereALoftIsNotKnown() {
        LoftGapPicture picture = of(club("7-iron", 34, 34), Sets.notBuilt("8-iron", Sets.target(38, 0.25)), club("9-iron", 42, 42));
        ParsedSvg svg = new ParsedSvg(picture.svg());
        assertThat(svg.in("gap-words", "text")).isEmpty();
        at(svg.ruler("axis", true), ParsedSvg.corners(svg.in("not-built", "path").get(1)).get(1)[0], 38);
        assertThat(svg.texts()).contains("not built; target 38.00°");
    }

    /** The words of a gap are to the right of every mark in the two rows, within the plot. */
    @Test
    void theScaleLeavesRoomForTheWordsOfTheHighestGap() {
        ParsedSvg svg = new ParsedSvg(of(club("58", 64, 58), club("60", 60, 60)).svg());
        Rectangle2D words = ParsedSvg.box(svg.only("gap-words", "text"));
        assertThat(svg.only("gap-words", "text").getTextContent()).isEqualTo("−4.0°, 2.0° wanted");
        assertThat(words.getMaxX()).isLessThanOrEqualTo(SetRow.PLOT_X + SetRow.PLOT_PX + 1);
        assertThat(words.getMinX()).isGreaterThan(svg.ruler("axis", true).place(64) + Look.DOT_RADIUS_PX);
    }

    private static void at(Ruler ruler, double px, double value) {
        assertThat(px).as("place of %s", value).isCloseTo(ruler.place(value), within(WRITTEN_PX));
    }
}
