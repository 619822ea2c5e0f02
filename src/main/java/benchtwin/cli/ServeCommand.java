package benchtwin.cli;

import benchtwin.bench.BadInput;
import benchtwin.bench.OpenBook;
import benchtwin.web.Access;
import benchtwin.web.BenchServer;
import java.io.PrintWriter;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** {@code benchtwin serve}. */
@Command(name = "serve", mixinStandardHelpOptions = true, sortOptions = false,
    description = "The pages: the bench in a browser, on this machine alone unless --lan is given. Ctrl-C ends it; nothing entered is lost.",
    footer = {"", "Examples:", "  benchtwin serve --open", "  benchtwin serve --lan --host bench.local"})
final class ServeCommand implements Callable<Integer> {

    private static final int MOST_PORT = 65_535;
    private static final String IN_THE_CLEAR = "Without a certificate the passphrase and everything else travel in the clear: whoever "
        + "listens on the network can%nread them. Use a network of your own, and a passphrase you use nowhere else; or give --certificate.%n";

    @Spec
    private CommandSpec spec;
    @Option(names = "--port", paramLabel = "N", order = 1, defaultValue = "8417", description = "the port; 0 for any that is free; default ${DEFAULT-VALUE}")
    private int port;
    @Option(names = "--open", order = 2, description = "open the first page in your browser")
    private boolean open;
    @Mixin
    private LanOptions lan;
    @Mixin
    private BookOptions book;

    @Override
    public Integer call() throws BadInput {
        if (port < 0 || port > MOST_PORT) {
            throw new BadInput("--port %d: expected 0 to %d".formatted(port, MOST_PORT));
        }
        lan.check();
        OpenBook served = book.open();
        PrintWriter out = spec.commandLine().getOut();
        Access access = lan.access(served.file(), Secrets.atTheTerminal(), out);
        try (BenchServer server = BenchServer.start(served, port, access)) {
            say(out, served, server.port());
            CountDownLatch ended = new CountDownLatch(1);
            Runtime.getRuntime().addShutdownHook(new Thread(ended::countDown));
            ended.await();
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
        }
        return Main.DONE;
    }

    private void say(PrintWriter out, OpenBook served, int listening) {
        String here = address("localhost", listening);
        out.printf("The pages of %s are at %s%n", served.file(), here);
        if (lan.isLan()) {
            out.printf("From other machines: %s%n", Stream.concat(OwnAddresses.shortOnes().stream(), lan.names().stream())
                .map(name -> address(name, listening)).collect(Collectors.joining(", ")));
            if (!lan.isEncrypted()) {
                out.printf(IN_THE_CLEAR);
            }
        }
        if (open && !SystemBrowser.open(here)) {
            out.printf("No browser could be opened from here; open %s yourself.%n", here);
        }
        out.println("Ctrl-C ends them.");
        out.flush();
    }

    private String address(String name, int listening) {
        return "%s://%s:%d/".formatted(lan.isEncrypted() ? "https" : "http", name, listening);
    }
}
