package benchtwin.picture;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.Optional;

/**
 * Words that found a place beside a mark.
 * @param words  what is written
 * @param box    where, px
 * @param leader from the mark to the words, where they stand too far from it to be taken for its own
 */
record PlacedLabel(TextBlock words, Rectangle2D box, Optional<Line2D> leader) {

    void draw(Graphics2D g, Color colour) {
        leader.ifPresent(line -> Marks.line(g, Look.QUIET, Look.RULE, line.getX1(), line.getY1(), line.getX2(), line.getY2()));
        words.draw(g, colour, box.getX(), box.getY());
    }
}
