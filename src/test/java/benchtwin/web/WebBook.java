package benchtwin.web;

import benchtwin.bench.BadInput;
import benchtwin.bench.OpenBook;
import benchtwin.samples.PastWorkshop;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.extension.AfterAllCallback;
import org.junit.jupiter.api.extension.BeforeAllCallback;
import org.junit.jupiter.api.extension.ExtensionContext;

/**
 * The pages of a book of its own with the sample workshop in it, served on any free port from the first test of a class to its last:
 * {@code @RegisterExtension static final WebBook PAGES = new WebBook();}
 */
final class WebBook implements BeforeAllCallback, AfterAllCallback {

    private final Access access;
    private final Clock clock;
    private final Duration patience;
    private final List<Routes> more;
    private Path folder;
    private OpenBook book;
    private BenchServer server;

    /** On this machine alone. */
    WebBook() {
        this(Access.here(), Clock.systemUTC(), List.of());
    }

    /** By another access and clock, with more routes. */
    WebBook(Access access, Clock clock, List<Routes> more) {
        this(access, clock, Duration.ofMinutes(1), more);
    }

    /** Pages that say at once of every answer that it is being worked out. */
    static WebBook ofNoPatience() {
        return new WebBook(Access.here(), Clock.systemUTC(), Duration.ZERO, List.of());
    }

    private WebBook(Access access, Clock clock, Duration patience, List<Routes> more) {
        this.patience = patience;
        this.access = access;
        this.clock = clock;
        this.more = more;
    }

    @Override
    public void beforeAll(ExtensionContext context) throws IOException, BadInput {
        folder = Files.createTempDirectory("benchtwin-pages");
        Path file = folder.resolve("samples.book");
        PastWorkshop.into(file);
        book = OpenBook.open(Optional.of(file), Optional.of("Jo"));
        server = BenchServer.start(book, 0, access, clock, patience, more);
    }

    @Override
    public void afterAll(ExtensionContext context) throws IOException {
        if (server != null) {
            server.close();
        }
        try (Stream<Path> files = Files.walk(folder)) {
            List<Path> deepestFirst = files.sorted(Comparator.reverseOrder()).toList();
            for (Path file : deepestFirst) {
                Files.delete(file);
            }
        }
    }

    /** The book that is served, to look into or to enter something behind the pages' back. */
    OpenBook book() {
        return book;
    }

    int port() {
        return server.port();
    }

    /** The whole address of a page. */
    String url(String path) {
        return "http://localhost:" + port() + path;
    }
}
