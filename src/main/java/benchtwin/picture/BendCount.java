package benchtwin.picture;

import java.util.List;

/**
 * How many bends heads took by one habit.
 * @param habit  what it is called
 * @param note   what else came of it, such as {@code 6.6 % past the far end}
 * @param shares of heads that took 1 bend, 2 and so on; the last of them that many or more; 0 to 1, together about 1
 * @param meanBends bends a head on average
 */
public record BendCount(String habit, String note, List<Double> shares, double meanBends) {

    /** Allows for rounding, and for heads that were right before the first bend. */
    private static final double ABOUT_ALL = 1e-6;

    public BendCount {
        habit = Words.required("habit", habit);
        note = Words.printable(note);
        shares = List.copyOf(shares);
        Words.notNegative("a mean", meanBends);
        if (shares.isEmpty() || shares.stream().anyMatch(share -> !(share >= 0 && share <= 1))
            || shares.stream().mapToDouble(Double::doubleValue).sum() > 1 + ABOUT_ALL) {
            throw new IllegalArgumentException("shares %s: expected each from 0 to 1, and no more than 1 in all".formatted(shares));
        }
    }
}
