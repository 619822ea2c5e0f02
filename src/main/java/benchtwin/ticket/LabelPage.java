package benchtwin.ticket;

import benchtwin.measure.PlainNumber;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Labels on sheets of labels, as PDF. */
public final class LabelPage {

    /**
     * How they are printed.
     * @param sheet    on which sheets
     * @param from     the label of the first sheet to begin with, 1 for the first
     * @param outlines whether every label's edge is drawn, for a trial on plain paper
     * @param rightMm  how far everything is moved to the right, for a printer that feeds askew, mm
     * @param downMm   how far it is moved down, mm
     */
    public record Print(LabelSheet sheet, int from, boolean outlines, double rightMm, double downMm) {

        /**
         * Checks it.
         * @throws IllegalArgumentException when the sheet has no such label
         */
        public Print {
            if (from < 1 || from > sheet.count()) {
                throw new IllegalArgumentException("label %d: the sheet has %d".formatted(from, sheet.count()));
            }
        }
    }

    /**
     * A finished file.
     * @param bytes   a PDF
     * @param sheets  how many sheets of labels it takes
     * @param next    the first label left on the last sheet; one past the sheet's last when it is used up
     * @param remarks what somebody should know before it is printed
     */
    public record File(byte[] bytes, int sheets, int next, List<String> remarks) {
    }

    /** A label in its place. */
    record Placed(LabelFace face, double xMm, double yMm) {
    }

    /** Keeps a full sheet from running over onto the next by rounding. */
    private static final double SPARE_MM = 0.1;

    private LabelPage() {
    }

    /**
     * Prints labels.
     * @param labels in their order, at least one
     * @param print  how
     * @param made   when, by the clock at the bench
     * @return the file
     */
    public static File pdf(List<Label> labels, Print print, LocalDateTime made) {
        PaperText text = PaperText.forPrint();
        LabelSheet sheet = print.sheet();
        List<List<Placed>> sheets = new ArrayList<>();
        List<String> cut = new ArrayList<>();
        List<String> tooFine = new ArrayList<>();
        for (int i = 0; i < labels.size(); i++) {
            int place = print.from() - 1 + i;
            if (place / sheet.count() == sheets.size()) {
                sheets.add(new ArrayList<>());
            }
            LabelFace face = LabelFace.of(labels.get(i), sheet, text);
            sheets.get(place / sheet.count()).add(new Placed(face, sheet.xMm(place % sheet.count()) + print.rightMm(),
                sheet.yMm(place % sheet.count()) + print.downMm()));
            if (face.isCut()) {
                cut.add(labels.get(i).tag());
            }
            if (face.isTooFine()) {
                tooFine.add("%s (%s mm)".formatted(labels.get(i).tag(), PlainNumber.text(Math.floor(face.moduleMm() * 100) / 100)));
            }
        }
        String page = Templates.filled("labels.jte", Map.of("sheets", sheets, "print", print));
        Pdf pdf = Pdf.of(page, new Pdf.About("Labels", made));
        int used = print.from() - 1 + labels.size();
        return new File(pdf.bytes(), sheets.size(), (used - 1) % sheet.count() + 2, remarks(cut, tooFine, text));
    }

    private static List<String> remarks(List<String> cut, List<String> tooFine, PaperText text) {
        List<String> remarks = new ArrayList<>();
        if (!tooFine.isEmpty()) {
            remarks.add("the code is finer than the %s mm a module that a phone reads without trouble: %s; larger labels or shorter "
                .formatted(PlainNumber.text(LabelFace.READABLE_MODULE_MM), some(tooFine)) + "tags help");
        }
        if (!cut.isEmpty()) {
            remarks.add("text was cut, three dots show where: " + some(cut));
        }
        if (!text.replaced().isEmpty()) {
            remarks.add("%s stands for characters there are no letters for: %s".formatted(PaperText.REPLACEMENT,
                some(text.replaced())));
        }
        return remarks;
    }

    private static final int SHOWN_AT_MOST = 6;

    private static String some(List<String> all) {
        return String.join(", ", all.subList(0, Math.min(all.size(), SHOWN_AT_MOST)))
            + (all.size() > SHOWN_AT_MOST ? " and %d more".formatted(all.size() - SHOWN_AT_MOST) : "");
    }

    /** The style sheet: black on white, everything at its own place. */
    static String styles(LabelSheet sheet) {
        String width = mm(sheet.paper().widthMm());
        return """
            @page { size: %1$smm %2$smm; margin: 0; }
            * { margin: 0; padding: 0; }
            body { font-family: "DejaVu Sans"; color: #000; background: #fff; }
            .sheet { position: relative; width: %1$smm; height: %3$smm; overflow: hidden; }
            .more { page-break-after: always; }
            .label, .outline, .line, .code { position: absolute; }
            .label { overflow: hidden; }
            .outline { border: 0.2mm solid #000; }
            .line { white-space: nowrap; line-height: %4$s; }
            .tag { font-weight: bold; }
            .code svg { display: block; }
            """.formatted(width, mm(sheet.paper().heightMm()), mm(sheet.paper().heightMm() - SPARE_MM), mm(LabelLines.LINE));
    }

    /** A box for a style sheet. */
    static String place(double xMm, double yMm, double widthMm, double heightMm) {
        return "left:%smm;top:%smm;width:%smm;height:%smm".formatted(mm(xMm), mm(yMm), mm(widthMm), mm(heightMm));
    }

    /** A number for a style sheet. */
    static String mm(double value) {
        return PlainNumber.text(Math.round(value * 1000) / 1000.0);
    }
}
