package benchtwin.picture;

import benchtwin.club.AngleReading;
import benchtwin.club.Hand;
import java.awt.geom.Rectangle2D;
import java.util.Optional;

/** One angle laid out: the view it is seen in, its numbers beneath, and its change drawn wider where it changes. */
final class AngleColumn {

    private static final double LABEL_PX = 26;
    private static final double UNDER_GROUND_PX = 36;

    private final AngleChange change;
    private final SketchView view;
    private final AngleReading reading;
    private final double leftX;
    private final double widthPx;
    private final boolean mirrored;
    private final Optional<AngleInset> inset;

    AngleColumn(AngleChange change, SketchView view, HeadSketchPicture picture, double leftX, double widthPx) {
        this.change = change;
        this.view = view;
        this.leftX = leftX;
        this.widthPx = widthPx;
        reading = picture.reading();
        mirrored = picture.hand() == Hand.LEFT;
        inset = change.isChanged() ? Optional.of(new AngleInset(change, view, mirrored)) : Optional.empty();
    }

    /** The largest scale at which the view fits, px a mm. */
    double mostPxPerMm(double heightPx) {
        Rectangle2D room = view.roomMm();
        return Math.min(widthPx / room.getWidth(), heightPx / room.getHeight()) / view.zoom();
    }

    void draw(Sheet sheet, double topY, double viewPx, double pxPerMm) {
        sheet.part("view-name", g -> TextBlock.line(view.title(), Look.STRONG).draw(g, Look.INK, leftX, topY));
        double floorY = topY + LABEL_PX + viewPx;
        view.draw(sheet, SketchScale.centred(view.roomMm(), leftX + widthPx / 2, floorY, pxPerMm * view.zoom(), mirrored));
        double y = floorY + UNDER_GROUND_PX;
        sheet.part("angle", g -> {
            TextBlock.line(HeadSketchWords.heading(change, reading), Look.STRONG).draw(g, Look.INK, leftX, y);
            if (!change.isMeasured()) {
                TextBlock.line("not measured", Look.TEXT).draw(g, Look.INK, leftX, y + LABEL_PX);
                TextBlock.line("drawn at " + AngleChange.degrees(change.standInDeg()), Look.TEXT)
                    .draw(g, Look.QUIET, leftX, y + 2 * LABEL_PX);
                return;
            }
            TextBlock.line(AngleChange.degrees(change.drawnDeg()), Look.LARGE).draw(g, Look.INK, leftX, y + LABEL_PX);
            TextBlock.line(was(), Look.TEXT).draw(g, Look.QUIET, leftX, y + LABEL_PX + 38);
            if (change.isChanged()) {
                TextBlock.line(change.differenceText(), Look.STRONG).draw(g, Look.ACCENT, leftX, y + 2 * LABEL_PX + 38);
            }
        });
        inset.ifPresent(drawn -> sheet.part("wider", g -> {
            double x = leftX + widthPx - AngleInset.WIDTH_PX - 8;
            drawn.draw(g, x, y);
            TextBlock words = TextBlock.line(drawn.words(), Look.TEXT);
            words.draw(g, Look.QUIET, leftX + widthPx - words.widthPx(), y + AngleInset.HEIGHT_PX + 4);
        }));
    }

    private String was() {
        if (change.afterDeg().isEmpty()) {
            return "afterwards not known";
        }
        if (change.beforeDeg().isEmpty()) {
            return "before not measured";
        }
        return change.isChanged() ? "was " + AngleChange.degrees(change.drawnBeforeDeg()) : "stays";
    }

    /** Everything beneath the views, px. */
    static double underPx() {
        return LABEL_PX + UNDER_GROUND_PX + AngleInset.HEIGHT_PX + 30;
    }
}
