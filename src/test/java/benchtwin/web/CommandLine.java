package benchtwin.web;

import static org.assertj.core.api.Assertions.assertThat;

import benchtwin.cli.Main;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

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
}
