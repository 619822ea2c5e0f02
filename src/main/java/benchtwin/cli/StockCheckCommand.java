package benchtwin.cli;

import benchtwin.bench.StockCheckJson;
import benchtwin.stock.Fault;
import benchtwin.stock.StockCheck;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code benchtwin stock check}. */
@Command(name = "check", mixinStandardHelpOptions = true,
    description = "Read stock files and report every fault with its line, column, value and what was expected. Files given "
        + "together are checked against each other. Nothing is changed.",
    footer = {"", "Example:", "  benchtwin stock check inventory-samples/*.csv",
        "", "Exit status: 0 no faults (there may be warnings), 2 faults."})
final class StockCheckCommand implements Callable<Integer> {

    @Spec
    private CommandSpec spec;
    @Parameters(arity = "1..*", paramLabel = "FILE", description = "CSV files: heads, shafts, grips, sleeves, weights, "
        + "clubs, sleeve-settings, frequencies, set-targets, lines")
    private List<Path> files;
    @Option(names = "--json", description = "print one JSON object")
    private boolean json;

    @Override
    public Integer call() {
        StockCheck check = StockCheck.check(files);
        PrintWriter out = spec.commandLine().getOut();
        if (json) {
            out.println(StockCheckJson.text(check));
        } else {
            print(out, check);
        }
        return check.isClean() ? Main.DONE : Main.BAD_INPUT;
    }

    private static void print(PrintWriter out, StockCheck check) {
        check.faults().stream().map(Fault::text).forEach(out::println);
        if (check.faultCount() > check.faults().size()) {
            out.println("and %d more faults".formatted(check.faultCount() - check.faults().size()));
        }
        check.warnings().forEach(warning -> out.println("warning: " + warning.text()));
        if (check.warningCount() > check.warnings().size()) {
            out.println("and %d more warnings".formatted(check.warningCount() - check.warnings().size()));
        }
        for (StockCheck.CheckedFile file : check.files()) {
            out.println("%s: %d rows%s%s".formatted(file.file(), file.rows(),
                file.kind().map(kind -> " of " + kind.word()).orElse(""),
                file.unknownColumns().isEmpty() ? "" : "; columns not known here, kept as they are: "
                    + String.join(", ", file.unknownColumns())));
        }
        String warnings = count(check.warningCount(), "warning");
        out.println(check.isClean() ? "No faults, %s.".formatted(warnings)
            : "%s, %s: nothing of these files would be read unless the good rows are asked for."
                .formatted(count(check.faultCount(), "fault"), warnings));
    }

    private static String count(int count, String what) {
        return count + " " + what + (count == 1 ? "" : "s");
    }
}
