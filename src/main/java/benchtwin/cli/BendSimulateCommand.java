package benchtwin.cli;

import benchtwin.bench.BadInput;
import benchtwin.bench.BendReport;
import benchtwin.bench.Pictures;
import benchtwin.bend.BendTally;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** {@code benchtwin bend simulate}. */
@Command(name = "simulate", mixinStandardHelpOptions = true, sortOptions = false,
    description = "Bends made-up heads twice, by asking each time for what is left and by this program's advice, and counts the bends.",
    footer = {"", "Example:", "  benchtwin bend simulate --models 500 --plot bends.svg"})
final class BendSimulateCommand implements Callable<Integer> {

    private static final int MOST_MODELS = 100_000;
    private static final double MOST_RISK = 0.5;
    private static final int BAR = 30;

    @Spec
    private CommandSpec spec;
    @Option(names = "--models", paramLabel = "N", order = 1, defaultValue = "2000",
        description = "models of head, ten heads each; default ${DEFAULT-VALUE}")
    private int models;
    @Option(names = "--seed", paramLabel = "N", order = 2, defaultValue = "7", description = "of the random numbers; default ${DEFAULT-VALUE}")
    private long seed;
    @Option(names = "--risk", paramLabel = "P", order = 3, defaultValue = "0.05",
        description = "the most chance there may be of passing the far end of a tolerance; default ${DEFAULT-VALUE}")
    private double risk;
    @Option(names = "--plot", paramLabel = "FILE", order = 4, description = "draw the distributions into a file ending in .svg or .png")
    private Path plot;
    @Mixin
    private OutputOptions output;

    @Override
    public Integer call() throws BadInput {
        output.check();
        if (models < 1 || models > MOST_MODELS) {
            throw new BadInput("--models %d: expected 1 to %d".formatted(models, MOST_MODELS));
        }
        if (!(risk > 0 && risk <= MOST_RISK)) {
            throw new BadInput("--risk %s: expected above 0 and at most %s".formatted(risk, MOST_RISK));
        }
        if (plot != null) {
            Pictures.check(plot);
        }
        BendReport report = BendReport.run(models, seed, risk);
        if (output.isJson()) {
            spec.commandLine().getOut().println(report.json());
        } else {
            print(output.page(spec.commandLine().getOut()), report);
        }
        if (plot != null) {
            Pictures.write(report.picture(), plot);
        }
        return Main.DONE;
    }

    private void print(Page page, BendReport report) {
        page.wrapped("", ("%d models of head with metal of their own, ten heads each, each needing 0.5° to 2.5°; tolerance 0.25°; seed %d. "
            + "Bends a head, the share of heads that truly passed the far end of the tolerance, and that truly ended inside it:")
            .formatted(models, seed));
        for (BendReport.Scene scene : report.scenes()) {
            page.blank();
            page.line("%s", scene.words());
            page.line("%-22s %6s %7s %7s %6s   %s", "", "bends", "passed", "right", "unsafe", "heads by bends: 1, 2, 3, 4, 5 or more");
            row(page, "ask for what is left", scene.naive());
            row(page, "as advised", scene.advised());
        }
        page.blank();
        page.wrapped("", "unsafe: left because no push was safe enough. Passing is the price of fewer bends: --risk sets it.");
    }

    private static void row(Page page, String habit, BendTally tally) {
        List<Double> shares = BendReport.shares(tally);
        StringBuilder bar = new StringBuilder();
        for (int k = 0; k < shares.size(); k++) {
            bar.append(Integer.toString(k + 1).repeat((int) Math.round(BAR * shares.get(k))));
        }
        page.line("%-22s %6s %7s %7s %6s   %s", habit, Figures.fixed(tally.meanBends(), 2), percent(tally.passedShare()),
            percent(tally.rightShare()), percent(tally.stoppedShare()), bar);
    }

    private static String percent(double share) {
        return Figures.fixed(100 * share, 1) + " %";
    }
}
