package benchtwin.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** No page names an option or a command, and what is below both ways in knows neither. */
class ToDoTest {

    private static final Path SOURCES = Path.of("src/main/java/benchtwin");
    private static final Pattern OF_THE_LINE = Pattern.compile("(^|[^-])--[a-z]|benchtwin (add|bag|bend|book|change|club|gauge|job|label|match|note|"
        + "player|predict|rules|set|shafts|stock|ticket)\\b");
    private static final Pattern LITERAL = Pattern.compile("\"([^\"\\\\]*+(?:\\\\.[^\"\\\\]*+)*+)\"");
    /** Below both ways in, but asked by commands alone: books as files, files of sessions, tickets and labels. */
    private static final Set<String> OF_COMMANDS = Set.of("bench/ToDo.java", "bench/BookTransfer.java", "bench/TicketFile.java",
        "bench/BendFile.java", "book/BookTable.java");

    @ParameterizedTest
    @EnumSource(ToDo.class)
    void noPageIsToldOfAnOptionOrACommand(ToDo what) {
        assertThat(what.in(WayIn.PAGES, "X-1", "a file")).doesNotContainPattern(OF_THE_LINE).doesNotContain("%");
        assertThat(what.in(WayIn.LINE, "X-1", "a file")).doesNotContain("%");
    }

    /** A book that is not there, or damaged, is put right by command: no page can be served of it. */
    @Test
    void whatIsBelowBothWaysInNamesNoOption() throws IOException {
        List<String> named = new ArrayList<>();
        for (String folder : List.of("measure", "club", "stock", "mechanics", "rules", "bend", "match", "sets", "gauge", "book", "picture", "ticket",
            "bench")) {
            try (Stream<Path> files = Files.walk(SOURCES.resolve(folder))) {
                for (Path file : files.filter(one -> one.toString().endsWith(".java")).sorted().toList()) {
                    String name = folder + "/" + file.getFileName();
                    Matcher literal = LITERAL.matcher(Files.readString(file).replaceAll("(?s)/\\*.*?\\*/", "").replace("'\"'", ""));
                    while (!OF_COMMANDS.contains(name) && literal.find()) {
                        if (OF_THE_LINE.matcher(literal.group(1)).find()) {
                            named.add(name + ": " + literal.group(1));
                        }
                    }
                }
            }
        }
        assertThat(named).containsExactlyInAnyOrder(
            "bench/Labels.java: --new goes with the book, which knows what was printed: leave out --stock and the files",
            "bench/OpenBook.java: there is no book %s; benchtwin stock import DIR --book %s makes one",
            "book/BookTrouble.java: it is not a book of this program, or a damaged one; restore a backup with benchtwin book restore",
            "book/BookTrouble.java: it is damaged; see what is left with benchtwin book check, or restore a backup with benchtwin book ");
    }

    @Test
    void aProblemIsPutIntoWordsForWhoAsks() {
        ToBeDone problem = new ToBeDone("there is no job 9; ", ToDo.LIST_JOBS);
        assertThat(problem).hasMessage("there is no job 9; benchtwin job list --all lists them");
        assertThat(ToBeDone.words(problem, WayIn.PAGES)).isEqualTo("there is no job 9; open ones stand on the page of today");
    }
}
