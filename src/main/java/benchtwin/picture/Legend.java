package benchtwin.picture;

import java.awt.Graphics2D;
import java.util.ArrayList;
import java.util.List;

/** The marks of a picture, each with its word, running on from line to line. */
final class Legend {

    private static final double LINE_PX = 30;
    private static final double AFTER_MARK_PX = 10;
    private static final double BETWEEN_PX = 32;

    /** Draws a sample of a mark. */
    interface Sample {
        /** In the box from x, {@code widthPx} wide, about the middle y. */
        void draw(Graphics2D g, double x, double widthPx, double y);
    }

    private record Item(Sample sample, double samplePx, String word, double x, double y) {
    }

    private final List<Item> items = new ArrayList<>();
    private double nextX = Look.MARGIN_PX;
    private double line;

    Legend add(double samplePx, Sample sample, String word) {
        double widthPx = samplePx + AFTER_MARK_PX + TextBlock.widthPx(word, Look.TEXT);
        if (nextX > Look.MARGIN_PX && nextX + widthPx > Look.WIDTH_PX - Look.MARGIN_PX) {
            nextX = Look.MARGIN_PX;
            line++;
        }
        items.add(new Item(sample, samplePx, word, nextX, line * LINE_PX + LINE_PX / 2));
        nextX += widthPx + BETWEEN_PX;
        return this;
    }

    double heightPx() {
        return (line + 1) * LINE_PX;
    }

    void draw(Graphics2D g, double topY) {
        for (Item item : items) {
            item.sample().draw(g, item.x(), item.samplePx(), topY + item.y());
            g.setPaint(Look.INK);
            g.setFont(Look.TEXT);
            g.drawString(item.word(), (float) (item.x() + item.samplePx() + AFTER_MARK_PX),
                (float) (topY + item.y() + 6));
        }
    }
}
