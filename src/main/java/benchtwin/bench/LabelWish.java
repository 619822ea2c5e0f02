package benchtwin.bench;

import benchtwin.ticket.LabelPage;
import benchtwin.ticket.LabelSheet;
import java.util.Arrays;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * How labels are to be printed, as it was typed.
 * @param sheet    the sheet's name
 * @param from     the label of the first sheet to begin with, 1 for the first
 * @param copies   how many of each
 * @param outlines whether every label's edge is drawn
 * @param shift    millimetres to the right and down, with a comma between them
 */
public record LabelWish(String sheet, int from, int copies, boolean outlines, Optional<String> shift) {

    /** The sheet that is taken when none is named. */
    public static final LabelSheet USUAL_SHEET = LabelSheet.A4_3X7;
    private static final Pattern SHIFT = Pattern.compile("([+-]?\\d+(?:\\.\\d+)?),([+-]?\\d+(?:\\.\\d+)?)");
    private static final double MOST_SHIFT_MM = 20;
    private static final int MOST_COPIES = 100;

    /**
     * What it comes to.
     * @return how they are printed
     * @throws BadInput naming what cannot be, by its name here
     */
    public LabelPage.Print print() throws BadInput {
        if (copies < 1 || copies > MOST_COPIES) {
            throw new BadInput("copies %d: expected 1 to %d".formatted(copies, MOST_COPIES));
        }
        LabelSheet on = Arrays.stream(LabelSheet.values()).filter(one -> one.word().equalsIgnoreCase(sheet.strip())).findFirst()
            .orElseThrow(() -> new BadInput("sheet \"%s\" is not known; expected one of %s".formatted(sheet,
                String.join(", ", Arrays.stream(LabelSheet.values()).map(LabelSheet::word).toList()))));
        if (from < 1 || from > on.count()) {
            throw new BadInput("from %d: a sheet %s has labels 1 to %d".formatted(from, on.word(), on.count()));
        }
        if (shift.isEmpty()) {
            return new LabelPage.Print(on, from, outlines, 0, 0);
        }
        Matcher two = SHIFT.matcher(shift.get().replace(" ", ""));
        if (!two.matches() || Math.abs(Double.parseDouble(two.group(1))) > MOST_SHIFT_MM
            || Math.abs(Double.parseDouble(two.group(2))) > MOST_SHIFT_MM) {
            throw new BadInput("shift \"%s\": expected millimetres to the right and down, at most 20, such as 1.5,-0.5"
                .formatted(shift.get()));
        }
        return new LabelPage.Print(on, from, outlines, Double.parseDouble(two.group(1)), Double.parseDouble(two.group(2)));
    }
}
