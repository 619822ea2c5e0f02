package benchtwin.cli;

import benchtwin.bench.BadInput;
import benchtwin.bench.BendJson;
import benchtwin.bench.BendRun;
import benchtwin.bench.BendService;
import benchtwin.bench.QuantityList;
import benchtwin.bend.Working;
import benchtwin.club.Quantity;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.PrintWriter;
import java.io.Writer;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code benchtwin bend}. */
@Command(name = "bend", mixinStandardHelpOptions = true, sortOptions = false, subcommands = {BendSimulateCommand.class,
    BendLearnedCommand.class},
    description = "A bending session: the next bend, its reading, the next bend, until the head is right; one head or several. Each "
        + "line is written down before the answer, so that a session can be broken off at any moment and taken up again.",
    footer = {"", "Examples:", "  benchtwin bend --job 12",
        "  benchtwin bend H-114 --to loft=34,lie=62.5",
        "  benchtwin bend --stock inventory-samples H-114 --change lie=-1 --session bends.jsonl",
        "", "In the session: a reading (62.5), both (34.0 62.5), asked 1.2 62.4, again 62.3, why, skip, stop, help.",
        "", "Exit status: 0 every head is within tolerance, 1 one is not, 2 bad input."})
final class BendCommand implements Callable<Integer> {

    private static final double MOST_RISK = 0.5;

    @Spec
    private CommandSpec spec;
    @Parameters(arity = "0..*", paramLabel = "HEAD", description = "the head's tag, or that of the club it sits in; several are bent one "
        + "after the other")
    private List<String> heads = List.of();
    @Option(names = "--job", paramLabel = "NUMBER", order = 1, description = "bend what this job's plan bends, to the angles it plans")
    private String job;
    @Option(names = "--to", paramLabel = "LIST", order = 1, description = "angles wanted, such as loft=34,lie=62.5 or lie=58.5,face=0")
    private String to;
    @Option(names = "--change", paramLabel = "LIST", order = 1, description = "changes wanted, such as lie=-1 (1 flatter)")
    private String change;
    @Option(names = "--tolerance", paramLabel = "LIST", order = 2, description = "how far off still counts as right; default "
        + "loft=0.25,lie=0.25,face=0.5")
    private String tolerance;
    @Option(names = "--working", paramLabel = "HOW", order = 3, defaultValue = "live", description = "live: the fixture shows the angle "
        + "under load; feel: the ask is felt in the arm; default ${DEFAULT-VALUE}")
    private Working working;
    @Option(names = "--gauge", paramLabel = "NAME", order = 3, description = "what the angles are read on; the book knows how far it is "
        + "trusted")
    private String gauge;
    @Option(names = "--uncertainty", paramLabel = "LIST", order = 3, description = "standard uncertainty of a reading, such as "
        + "loft=0.1,lie=0.1")
    private String uncertainty;
    @Option(names = "--risk", paramLabel = "P", order = 4, defaultValue = "0.05", description = "the most chance there may be of passing "
        + "the far end of a tolerance; default ${DEFAULT-VALUE}")
    private double risk;
    @Option(names = "--limit", paramLabel = "DEG", order = 5, description = "a limit you answer for, hosel tilt over the head's life; the "
        + "maker's own prevails")
    private Double limit;
    @Option(names = "--although", paramLabel = "WORDS", order = 5, description = "why; written down with the head")
    private String although;
    @Option(names = "--readings", paramLabel = "FILE", order = 6, description = "take the lines from a file instead of the keyboard")
    private Path readings;
    @Mixin
    private BendOptions bends;
    @Mixin
    private OutputOptions output;

    @Override
    public Integer call() throws BadInput {
        output.check();
        BendService.Wish wish = wish();
        if (bends.isFromFiles() && job != null) {
            throw new BadInput("jobs are in the book: leave out --job, or the files");
        }
        if (heads.isEmpty() && job == null) {
            throw new BadInput("which head? Give its tag, or a job with --job");
        }
        BendService service = bends.service();
        List<String> tags = heads.isEmpty() ? service.headsOf(job) : heads;
        List<BendRun> runs = new ArrayList<>();
        List<BadInput> refused = new ArrayList<>();
        for (String tag : tags) {
            try {
                runs.add(service.open(tag, Optional.ofNullable(job), wish));
            } catch (BadInput bad) {
                refused.add(bad);
            }
        }
        if (runs.isEmpty()) {
            throw new BadInput(refused.stream().flatMap(bad -> bad.messages().stream()).toList());
        }
        return run(runs, refused);
    }

    private BendService.Wish wish() throws BadInput {
        if (!(risk > 0 && risk <= MOST_RISK)) {
            throw new BadInput("--risk %s: expected above 0 and at most %s".formatted(risk, MOST_RISK));
        }
        return new BendService.Wish(angles("--to", to), angles("--change", change), QuantityList.OF_CLUBS.tolerances("--tolerance", tolerance),
            QuantityList.OF_CLUBS.tolerances("--uncertainty", uncertainty), Optional.ofNullable(gauge), working, risk,
            limit == null ? OptionalDouble.empty() : OptionalDouble.of(limit), Optional.ofNullable(although));
    }

    private static Map<Quantity, Double> angles(String option, String text) throws BadInput {
        Map<Quantity, Double> angles = new EnumMap<>(Quantity.class);
        for (Map.Entry<Quantity, Double> one : QuantityList.OF_CLUBS.values(option, text).entrySet()) {
            if (!one.getKey().isAngle()) {
                throw new BadInput("%s: %s is not bent; expected loft, lie or face".formatted(option, Figures.name(one.getKey())));
            }
            angles.put(one.getKey(), one.getValue());
        }
        return angles;
    }

    private int run(List<BendRun> runs, List<BadInput> refused) throws BadInput {
        PrintWriter out = spec.commandLine().getOut();
        PrintWriter err = spec.commandLine().getErr();
        BendPage page = new BendPage(output.page(output.isJson() ? new PrintWriter(Writer.nullWriter()) : out));
        boolean everyOne = refused.isEmpty();
        refused.forEach(bad -> bad.messages().forEach(message -> err.println("benchtwin: left out: " + message)));
        try (BufferedReader lines = lines()) {
            BendLoop.End end = BendLoop.End.REACHED;
            for (int k = 0; k < runs.size() && end != BendLoop.End.STOPPED; k++) {
                page.head(runs.get(k));
                if (k == 0) {
                    page.cautions();
                }
                page.left(runs.get(k), runs.get(k).leftDeg());
                end = new BendLoop(runs.get(k), page, lines, readings != null, () -> prompt(out)).run();
                everyOne &= end == BendLoop.End.REACHED;
                if (end == BendLoop.End.STOPPED) {
                    page.said("Stopped. What was typed is in %s; the same command goes on from here.".formatted(runs.get(k).place()));
                }
                page.blank();
            }
        } catch (IOException cannot) {
            throw new BadInput("--readings %s cannot be read: %s".formatted(readings, cannot.getMessage()));
        }
        if (output.isJson()) {
            out.println(BendJson.text(runs));
        }
        return everyOne ? Main.DONE : Main.NOTHING_SUITABLE;
    }

    private void prompt(PrintWriter out) {
        if (readings == null && !output.isJson() && Terminal.isWatched()) {
            out.print("> ");
            out.flush();
        }
    }

    private BufferedReader lines() throws IOException, BadInput {
        if (readings == null) {
            return new BufferedReader(new InputStreamReader(System.in, Charset.defaultCharset()));
        }
        if (!Files.isRegularFile(readings)) {
            throw new BadInput("--readings %s: there is no such file".formatted(readings));
        }
        return Files.newBufferedReader(readings, StandardCharsets.UTF_8);
    }
}
