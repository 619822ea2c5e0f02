package benchtwin.picture;

import java.awt.Graphics2D;
import java.util.stream.DoubleStream;

/** One club of a set laid out: its name at the left, its strip on the axis, its numbers at the right. */
final class SetRow {

    static final double PLOT_X = 264;
    static final double PLOT_PX = 536;

    private static final double NAME_PX = 212;
    private static final double NUMBER_X = 824;
    private static final double REST_X = 904;
    private static final double END_X = Look.WIDTH_PX - Look.MARGIN_PX;
    private static final double PAD_PX = 6;

    private final SetPoint club;
    private final SetWords words;
    private final double topPx;
    private final double leastPx;
    private final TextBlock name;
    private final TextBlock number;
    private final TextBlock rest;

    SetRow(SetPoint club, SetWords words, double topPx, double leastPx) {
        this.club = club;
        this.words = words;
        this.topPx = topPx;
        this.leastPx = leastPx;
        name = TextBlock.of(club.club(), Look.STRONG, NAME_PX);
        number = TextBlock.of(club.value().isPresent() ? words.bare(club.value().getAsDouble()) : "", Look.STRONG,
            REST_X - NUMBER_X);
        rest = TextBlock.of(restOfTheNumbers(), Look.TEXT, END_X - restX());
    }

    double heightPx() {
        return Math.max(leastPx, 2 * PAD_PX + Math.max(name.heightPx(), rest.heightPx()));
    }

    double bottomPx() {
        return topPx + heightPx();
    }

    /** Where its marks stand. */
    double middleY() {
        return topPx + heightPx() / 2;
    }

    /** From the leftmost to the rightmost of its marks. */
    DoubleStream reachPx(Scale scale) {
        return DoubleStream.concat(
            DoubleStream.concat(club.value().stream(), club.target().stream().mapToDouble(SetTarget::value))
                .map(scale::px).flatMap(x -> DoubleStream.of(x - Marks.REACH_PX, x + Marks.REACH_PX)),
            club.reach().map(scale::px));
    }

    void drawWords(Sheet sheet) {
        sheet.part("club-name", g -> name.draw(g, Look.INK, Look.MARGIN_PX, middleY() - name.heightPx() / 2));
        sheet.part("number", g -> {
            number.draw(g, Look.INK, NUMBER_X, middleY() - number.heightPx() / 2);
            rest.draw(g, club.side() == 0 ? Look.QUIET : Look.INK, restX(), middleY() - rest.heightPx() / 2);
        });
    }

    void drawStrip(Sheet sheet) {
        double y = middleY();
        sheet.part("row-line", g -> Marks.line(g, Look.QUIET, Look.RULE, PLOT_X, y, PLOT_X + PLOT_PX, y));
    }

    void drawMarks(Sheet sheet, Scale scale) {
        double y = middleY();
        club.target().ifPresent(target -> {
            sheet.part("band", g -> Marks.band(g, scale.px(target.low()), scale.px(target.high()), y - 10, y + 10));
            if (club.built()) {
                sheet.part("target", g -> Marks.line(g, Look.INK, Look.MARK, scale.px(target.value()),
                    y - Marks.TARGET_TICK_PX, scale.px(target.value()), y + Marks.TARGET_TICK_PX));
            } else {
                sheet.part("not-built", g -> Marks.openDiamond(g, scale.px(target.value()), y));
            }
        });
        club.value().ifPresent(value -> {
            if (club.standardUncertainty() > 0) {
                sheet.part("whisker", g -> Marks.whiskerAcross(g, scale.px(value - club.whisker()),
                    scale.px(value + club.whisker()), y));
            }
            sheet.part(club.side() == 0 ? "dot" : "arrow", g -> drawValue(g, scale.px(value), y));
        });
    }

    private void drawValue(Graphics2D g, double x, double y) {
        if (club.side() == 0) {
            Marks.dot(g, x, y);
        } else {
            Marks.arrow(g, x, y, club.side(), 0);
        }
    }

    private double restX() {
        return club.value().isPresent() ? Math.max(REST_X, NUMBER_X + number.widthPx() + 8) : NUMBER_X;
    }

    private String restOfTheNumbers() {
        if (club.value().isEmpty()) {
            return (club.built() ? words.name() + " not known" : "not built")
                + club.target().map(target -> "; target " + words.bare(target.value())).orElse("");
        }
        String sure = club.standardUncertainty() > 0 ? ", ± " + words.size(club.whisker()) : "";
        if (club.target().isEmpty()) {
            return "no target" + sure;
        }
        return words.difference(club.off()) + " off" + sure + (club.side() == 0 ? "" : ": " + SetWords.tooFar(club.side()));
    }
}
