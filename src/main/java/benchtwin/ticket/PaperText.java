package benchtwin.ticket;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * Makes text printable, and keeps account of what had to be replaced. The printer's letters are Latin, Greek and Cyrillic;
 * whatever a reader takes for one character of another script, an emoji or a character that turns the direction of writing
 * becomes one {@link #REPLACEMENT}, never nothing.
 */
final class PaperText {

    /** Stands for what cannot be printed: a question mark in a black square on its corner, U+FFFD. */
    static final String REPLACEMENT = "\uFFFD";
    private static final Set<Character.UnicodeScript> PRINTED = Set.of(Character.UnicodeScript.LATIN,
        Character.UnicodeScript.GREEK, Character.UnicodeScript.CYRILLIC, Character.UnicodeScript.COMMON,
        Character.UnicodeScript.INHERITED);
    private static final Set<Integer> NEVER = Set.of((int) Character.CONTROL, (int) Character.FORMAT, (int) Character.SURROGATE,
        (int) Character.PRIVATE_USE, (int) Character.UNASSIGNED, (int) Character.LINE_SEPARATOR,
        (int) Character.PARAGRAPH_SEPARATOR);
    private static final Pattern CHARACTER = Pattern.compile("\\X");
    private static final Pattern SPACE = Pattern.compile("[\\s\\u0085\\u2028\\u2029]+");
    private static final int SHOWN_AT_MOST = 12;

    private final boolean allScripts;
    private final Map<String, List<String>> replaced = new LinkedHashMap<>();

    private PaperText(boolean allScripts) {
        this.allScripts = allScripts;
    }

    /** For the PDF, which has the program's own letters only. */
    static PaperText forPrint() {
        return new PaperText(false);
    }

    /** For a browser, which has letters of its own: only what is no letter in any script is replaced. */
    static PaperText forScreen() {
        return new PaperText(true);
    }

    /**
     * The text as it can be shown.
     * @param what what it is, for the note: {@code player}
     * @param text any text
     * @return the same on one line, with a replacement for each character that has no letter
     */
    String show(String what, String text) {
        String line = SPACE.matcher(Normalizer.normalize(text, Normalizer.Form.NFC)).replaceAll(" ").strip();
        return CHARACTER.matcher(line).replaceAll(found -> {
            if (found.group().codePoints().allMatch(this::isShown)) {
                return found.group().replace("\\", "\\\\").replace("$", "\\$");
            }
            List<String> codes = replaced.computeIfAbsent(what, one -> new ArrayList<>());
            String code = codes(found.group());
            if (!codes.contains(code)) {
                codes.add(code);
            }
            return REPLACEMENT;
        });
    }

    private boolean isShown(int codePoint) {
        if (NEVER.contains(Character.getType(codePoint))) {
            return false;
        }
        return allScripts || PRINTED.contains(Character.UnicodeScript.of(codePoint)) && Typeface.has(codePoint);
    }

    private static String codes(String character) {
        return character.codePoints().mapToObj(one -> String.format(Locale.ROOT, "U+%04X", one)).collect(Collectors.joining(" "));
    }

    /**
     * What was replaced so far.
     * @return a line for each text it happened in: {@code player: U+4E2D, U+6587}
     */
    List<String> replaced() {
        return replaced.entrySet().stream().map(one -> one.getKey() + ": "
            + one.getValue().stream().limit(SHOWN_AT_MOST).collect(Collectors.joining(", "))
            + (one.getValue().size() > SHOWN_AT_MOST ? " and %d more".formatted(one.getValue().size() - SHOWN_AT_MOST) : ""))
            .toList();
    }
}
