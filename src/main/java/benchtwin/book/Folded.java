package benchtwin.book;

import java.text.Normalizer;
import java.util.Locale;
import java.util.regex.Pattern;

/** Tags as they are looked up: {@code h-014} finds {@code H-014}, and full-width letters find plain ones. */
final class Folded {

    private static final Pattern MARKS = Pattern.compile("\\p{M}+");
    private static final Pattern SPACES = Pattern.compile("\\s+");

    private Folded() {
    }

    static String of(String tag) {
        String plain = isPlain(tag) ? tag : MARKS.matcher(Normalizer.normalize(tag, Normalizer.Form.NFKD)).replaceAll("");
        String small = plain.toUpperCase(Locale.ROOT).toLowerCase(Locale.ROOT).strip();
        return small.indexOf(' ') < 0 && isPlain(small) ? small : SPACES.matcher(small).replaceAll(" ");
    }

    /** Whether it holds nothing that could be written otherwise, and no space but the common one. */
    private static boolean isPlain(String tag) {
        return tag.chars().allMatch(character -> character >= ' ' && character < 127);
    }
}
