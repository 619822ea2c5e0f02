package benchtwin.picture;

import java.awt.Graphics2D;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.DoubleSummaryStatistics;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** A line through a set, laid out: the targets of its clubs joined from the longest to the shortest, within their tolerance. */
final class TargetLine {

    /** How far it goes on past its first and last club. */
    private static final double PAST_PX = 14;
    /** Clubs of one length are no line. */
    private static final double LEAST_LENGTH_IN = 0.02;
    /** Nearer than this the direction of a line cannot be told. */
    private static final double APART_PX = 0.1;

    /** One club's target on the sheet, px; {@code topY} is the upper end of its tolerance. */
    private record Knot(double x, double y, double topY, double bottomY) {
        /** A little past this, seen from the other. */
        Knot past(Knot other) {
            double part = PAST_PX / Math.hypot(x - other.x, y - other.y);
            return new Knot(x + part * (x - other.x), y + part * (y - other.y), topY + part * (topY - other.topY),
                bottomY + part * (bottomY - other.bottomY));
        }
    }

    private final String name;
    private final List<Knot> knots;

    /** Through clubs whose targets have a place. */
    TargetLine(String name, List<FrequencyPoint> clubs, Scale length, Scale cpm) {
        this.name = name;
        List<Knot> found = new ArrayList<>();
        for (FrequencyPoint point : clubs) {
            SetTarget target = point.club().target().orElseThrow();
            found.add(new Knot(length.px(point.targetLengthIn().orElseThrow()), cpm.px(target.value()), cpm.px(target.high()),
                cpm.px(target.low())));
        }
        found.sort(Comparator.comparingDouble(Knot::x));
        knots = found;
    }

    String name() {
        return name;
    }

    /**
     * The lines that can be drawn: those with targets at two lengths at least.
     * @return each name with its clubs, in the order of the set
     */
    static Map<String, List<FrequencyPoint>> among(List<FrequencyPoint> points) {
        Map<String, List<FrequencyPoint>> byLine = new LinkedHashMap<>();
        points.stream().filter(FrequencyPoint::hasTargetPlace).forEach(point -> point.club().target().flatMap(SetTarget::line)
            .ifPresent(line -> byLine.computeIfAbsent(line, any -> new ArrayList<>()).add(point)));
        byLine.values().removeIf(clubs -> {
            DoubleSummaryStatistics inches =
                clubs.stream().mapToDouble(point -> point.targetLengthIn().orElseThrow()).summaryStatistics();
            return inches.getMax() - inches.getMin() < LEAST_LENGTH_IN;
        });
        return byLine;
    }

    /** Places along it that its name can stand beside. */
    List<Point2D> anchors() {
        List<Point2D> places = new ArrayList<>();
        for (int i = 1; i < knots.size(); i++) {
            places.add(new Point2D.Double((knots.get(i - 1).x() + knots.get(i).x()) / 2,
                (knots.get(i - 1).y() + knots.get(i).y()) / 2));
        }
        return places;
    }

    /** The band, which is never narrower than the line. */
    Path2D area() {
        Path2D area = new Path2D.Double();
        List<Knot> all = extended();
        all.forEach(knot -> to(area, knot.x(), Math.min(knot.topY(), knot.y() - 1)));
        for (int i = all.size() - 1; i >= 0; i--) {
            to(area, all.get(i).x(), Math.max(all.get(i).bottomY(), all.get(i).y() + 1));
        }
        area.closePath();
        return area;
    }

    void drawBand(Graphics2D g) {
        g.setPaint(Look.BAND);
        g.fill(area());
        g.setPaint(Look.INK);
        g.setStroke(Look.RULE);
        Path2D upper = new Path2D.Double();
        Path2D lower = new Path2D.Double();
        extended().forEach(knot -> {
            to(upper, knot.x(), knot.topY());
            to(lower, knot.x(), knot.bottomY());
        });
        g.draw(upper);
        g.draw(lower);
    }

    void drawLine(Graphics2D g) {
        Path2D middle = new Path2D.Double();
        extended().forEach(knot -> to(middle, knot.x(), knot.y()));
        g.setPaint(Look.INK);
        g.setStroke(Look.DASHED);
        g.draw(middle);
    }

    private List<Knot> extended() {
        List<Knot> all = new ArrayList<>(knots);
        Knot first = knots.get(0);
        knots.stream().filter(knot -> knot.x() - first.x() > APART_PX).findFirst()
            .ifPresent(second -> all.add(0, first.past(second)));
        Knot last = knots.get(knots.size() - 1);
        knots.stream().filter(knot -> last.x() - knot.x() > APART_PX).reduce((a, b) -> b)
            .ifPresent(before -> all.add(last.past(before)));
        return all;
    }

    private static void to(Path2D path, double x, double y) {
        if (path.getCurrentPoint() == null) {
            path.moveTo(x, y);
        } else {
            path.lineTo(x, y);
        }
    }
}
