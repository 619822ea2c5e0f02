package benchtwin.web;

import static org.assertj.core.api.Assertions.assertThat;

import benchtwin.cli.Main;
import benchtwin.club.Quantity;
import benchtwin.club.QuantityText;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The command line at the book whose pages are looked at. */
final class CommandLine {

    private CommandLine() {
    }

    /** Runs a command and gives what it prints. */
    static String run(WebBook pages, String... words) {
        List<String> all = new ArrayList<>(Arrays.asList(words));
        all.addAll(List.of("--book", pages.book().file().toString()));
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        Main.run(new PrintStream(out, true, StandardCharsets.UTF_8), new PrintStream(err, true, StandardCharsets.UTF_8),
            all.toArray(String[]::new));
        assertThat(err.toString(StandardCharsets.UTF_8)).as(String.join(" ", words)).doesNotContain("expected", "Exception");
        return out.toString(StandardCharsets.UTF_8);
    }

    /** The same as numbers. */
    static JsonNode json(WebBook pages, String... words) throws Exception {
        List<String> all = new ArrayList<>(Arrays.asList(words));
        all.add("--json");
        String text = run(pages, all.toArray(String[]::new));
        assertThat(text).as(String.join(" ", words)).startsWith("{");
        return new ObjectMapper().readTree(text);
    }

    /** What a page shows of its options' outcomes, option by option, in the order of the page. */
    static List<String> shown(String page) {
        List<String> numbers = new ArrayList<>();
        Matcher cell = Pattern.compile("class=\"n big\"><a [^>]*>([^<]+)</a>").matcher(page);
        while (cell.find()) {
            numbers.add(cell.group(1));
        }
        return numbers;
    }

    /** What a page should show of an option, from the command's answer. */
    static List<String> predicted(JsonNode option, JsonNode target) {
        List<String> numbers = new ArrayList<>();
        for (Quantity quantity : Quantity.values()) {
            if (target.has(quantity.jsonName()) && option.get("predicted").has(quantity.jsonName())) {
                numbers.add(QuantityText.value(quantity, option.get("predicted").get(quantity.jsonName()).asDouble()));
            }
        }
        return numbers;
    }

    /** A page's text as it is read, its escapes undone. */
    static String read(String page) {
        return page.replace("&#34;", "\"").replace("&quot;", "\"").replace("&#39;", "'").replace("&lt;", "<").replace("&gt;", ">")
            .replace("&amp;", "&");
    }
}
