package benchtwin.cli;

import java.io.PrintWriter;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** A command that does nothing by itself but say which commands it has. */
abstract class CommandGroup implements Runnable {

    @Spec
    private CommandSpec spec;

    @Override
    public void run() {
        spec.commandLine().usage(out());
    }

    /** Where answers go. */
    final PrintWriter out() {
        return spec.commandLine().getOut();
    }
}
