package benchtwin.picture;

import benchtwin.club.Quantity;
import benchtwin.club.QuantityText;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What one quantity measured last, at the right of its strip: the number large, then how far off, how sure, and when. */
final class LastReading {

    private static final double X = 968;
    private static final double WIDTH_PX = Look.WIDTH_PX - Look.MARGIN_PX - X;

    private final boolean inTolerance;
    private final TextBlock number;
    private final TextBlock rest;

    LastReading(Quantity quantity, HistoryStrip strip, HistoryDates dates) {
        inTolerance = strip.side() == 0;
        Optional<HistoryReading> last = strip.last();
        number = TextBlock.of(last.map(reading -> QuantityText.value(quantity, reading.value())).orElse(""), Look.LARGE, WIDTH_PX);
        rest = TextBlock.stacked(last.map(reading -> lines(quantity, strip, reading, dates)).orElse(List.of("not read")), Look.TEXT,
            WIDTH_PX);
    }

    private static List<String> lines(Quantity quantity, HistoryStrip strip, HistoryReading reading, HistoryDates dates) {
        List<String> lines = new ArrayList<>();
        boolean sure = reading.standardUncertainty() > 0;
        String whisker = sure ? "± " + QuantityText.size(quantity, reading.whisker()) : "";
        String off = strip.target().map(wanted -> QuantityText.difference(quantity, reading.value() - wanted.value()) + " off").orElse("");
        String both = off + ", ± " + QuantityText.number(quantity, reading.whisker());
        if (sure && !off.isEmpty() && TextBlock.widthPx(both, Look.TEXT) <= WIDTH_PX) {
            lines.add(both);
        } else {
            lines.add(off);
            lines.add(whisker);
        }
        lines.add(strip.side() == 0 ? "" : SetWords.tooFar(strip.side()));
        lines.add("read " + dates.brief(reading.when()));
        lines.removeIf(String::isEmpty);
        return lines;
    }

    double heightPx() {
        return number.heightPx() + rest.heightPx();
    }

    void draw(Sheet sheet, double middleY) {
        double y = middleY - heightPx() / 2;
        sheet.part("last", g -> {
            number.draw(g, Look.INK, X, y);
            rest.draw(g, inTolerance ? Look.QUIET : Look.INK, X, y + number.heightPx());
        });
    }
}
