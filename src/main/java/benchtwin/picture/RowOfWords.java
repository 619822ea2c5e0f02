package benchtwin.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;

/**
 * Words in one row, each centred on its mark as far as the row goes; words that would touch are put into one.
 * @param members what the words stand for
 * @param words   what is written
 * @param leftX   where they start, px
 * @param widthPx how wide they are
 * @param <T>     what has a mark
 */
record RowOfWords<T>(List<T> members, String words, double leftX, double widthPx) {

    private static final double BETWEEN_PX = 14;

    /**
     * Sets a row.
     * @param items from left to right
     * @param x     where an item's mark is, px
     * @param words what is written for some items together
     * @param fromX where the row starts, px
     * @param toX   where it ends
     */
    static <T> List<RowOfWords<T>> of(List<T> items, ToDoubleFunction<T> x, Function<List<T>, String> words, double fromX,
                                      double toX) {
        List<RowOfWords<T>> row = new ArrayList<>();
        for (T item : items) {
            RowOfWords<T> next = about(List.of(item), x, words, fromX, toX);
            while (!row.isEmpty() && row.get(row.size() - 1).touches(next)) {
                List<T> together = new ArrayList<>(row.remove(row.size() - 1).members());
                together.addAll(next.members());
                next = about(together, x, words, fromX, toX);
            }
            row.add(next);
        }
        return row;
    }

    /** Words for some items together, centred between the first and the last as far as the row goes. */
    static <T> RowOfWords<T> about(List<T> members, ToDoubleFunction<T> x, Function<List<T>, String> words, double fromX,
                                           double toX) {
        String text = words.apply(members);
        double width = TextBlock.widthPx(text, Look.TEXT);
        double middle = (x.applyAsDouble(members.get(0)) + x.applyAsDouble(members.get(members.size() - 1))) / 2;
        return new RowOfWords<>(List.copyOf(members), text, Math.max(fromX, Math.min(toX - width, middle - width / 2)), width);
    }

    /** Whether words farther right stand too near to be told apart. */
    boolean touches(RowOfWords<T> next) {
        return leftX + widthPx + BETWEEN_PX > next.leftX();
    }

    /** On paper kept clear of whatever runs through it. */
    void draw(Sheet sheet, String part, double topY) {
        TextBlock text = TextBlock.line(words, Look.TEXT);
        sheet.part(part, g -> {
            Marks.clear(g, Look.PAPER, leftX - 3, topY, widthPx + 6, text.heightPx());
            text.draw(g, Look.INK, leftX, topY);
        });
    }
}
