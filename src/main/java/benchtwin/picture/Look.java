package benchtwin.picture;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.font.FontRenderContext;

/** Colours, sizes and rules that all pictures share. Every pair in use is held to WCAG 2.2 AA by a test. */
final class Look {

    static final int WIDTH_PX = 1200;
    static final int MARGIN_PX = 32;

    static final Color PAPER = new Color(0xFBFAF7);
    static final Color INK = new Color(0x1C1B19);
    /** Secondary text and rules; never on the band. */
    static final Color QUIET = new Color(0x5E5A54);
    static final Color ACCENT = new Color(0x0B6259);
    static final Color BAND = new Color(0xD5E5E1);
    /** Out of tolerance; a shape says it too. */
    static final Color STOP = new Color(0x9B2117);

    static final Font TEXT = new Font(Font.SANS_SERIF, Font.PLAIN, 18);
    static final Font STRONG = new Font(Font.SANS_SERIF, Font.BOLD, 18);
    static final Font LARGE = new Font(Font.SANS_SERIF, Font.PLAIN, 28);

    /** What an SVG asks for in place of Java's own font name: whatever the reader's system writes in. */
    static final String FONT_STACK = "system-ui, \"Segoe UI\", \"Liberation Sans\", \"DejaVu Sans\", sans-serif";

    static final BasicStroke RULE = stroke(1);
    static final BasicStroke MARK = stroke(2);
    static final BasicStroke MOVE = stroke(3);
    static final BasicStroke DASHED =
        new BasicStroke(1, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 10, new float[] {6, 4}, 0);

    static final double DOT_RADIUS_PX = 6;
    static final double RING_RADIUS_PX = 9;

    /** Text is measured the same way for every form of picture, so that one layout serves all. */
    static final FontRenderContext MEASURE = new FontRenderContext(null, true, true);

    private Look() {
    }

    private static BasicStroke stroke(float widthPx) {
        return new BasicStroke(widthPx, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER);
    }
}
