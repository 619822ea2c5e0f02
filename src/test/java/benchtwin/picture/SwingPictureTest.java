package benchtwin.picture;

import static benchtwin.picture.ParsedSvg.number;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import benchtwin.club.Quantity;
import benchtwin.measure.SwingWeightText;
import benchtwin.picture.ParsedSvg.Ruler;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;

class SwingPictureTest {

    /** Coordinates are written to 0.001 px; two of them make a place on the ruler. */
    private static final double WRITTEN_PX = 0.003;

    @Test
    void everyClubHasItsStripOnAScaleOfLettersAndPoints() {
        SwingPicture picture = Sets.swing("P. Quillby", 14);
        ParsedSvg svg = new ParsedSvg(picture.svg());
        Ruler points = letters(svg);
        List<Element> dots = svg.in("dot", "circle");
        List<SetPoint> right = picture.clubs().stream().filter(club -> club.value().isPresent() && club.side() == 0).toList();
        assertThat(dots).hasSameSizeAs(right).hasSize(10);
        for (int i = 0; i < dots.size(); i++) {
            at(points, number(dots.get(i), "cx"), right.get(i).value().orElseThrow());
        }
        List<SetTarget> wanted = picture.clubs().stream().flatMap(club -> club.target().stream()).toList();
        List<Element> edges = svg.in("band", "line");
        for (int i = 0; i < wanted.size(); i++) {
            at(points, number(edges.get(2 * i), "x1"), wanted.get(i).value() - 0.5);
            at(points, number(edges.get(2 * i + 1), "x1"), wanted.get(i).value() + 0.5);
        }
        at(points, number(svg.in("target", "line").get(0), "x1"), 32.5);
        at(points, number(svg.in("whisker", "line").get(0), "x1"), 32.62 - 0.3);
        assertThat(svg.in("club-name", "text").stream().map(Element::getTextContent))
            .containsExactlyElementsOf(picture.clubs().stream().map(SetPoint::club).toList());
        for (int i = 1; i < 14; i++) {
            assertThat(number(svg.in("club-name", "text").get(i), "y")).as("in the order of the set")
                .isGreaterThan(number(svg.in("club-name", "text").get(i - 1), "y"));
        }
    }

    @Test
    void theNumbersStandBesideTheStrip() {
        ParsedSvg svg = new ParsedSvg(Sets.swing("P. Quillby", 14).svg());
        assertThat(svg.in("number", "text").stream().map(Element::getTextContent)).containsSubsequence("D2.6", "+0.1 off, ± 0.3",
            "D1.1", "−1.4 off, ± 0.3: too low", "no target, ± 0.3", "not built; target D2.0", "swing weight not known; target D2.0",
            "D4.9", "+0.9 off, ± 0.3: too high");
        assertThat(svg.texts()).contains("swing weight, letters and points", "target of a club not built");
        assertThat(svg.words("title")).isEqualTo("P. Quillby: swing weight across the set, 9 of 14 clubs in tolerance, 1 not built");
    }

    @Test
    void outOfToleranceIsAnArrowThatPointsTheWay() {
        SetTarget target = Sets.target(32, 0.5);
        ParsedSvg svg = new ParsedSvg(new SwingPicture("P", Quantity.SWING_WEIGHT,
            List.of(Sets.built("light", 30, 0, target), Sets.built("heavy", 34, 0, target))).svg());
        List<double[]> light = ParsedSvg.corners(svg.in("arrow", "path").get(0));
        List<double[]> heavy = ParsedSvg.corners(svg.in("arrow", "path").get(1));
        at(letters(svg), (light.get(0)[0] + light.get(1)[0] + light.get(2)[0]) / 3, 30);
        at(letters(svg), (heavy.get(0)[0] + heavy.get(1)[0] + heavy.get(2)[0]) / 3, 34);
        assertThat(light.get(0)[0]).isLessThan(light.get(1)[0]);
        assertThat(heavy.get(0)[0]).isGreaterThan(heavy.get(1)[0]);
        assertThat(svg.in("dot", "circle")).isEmpty();
    }

    @Test
    void aClubNotBuiltIsAnOpenTarget() {
        ParsedSvg svg = new ParsedSvg(new SwingPicture("P", Quantity.SWING_WEIGHT, List.of(Sets.notBuilt("7-iron",
            Sets.target(32, 0.5)))).svg());
        at(letters(svg), ParsedSvg.corners(svg.in("not-built", "path").get(1)).get(1)[0], 32);
        assertThat(svg.in("target", "line")).isEmpty();
        assertThat(svg.in("number", "text").stream().map(Element::getTextContent)).containsExactly("not built; target D2.0");
    }

    @Test
    void buttInertiaIsInWholeNumbers() {
        ParsedSvg svg = new ParsedSvg(Sets.inertia("P. Quillby", 14).svg());
        Ruler kgCm2 = svg.ruler("axis", true);
        at(kgCm2, number(svg.in("dot", "circle").get(0), "cx"), 2853.2);
        assertThat(svg.texts()).contains("moment of inertia about the butt, kg·cm²", "2853", "+3 off, ± 8", "−12 off, ± 8: too low");
        assertThat(svg.words("desc")).contains("driver: 2853 kg·cm², ± 8 (twice the standard uncertainty), +3 from 2850 kg·cm² ± 10.");
    }

    @Test
    void nothingKnownIsSaidInWordsWithoutAnAxis() {
        ParsedSvg svg = new ParsedSvg(new SwingPicture("P", Quantity.SWING_WEIGHT, List.of(Sets.notKnown("putter", null))).svg());
        assertThat(svg.in("axis", "line")).isEmpty();
        assertThat(svg.texts()).contains("putter", "swing weight not known");
    }

    private static Ruler letters(ParsedSvg svg) {
        return svg.ruler("axis", true, text -> SwingWeightText.parsePoints(text).orElseThrow());
    }

    private static void at(Ruler ruler, double px, double value) {
        assertThat(px).as("place of %s", value).isCloseTo(ruler.place(value), within(WRITTEN_PX));
    }
}
