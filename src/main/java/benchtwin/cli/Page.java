package benchtwin.cli;

import java.io.PrintWriter;
import java.util.Arrays;
import java.util.Locale;

/** Writes lines that fit the page; in plain mode without any character outside ASCII. */
final class Page {

    /** Columns a table may take. */
    static final int WIDTH = 100;

    /** A space that a paragraph is not broken at; printed as a plain one. */
    static final char NO_BREAK = '\u00a0';

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
        out.println(plain ? ascii(text) : text);
    }

    /** A paragraph, wrapped, its later lines indented to where its text starts. */
    void wrapped(String leadText, String paragraph) {
        String lead = plain ? ascii(leadText) : leadText;
        String text = plain ? ascii(paragraph) : paragraph;
        StringBuilder line = new StringBuilder(lead);
        int indent = lead.length();
        boolean empty = true;
        for (String word : text.split(" ")) {
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

    private static String ascii(String text) {
        return text.replace("°", "d").replace("…", "...").replace("−", "-").replace("·", ".").replace("│", "|").replace("●", "*")
            .replace("○", "o").replace("┼", "+").replace("─", "-").replace("▸", ">").replace("◂", "<").replace("×", "x")
            .replace("²", "2").replace("±", "+/-").replace("½", "1/2").replace("’", "'");
    }
}
