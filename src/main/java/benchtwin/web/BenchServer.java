package benchtwin.web;

import benchtwin.bench.BadInput;
import benchtwin.bench.OpenBook;
import io.javalin.Javalin;
import io.javalin.config.JavalinConfig;
import io.javalin.util.JavalinBindException;
import java.time.Clock;
import java.time.Duration;
import java.util.List;

/** The pages, served. */
public final class BenchServer implements AutoCloseable {

    /** The book may be moved or deleted once the pages have ended, so what still reads in it is waited for. */
    private static final long MOST_WAIT_MS = 5_000;

    private final Javalin server;
    private final Site site;
    private final Thread reading;

    private BenchServer(Javalin server, Site site, Thread reading) {
        this.server = server;
        this.site = site;
        this.reading = reading;
    }

    /**
     * Starts the pages of a book on the loopback address, for programs on this machine alone.
     * @param book the workshop's book
     * @param port the port; 0 for any that is free
     * @return the running server
     * @throws BadInput when the port is taken
     */
    public static BenchServer start(OpenBook book, int port) throws BadInput {
        return start(book, port, Access.here());
    }

    /**
     * Starts the pages of a book.
     * @param book   the workshop's book
     * @param port   the port; 0 for any that is free
     * @param access who may reach them
     * @return the running server
     * @throws BadInput when the port is taken
     */
    public static BenchServer start(OpenBook book, int port, Access access) throws BadInput {
        return start(book, port, access, Clock.systemUTC(), Waiting.PATIENCE, List.of());
    }

    /** The same by another clock, with another patience and with more routes, for tests. */
    static BenchServer start(OpenBook book, int port, Access access, Clock clock, Duration patience, List<Routes> more) throws BadInput {
        Site site = new Site(book, patience);
        Javalin server = Javalin.create(config -> configure(config, site, new Listening(access, port), new Door(access, clock), clock, more));
        try {
            server.start();
        } catch (JavalinBindException taken) {
            throw new BadInput("port %d is taken by another program; give another with --port".formatted(port));
        }
        Thread first = new Thread(site::readAhead, "first reading of the stock");
        first.setDaemon(true);
        first.start();
        return new BenchServer(server, site, first);
    }

    private static void configure(JavalinConfig config, Site site, Listening listening, Door door, Clock clock, List<Routes> more) {
        config.startup.showJavalinBanner = false;
        config.startup.showOldJavalinVersionWarning = false;
        config.startup.startupWatcherEnabled = false;
        listening.configure(config.jetty);
        config.http.maxRequestSize = BodyLimit.FORM;
        config.http.prefer405over404 = true;
        config.http.defaultContentType = "text/html; charset=utf-8";
        new Guard(listening.access(), door).add(config.routes);
        new SignInPages(site, listening.access(), door, clock).add(config.routes);
        for (Routes routes : List.of(new Assets(), new TodayPages(site), new FindPages(site), new ClubPages(site), new ClubMadePages(site),
            new ReadingPages(site), new PlayerPages(site), new JobPages(site), new NotePages(site), new LabelPages(site), new TicketPages(site),
            new ImportPages(site), new StockPages(site), new RegripPages(site), new GaugePages(site), new BookPages(site),
            new PartReadingPages(site), new CorrectionPages(site), new SetPages(site, site.sets()), new MatchPages(site),
            new ShaftsPages(site), new ChangePages(site), new BendPages(site), new RulesPages(site),
            new PredictPages(site), new ProfilePages(site), new HowPages(site), new Waiting(site))) {
            routes.add(config.routes);
        }
        more.forEach(routes -> routes.add(config.routes));
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
        site.sets().close();
        server.stop();
        try {
            reading.join(MOST_WAIT_MS);
        } catch (InterruptedException hurry) {
            Thread.currentThread().interrupt();
        }
    }
}
