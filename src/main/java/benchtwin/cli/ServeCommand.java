package benchtwin.cli;

import benchtwin.bench.BadInput;
import benchtwin.bench.OpenBook;
import benchtwin.web.BenchServer;
import java.io.PrintWriter;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** {@code benchtwin serve}. */
@Command(name = "serve", mixinStandardHelpOptions = true, sortOptions = false,
    description = "The pages: the bench in a browser, on this machine alone. Ctrl-C ends it; nothing typed is lost.",
    footer = {"", "Example:", "  benchtwin serve"})
final class ServeCommand implements Callable<Integer> {

    private static final int MOST_PORT = 65_535;

    @Spec
    private CommandSpec spec;
    @Option(names = "--port", paramLabel = "N", order = 1, defaultValue = "8417", description = "the port; 0 for any that is free; default ${DEFAULT-VALUE}")
    private int port;
    @Mixin
    private BookOptions book;

    @Override
    public Integer call() throws BadInput {
        if (port < 0 || port > MOST_PORT) {
            throw new BadInput("--port %d: expected 0 to %d".formatted(port, MOST_PORT));
        }
        OpenBook open = book.open();
        PrintWriter out = spec.commandLine().getOut();
        try (BenchServer server = BenchServer.start(open, port)) {
            out.printf("The pages of %s are at http://localhost:%d/%nCtrl-C ends them.%n", open.file(), server.port());
            out.flush();
            CountDownLatch ended = new CountDownLatch(1);
            Runtime.getRuntime().addShutdownHook(new Thread(ended::countDown));
            ended.await();
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
        }
        return Main.DONE;
    }
}
