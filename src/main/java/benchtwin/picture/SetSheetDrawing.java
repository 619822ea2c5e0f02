package benchtwin.picture;

import java.awt.Font;
import java.util.List;

/** Lays the pictures of a set out below each other, a rule between them. */
final class SetSheetDrawing implements Drawing {

    private final TextBlock title;
    private final List<Drawing> drawings;

    SetSheetDrawing(SetSheet sheet) {
        title = TextBlock.of(sheet.title(), Look.LARGE, Look.WIDTH_PX - 2.0 * Look.MARGIN_PX);
        drawings = sheet.pictures().stream().map(picture -> laidOut(picture, heading(picture), Look.STRONG)).toList();
    }

    /** One picture by itself, under its full title. */
    static Drawing alone(SetPicture picture) {
        return laidOut(picture, picture.title(), Look.LARGE);
    }

    /** What a picture shows, as a heading where the player is known. */
    static String heading(SetPicture picture) {
        return Character.toUpperCase(picture.finding().charAt(0)) + picture.finding().substring(1);
    }

    private static Drawing laidOut(SetPicture picture, String title, Font font) {
        if (picture instanceof FrequencyLinePicture frequency) {
            return new FrequencyLineDrawing(frequency, title, font);
        }
        if (picture instanceof SwingPicture swing) {
            return SetRowsDrawing.of(swing, title, font);
        }
        return SetRowsDrawing.of((LoftGapPicture) picture, title, font);
    }

    @Override
    public int heightPx() {
        return titlePx() + drawings.stream().mapToInt(Drawing::heightPx).sum();
    }

    @Override
    public void draw(Sheet sheet) {
        sheet.part("title-line", g -> title.draw(g, Look.INK, Look.MARGIN_PX, Look.MARGIN_PX));
        int y = titlePx();
        for (Drawing drawing : drawings) {
            int topY = y;
            sheet.part("rule", g -> Marks.line(g, Look.QUIET, Look.RULE, Look.MARGIN_PX, topY + 10.5,
                Look.WIDTH_PX - Look.MARGIN_PX, topY + 10.5));
            drawing.draw((name, part) -> sheet.part(name, g -> {
                g.translate(0, topY);
                part.accept(g);
                g.translate(0, -topY);
            }));
            y += drawing.heightPx();
        }
    }

    private int titlePx() {
        return (int) Math.ceil(Look.MARGIN_PX + title.heightPx());
    }
}
