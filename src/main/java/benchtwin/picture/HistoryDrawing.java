package benchtwin.picture;

import benchtwin.club.BenchTime;
import benchtwin.club.Quantity;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** Lays a history out: heading and legend, what was done, a strip a quantity, the axis of time, and the list if there is one. */
final class HistoryDrawing implements Drawing {

    private static final double ABOVE_PX = 16;
    private static final double AFTER_LINE_PX = 26;
    private static final double LEGEND_NAME_PX = 620;

    private final HistoryPicture picture;
    private final Heading heading;
    private final Optional<TimeScale> time;
    private final Optional<InterventionLine> done;
    private final List<HistoryRow> rows = new ArrayList<>();
    private final double axisY;
    private final TextBlock axisLabel;
    private final Optional<NumberedList> list;

    HistoryDrawing(HistoryPicture picture) {
        this.picture = picture;
        heading = new Heading(picture.title(), legend());
        List<BenchTime> times = picture.times();
        time = times.isEmpty() ? Optional.empty()
            : Optional.of(new TimeScale(times, HistoryRow.PLOT_X, HistoryRow.PLOT_END_X));
        HistoryDates dates = times.isEmpty() ? HistoryDates.NONE : new HistoryDates(times.get(0), times.get(times.size() - 1));
        double y = heading.heightPx() + ABOVE_PX;
        done = picture.interventions().isEmpty() ? Optional.empty()
            : Optional.of(new InterventionLine(picture.interventions(), time.orElseThrow(), dates, y));
        y = done.map(line -> line.lineY() + AFTER_LINE_PX).orElse(y);
        List<String> gauges = picture.otherGauges();
        for (Map.Entry<Quantity, HistoryStrip> entry : picture.strips().entrySet()) {
            HistoryRow row = new HistoryRow(entry.getKey(), entry.getValue(), gauges, time, dates, y);
            rows.add(row);
            y = row.bottomPx();
        }
        axisY = y;
        axisLabel = TextBlock.of(times.isEmpty() ? "" : (times.stream().anyMatch(BenchTime::hasTime)
            ? "time by the clock at the bench, " : "date, ") + dates.span(), Look.TEXT,
            Look.WIDTH_PX - Look.MARGIN_PX - HistoryRow.PLOT_X);
        list = done.filter(InterventionLine::isNumbered)
            .map(line -> new NumberedList(picture.interventions(), axisLabelY() + axisLabel.heightPx() + ABOVE_PX));
    }

    private double axisLabelY() {
        return axisY + time.map(TimeScale::heightPx).orElse(0.0) + 6;
    }

    @Override
    public int heightPx() {
        return (int) Math.ceil(list.map(NumberedList::bottomPx).orElse(axisLabelY() + axisLabel.heightPx()) + Look.MARGIN_PX / 2.0);
    }

    @Override
    public void draw(Sheet sheet) {
        heading.draw(sheet);
        rows.forEach(row -> row.drawGround(sheet));
        done.ifPresent(line -> {
            line.drawTicks(sheet, axisY);
            line.drawWords(sheet);
        });
        rows.forEach(row -> row.draw(sheet));
        time.ifPresent(scale -> scale.draw(sheet, axisY));
        sheet.part("axis-label", g -> axisLabel.draw(g, Look.INK, HistoryRow.PLOT_X, axisLabelY()));
        list.ifPresent(words -> words.draw(sheet));
    }

    private Legend legend() {
        Legend legend = new Legend();
        List<HistoryReading> all = picture.strips().values().stream().flatMap(strip -> strip.readings().stream()).toList();
        List<HistoryReading> standing = all.stream().filter(reading -> !reading.superseded()).toList();
        if (standing.stream().anyMatch(reading -> reading.otherGauge().isEmpty())) {
            boolean whiskers = standing.stream().anyMatch(reading -> reading.standardUncertainty() > 0);
            legend.add(14, (g, x, width, y) -> {
                if (whiskers) {
                    Marks.whiskerUp(g, x + width / 2, y - 12, y + 12);
                }
                Marks.dot(g, x + width / 2, y);
            }, whiskers ? "read, ± 2 standard uncertainties" : "read");
        }
        addGauges(legend);
        if (picture.strips().values().stream().anyMatch(strip -> strip.target().isPresent())) {
            legend.add(30, (g, x, width, y) -> {
                Marks.bandAcross(g, x, x + width, y - 9, y + 9);
                Marks.line(g, Look.INK, Look.DASHED, x, y, x + width, y);
            }, "target and its tolerance");
        }
        if (all.stream().anyMatch(HistoryReading::superseded)) {
            legend.add(16, (g, x, width, y) -> HistoryMark.crossedOut(g, x + width / 2, y, Look.DOT_RADIUS_PX), "superseded");
        }
        if (picture.strips().values().stream().anyMatch(HistoryStrip::reachesOff)) {
            legend.add(16, (g, x, width, y) -> Marks.arrow(g, x + width / 2, y + 3, 0, -1), "off the strip, with its number");
        }
        return legend;
    }

    private void addGauges(Legend legend) {
        List<String> gauges = picture.otherGauges();
        for (HistoryMark mark : HistoryMark.values()) {
            String names = gauges.stream().filter(gauge -> HistoryMark.ofOther(gauges.indexOf(gauge)) == mark)
                .collect(Collectors.joining(", "));
            if (!names.isEmpty()) {
                legend.add(16, (g, x, width, y) -> mark.draw(g, x + width / 2, y, Look.DOT_RADIUS_PX),
                    TextBlock.shortened("read on " + names, Look.TEXT, LEGEND_NAME_PX));
            }
        }
    }
}
