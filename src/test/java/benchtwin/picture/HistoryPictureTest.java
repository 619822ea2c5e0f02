package benchtwin.picture;

import static benchtwin.picture.ParsedSvg.number;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import benchtwin.club.Quantity;
import benchtwin.club.QuantityText;
import benchtwin.club.Wanted;
import benchtwin.picture.ParsedSvg.Ruler;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Element;

class HistoryPictureTest {

    /** Coordinates are written to 0.001 px; two of them make a place on the ruler. */
    private static final double WRITTEN_PX = 0.003;

    static Stream<HistoryPicture> pictures() {
        return Stream.of(Histories.week(), Histories.decade(12, 5), Histories.decade(40, 9), Histories.decade(63, 60),
            Histories.crowded(500), Histories.crowded(500, Histories.at(4, 9, 15)), Histories.single(Histories.at(4, 9, 15)),
            Histories.single(Histories.day(2026, 5, 4)), Histories.shaft(), Histories.awkward(),
            Histories.of("OAKES-DR", Quantity.LIE, new HistoryStrip(Histories.target(Quantity.LIE), List.of())),
            Histories.of("OAKES-DR", Quantity.OFFSET, new HistoryStrip(Optional.empty(), List.of())),
            new HistoryPicture("OAKES-DR", Map.of(), List.of(new Intervention(Histories.at(4, 9, 15), "bent"))),
            Histories.of("OAKES-DR", Quantity.LIE, new HistoryStrip(Optional.empty(), List.of(HistoryReading.of(
                Histories.day(206, 5, 4), 58, 0), HistoryReading.of(Histories.day(2026, 5, 4), 58, 0))),
                new Intervention(Histories.day(1, 1, 1), "bent"), new Intervention(Histories.day(9999, 12, 31), "bent")));
    }

    @ParameterizedTest
    @MethodSource("pictures")
    void noWordsOverlapOrLeaveTheSheet(HistoryPicture picture) {
        ParsedSvg svg = new ParsedSvg(picture.svg());
        List<Element> texts = svg.textElements();
        for (int i = 0; i < texts.size(); i++) {
            Rectangle2D box = ParsedSvg.box(texts.get(i));
            String words = texts.get(i).getTextContent();
            assertThat(new Rectangle2D.Double(0, 0, svg.width(), svg.height()).contains(box)).as(words + " on the sheet").isTrue();
            for (Element other : texts.subList(0, i)) {
                assertThat(box.intersects(ParsedSvg.box(other))).as("%s over %s", words, other.getTextContent()).isFalse();
            }
        }
    }

    @ParameterizedTest
    @MethodSource("pictures")
    void wordsStandOnNoMarkAndNoPole(HistoryPicture picture) {
        ParsedSvg svg = new ParsedSvg(picture.svg());
        List<Element> words = Stream.of("done", "done-number", "off-words", "last", "quantity")
            .flatMap(part -> svg.in(part, "text").stream()).toList();
        List<Element> lines = Stream.of("pole", "done-tick", "whisker", "done-line")
            .flatMap(part -> svg.in(part, "line").stream()).toList();
        List<Element> dots = svg.in("dot", "circle");
        for (Element text : words) {
            Rectangle2D box = ParsedSvg.box(text);
            for (Element line : lines) {
                assertThat(box.intersectsLine(line(line))).as(text.getTextContent() + " on a line").isFalse();
            }
            for (Element dot : dots) {
                assertThat(box.contains(number(dot, "cx"), number(dot, "cy"))).as(text.getTextContent() + " on a dot").isFalse();
            }
        }
    }

    @ParameterizedTest
    @MethodSource("pictures")
    void everyPictureSaysInWordsWhatItShows(HistoryPicture picture) {
        String text = picture.svg();
        ParsedSvg svg = new ParsedSvg(text);
        assertThat(text).doesNotContain("NaN", "Infinity", "null", "Optional");
        assertThat(svg.root().getAttribute("role")).isEqualTo("img");
        assertThat(svg.words("title")).isEqualTo(picture.title()).startsWith(picture.subject() + " over time: ");
        assertThat(svg.words("desc")).isEqualTo(picture.inWords());
        String heading = String.join(" ", svg.in("title-line", "text").stream().map(Element::getTextContent).toList());
        assertThat(heading).isEqualTo(picture.title());
        picture.strips().forEach((quantity, strip) -> strip.readings().forEach(reading -> assertThat(svg.words("desc"))
            .contains(reading.when().text() + " " + QuantityText.value(quantity, reading.value()))));
        picture.interventions().forEach(what ->
            assertThat(svg.words("desc")).contains(what.when().text() + " " + what.words()));
        String shown = Stream.of("done").flatMap(part -> svg.in(part, "text").stream()).map(Element::getTextContent)
            .reduce("", String::concat).replace(" ", "");
        picture.interventions().forEach(what -> assertThat(shown).contains(what.words().replace(" ", "")));
    }

    @ParameterizedTest
    @MethodSource("pictures")
    void everyReadingHasItsMark(HistoryPicture picture) {
        ParsedSvg svg = new ParsedSvg(picture.svg());
        List<HistoryReading> all = picture.strips().values().stream().flatMap(strip -> strip.readings().stream()).toList();
        long superseded = all.stream().filter(HistoryReading::superseded).count();
        int marks = svg.in("dot", "circle").size() + svg.in("arrow", "path").size()
            + Stream.of("path", "rect").mapToInt(shape -> svg.in("other-gauge", shape).size()).sum();
        assertThat(marks).isEqualTo(all.size() - (int) superseded);
        assertThat(svg.in("superseded", "circle")).as("a ground and a ring each").hasSize(2 * (int) superseded);
        assertThat(svg.in("superseded", "line")).hasSize(2 * (int) superseded);
        assertThat(svg.in("done-tick", "line")).hasSize(2 * picture.interventions().size());
    }

    @ParameterizedTest
    @MethodSource("pictures")
    void theBitmapIsAsHighAsTheText(HistoryPicture picture) throws IOException {
        BufferedImage image = ImageIO.read(new ByteArrayInputStream(picture.png()));
        assertThat(image.getHeight()).isEqualTo((int) new ParsedSvg(picture.svg()).height());
        assertThat(image.getWidth()).isEqualTo(1200);
    }

    /** Days are even, so 1 January of each year makes a ruler; the value axis has a tick each at target and tolerance. */
    @Test
    void marksStandWhereBothAxesPutThem() {
        List<HistoryReading> readings = new ArrayList<>();
        for (int year = 2017; year < 2027; year++) {
            readings.add(HistoryReading.of(Histories.day(year, 3, 9), 58.3 + 0.1 * (year - 2021), 0.05));
        }
        ParsedSvg svg = new ParsedSvg(Histories.of("OAKES-DR", Quantity.LIE, new HistoryStrip(Histories.target(Quantity.LIE), readings),
            new Intervention(Histories.day(2020, 7, 1), "bent")).svg());
        Ruler days = svg.ruler("axis", true, year -> LocalDate.of(Integer.parseInt(year), 1, 1).toEpochDay());
        for (int i = 0; i < days.values().size(); i++) {
            assertThat(days.px().get(i)).isCloseTo(days.place(days.values().get(i)), within(WRITTEN_PX));
        }
        List<Element> ticks = svg.in("value-axis", "line");
        assertThat(svg.in("value-axis", "text").stream().map(Element::getTextContent)).containsExactly("+0.25°", "58.30°", "−0.25°");
        double topY = number(ticks.get(0), "y1");
        double bottomY = number(ticks.get(2), "y1");
        List<Element> dots = svg.in("dot", "circle");
        List<Element> whiskers = svg.in("whisker", "line");
        assertThat(dots).hasSize(10);
        for (int i = 0; i < dots.size(); i++) {
            HistoryReading reading = readings.get(i);
            assertThat(number(dots.get(i), "cx")).isCloseTo(days.place(reading.when().day().toEpochDay()), within(WRITTEN_PX));
            assertThat(number(dots.get(i), "cy")).isCloseTo(y(topY, bottomY, reading.value()), within(WRITTEN_PX));
            assertThat(number(whiskers.get(3 * i), "y1")).isCloseTo(y(topY, bottomY, reading.value() + 0.1), within(WRITTEN_PX));
            assertThat(number(whiskers.get(3 * i), "y2")).isCloseTo(y(topY, bottomY, reading.value() - 0.1), within(WRITTEN_PX));
        }
        List<Element> edges = svg.in("band", "line");
        assertThat(number(edges.get(0), "y1")).isEqualTo(topY);
        assertThat(number(edges.get(1), "y1")).isEqualTo(bottomY);
        assertThat(number(svg.only("target", "line"), "y1")).isEqualTo(number(ticks.get(1), "y1"));
        assertThat(number(svg.in("done-tick", "line").get(0), "x1"))
            .isCloseTo(days.place(LocalDate.of(2020, 7, 1).toEpochDay()), within(WRITTEN_PX));
        assertThat(svg.only("done", "text").getTextContent()).isEqualTo("1 Jul 2020: bent");
    }

    /** Two places of known value make the scale: 58.55 at the upper edge of the band, 58.05 at the lower. */
    private static double y(double topY, double bottomY, double value) {
        return bottomY + (value - 58.05) / 0.5 * (topY - bottomY);
    }

    @Test
    void allStripsWithATargetHaveOneScaleInTolerances() {
        ParsedSvg svg = new ParsedSvg(Histories.week().svg());
        List<Element> edges = svg.in("band", "line");
        assertThat(edges).hasSize(16);
        for (int i = 0; i < 16; i += 2) {
            assertThat(number(edges.get(i + 1), "y1") - number(edges.get(i), "y1")).isCloseTo(42, within(WRITTEN_PX));
        }
    }

    @Test
    void stripsStandInTheOrderThatQuantitiesAlwaysHave() {
        ParsedSvg svg = new ParsedSvg(Histories.week().svg());
        String names = String.join(" ", svg.in("quantity", "text").stream().map(Element::getTextContent).toList());
        assertThat(names).isEqualTo("what was done loft lie face length swing weight frequency total mass torque");
        assertThat(svg.in("quantity", "text").stream().map(text -> ParsedSvg.box(text).getY()).toList()).isSorted();
        assertThat(svg.in("last", "text").stream().map(Element::getTextContent)).containsSubsequence("9.35°", "−0.05° off, ± 0.30",
            "read 8 May 16:30", "45 1/4 in", "D1.5", "−0.7 pt off, ± 0.4", "too low", "read 8 May 16:30", "not read");
    }

    @Test
    void readingsOfOneTimeStandSideBySideAboutIt() {
        HistoryStrip strip = new HistoryStrip(Histories.target(Quantity.LIE), List.of(HistoryReading.of(Histories.at(4, 9, 15), 58.3, 0),
            HistoryReading.of(Histories.at(4, 9, 15), 58.4, 0), Histories.superseded(Histories.at(4, 9, 15), 83.5, 0)));
        ParsedSvg svg = new ParsedSvg(Histories.of("X", Quantity.LIE, strip, new Intervention(Histories.at(4, 9, 15), "bent")).svg());
        double x = number(svg.in("done-tick", "line").get(0), "x1");
        assertThat(number(svg.in("dot", "circle").get(0), "cx")).isCloseTo(x - 14, within(WRITTEN_PX));
        assertThat(number(svg.in("dot", "circle").get(1), "cx")).isCloseTo(x, within(WRITTEN_PX));
        assertThat(number(svg.in("superseded", "circle").get(0), "cx")).isCloseTo(x + 14, within(WRITTEN_PX));
        assertThat(svg.in("last", "text").get(0).getTextContent()).as("the last that stands").isEqualTo("58.40°");
        assertThat(svg.in("arrow", "path")).as("no arrow for what no longer stands").isEmpty();
    }

    @Test
    void whatLiesOffTheStripIsAnArrowWithItsNumber() {
        HistoryStrip strip = new HistoryStrip(Histories.target(Quantity.LIE), List.of(
            HistoryReading.of(Histories.day(2026, 5, 1), 58.3 + 2.5 * 0.25, 0), HistoryReading.of(Histories.day(2026, 5, 2), 58.93, 0),
            HistoryReading.of(Histories.day(2026, 5, 20), 57, 0), HistoryReading.of(Histories.day(2026, 5, 21), 57, 0),
            HistoryReading.of(Histories.day(2026, 6, 20), 57.2, 0), HistoryReading.of(Histories.day(2026, 6, 21), 57, 0)));
        ParsedSvg svg = new ParsedSvg(Histories.of("X", Quantity.LIE, strip).svg());
        assertThat(svg.in("dot", "circle")).as("two and a half tolerances are just on it").hasSize(1);
        List<Element> arrows = svg.in("arrow", "path");
        assertThat(ParsedSvg.corners(arrows.get(0)).get(0)[1]).as("points up").isLessThan(ParsedSvg.corners(arrows.get(0)).get(1)[1]);
        assertThat(ParsedSvg.corners(arrows.get(1)).get(0)[1]).as("points down").isGreaterThan(ParsedSvg.corners(arrows.get(1)).get(1)[1]);
        assertThat(svg.in("off-words", "text").stream().map(Element::getTextContent))
            .containsExactly("58.93°", "2 at 57.00°", "2, 57.00° to 57.20°");
        assertThat(svg.texts()).contains("off the strip, with its number");
    }

    @Test
    void gaugesOtherThanTheReferenceHaveTheirMarkAndName() {
        ParsedSvg svg = new ParsedSvg(Histories.week().svg());
        assertThat(svg.in("legend", "text").stream().map(Element::getTextContent)).contains("read on LL-2", "superseded",
            "target and its tolerance", "read, ± 2 standard uncertainties");
        assertThat(svg.in("other-gauge", "path")).as("loft, lie and face").hasSize(3);
        ParsedSvg four = new ParsedSvg(Histories.decade(40, 0).svg());
        assertThat(four.in("legend", "text").stream().map(Element::getTextContent)).contains("read on CMM", "read on LL-2",
            "read on LL-3, van");
    }

    @Test
    void whatIsNotThereIsNotInTheLegend() {
        ParsedSvg svg = new ParsedSvg(Histories.of("X", Quantity.LIE, new HistoryStrip(Optional.empty(),
            List.of(HistoryReading.of(Histories.day(2026, 5, 1), 58.3, 0)))).svg());
        assertThat(svg.in("legend", "text").stream().map(Element::getTextContent)).containsExactly("read");
        assertThat(svg.in("band", "line")).isEmpty();
        assertThat(svg.in("whisker", "line")).isEmpty();
    }

    @Test
    void withoutATargetAStripIsScaledToItsReadings() {
        HistoryStrip strip = new HistoryStrip(Optional.empty(), List.of(HistoryReading.of(Histories.day(2024, 2, 1), 1149.35, 0.8),
            HistoryReading.of(Histories.day(2025, 4, 9), 1136.65, 0.8)));
        ParsedSvg svg = new ParsedSvg(Histories.of("S-1", Quantity.LENGTH, strip).svg());
        Ruler inches = svg.ruler("value-axis", false);
        assertThat(number(svg.in("dot", "circle").get(0), "cy")).isCloseTo(inches.place(45.25), within(WRITTEN_PX));
        assertThat(number(svg.in("dot", "circle").get(1), "cy")).isCloseTo(inches.place(44.75), within(WRITTEN_PX));
        assertThat(svg.in("quantity", "text").stream().map(Element::getTextContent)).containsExactly("length", "in");
    }

    @Test
    void whereThereIsNoRoomForWordsTicksHaveNumbersOfAList() {
        ParsedSvg svg = new ParsedSvg(Histories.decade(12, 60).svg());
        List<String> numbers = svg.in("done-number", "text").stream().map(Element::getTextContent).toList();
        assertThat(numbers).contains("1", "60").containsSubsequence("1", "2", "3", "59", "60");
        assertThat(svg.in("done", "text").stream().map(Element::getTextContent)).hasSize(60).startsWith("2016-06-01 regripped");
        assertThat(svg.in("done-through", "line")).as("too many lines hide the strips").isEmpty();
        assertThat(svg.in("pole", "line")).isEmpty();
    }

    @Test
    void aStripReadsAsOneSentence() {
        HistoryPicture picture = Histories.of("OAKES-DR", Quantity.LIE, new HistoryStrip(Histories.target(Quantity.LIE), List.of(
            HistoryReading.of(Histories.day(2024, 2, 1), 58.4, 0.1), Histories.superseded(Histories.at(4, 9, 15), 83.5, 0),
            Histories.on("LL-2", Histories.at(4, 9, 15), 58.5, 0.1))), new Intervention(Histories.at(4, 10, 0), "bent 0.2° flat"));
        assertThat(picture.inWords()).isEqualTo("Lie, target 58.30° ± 0.25°: 2024-02-01 58.40° ± 0.20° (twice the standard"
            + " uncertainty), +0.10° off; 2026-05-04 09:15 83.50°, +25.20° off, superseded; 2026-05-04 09:15 58.50° ± 0.20° (twice the"
            + " standard uncertainty), +0.20° off, read on LL-2. Done: 2026-05-04 10:00 bent 0.2° flat.");
        assertThat(Histories.of("X", Quantity.SWING_WEIGHT, new HistoryStrip(Optional.empty(), List.of())).inWords())
            .isEqualTo("Swing weight, no target: not read. Nothing was done.");
    }

    @Test
    void theTitleSaysWhatIsOff() {
        Optional<Wanted> lie = Histories.target(Quantity.LIE);
        Optional<Wanted> loft = Histories.target(Quantity.LOFT);
        HistoryStrip high = new HistoryStrip(lie, List.of(HistoryReading.of(Histories.at(4, 9, 15), 58.6, 0)));
        HistoryStrip atLimit = new HistoryStrip(loft, List.of(HistoryReading.of(Histories.at(4, 9, 15), 9.4 + 0.25, 0)));
        assertThat(title(Map.of(Quantity.LIE, high))).isEqualTo("X over time: lie too high when last read");
        assertThat(title(Map.of(Quantity.LOFT, atLimit))).isEqualTo("X over time: loft in tolerance when last read");
        assertThat(title(Map.of(Quantity.LOFT, atLimit, Quantity.LIE, high)))
            .isEqualTo("X over time: 1 of 2 quantities in tolerance when last read; lie too high");
        assertThat(title(Map.of(Quantity.LOFT, atLimit, Quantity.FACE, new HistoryStrip(Optional.empty(), high.readings()),
            Quantity.LIE, new HistoryStrip(lie, List.of(HistoryReading.of(Histories.at(4, 9, 15), 58.3, 0))))))
            .isEqualTo("X over time: all 2 quantities in tolerance when last read");
        assertThat(title(Map.of(Quantity.LIE, new HistoryStrip(Optional.empty(), high.readings()))))
            .isEqualTo("X over time: 1 reading, no target to hold it to");
        assertThat(title(Map.of(Quantity.LIE, new HistoryStrip(lie, List.of())))).isEqualTo("X over time: nothing read yet");
        assertThat(Histories.decade(40, 9).title()).endsWith(": none of 8 quantities in tolerance when last read");
    }

    private static String title(Map<Quantity, HistoryStrip> strips) {
        return new HistoryPicture("X", strips, List.of()).title();
    }

    @Test
    void oddLettersStayWhatTheyAre() {
        ParsedSvg svg = new ParsedSvg(Histories.awkward().svg());
        assertThat(svg.words("title")).contains("🏌", "Ευδοξία", "& Серафима");
        assertThat(svg.words("desc")).contains("regripped by 日本 with an 🏌 grip & 2 layers <tape>", "read on Größe & <b> 🏌 WITHOUT");
        assertThat(svg.in("legend", "text").stream().map(Element::getTextContent)).anyMatch(text -> text.endsWith("…"));
        assertThat(new Intervention(Histories.at(4, 9, 15), "bent\u0001\ntwice").words()).isEqualTo("bent\uFFFD twice");
    }

    @Test
    void theSamePictureIsTheSameTextInAnyLocale() {
        String first = Histories.week().svg();
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
            assertThat(Histories.week().svg().equals(first)).as(Locale.getDefault().toString()).isTrue();
            Locale.setDefault(Locale.GERMANY);
            assertThat(Histories.week().svg().equals(first)).as(Locale.getDefault().toString()).isTrue();
        } finally {
            Locale.setDefault(before);
        }
    }

    @Test
    void nothingIsDrawnFromWhatCannotBe() {
        assertThatIllegalArgumentException().isThrownBy(() -> HistoryReading.of(Histories.at(4, 9, 15), Double.NaN, 0))
            .withMessage("the reading of 2026-05-04 09:15: a value of NaN is no number");
        assertThatIllegalArgumentException().isThrownBy(() -> HistoryReading.of(Histories.day(2026, 5, 4), 58, -1))
            .withMessage("the reading of 2026-05-04: an uncertainty of -1.0 is not 0 or more");
        assertThatIllegalArgumentException().isThrownBy(() -> Histories.on(" ", Histories.at(4, 9, 15), 58, 0))
            .withMessage("a picture's gauge is empty; it must say something");
        assertThatIllegalArgumentException().isThrownBy(() -> new Intervention(Histories.at(4, 9, 15), ""))
            .withMessage("a picture's intervention is empty; it must say something");
        assertThatIllegalArgumentException().isThrownBy(() -> new HistoryPicture("X", Map.of(), List.of()))
            .withMessage("a history needs at least one quantity, or something that was done");
        assertThatIllegalArgumentException().isThrownBy(() -> Histories.of("", Quantity.LIE, new HistoryStrip(Optional.empty(), List.of())))
            .withMessage("a picture's subject is empty; it must say something");
    }

    private static Line2D line(Element line) {
        return new Line2D.Double(number(line, "x1"), number(line, "y1"), number(line, "x2"), number(line, "y2"));
    }
}
