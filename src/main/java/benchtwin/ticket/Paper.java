package benchtwin.ticket;

import benchtwin.club.Word;

/** Sizes of paper. */
public enum Paper implements Word {
    /** 210 × 297 mm, published: ISO 216. */
    A4("a4", 210, 297),
    /** 8½ × 11 in, published: ANSI/ASME Y14.1, size A. */
    LETTER("letter", 215.9, 279.4);

    private final String word;
    private final double widthMm;
    private final double heightMm;

    Paper(String word, double widthMm, double heightMm) {
        this.word = word;
        this.widthMm = widthMm;
        this.heightMm = heightMm;
    }

    @Override
    public String word() {
        return word;
    }

    /**
     * Its short side.
     * @return mm
     */
    public double widthMm() {
        return widthMm;
    }

    /**
     * Its long side.
     * @return mm
     */
    public double heightMm() {
        return heightMm;
    }
}
