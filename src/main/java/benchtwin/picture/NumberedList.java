package benchtwin.picture;

import java.util.ArrayList;
import java.util.List;

/** What was done as a numbered list beneath a history, in two columns, down the first and then down the second. */
final class NumberedList {

    private static final double BETWEEN_PX = 32;
    private static final double COLUMN_PX = (Look.WIDTH_PX - 2.0 * Look.MARGIN_PX - BETWEEN_PX) / 2;
    private static final double NUMBER_PX = 52;
    private static final double HEADING_PX = 32;
    private static final double AFTER_PX = 4;

    private final List<TextBlock> blocks;
    private final int inFirst;
    private final double topPx;

    NumberedList(List<Intervention> all, double topPx) {
        this.topPx = topPx;
        blocks = all.stream().map(what -> TextBlock.of(what.when().text() + " " + what.words(), Look.TEXT, COLUMN_PX - NUMBER_PX))
            .toList();
        double half = heightPx(blocks) / 2;
        int count = 0;
        while (heightPx(blocks.subList(0, count)) < half) {
            count++;
        }
        inFirst = count;
    }

    private static double heightPx(List<TextBlock> blocks) {
        return blocks.stream().mapToDouble(block -> block.heightPx() + AFTER_PX).sum();
    }

    double bottomPx() {
        return topPx + HEADING_PX
            + Math.max(heightPx(blocks.subList(0, inFirst)), heightPx(blocks.subList(inFirst, blocks.size())));
    }

    void draw(Sheet sheet) {
        sheet.part("quantity", g -> TextBlock.line("what was done", Look.STRONG).draw(g, Look.INK, Look.MARGIN_PX, topPx));
        List<Double> tops = new ArrayList<>();
        double y = topPx + HEADING_PX;
        for (int i = 0; i < blocks.size(); i++) {
            y = i == inFirst ? topPx + HEADING_PX : y;
            tops.add(y);
            y += blocks.get(i).heightPx() + AFTER_PX;
        }
        for (int i = 0; i < blocks.size(); i++) {
            double x = Look.MARGIN_PX + (i < inFirst ? 0 : COLUMN_PX + BETWEEN_PX);
            TextBlock number = TextBlock.line(Integer.toString(i + 1), Look.STRONG);
            TextBlock words = blocks.get(i);
            double top = tops.get(i);
            sheet.part("done-number", g -> number.draw(g, Look.INK, x + NUMBER_PX - 14 - number.widthPx(), top));
            sheet.part("done", g -> words.draw(g, Look.INK, x + NUMBER_PX, top));
        }
    }
}
