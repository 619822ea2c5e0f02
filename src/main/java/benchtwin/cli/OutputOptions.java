package benchtwin.cli;

import benchtwin.bench.BadInput;
import java.io.PrintWriter;
import picocli.CommandLine.Option;

/** How an answer is printed: as a page, in plain characters, or as JSON. */
final class OutputOptions {

    @Option(names = "--json", order = 41, description = "print one JSON object")
    private boolean json;
    @Option(names = "--plain", order = 42, description = "print ASCII only")
    private boolean plain;

    boolean isJson() {
        return json;
    }

    boolean isPlain() {
        return plain;
    }

    Page page(PrintWriter writer) {
        return new Page(writer, plain);
    }

    /** Refuses what JSON leaves no room for, in a command without reasons to show. */
    void check() throws BadInput {
        if (json && plain) {
            throw new BadInput("--json is one object in any case; leave out --plain");
        }
    }

    /**
     * The same in a command that can show reasons.
     * @param why whether they are asked for
     */
    void check(boolean why) throws BadInput {
        if (json && (why || plain)) {
            throw new BadInput("--json prints everything already; leave out --why and --plain");
        }
    }
}
