package benchtwin.web;

import benchtwin.bench.BadInput;
import benchtwin.bench.OpenBook;
import io.javalin.Javalin;
import io.javalin.config.JavalinConfig;
import io.javalin.config.SizeUnit;
import io.javalin.util.JavalinBindException;
import java.util.List;

/** The pages, served. */
public final class BenchServer implements AutoCloseable {

    /** Only programs on this machine can reach it. */
    static final String LOOPBACK = "127.0.0.1";
    /** No form is longer, bytes; a season's list of shafts is two megabytes. */
    private static final long MOST_UPLOAD_MB = 16;
    private static final long MOST_FORM = 256 * 1024;

    private final Javalin server;

    private BenchServer(Javalin server) {
        this.server = server;
    }

    /**
     * Starts the pages of a book on the loopback address.
     * @param book the workshop's book
     * @param port the port; 0 for any that is free
     * @return the running server
     * @throws BadInput when the port is taken
     */
    public static BenchServer start(OpenBook book, int port) throws BadInput {
        Site site = new Site(book);
        Javalin server = Javalin.create(config -> configure(config, site, port));
        try {
            server.start();
        } catch (JavalinBindException taken) {
            throw new BadInput("port %d is taken by another program; give another with --port".formatted(port));
        }
        return new BenchServer(server);
    }

    private static void configure(JavalinConfig config, Site site, int port) {
        config.startup.showJavalinBanner = false;
        config.startup.showOldJavalinVersionWarning = false;
        config.startup.startupWatcherEnabled = false;
        config.jetty.host = LOOPBACK;
        config.jetty.port = port;
        config.jetty.modifyHttpConfiguration(http -> {
            http.setSendServerVersion(false);
            http.setSendDateHeader(false);
        });
        config.jetty.multipartConfig.maxFileSize(MOST_UPLOAD_MB, SizeUnit.MB);
        config.jetty.multipartConfig.maxTotalRequestSize(2 * MOST_UPLOAD_MB, SizeUnit.MB);
        config.http.maxRequestSize = MOST_FORM;
        config.http.defaultContentType = "text/html; charset=utf-8";
        new Guard(site).add(config.routes);
        for (Routes routes : List.of(new Assets(), new TodayPages(site), new FindPages(site), new StockPages(site), new ClubPages(site),
            new MatchPages(site), new BendPages(site))) {
            routes.add(config.routes);
        }
        new Trouble(site).add(config.routes);
    }

    /**
     * Where it listens.
     * @return the port
     */
    public int port() {
        return server.port();
    }

    @Override
    public void close() {
        server.stop();
    }
}
