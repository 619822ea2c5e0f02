package benchtwin.ticket;

import benchtwin.club.Word;

/**
 * Sheets of labels as stationers sell them, named for paper, columns and rows. Sizes and margins: common practice, no source;
 * a trial on plain paper with the outlines drawn shows whether a sheet is one of these.
 */
public enum LabelSheet implements Word {
    /** 14 of 99.1 × 38.1 mm. */
    A4_2X7("a4-2x7", Paper.A4, 2, 7, 99.1, 38.1, 4.65, 15.15, 101.6, 38.1),
    /** 21 of 63.5 × 38.1 mm. */
    A4_3X7("a4-3x7", Paper.A4, 3, 7, 63.5, 38.1, 7.2, 15.15, 66.05, 38.1),
    /** 24 of 70 × 37 mm, edge to edge. */
    A4_3X8("a4-3x8", Paper.A4, 3, 8, 70, 37, 0, 0.5, 70, 37),
    /** 40 of 48.5 × 25.4 mm. */
    A4_4X10("a4-4x10", Paper.A4, 4, 10, 48.5, 25.4, 8, 21.5, 48.5, 25.4),
    /** 65 of 38.1 × 21.2 mm. */
    A4_5X13("a4-5x13", Paper.A4, 5, 13, 38.1, 21.2, 4.75, 10.7, 40.6, 21.2),
    /** 20 of 4 × 1 in. */
    LETTER_2X10("letter-2x10", Paper.LETTER, 2, 10, 101.6, 25.4, 3.97, 12.7, 106.36, 25.4),
    /** 30 of 2 5/8 × 1 in. */
    LETTER_3X10("letter-3x10", Paper.LETTER, 3, 10, 66.675, 25.4, 4.76, 12.7, 69.85, 25.4),
    /** 80 of 1 3/4 × 1/2 in. */
    LETTER_4X20("letter-4x20", Paper.LETTER, 4, 20, 44.45, 12.7, 7.14, 12.7, 52.39, 12.7);

    private final String word;
    private final Paper paper;
    private final int columns;
    private final int rows;
    private final double widthMm;
    private final double heightMm;
    private final double leftMm;
    private final double topMm;
    private final double acrossMm;
    private final double downMm;

    LabelSheet(String word, Paper paper, int columns, int rows, double widthMm, double heightMm, double leftMm, double topMm,
               double acrossMm, double downMm) {
        this.word = word;
        this.paper = paper;
        this.columns = columns;
        this.rows = rows;
        this.widthMm = widthMm;
        this.heightMm = heightMm;
        this.leftMm = leftMm;
        this.topMm = topMm;
        this.acrossMm = acrossMm;
        this.downMm = downMm;
    }

    @Override
    public String word() {
        return word;
    }

    /**
     * What it is printed on.
     * @return the paper
     */
    public Paper paper() {
        return paper;
    }

    /**
     * How many labels are on it.
     * @return at least one
     */
    public int count() {
        return columns * rows;
    }

    /**
     * How wide one is.
     * @return mm
     */
    public double widthMm() {
        return widthMm;
    }

    /**
     * How high one is.
     * @return mm
     */
    public double heightMm() {
        return heightMm;
    }

    /**
     * Where a label begins; they are counted along the rows.
     * @param index 0 for the first
     * @return mm from the paper's left edge
     */
    public double xMm(int index) {
        return leftMm + index % columns * acrossMm;
    }

    /**
     * Where a label begins.
     * @param index 0 for the first
     * @return mm from the paper's upper edge
     */
    public double yMm(int index) {
        return topMm + index / columns * downMm;
    }
}
