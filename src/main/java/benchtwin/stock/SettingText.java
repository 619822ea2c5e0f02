package benchtwin.stock;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A sleeve setting as a cell holds it. Two rings are written outer/inner; because spreadsheets turn {@code 3/5} into a
 * date, {@code 3+5} and {@code 3|5} are taken for the same.
 */
final class SettingText {

    private static final Pattern TWO_RINGS = Pattern.compile("(\\d{1,3})\\s*[/+|]\\s*(\\d{1,3})");

    private SettingText() {
    }

    /** The setting's label: {@code 3/5} for any way of writing two rings, any other text as it stands. */
    static String of(String cell) {
        if (cell.length() < 3) {   // one ring, and most settings are
            return cell;
        }
        Matcher matcher = TWO_RINGS.matcher(cell);
        return matcher.matches() ? matcher.group(1) + "/" + matcher.group(2) : cell;
    }
}
