package benchtwin.picture;

import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.font.LineBreakMeasurer;
import java.awt.font.TextAttribute;
import java.text.AttributedString;
import java.util.ArrayList;
import java.util.List;

/**
 * Text broken to a width, so that none is clipped: between words, or inside a word that is wider than the whole line.
 * @param lines  what stands on each line
 * @param font   all in one font
 * @param widthPx the widest line, px
 */
record TextBlock(List<String> lines, Font font, double widthPx) {

    TextBlock {
        lines = List.copyOf(lines);
    }

    static TextBlock of(String text, Font font, double atMostPx) {
        List<String> lines = new ArrayList<>();
        if (!text.isBlank()) {
            AttributedString styled = new AttributedString(text);
            styled.addAttribute(TextAttribute.FONT, font);
            LineBreakMeasurer breaks = new LineBreakMeasurer(styled.getIterator(), Look.MEASURE);
            int from = 0;
            while (from < text.length()) {
                breaks.nextLayout((float) atMostPx);
                lines.add(text.substring(from, breaks.getPosition()).strip());
                from = breaks.getPosition();
            }
        }
        double widest = lines.stream().mapToDouble(line -> widthPx(line, font)).max().orElse(0);
        return new TextBlock(lines, font, widest);
    }

    /** Text known to fit on one line. */
    static TextBlock line(String text, Font font) {
        return new TextBlock(List.of(text), font, widthPx(text, font));
    }

    /** Several texts below each other, each broken to the width by itself. */
    static TextBlock stacked(List<String> texts, Font font, double atMostPx) {
        List<TextBlock> blocks = texts.stream().map(text -> of(text, font, atMostPx)).toList();
        return new TextBlock(blocks.stream().flatMap(block -> block.lines().stream()).toList(), font,
            blocks.stream().mapToDouble(TextBlock::widthPx).max().orElse(0));
    }

    /** As much of a text as fits on one line; what is left out is told by three dots. */
    static String shortened(String text, Font font, double atMostPx) {
        String kept = text;
        while (!kept.isEmpty() && widthPx(kept.equals(text) ? text : kept + "…", font) > atMostPx) {
            kept = kept.substring(0, kept.offsetByCodePoints(kept.length(), -1)).stripTrailing();
        }
        return kept.equals(text) ? text : kept + "…";
    }

    static double widthPx(String text, Font font) {
        return font.getStringBounds(text, Look.MEASURE).getWidth();
    }

    double linePx() {
        return Math.round(font.getSize() * 1.3);
    }

    double heightPx() {
        return lines.size() * linePx();
    }

    /** Draws it to the right of x and below y. */
    void draw(Graphics2D g, Color colour, double x, double topY) {
        g.setPaint(colour);
        g.setFont(font);
        double baseline = topY + font.getSize();
        for (String line : lines) {
            g.drawString(line, (float) x, (float) baseline);
            baseline += linePx();
        }
    }
}
