package benchtwin.web;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The account of a number as a page tells it, read back. */
record AccountText(String html) {

    private static final Pattern CELL = Pattern.compile("<t[hd][^>]*>(.*?)</t[hd]>", Pattern.DOTALL);

    /** What a person reads of it. */
    String text() {
        return words(html);
    }

    /** The number itself. */
    String number() {
        Matcher big = Pattern.compile("<p class=\"big\">(.*?)<span").matcher(html);
        return big.find() ? words(big.group(1)) : "";
    }

    /** The rows of the table under a caption, cell by cell, headings aside. */
    List<List<String>> rows(String caption) {
        Matcher table = Pattern.compile("<caption>" + Pattern.quote(caption) + "[^<]*</caption>.*?<tbody>(.*?)</tbody>", Pattern.DOTALL).matcher(html);
        List<List<String>> rows = new ArrayList<>();
        while (table.find()) {
            for (String row : table.group(1).split("</tr>")) {
                List<String> cells = new ArrayList<>();
                Matcher cell = CELL.matcher(row);
                while (cell.find()) {
                    cells.add(words(cell.group(1)));
                }
                if (!cells.isEmpty()) {
                    rows.add(cells);
                }
            }
        }
        return rows;
    }

    /** A number as a page writes it. */
    static double value(String text) {
        Matcher number = Pattern.compile("[−+-]?[0-9.]+").matcher(text);
        if (!number.find()) {
            throw new AssertionError("no number in \"" + text + "\"");
        }
        return Double.parseDouble(number.group().replace('−', '-'));
    }

    private static String words(String html) {
        return html.replaceAll("<[^>]*>", " ").replace("&#34;", "\"").replace("&lt;", "<").replace("&gt;", ">").replace("&amp;", "&")
            .replaceAll("[\\s\u00a0]+", " ").strip();
    }
}
