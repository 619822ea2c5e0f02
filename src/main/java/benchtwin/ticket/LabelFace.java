package benchtwin.ticket;

import benchtwin.picture.QrCode;
import java.util.List;

/**
 * One label laid out: the code at the right, the tag large at the left, what it is beneath.
 * @param code    the code, drawn
 * @param codeMm  its side with the quiet zone, mm
 * @param tag     the tag
 * @param lines   what it is
 * @param textMm  from the label's edges to the text, mm
 * @param tagMm   height the tag takes, mm
 * @param moduleMm one module of the code, mm
 */
record LabelFace(String code, double codeMm, LabelLines tag, LabelLines lines, double textMm, double tagMm, double moduleMm) {

    /** What phones and hand scanners read without trouble, mm a module. Memory. */
    static final double READABLE_MODULE_MM = 0.33;

    private static final double CODE_MM = 24;
    /** The share of a label's width the code takes, and may take where it would be too fine to read. */
    private static final double CODE_PART = 0.42;
    private static final double MOST_CODE_PART = 0.6;
    private static final double CODE_EDGE_MM = 0.7;
    private static final double EDGE_PART = 0.08;
    private static final double MOST_EDGE_MM = 2.5;
    /** The share of the height the tag may take: the largest that leaves the rest room. */
    private static final double[] TAG_PARTS = {0.4, 0.33, 0.27, 0.22};
    /** Sizes of letters, points; smaller ones nobody reads at a drawer. Ours. */
    private static final double MOST_TAG_PT = 20;
    private static final double LEAST_TAG_PT = 7;
    private static final double MOST_PT = 9;
    private static final double LEAST_PT = 5.5;

    static LabelFace of(Label label, LabelSheet sheet, PaperText text) {
        QrCode code = QrCode.of(label.tag());
        double highest = sheet.heightMm() - 2 * CODE_EDGE_MM;
        double usual = Math.min(Math.min(highest, CODE_MM), CODE_PART * sheet.widthMm());
        double needed = READABLE_MODULE_MM * code.sideModules();
        double codeMm = Math.max(usual, Math.min(needed, Math.min(highest, MOST_CODE_PART * sheet.widthMm())));
        double textMm = Math.min(MOST_EDGE_MM, EDGE_PART * sheet.heightMm());
        double widthMm = sheet.widthMm() - codeMm - CODE_EDGE_MM - textMm;
        double heightMm = sheet.heightMm() - 2 * textMm;
        String tagText = text.show("tag", label.tag());
        List<String> texts = label.lines().stream().map(line -> text.show("label " + label.tag(), line)).toList();
        LabelFace face = null;
        for (double part : TAG_PARTS) {
            LabelLines tag = LabelLines.oneLine(tagText, new LabelLines.Box(widthMm, heightMm * part, true, LEAST_TAG_PT, MOST_TAG_PT));
            double tagMm = tag.pt() * LabelLines.MM_PER_PT * LabelLines.LINE;
            LabelLines lines = LabelLines.of(texts, new LabelLines.Box(widthMm, heightMm - tagMm, false, LEAST_PT, MOST_PT));
            face = new LabelFace(code.svg(codeMm), codeMm, tag, lines, textMm, tagMm, codeMm / code.sideModules());
            if (!lines.isCut()) {
                break;
            }
        }
        return face;
    }

    boolean isCut() {
        return tag.isCut() || lines.isCut();
    }

    boolean isTooFine() {
        return moduleMm < READABLE_MODULE_MM - 1e-9;
    }

    /** From the label's left edge, mm. */
    double codeXMm(LabelSheet sheet) {
        return sheet.widthMm() - codeMm - CODE_EDGE_MM;
    }

    /** From the label's upper edge, mm. */
    double codeYMm(LabelSheet sheet) {
        return (sheet.heightMm() - codeMm) / 2;
    }

    /** The lines' size as a style sheet writes it. */
    static String style(LabelLines lines, double xMm, double yMm) {
        return "left:%smm;top:%smm;font-size:%spt".formatted(LabelPage.mm(xMm), LabelPage.mm(yMm), LabelPage.mm(lines.pt()));
    }

    /** All lines, for a loop. */
    List<String> texts() {
        return lines.lines();
    }

    /** How far down a line stands, mm. */
    double lineYMm(int line) {
        return textMm + tagMm + line * lines.pt() * LabelLines.MM_PER_PT * LabelLines.LINE;
    }
}
