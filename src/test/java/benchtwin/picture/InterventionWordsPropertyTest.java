package benchtwin.picture;

import static benchtwin.picture.ParsedSvg.number;
import static org.assertj.core.api.Assertions.assertThat;

import benchtwin.club.BenchTime;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Element;

/** What was done, at any times and in any words: none on another or on a pole, none lost, each beside its own pole. */
class InterventionWordsPropertyTest {

    static LongStream seeds() {
        return LongStream.range(0, 60);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void allWordsAreThereAndClearOfEverything(long seed) {
        HistoryPicture picture = history(new Random(seed));
        ParsedSvg svg = new ParsedSvg(picture.svg());
        List<Element> words = Stream.of("done", "done-number").flatMap(part -> svg.in(part, "text").stream()).toList();
        List<Line2D> poles = svg.in("pole", "line").stream().map(InterventionWordsPropertyTest::line).toList();
        assertThat(poles).satisfiesAnyOf(all -> assertThat(all).isEmpty(), all -> assertThat(all).hasSameSizeAs(picture.interventions()));
        for (int i = 0; i < words.size(); i++) {
            Rectangle2D box = ParsedSvg.box(words.get(i));
            String text = words.get(i).getTextContent();
            assertThat(new Rectangle2D.Double(0, 0, svg.width(), svg.height()).contains(box)).as(text + " on the sheet").isTrue();
            for (Element other : words.subList(0, i)) {
                assertThat(box.intersects(ParsedSvg.box(other))).as("%s over %s", text, other.getTextContent()).isFalse();
            }
            poles.forEach(pole -> assertThat(pole.intersects(box)).as(text + " on a pole").isFalse());
        }
        for (int i = 0; i < poles.size(); i++) {
            double x = poles.get(i).getX1();
            assertThat(number(svg.in("done-tick", "line").get(2 * i), "x1")).as("pole on its tick").isEqualTo(x);
            List<Element> own = ownWords(svg, i);
            Rectangle2D first = ParsedSvg.box(own.get(0));
            double topOfPole = Math.min(poles.get(i).getY1(), poles.get(i).getY2());
            assertThat(first.getMinY() - topOfPole).as("words at the top of their pole").isBetween(0.0, 8.0);
            assertThat(own.stream().mapToDouble(text -> Math.min(Math.abs(ParsedSvg.box(text).getMinX() - x),
                Math.abs(x - ParsedSvg.box(text).getMaxX()))).min().orElseThrow()).as("words beside their pole").isLessThan(10);
        }
        String shown = svg.in("done", "text").stream().map(Element::getTextContent).reduce("", String::concat).replace(" ", "");
        picture.interventions().forEach(what -> assertThat(shown).contains(what.words().replace(" ", "")));
    }

    /** The lines of one flag. */
    private static List<Element> ownWords(ParsedSvg svg, int index) {
        var groups = svg.root().getElementsByTagName("g");
        int met = -1;
        for (int i = 0; i < groups.getLength(); i++) {
            Element group = (Element) groups.item(i);
            met += group.getAttribute("class").equals("done") ? 1 : 0;
            if (met == index) {
                var texts = group.getElementsByTagName("text");
                List<Element> own = new ArrayList<>();
                for (int k = 0; k < texts.getLength(); k++) {
                    own.add((Element) texts.item(k));
                }
                return own;
            }
        }
        throw new AssertionError("no words of pole " + index);
    }

    /** From 1 to 40 things over an hour to ten years, some at one time, some told at length. */
    private static HistoryPicture history(Random random) {
        List<Intervention> done = new ArrayList<>();
        int count = 1 + random.nextInt(random.nextBoolean() ? 8 : 40);
        double minutes = Math.pow(10, 2 + 4.7 * random.nextDouble());
        LocalDateTime when = LocalDateTime.of(2016, 5, 1, 9, 0);
        for (int i = 0; i < count; i++) {
            when = random.nextInt(5) == 0 ? when : when.plusMinutes((long) (2 * minutes / count * random.nextDouble()));
            String words = List.of("bent 0.5° flat", "regripped", "shaft pulled, a new one put in, bonded overnight and gripped again",
                "sole ground", "head changed to H-014", "x".repeat(60)).get(random.nextInt(6));
            done.add(new Intervention(random.nextInt(4) == 0 ? BenchTime.on(when.toLocalDate()) : BenchTime.at(when), words));
        }
        return new HistoryPicture("X", Map.of(), done);
    }

    private static Line2D line(Element line) {
        return new Line2D.Double(number(line, "x1"), number(line, "y1"), number(line, "x2"), number(line, "y2"));
    }
}
