package benchtwin.club;

/**
 * That a value of an entry was put right, or taken back, later.
 * @param quantity what it is a value of
 * @param was      what stood there before, in the quantity's unit, finite
 * @param entered  when it was put right
 * @param why      the reason, in words; may be empty
 */
public record ValueCorrection(Quantity quantity, double was, BenchTime entered, String why) {

    public ValueCorrection {
        if (!Double.isFinite(was)) {
            throw new IllegalArgumentException(
                "a corrected %s must be a finite number, not %s".formatted(quantity.word(), was));
        }
        why = why.strip();
    }
}
