package benchtwin.picture;

import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.List;

/** Lays counts of bends out: a name a scene, under it one bar a habit. */
final class BendCountDrawing implements Drawing {

    private static final double NAME_PX = 220;
    private static final double BAR_PX = 34;
    private static final double BETWEEN_PX = 40;
    private static final double SCENE_PX = 46;
    private static final double MEAN_PX = 400;
    private static final double PAD_PX = 8;

    private final BendCountPicture picture;
    private final Heading heading;

    BendCountDrawing(BendCountPicture picture) {
        this.picture = picture;
        Legend legend = new Legend();
        legend.add(60, (g, x, width, y) -> part(g, x, width, y - 12, 24, true), "right after the first bend");
        legend.add(60, (g, x, width, y) -> part(g, x, width, y - 12, 24, false), "after so many bends, by the number in it");
        heading = new Heading(picture.title(), legend);
    }

    @Override
    public int heightPx() {
        double height = heading.heightPx();
        for (BendCountPicture.Scene scene : picture.scenes()) {
            height += SCENE_PX + scene.counts().size() * BETWEEN_PX;
        }
        return (int) Math.ceil(height + Look.MARGIN_PX);
    }

    @Override
    public void draw(Sheet sheet) {
        heading.draw(sheet);
        double y = heading.heightPx();
        for (int s = 0; s < picture.scenes().size(); s++) {
            BendCountPicture.Scene scene = picture.scenes().get(s);
            double top = y + SCENE_PX / 2 - 4;
            sheet.part("scene-" + (s + 1), g -> TextBlock.line(scene.name(), Look.STRONG).draw(g, Look.INK, Look.MARGIN_PX, top));
            y += SCENE_PX;
            for (int h = 0; h < scene.counts().size(); h++) {
                BendCount count = scene.counts().get(h);
                double row = y;
                sheet.part("bar-%d-%d".formatted(s + 1, h + 1), g -> bar(g, count, row));
                y += BETWEEN_PX;
            }
        }
    }

    private static void bar(Graphics2D g, BendCount count, double y) {
        double left = Look.MARGIN_PX + NAME_PX;
        double whole = Look.WIDTH_PX - Look.MARGIN_PX - MEAN_PX - left;
        TextBlock.line(count.habit(), Look.TEXT).draw(g, Look.INK, Look.MARGIN_PX, y + PAD_PX / 2);
        double x = left;
        List<Double> shares = count.shares();
        for (int k = 0; k < shares.size(); k++) {
            double width = shares.get(k) * whole;
            part(g, x, width, y, BAR_PX, k == 0);
            String inFull = "%s: %s".formatted(BendCountPicture.bends(k, shares.size()), BendCountPicture.percent(shares.get(k)));
            String label = TextBlock.widthPx(inFull, Look.TEXT) + PAD_PX < width ? inFull : BendCountPicture.bends(k, shares.size());
            if (TextBlock.widthPx(label, Look.TEXT) + PAD_PX < width) {
                TextBlock.line(label, Look.TEXT).draw(g, Look.INK, x + PAD_PX / 2, y + PAD_PX / 2);
            }
            x += width;
        }
        TextBlock.line("%s bends; %s".formatted(Words.fixed(count.meanBends(), 2), count.note()), Look.TEXT).draw(g, Look.INK,
            left + whole + PAD_PX * 2, y + PAD_PX / 2);
    }

    private static void part(Graphics2D g, double x, double width, double y, double height, boolean first) {
        Rectangle2D place = new Rectangle2D.Double(x, y, width, height);
        g.setPaint(first ? Look.BAND : Look.PAPER);
        g.fill(place);
        g.setPaint(Look.INK);
        g.setStroke(Look.RULE);
        g.draw(place);
    }
}
