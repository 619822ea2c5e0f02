package benchtwin.picture;

import java.awt.Font;

/** The top of a picture: what to see, and what the marks mean. */
final class Heading {

    private static final double GAP_PX = 10;

    private final TextBlock title;
    private final Legend legend;

    Heading(String title, Legend legend) {
        this(title, Look.LARGE, legend);
    }

    Heading(String title, Font font, Legend legend) {
        this.title = TextBlock.of(title, font, Look.WIDTH_PX - 2.0 * Look.MARGIN_PX);
        this.legend = legend;
    }

    /** From the top of the sheet. */
    double heightPx() {
        return Look.MARGIN_PX + title.heightPx() + GAP_PX + legend.heightPx();
    }

    void draw(Sheet sheet) {
        sheet.part("title-line", g -> title.draw(g, Look.INK, Look.MARGIN_PX, Look.MARGIN_PX));
        sheet.part("legend", g -> legend.draw(g, Look.MARGIN_PX + title.heightPx() + GAP_PX));
    }
}
