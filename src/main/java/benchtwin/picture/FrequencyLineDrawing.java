package benchtwin.picture;

import java.awt.Font;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Lays a frequency picture out: heading and legend, the field as high as its names need, and below it what has no place. */
final class FrequencyLineDrawing implements Drawing {

    private static final double PLOT_X = 104;
    private static final double AXIS_PX = 40;
    private static final double LABEL_PX = 32;
    private static final double BESIDE_AXIS_PX = 10;
    /** From the usual height up, until every name has room. */
    private static final double[] HEIGHTS_PX = {480, 640, 860, 1200};

    private final FrequencyLinePicture picture;
    private final Heading heading;
    private final TextBlock axisLabel;
    private final double topPx;
    private double plotPx;
    private final Optional<FrequencyPlot> plot;
    private final TextBlock note;

    FrequencyLineDrawing(FrequencyLinePicture picture, String title, Font font) {
        this.picture = picture;
        List<FrequencyPoint> placed = picture.clubs().stream().filter(FrequencyLineDrawing::hasPlace).toList();
        heading = new Heading(title, font, legend(placed));
        axisLabel = TextBlock.of(picture.axisLabel(), Look.TEXT, Look.WIDTH_PX - 2.0 * Look.MARGIN_PX);
        topPx = heading.heightPx() + (placed.isEmpty() ? 0 : axisLabel.heightPx() + 2 * BESIDE_AXIS_PX);
        plot = placed.isEmpty() ? Optional.empty() : Optional.of(laidOut(placed));
        note = TextBlock.of(withoutPlace(), Look.TEXT, Look.WIDTH_PX - 2.0 * Look.MARGIN_PX);
    }

    @Override
    public int heightPx() {
        return (int) Math.ceil(noteY() + note.heightPx() + Look.MARGIN_PX / 2.0);
    }

    @Override
    public void draw(Sheet sheet) {
        heading.draw(sheet);
        plot.ifPresent(field -> {
            field.draw(sheet);
            sheet.part("axis-label", g -> {
                axisLabel.draw(g, Look.INK, Look.MARGIN_PX, topPx - axisLabel.heightPx() - BESIDE_AXIS_PX);
                TextBlock.line("playing length, inches", Look.TEXT).draw(g, Look.INK, PLOT_X, topPx + plotPx + AXIS_PX);
            });
        });
        if (!note.lines().isEmpty()) {
            sheet.part("note", g -> note.draw(g, Look.INK, Look.MARGIN_PX, noteY()));
        }
    }

    private FrequencyPlot laidOut(List<FrequencyPoint> placed) {
        FrequencyPlot field = null;
        for (double height : HEIGHTS_PX) {
            plotPx = height;
            field = new FrequencyPlot(placed,
                new Rectangle2D.Double(PLOT_X, topPx, Look.WIDTH_PX - Look.MARGIN_PX - 16 - PLOT_X, height));
            if (field.unplaced().isEmpty()) {
                break;
            }
        }
        return field;
    }

    private double noteY() {
        return topPx + (plot.isPresent() ? plotPx + AXIS_PX + LABEL_PX : 8);
    }

    private static boolean hasPlace(FrequencyPoint point) {
        return point.isPlaced() || !point.club().built() && point.hasTargetPlace();
    }

    /** The clubs that are not on the picture, each with the reason, and names that found no room on it. */
    private String withoutPlace() {
        List<String> words = new ArrayList<>();
        for (FrequencyPoint point : picture.clubs()) {
            if (!hasPlace(point)) {
                words.add("%s (%s)".formatted(point.club().club(), whyNot(point)));
            }
        }
        String missing = words.isEmpty() ? "" : "Not on the picture: " + String.join(", ", words) + ".";
        List<String> unnamed = plot.map(FrequencyPlot::unplaced).orElse(List.of());
        return unnamed.isEmpty() ? missing
            : (missing + " No room beside the mark for the words: " + String.join("; ", unnamed) + ".").strip();
    }

    private static String whyNot(FrequencyPoint point) {
        if (!point.club().built()) {
            return point.club().target().isEmpty() ? "not built, no target" : "not built, length not known";
        }
        return point.club().value().isEmpty() ? "frequency not known" : "length not known";
    }

    private static Legend legend(List<FrequencyPoint> placed) {
        List<SetPoint> clubs = placed.stream().map(FrequencyPoint::club).toList();
        Legend legend = SetLegend.of(clubs, true);
        Map<String, List<FrequencyPoint>> lines = TargetLine.among(placed);
        if (!lines.isEmpty()) {
            legend.add(44, (g, x, width, y) -> {
                Marks.bandAcross(g, x, x + width, y - 9, y + 9);
                Marks.line(g, Look.INK, Look.DASHED, x, y, x + width, y);
            }, "target line and its tolerance");
        }
        if (placed.stream().anyMatch(point -> point.isPlaced() && point.hasTargetPlace()
            && lines.values().stream().noneMatch(line -> line.contains(point)))) {
            legend.add(28, (g, x, width, y) -> Marks.targetUp(g, x + width / 2, y, y - 9, y + 9), "target of one club");
        }
        SetLegend.addNotBuilt(legend, clubs);
        return legend;
    }
}
