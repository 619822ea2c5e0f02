package benchtwin.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * A command as somebody typed it, and what came of it. Whatever is typed, no stack trace may come back.
 * @param status the exit status
 * @param out    what was answered
 * @param err    what was complained of
 */
record Typed(int status, String out, String err) {

    static final String STOCK = "inventory-samples";

    private static final Pattern WORD = Pattern.compile("\"([^\"]*)\"|(\\S+)");

    /** Runs a line on the sample workshop; double quotes hold words with spaces together, as in a shell. */
    static Typed line(String line) {
        return on(Path.of(STOCK), line);
    }

    /** Runs a line on another workshop's folder. */
    static Typed on(Path stock, String line) {
        List<String> words = words(line);
        words.addAll(1, List.of("--stock", stock.toString()));
        return run(words);
    }

    /** The words of a line, those in double quotes held together. */
    static List<String> words(String line) {
        List<String> words = new ArrayList<>();
        Matcher matcher = WORD.matcher(line);
        while (matcher.find()) {
            words.add(matcher.group(1) != null ? matcher.group(1) : matcher.group(2));
        }
        return words;
    }

    /** Runs words as they are. */
    static Typed run(List<String> words) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        int status = Main.run(new PrintStream(out, true, StandardCharsets.UTF_8),
            new PrintStream(err, true, StandardCharsets.UTF_8), words.toArray(String[]::new));
        Typed typed = new Typed(status, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
        assertThat(typed.out() + typed.err()).as("a technician reads no stack trace").doesNotContain("\tat ", "Exception",
            "fault of the program");
        return typed;
    }

    JsonNode json() {
        try {
            return new ObjectMapper().readTree(out);
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    /** Holds a printed page to the width a table may take, and to lines without anything behind their last word. */
    Typed fitsThePage() {
        assertThat(out.lines()).allSatisfy(line -> assertThat(line.length()).as(line).isLessThanOrEqualTo(Page.WIDTH));
        assertThat(out.lines()).allSatisfy(line -> assertThat(line).isEqualTo(line.stripTrailing()));
        return this;
    }

    /** Copies the sample workshop and changes the lines of one of its files. */
    static Path workshopWith(Path folder, String file, UnaryOperator<List<String>> change) throws IOException {
        try (Stream<Path> files = Files.list(Path.of(STOCK))) {
            for (Path sample : files.toList()) {
                Files.copy(sample, folder.resolve(sample.getFileName()));
            }
        }
        Path changed = folder.resolve(file);
        Files.write(changed, change.apply(new ArrayList<>(Files.readAllLines(changed))));
        return folder;
    }

    /** One cell of one row, found by its column's name and the row's first cell, written anew. */
    static UnaryOperator<List<String>> cell(String tag, String column, String value) {
        return lines -> {
            int at = List.of(lines.get(0).split(",", -1)).indexOf(column);
            assertThat(at).as(column).isNotNegative();
            for (int k = 1; k < lines.size(); k++) {
                String[] cells = lines.get(k).split(",", -1);
                if (cells[0].equals(tag)) {
                    cells[at] = value;
                    lines.set(k, String.join(",", cells));
                }
            }
            return lines;
        };
    }
}
