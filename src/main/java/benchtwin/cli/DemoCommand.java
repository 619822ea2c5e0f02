package benchtwin.cli;

import benchtwin.bench.BadInput;
import benchtwin.bench.SampleFiles;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** The sample workshop, from its files to a club that is handed over, each step as it would be typed. */
@Command(name = "demo", mixinStandardHelpOptions = true,
    description = "The sample workshop, end to end, in a book of its own: stock read in, the twin of a cracked driver found and made a "
        + "job, its ticket, a change, shafts, a set, the job handed over. Shows each command as you would type it, and what it answers.",
    footer = {"", "Examples:", "  benchtwin demo", "  benchtwin demo --into demo --only-commands"})
final class DemoCommand implements Callable<Integer> {

    /**
     * A step.
     * @param why   what it is for
     * @param words the command, without the program's name and the book
     */
    private record Step(String why, List<String> words) {

        private static Step of(String why, String... words) {
            return new Step(why, List.of(words));
        }

        /** As it would be typed into a shell. */
        private String typed() {
            return String.join(" ", words.stream().map(word -> word.contains(" ") ? "\"" + word + "\"" : word).toList());
        }
    }

    @Option(names = "--into", paramLabel = "DIR",
        description = "a new folder for the sample files, the book and the ticket; default one among your temporary files. It stays")
    private Path into;
    @Option(names = "--only-commands", description = "lay the files there and show the commands, but run none")
    private boolean onlyCommands;
    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() throws BadInput {
        Path folder = folder();
        Path samples = folder.resolve("inventory-samples");
        SampleFiles.into(samples);
        Path book = folder.resolve("demo.book");
        PrintWriter out = spec.commandLine().getOut();
        out.println("An invented workshop, in " + folder);
        out.println("To type the commands yourself: export BENCHTWIN_BOOK=" + book);
        for (Step step : steps(samples, folder.resolve("ticket.pdf"))) {
            out.println();
            out.println("# " + step.why());
            out.println("$ benchtwin " + step.typed());
            if (onlyCommands) {
                continue;
            }
            out.println();
            List<String> words = new ArrayList<>(step.words());
            words.add("--book=" + book);
            int status = Main.run(out, spec.commandLine().getErr(), words.toArray(String[]::new));
            if (status == Main.BAD_INPUT) {
                return status;
            }
        }
        out.println();
        out.println("# Look around in a browser, and throw the folder away when you have seen enough");
        out.println("$ benchtwin serve --open --book " + book);
        return Main.DONE;
    }

    private Path folder() throws BadInput {
        try {
            return into == null ? Files.createTempDirectory("benchtwin-demo") : into.toAbsolutePath();
        } catch (IOException cannot) {
            throw new BadInput("no folder can be made among the temporary files (%s); name one with --into".formatted(cannot.getMessage()));
        }
    }

    private static List<Step> steps(Path samples, Path ticket) {
        return List.of(
            Step.of("Stock and players' clubs go into the book", "stock", "import", samples.toString()),
            Step.of("The driver of N. Oakes is cracked: its twin on the old shaft, for tomorrow; the first is made a job",
                "match", "--club", "OAKES-DR", "--top", "3", "--promise", "--due", LocalDate.now().plusDays(1) + " 09:00"),
            Step.of("The sheet for the bench", "ticket", "1", "--pdf", ticket.toString()),
            Step.of("Read when it is built, and handed over; the old head goes out of stock",
                "job", "done", "1", "loft=9.4", "lie=58.3", "face=-0.4", "length=45-1/4", "swing-weight=D2.2", "frequency=248.9",
                "mass=309.6", "--old-cracked"),
            Step.of("A club that is trusted, with half a degree more loft: every way, and what it moves",
                "change", "--club", "SANDROW-DR", "loft=+0.5"),
            Step.of("Shafts as stiff in a new head as the old one is, to test from soft to stiff",
                "shafts", "--club", "OAKES-DR", "--head", "H-014", "--pick", "ladder"),
            Step.of("Two clubs from stock at once, proven the best", "set", "--from-record", "M. Sandrow", "--rounds", "20"),
            Step.of("Against the published limits, advice only", "rules", "SANDROW-DR"),
            Step.of("What is promised to whom", "job", "list"));
    }
}
