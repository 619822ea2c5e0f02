package benchtwin.picture;

import static benchtwin.picture.ParsedSvg.number;
import static org.assertj.core.api.Assertions.assertThat;

import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Element;

/** Names on the frequency picture, for any set: none lies on another, on a mark or on a band, and none is lost. */
class SetLabelsPropertyTest {

    static LongStream seeds() {
        return LongStream.range(0, 24);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void everyNameIsThereAndClearOfEverything(long seed) {
        FrequencyLinePicture picture = set(new Random(seed));
        ParsedSvg svg = new ParsedSvg(picture.svg());
        List<Element> names = new ArrayList<>(svg.in("club-label", "text"));
        names.addAll(svg.in("line-label", "text"));
        String written = String.join(" ", svg.in("club-label", "text").stream().map(Element::getTextContent).toList());
        for (FrequencyPoint point : picture.clubs()) {
            assertThat(written).contains(point.club().club());
        }
        assertThat(svg.in("note", "text")).as("nothing without room").isEmpty();
        List<Element> leaders = new ArrayList<>(svg.in("club-label", "line"));
        leaders.addAll(svg.in("line-label", "line"));
        for (int i = 0; i < names.size(); i++) {
            Rectangle2D box = ParsedSvg.box(names.get(i));
            String name = names.get(i).getTextContent();
            for (Element other : names.subList(0, i)) {
                assertThat(box.intersects(ParsedSvg.box(other))).as("%s on %s", name, other.getTextContent()).isFalse();
            }
            for (Element dot : svg.in("dot", "circle")) {
                double r = number(dot, "r");
                assertThat(box.intersects(number(dot, "cx") - r, number(dot, "cy") - r, 2 * r, 2 * r)).as(name + " on a dot").isFalse();
            }
            for (String part : List.of("whisker", "joiner", "club-target")) {
                svg.in(part, "line").forEach(line -> assertThat(box.intersectsLine(line(line))).as(name + " on a " + part).isFalse());
            }
            leaders.forEach(leader -> assertThat(box.intersectsLine(shortened(line(leader)))).as(name + " on a leader").isFalse());
            for (Element path : areas(svg)) {
                assertThat(shape(path).intersects(box)).as(name + " on a band, an arrow or a diamond").isFalse();
            }
        }
    }

    /** Up to 16 clubs, some of one length, some on one of two lines, some with a target of their own, one in eight not built. */
    private static FrequencyLinePicture set(Random random) {
        List<FrequencyPoint> clubs = new ArrayList<>();
        int count = 1 + random.nextInt(16);
        double inches = 46;
        for (int i = 0; i < count; i++) {
            inches -= random.nextInt(3) == 0 ? 0 : 0.125 * random.nextInt(10);
            int line = random.nextInt(4);
            double cpm = 252 + (line == 1 ? 7 : 6.2) * (46 - inches) + (line > 1 ? random.nextInt(6) : 0);
            SetTarget target = new SetTarget(cpm, 1 + random.nextInt(3),
                line == 0 ? Optional.of("irons") : line == 1 ? Optional.of("woods and hybrids") : Optional.empty());
            String name = List.of("7-iron", "4-hybrid backup", "driver", "PW", "54", "3-wood for the wind").get(random.nextInt(6));
            clubs.add(Sets.at(inches, random.nextInt(8) == 0 ? Sets.notBuilt(name, target)
                : Sets.built(name, cpm + 1.5 * random.nextGaussian(), 0.3 * random.nextInt(4), target)));
        }
        return new FrequencyLinePicture("P. Quillby", "", clubs);
    }

    /** All that is filled; of a band the edges come after its fill. */
    private static List<Element> areas(ParsedSvg svg) {
        return Stream.of("line-band", "arrow", "not-built").flatMap(part -> svg.in(part, "path").stream())
            .filter(path -> !path.getAttribute("fill").equals("none")).toList();
    }

    private static Line2D line(Element line) {
        return new Line2D.Double(number(line, "x1"), number(line, "y1"), number(line, "x2"), number(line, "y2"));
    }

    /** Without its last px, where it touches the words it leads to. */
    private static Line2D shortened(Line2D line) {
        double part = Math.max(0, 1 - 4 / line.getP1().distance(line.getP2()));
        return new Line2D.Double(line.getX1(), line.getY1(), line.getX1() + part * (line.getX2() - line.getX1()),
            line.getY1() + part * (line.getY2() - line.getY1()));
    }

    private static Path2D shape(Element path) {
        Path2D shape = new Path2D.Double();
        for (double[] corner : ParsedSvg.corners(path)) {
            if (shape.getCurrentPoint() == null) {
                shape.moveTo(corner[0], corner[1]);
            } else {
                shape.lineTo(corner[0], corner[1]);
            }
        }
        return shape;
    }
}
