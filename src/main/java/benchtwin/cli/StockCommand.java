package benchtwin.cli;

import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** {@code benchtwin stock}. */
@Command(name = "stock", mixinStandardHelpOptions = true, subcommands = StockCheckCommand.class,
    description = "The workshop's parts.",
    footer = {"", "Example:", "  benchtwin stock check inventory-samples/heads.csv"})
final class StockCommand implements Runnable {

    @Spec
    private CommandSpec spec;

    @Override
    public void run() {
        spec.commandLine().usage(spec.commandLine().getOut());
    }
}
