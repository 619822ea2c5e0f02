package benchtwin.book;

import java.text.Normalizer;
import java.util.Locale;

/** Tags as they are looked up: {@code h-014} finds {@code H-014}, and full-width letters find plain ones. */
final class Folded {

    private Folded() {
    }

    static String of(String tag) {
        String plain = Normalizer.normalize(tag, Normalizer.Form.NFKD).replaceAll("\\p{M}+", "");
        return plain.toUpperCase(Locale.ROOT).toLowerCase(Locale.ROOT).strip().replaceAll("\\s+", " ");
    }
}
