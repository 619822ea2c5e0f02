package benchtwin.cli;

import java.io.PrintWriter;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;

/** Writes lines that fit the page; in plain mode without any character outside ASCII. */
final class Page {

    /** Columns a table may take. */
    static final int WIDTH = 100;

    /** A space that a paragraph is not broken at; printed as a plain one. */
    static final char NO_BREAK = '\u00a0';

    private static final Pattern BREAKS = Pattern.compile("[\\t\\n\\r]+");
    private static final Pattern CONTROL = Pattern.compile("\\p{Cc}");
    private static final Pattern MARKS = Pattern.compile("\\p{M}+");
    private static final Pattern NOT_ASCII = Pattern.compile("[^ -~" + NO_BREAK + "]");

    private final PrintWriter out;
    private final boolean plain;

    Page(PrintWriter out, boolean plain) {
        this.out = out;
        this.plain = plain;
    }

    boolean isPlain() {
        return plain;
    }

    /** Words are put into ASCII before they are set in columns: a character may become three. */
    void line(String format, Object... args) {
        if (plain) {
            Arrays.setAll(args, k -> args[k] instanceof String word ? ascii(word) : args[k]);
        }
        String text = (args.length == 0 ? format : String.format(Locale.ROOT, format, args)).replace(NO_BREAK, ' ');
        text = BREAKS.matcher(text).replaceAll(" ");
        out.println((plain ? ascii(text) : printable(text)).stripTrailing());
    }

    /** A paragraph, wrapped, its later lines indented to where its text starts. */
    void wrapped(String leadText, String paragraph) {
        String lead = plain ? ascii(leadText) : leadText;
        String oneLine = BREAKS.matcher(paragraph).replaceAll(" ");
        String text = plain ? ascii(oneLine) : oneLine;
        StringBuilder line = new StringBuilder(lead);
        int indent = lead.length();
        boolean empty = true;
        for (String word : words(text, WIDTH - indent)) {
            if (!empty && line.length() + 1 + word.length() > WIDTH) {
                line("%s", line.toString().stripTrailing());
                line = new StringBuilder(" ".repeat(indent));
                empty = true;
            }
            if (!empty) {
                line.append(' ');
            }
            line.append(word);
            empty = false;
        }
        line("%s", line.toString().stripTrailing());
    }

    void blank() {
        out.println();
    }

    /** So much of a text as a column has room for. */
    String cut(String text, int width) {
        String shown = BREAKS.matcher(plain ? ascii(text) : text).replaceAll(" ");
        if (shown.length() <= width) {
            return shown;
        }
        String more = plain ? "..." : "…";
        int end = Math.max(0, width - more.length());
        boolean splits = end > 0 && end < shown.length() && Character.isHighSurrogate(shown.charAt(end - 1));
        return shown.substring(0, splits ? end - 1 : end) + more;
    }

    /** A word longer than a line is cut where the line ends. */
    private static List<String> words(String text, int longest) {
        List<String> words = new ArrayList<>();
        for (String word : text.split(" ")) {
            String rest = word;
            while (longest > 1 && rest.length() > longest) {
                int cut = rest.offsetByCodePoints(0, rest.codePointCount(0, longest));
                cut = cut > longest ? rest.offsetByCodePoints(cut, -1) : cut;
                words.add(rest.substring(0, cut));
                rest = rest.substring(cut);
            }
            words.add(rest);
        }
        return words;
    }

    /** What a person typed cannot break the line or steer the terminal. */
    private static String printable(String text) {
        return CONTROL.matcher(text).replaceAll("\uFFFD");
    }

    private static String ascii(String text) {
        String signs = text.replace("°", "d").replace("…", "...").replace("−", "-").replace("·", ".").replace("│", "|").replace("●", "*")
            .replace("○", "o").replace("┼", "+").replace("─", "-").replace("▸", ">").replace("◂", "<").replace("×", "x")
            .replace("²", "2").replace("³", "3").replace("µ", "u").replace("→", "->").replace("±", "+/-").replace("½", "1/2").replace("’", "'");
        return NOT_ASCII.matcher(MARKS.matcher(Normalizer.normalize(signs, Normalizer.Form.NFD)).replaceAll("")).replaceAll("?");
    }
}
