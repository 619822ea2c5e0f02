package benchtwin.stock;

import java.util.Collection;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;

/** Finds what somebody probably meant. */
public final class Nearest {

    private static final int LONGEST = 40;
    private static final Pattern BETWEEN_WORDS = Pattern.compile("[\\s_-]+");

    private Nearest() {
    }

    /** The nearest word, when it is at most two letters, or a third of its length, away; ties go to the first. */
    static Optional<String> to(String text, Collection<String> words) {
        if (text.length() > LONGEST) {
            return Optional.empty();
        }
        String folded = fold(text);
        return words.stream()
            .filter(word -> distance(folded, fold(word)) <= Math.max(Math.min(2, word.length() - 1), word.length() / 3))
            .min(Comparator.comparingInt(word -> distance(folded, fold(word))));
    }

    /** Lower case, with spaces, hyphens and underscores all alike. */
    static String fold(String text) {
        if (isFolded(text)) {
            return text;
        }
        return BETWEEN_WORDS.matcher(text.strip().toLowerCase(Locale.ROOT)).replaceAll("-");
    }

    /** Most words are as they should be, and need no pattern. */
    private static boolean isFolded(String text) {
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (!(c >= 'a' && c <= 'z' || c >= '0' && c <= '9')) {
                return false;
            }
        }
        return true;
    }

    /**
     * How many letters have to be put in, taken out or changed (Levenshtein's distance).
     * @param one   any text
     * @param other any text
     * @return 0 when they are the same
     */
    public static int distance(String one, String other) {
        int[] above = new int[other.length() + 1];
        for (int j = 0; j <= other.length(); j++) {
            above[j] = j;
        }
        for (int i = 1; i <= one.length(); i++) {
            int[] row = new int[other.length() + 1];
            row[0] = i;
            for (int j = 1; j <= other.length(); j++) {
                int change = above[j - 1] + (one.charAt(i - 1) == other.charAt(j - 1) ? 0 : 1);
                row[j] = Math.min(change, 1 + Math.min(above[j], row[j - 1]));
            }
            above = row;
        }
        return above[other.length()];
    }
}
