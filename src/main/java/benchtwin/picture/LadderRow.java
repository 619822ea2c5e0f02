package benchtwin.picture;

import java.awt.Graphics2D;
import java.util.Comparator;

/** One rung laid out: names at the left, the move on the axis, the number at the right. */
final class LadderRow {

    static final double NAMES_PX = 256;
    static final double PLOT_X = 308;
    static final double PLOT_PX = 640;
    private static final double NUMBER_X = 976;

    private static final double PAD_PX = 10;
    private static final double WORDS_TO_RUNG_PX = 18;
    private static final double BELOW_RUNG_PX = 28;
    private static final double TARGET_TICK_PX = 15;

    private final Rung rung;
    private final double wantedCpm;
    private final double topPx;
    private final TextBlock tag;
    private final TextBlock model;
    private final TextBlock note;
    private final TextBlock trim;

    LadderRow(Rung rung, double wantedCpm, double topPx) {
        this.rung = rung;
        this.wantedCpm = wantedCpm;
        this.topPx = topPx;
        tag = TextBlock.of(rung.tag(), Look.STRONG, NAMES_PX);
        model = TextBlock.of(rung.model(), Look.TEXT, NAMES_PX);
        note = TextBlock.of(rung.note(), Look.TEXT, NAMES_PX);
        trim = TextBlock.of(rung.trim(), Look.TEXT, PLOT_PX - 2 * PAD_PX);
    }

    double heightPx() {
        double namesPx = 2 * PAD_PX + tag.heightPx() + model.heightPx() + note.heightPx();
        double numberPx = 2 * PAD_PX + 58;
        return Math.max(Math.max(namesPx, numberPx), rungY() - topPx + BELOW_RUNG_PX);
    }

    private double rungY() {
        return topPx + PAD_PX + Math.max(trim.heightPx(), trim.linePx()) + WORDS_TO_RUNG_PX;
    }

    void draw(Sheet sheet, Scale scale, BandEdges band) {
        double y = rungY();
        double trimmedX = scale.px(rung.trimmedCpm());
        sheet.part("names", this::drawNames);
        sheet.part("rung-line", g -> Marks.line(g, Look.QUIET, Look.RULE, PLOT_X, y, PLOT_X + PLOT_PX, y));
        rung.untrimmedCpm().ifPresent(cpm ->
            sheet.part("move", g -> Marks.line(g, Look.ACCENT, Look.MOVE, scale.px(cpm), y, trimmedX, y)));
        if (!trim.lines().isEmpty()) {
            sheet.part("trim", g -> drawTrim(g, scale, band));
        }
        rung.targetCpm().ifPresent(cpm -> sheet.part("rung-target", g -> Marks.line(g, Look.INK, Look.MARK,
            scale.px(cpm), y - TARGET_TICK_PX, scale.px(cpm), y + TARGET_TICK_PX)));
        rung.untrimmedCpm().ifPresent(cpm -> sheet.part("untrimmed-dot", g -> Marks.ring(g, scale.px(cpm), y)));
        sheet.part("whisker", g -> Marks.whiskerAcross(g, scale.px(rung.trimmedCpm() - rung.whiskerCpm()),
            scale.px(rung.trimmedCpm() + rung.whiskerCpm()), y));
        sheet.part("trimmed-dot", g -> Marks.dot(g, trimmedX, y));
        sheet.part("number", this::drawNumber);
    }

    private void drawNames(Graphics2D g) {
        double y = topPx + PAD_PX;
        tag.draw(g, Look.INK, Look.MARGIN_PX, y);
        model.draw(g, Look.INK, Look.MARGIN_PX, y + tag.heightPx());
        note.draw(g, Look.QUIET, Look.MARGIN_PX, y + tag.heightPx() + model.heightPx());
    }

    private void drawNumber(Graphics2D g) {
        String cpm = Words.fixed(rung.trimmedCpm(), 1);
        double y = topPx + PAD_PX;
        TextBlock.line(cpm, Look.LARGE).draw(g, Look.INK, NUMBER_X, y);
        TextBlock.line("cpm", Look.TEXT).draw(g, Look.INK, NUMBER_X + TextBlock.widthPx(cpm, Look.LARGE) + 6, y + 10);
        String sure = "%s off, ± %s".formatted(Words.difference(rung.trimmedCpm() - wantedCpm, 1),
            Words.fixed(rung.whiskerCpm(), 1));
        TextBlock.line(sure, Look.TEXT).draw(g, Look.QUIET, NUMBER_X, y + 36);
    }

    /** The trim's words go over the middle of the move, or as near to it as keeps them off the edges of the band. */
    private void drawTrim(Graphics2D g, Scale scale, BandEdges band) {
        double widthPx = trim.widthPx();
        double toX = scale.px(rung.trimmedCpm());
        double fromX = rung.untrimmedCpm().isPresent() ? scale.px(rung.untrimmedCpm().getAsDouble()) : toX;
        double leastX = PLOT_X + PAD_PX;
        double mostX = PLOT_X + PLOT_PX - PAD_PX - widthPx;
        double middleX = Math.max(leastX, Math.min(mostX, (fromX + toX - widthPx) / 2));
        double x = band.clearOfEdges(middleX, widthPx).filter(place -> place >= leastX && place <= mostX).boxed()
            .min(Comparator.comparingDouble(place -> Math.abs(place - middleX))).orElse(middleX);
        double y = topPx + PAD_PX;
        if (band.touches(x, widthPx)) {
            Marks.clear(g, band.holds(x, widthPx) ? Look.BAND : Look.PAPER, x - 4, y - 1, widthPx + 8, trim.heightPx() + 2);
        }
        trim.draw(g, Look.INK, x, y);
    }
}
