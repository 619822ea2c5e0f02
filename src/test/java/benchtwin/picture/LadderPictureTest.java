package benchtwin.picture;

import static benchtwin.picture.ParsedSvg.number;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import benchtwin.picture.ParsedSvg.Ruler;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.Element;

class LadderPictureTest {

    /** Coordinates are written to 0.001 px; two of them make a place on the ruler. */
    private static final double WRITTEN_PX = 0.003;

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 5, 12, 30})
    void everyMarkStandsWhereTheAxisPutsItsCpm(int count) {
        LadderPicture picture = Ladders.high(count);
        ParsedSvg svg = new ParsedSvg(picture.svg());
        Ruler ruler = svg.ruler("axis", true);
        for (int i = 0; i < ruler.values().size(); i++) {
            assertThat(ruler.px().get(i)).as("the axis is even")
                .isCloseTo(ruler.place(ruler.values().get(i)), within(WRITTEN_PX));
        }
        List<Element> trimmed = svg.in("trimmed-dot", "circle");
        List<Element> targets = svg.in("rung-target", "line");
        List<Element> whiskers = svg.in("whisker", "line");
        assertThat(trimmed).hasSize(count);
        assertThat(targets).hasSize(count);
        assertThat(whiskers).hasSize(3 * count);
        for (int i = 0; i < count; i++) {
            Rung rung = picture.rungs().get(i);
            at(ruler, number(trimmed.get(i), "cx"), rung.trimmedCpm());
            at(ruler, number(targets.get(i), "x1"), rung.targetCpm().orElseThrow());
            at(ruler, number(whiskers.get(3 * i), "x1"), rung.trimmedCpm() - 2 * rung.standardUncertaintyCpm());
            at(ruler, number(whiskers.get(3 * i), "x2"), rung.trimmedCpm() + 2 * rung.standardUncertaintyCpm());
            assertThat(number(whiskers.get(3 * i), "y1")).isEqualTo(number(trimmed.get(i), "cy"));
        }
        List<Rung> known = picture.rungs().stream().filter(rung -> rung.untrimmedCpm().isPresent()).toList();
        List<Element> open = svg.in("untrimmed-dot", "circle").stream()
            .filter(circle -> circle.getAttribute("fill").equals("none")).toList();
        List<Element> moves = svg.in("move", "line");
        assertThat(open).hasSameSizeAs(known);
        assertThat(moves).hasSameSizeAs(known);
        for (int i = 0; i < known.size(); i++) {
            at(ruler, number(open.get(i), "cx"), known.get(i).untrimmedCpm().orElseThrow());
            at(ruler, number(moves.get(i), "x1"), known.get(i).untrimmedCpm().orElseThrow());
            at(ruler, number(moves.get(i), "x2"), known.get(i).trimmedCpm());
        }
    }

    @Test
    void theBandsEdgesStandAtTargetPlusAndMinusTolerance() {
        ParsedSvg svg = new ParsedSvg(Ladders.high(5).svg());
        Ruler ruler = svg.ruler("axis", true);
        List<Element> edges = svg.in("band", "line");
        Element fill = svg.only("band", "rect");
        at(ruler, number(edges.get(0), "x1"), 250);
        at(ruler, number(edges.get(1), "x1"), 254);
        at(ruler, number(fill, "x"), 250);
        at(ruler, number(fill, "x") + number(fill, "width"), 254);
        at(ruler, number(svg.only("target", "line"), "x1"), 252);
    }

    @Test
    void aHighLadderHasTheSameAxisOnTop() {
        ParsedSvg svg = new ParsedSvg(Ladders.high(12).svg());
        assertThat(svg.ruler("upper-axis", true)).isEqualTo(svg.ruler("axis", true));
        assertThat(new ParsedSvg(Ladders.high(5).svg()).in("upper-axis", "line")).isEmpty();
    }

    @Test
    void theTableBehindItHoldsEveryTagAndNumber() {
        LadderPicture picture = Ladders.high(30);
        ParsedSvg svg = new ParsedSvg(picture.svg());
        assertThat(svg.root().getAttribute("role")).isEqualTo("img");
        assertThat(svg.words("title")).isEqualTo(picture.title());
        assertThat(svg.words("desc")).contains(picture.axisLabel(), "Target 252.0 cpm, within 2.0 cpm");
        for (Rung rung : picture.rungs()) {
            assertThat(svg.words("desc")).contains(rung.tag() + ", " + rung.model()
                + String.format(Locale.ROOT, ": %.1f cpm as trimmed, ± %.1f", rung.trimmedCpm(),
                    2 * rung.standardUncertaintyCpm()), rung.trim(), rung.note());
            rung.untrimmedCpm().ifPresent(cpm ->
                assertThat(svg.words("desc")).contains(String.format(Locale.ROOT, "untrimmed %.1f cpm", cpm)));
        }
        for (String points : List.of(svg.root().getAttribute("aria-labelledby"), svg.root().getAttribute("aria-describedby"))) {
            assertThat(picture.svg()).contains("id=\"" + points + "\"");
        }
    }

    @Test
    void aRungReadsAsOneSentence() {
        Rung rung = new Rung("R-3", "Plain Reed 60", OptionalDouble.of(243.14), 251.66, 0.7, OptionalDouble.of(252), "3/8 in tip",
            "in the right sleeve");
        assertThat(Ladders.of(rung).inWords()).endsWith("R-3, Plain Reed 60: 251.7 cpm as trimmed, ± 1.4 (twice the standard"
            + " uncertainty), −0.3 cpm from 252.0; cut 3/8 in tip; untrimmed 243.1 cpm; in the right sleeve.");
        Rung bare = new Rung("R-4", "", OptionalDouble.empty(), 252, 0, OptionalDouble.empty(), "", "");
        assertThat(Ladders.of(bare).inWords()).endsWith("R-4: 252.0 cpm as trimmed, ± 0.0 (twice the standard uncertainty),"
            + " 0 cpm from 252.0; untrimmed frequency not known.");
    }

    @Test
    void aShaftWithoutAnUntrimmedFrequencyHasOnlyItsDot() {
        ParsedSvg svg = new ParsedSvg(Ladders.of(new Rung("R-4", "", OptionalDouble.empty(), 252, 0.5, OptionalDouble.empty(),
            "12 mm butt", "")).svg());
        assertThat(svg.in("untrimmed-dot", "circle")).isEmpty();
        assertThat(svg.in("move", "line")).isEmpty();
        assertThat(svg.in("rung-target", "line")).isEmpty();
        assertThat(svg.texts()).doesNotContain("butt cut to length, tip left", "target of the rung").contains("12 mm butt");
        assertThat(svg.only("trimmed-dot", "circle")).isNotNull();
    }

    @Test
    void equalValuesAndAToleranceOfNothingStillHaveAnAxis() {
        Rung rung = new Rung("R-5", "", OptionalDouble.of(252), 252, 0, OptionalDouble.of(252), "", "");
        ParsedSvg svg = new ParsedSvg(new LadderPicture("One", "cpm", 252, 0, List.of(rung, rung)).svg());
        Ruler ruler = svg.ruler("axis", true);
        svg.in("trimmed-dot", "circle").forEach(dot -> at(ruler, number(dot, "cx"), 252));
        assertThat(ruler.values().get(0)).isLessThan(252);
        assertThat(ruler.values().get(ruler.values().size() - 1)).isGreaterThan(252);
    }

    @Test
    void valuesFarApartAllFindRoom() {
        ParsedSvg svg = new ParsedSvg(Ladders.of(Ladders.rung("A", 120, 252, "1 in tip"), Ladders.rung("B", 252, 520, "")).svg());
        Ruler ruler = svg.ruler("axis", true);
        at(ruler, number(svg.in("trimmed-dot", "circle").get(1), "cx"), 520);
        for (Element circle : svg.in("untrimmed-dot", "circle")) {
            assertThat(number(circle, "cx")).isBetween(300.0, 950.0);
        }
    }

    @Test
    void oddLettersStayWhatTheyAre() {
        String tag = "<A&B> \"1\" 'x' Ærø ½ ]]>";
        Rung rung = new Rung(tag, "Größe & <b>", OptionalDouble.of(240), 252, 1, OptionalDouble.empty(), "½ in & 3 < 4", "日本");
        ParsedSvg svg = new ParsedSvg(Ladders.of(rung).svg());
        assertThat(svg.words("desc")).contains(tag, "Größe & <b>", "½ in & 3 < 4", "日本");
        assertThat(svg.texts()).contains(tag, "Größe & <b>", "½ in & 3 < 4", "日本");
    }

    @Test
    void charactersThatXmlCannotHoldAreReplaced() {
        Rung rung = new Rung("A\u0001B\uD800C\uFFFE", "two\nlines\t", OptionalDouble.empty(), 252, 1, OptionalDouble.empty(), "", "");
        assertThat(rung.tag()).isEqualTo("A\uFFFDB\uFFFDC\uFFFD");
        assertThat(rung.model()).isEqualTo("two lines");
        assertThat(new ParsedSvg(Ladders.of(rung).svg()).texts()).contains(rung.tag());
    }

    @Test
    void longWordsAreBrokenAndNoneLeavesTheSheet() {
        String longWord = "WITHOUT-ANY-PLACE-TO-BREAK".replace("-", "").repeat(6);
        Rung rung = new Rung(longWord, "a model with a name of many words that does not fit beside its rung",
            OptionalDouble.of(240), 252, 1, OptionalDouble.empty(), "a trim told at length, ".repeat(8), "a note, ".repeat(20));
        ParsedSvg svg = new ParsedSvg(new LadderPicture("What to see, ".repeat(20), "cpm, on a condition, ".repeat(15), 252, 2,
            List.of(rung, Ladders.rung("NEXT", 240, 252, "1/8 in tip"))).svg());
        double lowest = 0;
        for (Element text : svg.textElements()) {
            double endX = number(text, "x") + TextBlock.widthPx(text.getTextContent(), ParsedSvg.font(text));
            assertThat(number(text, "x")).isGreaterThanOrEqualTo(Look.MARGIN_PX);
            assertThat(endX).as(text.getTextContent()).isLessThan(svg.width());
            lowest = Math.max(lowest, number(text, "y"));
        }
        assertThat(lowest).isLessThan(svg.height() - 5);
        assertThat(svg.in("names", "text").stream().map(Element::getTextContent).reduce("", String::concat)).contains(longWord);
        double nextTag = svg.in("names", "text").stream().filter(text -> text.getTextContent().equals("NEXT"))
            .mapToDouble(text -> number(text, "y")).findFirst().orElseThrow();
        List<Element> names = svg.in("names", "text");
        assertThat(nextTag).as("rows do not overlap")
            .isGreaterThan(names.stream().filter(text -> text.getTextContent().startsWith("a note"))
                .mapToDouble(text -> number(text, "y")).max().orElseThrow() + 18);
    }

    @ParameterizedTest
    @ValueSource(ints = {5, 12, 30})
    void noTrimsWordsLieAcrossAnEdgeOfTheBand(int count) {
        ParsedSvg svg = new ParsedSvg(Ladders.high(count).svg());
        List<Element> edges = svg.in("band", "line");
        assertThat(svg.in("trim", "text")).hasSize(count);
        for (Element text : svg.in("trim", "text")) {
            double from = number(text, "x");
            double to = from + TextBlock.widthPx(text.getTextContent(), Look.TEXT);
            for (Element edge : edges) {
                assertThat(number(edge, "x1")).as(text.getTextContent()).matches(x -> x < from || x > to);
            }
        }
    }

    @Test
    void theSamePictureIsTheSameTextInAnyLocale() {
        LadderPicture picture = Ladders.high(12);
        String first = picture.svg();
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
            assertThat(picture.svg()).isEqualTo(first);
            Locale.setDefault(Locale.GERMANY);
            assertThat(picture.svg()).isEqualTo(first);
        } finally {
            Locale.setDefault(before);
        }
    }

    @Test
    void theBitmapHasItsDotsWhereTheTextHasThem() throws IOException {
        LadderPicture picture = Ladders.high(5);
        ParsedSvg svg = new ParsedSvg(picture.svg());
        BufferedImage image = ImageIO.read(new ByteArrayInputStream(picture.png()));
        assertThat(image.getWidth()).isEqualTo((int) svg.width());
        assertThat(image.getHeight()).isEqualTo((int) svg.height());
        for (Element dot : svg.in("trimmed-dot", "circle")) {
            int x = (int) Math.round(number(dot, "cx"));
            int y = (int) Math.round(number(dot, "cy"));
            assertThat(image.getRGB(x - 3, y - 3)).isEqualTo(Look.ACCENT.getRGB());
            assertThat(image.getRGB(x + 3, y + 3)).isEqualTo(Look.ACCENT.getRGB());
        }
        for (Element ring : svg.in("untrimmed-dot", "circle")) {
            assertThat(image.getRGB((int) number(ring, "cx"), (int) number(ring, "cy"))).isEqualTo(Look.PAPER.getRGB());
        }
        assertThat(image.getRGB(2, 2)).isEqualTo(Look.PAPER.getRGB());
    }

    @Test
    void theDrawingSpeaksOfCpmOnly() {
        assertThat(Ladders.high(12).svg().toLowerCase(Locale.ROOT)).doesNotContain("flex");
    }

    @Test
    void nothingIsDrawnFromNumbersThatCannotBe() {
        assertThatIllegalArgumentException().isThrownBy(() -> Ladders.of()).withMessage("a ladder needs at least one shaft");
        assertThatIllegalArgumentException().isThrownBy(() -> Ladders.rung("A", 240, Double.NaN, ""))
            .withMessage("shaft A: a frequency as trimmed of NaN is not above 0");
        assertThatIllegalArgumentException().isThrownBy(() -> Ladders.rung("A", -1, 240, ""))
            .withMessage("shaft A: a frequency untrimmed of -1.0 is not above 0");
        assertThatIllegalArgumentException().isThrownBy(() -> Ladders.rung(" ", 240, 250, ""))
            .withMessage("a picture's tag is empty; it must say something");
        assertThatIllegalArgumentException().isThrownBy(() -> new LadderPicture("t", "a", 252, -1, List.of()))
            .withMessage("a tolerance of -1.0 is not 0 or more");
    }

    private static void at(Ruler ruler, double px, double cpm) {
        assertThat(px).as("place of %s cpm", cpm).isCloseTo(ruler.place(cpm), within(WRITTEN_PX));
    }
}
