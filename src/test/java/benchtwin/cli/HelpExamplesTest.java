package benchtwin.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import picocli.CommandLine;

/** Every command's help fits the page and shows how the command is typed; what it shows does what it says. */
class HelpExamplesTest {

    private static final String TYPED = "  benchtwin ";
    /** Commands that work at the book: their examples are run; those of the others have tests of their own and are only read. */
    private static final List<String> AT_THE_BOOK = List.of("player", "club", "job", "note", "book", "stock");

    @TempDir
    private Path folder;

    static Stream<String> everyCommand() {
        return commands(Main.line()).stream();
    }

    private static List<String> commands(CommandLine line) {
        List<String> all = new ArrayList<>();
        line.getSubcommands().forEach((name, sub) -> {
            if (!name.equals("help")) {
                all.add(sub.getCommandSpec().qualifiedName().replaceFirst("benchtwin ", ""));
                all.addAll(commands(sub));
            }
        });
        return all;
    }

    private static List<String> examples(String command) {
        CommandLine line = Main.line();
        for (String name : command.split(" ")) {
            line = line.getSubcommands().get(name);
        }
        String footer = String.join("\n", line.getCommandSpec().usageMessage().footer()).replaceAll(" \\\\\n +", " ");
        return footer.lines().filter(text -> text.startsWith(TYPED)).map(text -> text.substring(TYPED.length())).toList();
    }

    @ParameterizedTest
    @MethodSource("everyCommand")
    void helpFitsThePageAndHasAnExample(String command) {
        List<String> words = new ArrayList<>(List.of(command.split(" ")));
        words.add("--help");
        Typed typed = Typed.run(words);
        assertThat(typed.status()).isEqualTo(Main.DONE);
        assertThat(typed.out().lines()).allMatch(line -> line.length() <= Page.WIDTH);
        assertThat(examples(command)).as("examples of " + command).isNotEmpty();
    }

    @ParameterizedTest
    @MethodSource("everyCommand")
    void everyExampleCanBeTyped(String command) {
        for (String example : examples(command)) {
            if (!example.contains("…")) {
                CommandLine line = Main.line();
                line.setCaseInsensitiveEnumValuesAllowed(true);
                line.parseArgs(Typed.words(example).toArray(String[]::new));
            }
        }
    }

    @Test
    @Tag("slow")
    void theExamplesOfTheBooksCommandsWorkOneAfterTheOther() throws Exception {
        AtTheBook book = AtTheBook.samples(folder);
        for (int k = 1; k <= 11; k++) {
            book.done("job add repair --player \"T. Tolver\"");
        }
        book.done("job add twin --club OAKES-DR");
        assertThat(book.type("match --club OAKES-DR --keep none --top 1 --promise").out()).contains("Promised to job 13");
        assertThat(book.type("match --club OAKES-DR --promise --job 12").out()).contains("Promised to job 12");
        long clubs = AtTheBook.list(book.club("OAKES-DR").get("measures")).get(0).get("readings").get(0).asLong();
        long parts = book.part("H-014").get("readings").get(0).get("id").asLong();
        Files.copy(AtTheBook.workshop().resolve("heads.csv"), folder.resolve("new-heads.csv"));
        List<String> run = new ArrayList<>();
        everyCommand().filter(command -> AT_THE_BOOK.contains(command.split(" ")[0])).flatMap(command -> examples(command).stream())
            .distinct().filter(example -> !example.contains("…") && !example.startsWith("book import")).sorted(java.util.Comparator.comparingInt(HelpExamplesTest::late))
            .forEach(example -> {
                String line = example.replace("/media/stick/", folder + "/").replace("inventory-samples/*.csv", asTheShellWould())
                    .replaceAll("new-heads\\.csv|season-2026(\\.json)?|stock-thursday|oakes\\.svg", folder + "/$0").replaceAll("(club correct OAKES-DR) \\d+", "$1 " + clubs)
                    .replaceAll("(stock correct H-014) \\d+", "$1 " + parts);
                AtTheBook own = example.startsWith("stock check") || changesWhatOthersNeed(example) ? copy(book, run.size()) : book;
                Typed typed = example.startsWith("stock check") ? Typed.run(Typed.words(line)) : own.type(line);
                assertThat(typed.status()).as(example + ": " + typed.err()).isIn(Main.DONE, Main.NOTHING_SUITABLE);
                assertThat(typed.out() + typed.err()).as(example).isNotBlank();
                run.add(example);
            });
        assertThat(run.size()).isGreaterThan(40);
        book.isClean();
    }

    /** The files the shell puts in the place of a pattern. */
    private static String asTheShellWould() {
        return String.join(" ", java.util.Arrays.stream(Path.of("inventory-samples").toFile().list((dir, name) ->
            name.endsWith(".csv"))).map(name -> "inventory-samples/" + name).sorted().toList());
    }

    /** What makes something comes before what needs it. */
    private static int late(String example) {
        return example.startsWith("book restore") ? 3 : example.startsWith("club compare") ? 2
            : example.startsWith("stock return") || example.startsWith("job done") ? 1 : 0;
    }

    private static boolean changesWhatOthersNeed(String example) {
        return example.contains("correct") || example.startsWith("job cancel") || example.startsWith("job done 12")
            || example.contains("record OAKES-DR --state") || example.startsWith("stock retire H") || example.startsWith("player add");
    }

    private AtTheBook copy(AtTheBook book, int number) {
        Path own = folder.resolve("own-" + number);
        try {
            Files.createDirectories(own);
            Files.copy(book.book(), own.resolve("new.book"));
        } catch (java.io.IOException failed) {
            throw new java.io.UncheckedIOException(failed);
        }
        return AtTheBook.none(own);
    }
}
