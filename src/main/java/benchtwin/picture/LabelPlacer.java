package benchtwin.picture;

import java.awt.Shape;
import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Finds places for words beside their marks: on no mark, line or band, on no other words, and as near as that allows.
 * Words that land away from their mark get a leader, which crosses no other words either.
 */
final class LabelPlacer {

    /** Between words and whatever is near them. */
    private static final double CLEAR_PX = 3;
    /** Between words that could be read as one line. */
    private static final double WORD_SPACE_PX = 14;
    /** From the middle of a mark to words right beside it. */
    private static final double BESIDE_PX = 14;
    private static final double RADIUS_STEP_PX = 10;
    private static final int RADII = 45;
    private static final int DIRECTIONS = 24;
    /** Words farther than this from the middle of their mark, or nearer to another mark, need a leader. */
    private static final double OWN_PX = 36;
    private static final double LEADER_FROM_PX = 10;
    /** What is put up with, in px of distance. */
    private static final double CROSSES_LINE_PX = 60;
    private static final double CROSSES_LEADER_PX = 400;
    private static final double CROSSES_MARK_PX = 800;

    private final Rectangle2D room;
    private final List<Rectangle2D> marks;
    private final List<? extends Shape> lines;
    private final List<PlacedLabel> placed = new ArrayList<>();

    private record Candidate(PlacedLabel label, double cost) {
    }

    /**
     * An empty picture.
     * @param room  words stay inside it, px
     * @param marks no words stand on them, and leaders keep off them where they can
     * @param lines no words stand on them; leaders may cross them
     */
    LabelPlacer(Rectangle2D room, List<Rectangle2D> marks, List<? extends Shape> lines) {
        this.room = room;
        this.marks = List.copyOf(marks);
        this.lines = List.copyOf(lines);
    }

    /**
     * Places words beside any one of some points.
     * @param words   what to place
     * @param anchors the middles of what they belong to, at least one
     * @return empty when there is no room left
     */
    Optional<PlacedLabel> place(TextBlock words, List<Point2D> anchors) {
        List<Rectangle2D> others = marks.stream().filter(mark -> anchors.stream().noneMatch(mark::contains)).toList();
        Candidate best = null;
        for (Point2D anchor : anchors) {
            for (int ring = 0; ring < RADII; ring++) {
                double radiusPx = BESIDE_PX + ring * RADIUS_STEP_PX;
                if (best != null && radiusPx >= best.cost()) {
                    break;
                }
                for (int i = 0; i < DIRECTIONS; i++) {
                    Rectangle2D box = box(words, anchor, radiusPx, 2 * Math.PI * i / DIRECTIONS);
                    if (isFree(box)) {
                        Candidate candidate = candidate(words, others, anchor, box, radiusPx);
                        if (candidate.cost() < (best == null ? Double.POSITIVE_INFINITY : best.cost())) {
                            best = candidate;
                        }
                    }
                }
            }
        }
        Optional<PlacedLabel> found = Optional.ofNullable(best).map(Candidate::label);
        found.ifPresent(placed::add);
        return found;
    }

    /** Beside a point on a circle about the anchor, on the far side of it. */
    private static Rectangle2D box(TextBlock words, Point2D anchor, double radiusPx, double angle) {
        double x = anchor.getX() + radiusPx * Math.cos(angle);
        double y = anchor.getY() + radiusPx * Math.sin(angle);
        double width = words.widthPx();
        double height = words.heightPx();
        return new Rectangle2D.Double(x - width * (1 - Math.cos(angle)) / 2, y - height * (1 - Math.sin(angle)) / 2, width, height);
    }

    private boolean isFree(Rectangle2D box) {
        Rectangle2D wide = widened(box, CLEAR_PX);
        Rectangle2D line = widened(box, WORD_SPACE_PX);
        return room.contains(wide) && marks.stream().noneMatch(wide::intersects)
            && lines.stream().noneMatch(band -> band.intersects(wide))
            && placed.stream().noneMatch(other -> line.intersects(other.box())
                || other.leader().isPresent() && wide.intersectsLine(other.leader().get()));
    }

    private static boolean isNearer(Rectangle2D mark, Rectangle2D box, double thanPx) {
        double dx = Math.max(0, Math.max(box.getMinX() - mark.getCenterX(), mark.getCenterX() - box.getMaxX()));
        double dy = Math.max(0, Math.max(box.getMinY() - mark.getCenterY(), mark.getCenterY() - box.getMaxY()));
        return Math.hypot(dx, dy) <= thanPx;
    }

    private static Rectangle2D widened(Rectangle2D box, double sidePx) {
        return new Rectangle2D.Double(box.getX() - sidePx, box.getY() - CLEAR_PX, box.getWidth() + 2 * sidePx,
            box.getHeight() + 2 * CLEAR_PX);
    }

    private Candidate candidate(TextBlock words, List<Rectangle2D> others, Point2D anchor, Rectangle2D box,
                                double radiusPx) {
        Point2D end = new Point2D.Double(Math.max(box.getMinX(), Math.min(box.getMaxX(), anchor.getX())),
            Math.max(box.getMinY(), Math.min(box.getMaxY(), anchor.getY())));
        double distancePx = anchor.distance(end);
        if (distancePx <= OWN_PX && others.stream().noneMatch(mark -> isNearer(mark, box, distancePx))) {
            return new Candidate(new PlacedLabel(words, box, Optional.empty()), radiusPx);
        }
        double part = LEADER_FROM_PX / distancePx;
        Line2D leader = new Line2D.Double(anchor.getX() + part * (end.getX() - anchor.getX()),
            anchor.getY() + part * (end.getY() - anchor.getY()), end.getX(), end.getY());
        double cost = radiusPx;
        for (PlacedLabel other : placed) {
            if (other.box().intersectsLine(leader)) {
                return new Candidate(null, Double.POSITIVE_INFINITY);
            }
            cost += other.leader().isPresent() && other.leader().get().intersectsLine(leader) ? CROSSES_LEADER_PX : 0;
        }
        for (Rectangle2D mark : others) {
            cost += mark.intersectsLine(leader) ? CROSSES_MARK_PX : 0;
        }
        for (Shape line : lines) {
            cost += line.intersects(leader.getBounds2D()) ? CROSSES_LINE_PX : 0;
        }
        return new Candidate(new PlacedLabel(words, box, Optional.of(leader)), cost);
    }
}
