package benchtwin.ticket;

import java.util.ArrayList;
import java.util.List;

/**
 * Text set into a box: in the largest letters of a range in which all of it has room, broken between words. What has no room in
 * the smallest is cut, and three dots say so.
 * @param lines   what stands on each line
 * @param pt      size of the letters, points
 * @param isCut   whether something is left out
 */
record LabelLines(List<String> lines, double pt, boolean isCut) {

    static final double MM_PER_PT = 25.4 / 72;
    /** From line to line, in parts of the letters' size. */
    static final double LINE = 1.2;

    private static final double STEP_PT = 0.5;
    private static final String CUT = "…";

    LabelLines {
        lines = List.copyOf(lines);
    }

    /** A box for text: its size, mm, its letters' weight, and the range of their size, points. */
    record Box(double widthMm, double heightMm, boolean bold, double leastPt, double mostPt) {

        private double ems(double pt) {
            return widthMm / (pt * MM_PER_PT);
        }

        private int rows(double pt) {
            return (int) (heightMm / (pt * MM_PER_PT * LINE));
        }

        private boolean holds(String text, double pt) {
            return Typeface.widthEm(text, bold) <= ems(pt);
        }

        /** As much of it as one line holds, with dots. */
        private String cut(String text, double pt) {
            String kept = text;
            while (!kept.isEmpty() && !holds(kept + CUT, pt)) {
                kept = kept.substring(0, kept.offsetByCodePoints(kept.length(), -1)).stripTrailing();
            }
            return kept + CUT;
        }
    }

    /** One line, never broken. */
    static LabelLines oneLine(String text, Box box) {
        double pt = box.mostPt();
        while (pt > box.leastPt() && (!box.holds(text, pt) || box.rows(pt) < 1)) {
            pt -= STEP_PT;
        }
        boolean whole = box.holds(text, pt);
        return new LabelLines(List.of(whole ? text : box.cut(text, pt)), pt, !whole);
    }

    /** Lines, each begun anew. */
    static LabelLines of(List<String> texts, Box box) {
        for (double pt = box.mostPt(); pt > box.leastPt(); pt -= STEP_PT) {
            LabelLines set = broken(texts, box, pt);
            if (!set.isCut() && set.lines().size() <= box.rows(pt)) {
                return set;
            }
        }
        double pt = box.leastPt();
        LabelLines set = broken(texts, box, pt);
        int room = box.rows(pt);
        if (set.lines().size() <= room) {
            return set;
        }
        List<String> kept = new ArrayList<>(set.lines().subList(0, room));
        if (room > 0) {
            kept.set(room - 1, box.cut(kept.get(room - 1), pt));
        }
        return new LabelLines(kept, pt, true);
    }

    private static LabelLines broken(List<String> texts, Box box, double pt) {
        List<String> lines = new ArrayList<>();
        boolean cut = false;
        for (String text : texts) {
            String line = "";
            for (String word : text.split(" ")) {
                String longer = line.isEmpty() ? word : line + " " + word;
                if (box.holds(longer, pt)) {
                    line = longer;
                    continue;
                }
                if (!line.isEmpty()) {
                    lines.add(line);
                }
                boolean whole = box.holds(word, pt);
                cut |= !whole;
                line = whole ? word : box.cut(word, pt);
            }
            if (!line.isEmpty()) {
                lines.add(line);
            }
        }
        return new LabelLines(lines, pt, cut);
    }
}
