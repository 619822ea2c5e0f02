package benchtwin.web;

import java.net.http.HttpResponse;
import java.util.Arrays;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Somebody without scripts who fills forms in: each goes with what its page was made from, as the page last opened says. */
final class FormFiller {

    private static final Pattern SEEN = Pattern.compile("name=\"seen\" value=\"(\\d+)\"");

    private final Visit visit;
    private String seen = "";

    FormFiller(WebBook pages) {
        visit = new Visit(pages);
    }

    /** Opens a page. */
    HttpResponse<String> open(String path) {
        return looked(visit.get(path));
    }

    /** Sends a form of the page that was opened last: names and values by turns; what the page was made from unless it is named. */
    HttpResponse<String> send(String path, String... fields) {
        if (Arrays.asList(fields).contains("seen")) {
            return visit.post(path, fields);
        }
        String[] all = Arrays.copyOf(fields, fields.length + 2);
        all[fields.length] = "seen";
        all[fields.length + 1] = seen;
        return looked(visit.post(path, all));
    }

    /** What the page last opened was made from. */
    String seen() {
        return seen;
    }

    private HttpResponse<String> looked(HttpResponse<String> page) {
        Matcher field = SEEN.matcher(page.body());
        if (field.find()) {
            seen = field.group(1);
        }
        return page;
    }

    /** What a page says, without its markup. */
    static String words(HttpResponse<String> page) {
        return page.body().replaceAll("(?s)<svg.*?</svg>", " ").replaceAll("<[^>]*>", " ").replace("&#39;", "'").replace("&lt;", "<")
            .replace("&gt;", ">").replaceAll("\\s+", " ");
    }

    /** What a page holds at a pattern's first group, as a browser would send it back. */
    static String held(HttpResponse<String> page, Pattern pattern) {
        Matcher found = pattern.matcher(page.body());
        if (!found.find()) {
            throw new AssertionError(pattern + " is not on the page");
        }
        return found.group(1);
    }
}
