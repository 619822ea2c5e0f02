package benchtwin.web;

import java.util.List;

/**
 * The numbers of an option, before and after.
 * @param before headings of what stands before the outcome
 * @param after  heading of the outcome
 * @param moves  heading of the difference
 * @param rows   in showing order
 */
public record NumberTable(List<String> before, String after, String moves, List<Row> rows) {

    /**
     * One quantity.
     * @param name       what it is called
     * @param word       what an address calls it
     * @param before     what stands before the outcome, one text a heading; empty for nothing
     * @param after      the outcome; empty when it cannot be computed
     * @param strip      where it stands; null for a quantity without a target
     * @param difference the difference
     * @param mark       a word behind it; empty for none
     */
    public record Row(String name, String word, List<String> before, String after, Strip strip, String difference, String mark) {
    }
}
