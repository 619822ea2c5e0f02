package benchtwin.web;

import java.util.Locale;

/** Numbers that are no quantity of a club, as a page shows them. */
public final class NumberText {

    private NumberText() {
    }

    /**
     * A value with as many decimals as it is worth.
     * @param value    the value
     * @param decimals 0 or more
     * @return text
     */
    public static String fixed(double value, int decimals) {
        return String.format(Locale.ROOT, "%." + decimals + "f", value).replace('-', '−');
    }

    /**
     * A value whose unit stands in its name.
     * @param value the value
     * @return text with two decimals
     */
    public static String plain(double value) {
        return fixed(value, 2);
    }
}
