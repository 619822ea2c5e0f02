package benchtwin.web;

import benchtwin.bench.BadInput;
import benchtwin.bench.OpenBook;
import benchtwin.bench.SetRuns;
import benchtwin.bench.StockList;
import benchtwin.bench.StockMemory;
import benchtwin.bench.Workshop;
import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import io.javalin.http.Context;
import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;

/** What every page shares: the book, the stock as it was last read, the templates. */
final class Site {

    /** Where the browser's own token is kept while a request is answered. */
    static final String TOKEN = "token";
    /** Where it is kept how the browser stands to the pages. */
    static final String STANDING = "standing";
    private static final String THEME = "theme";
    private static final String WHO = "who";
    private static final String SAID = "said";
    /** A name of 60 letters, each written with nine characters. */
    private static final int MOST_WHO = 1000;

    private final OpenBook book;
    private final Optional<Duration> patience;
    private final CountDownLatch read = new CountDownLatch(1);
    private final StockMemory stock = new StockMemory();
    private final StockList parts = new StockList();
    private final SetRuns sets = new SetRuns();
    private final Notices notices = new Notices();
    private final TemplateEngine templates = TemplateEngine.createPrecompiled(null, ContentType.Html, Site.class.getClassLoader(),
        Site.class.getPackageName());

    /**
     * @param book     the workshop's
     * @param patience how long a page waits for an answer before it says that it is being worked out
     */
    Site(OpenBook book, Duration patience) {
        this.book = book.onPages();
        this.patience = Optional.of(patience);
    }

    /**
     * How long a page waits for its answer: where it has something to say of what was sent, for ever, or that would be lost; and where a
     * job is planned, as the stock is read for that alone and no answer is kept of it.
     */
    Optional<Duration> patience(Optional<String> job, List<String> messages) {
        return messages.isEmpty() && job.isEmpty() ? patience : Waiting.FOR_EVER;
    }

    OpenBook book() {
        return book;
    }

    /** The book in the hands of who uses this browser. */
    OpenBook book(Context ctx) {
        String name = who(ctx);
        return name.isEmpty() ? book : book.by(name);
    }

    /** What is to be said on the page that comes next. */
    Notices notices() {
        return notices;
    }

    /** Sends a browser on to a page that says something of the last entry. */
    void goOn(Context ctx, String path, List<String> said) {
        ctx.redirect(said.isEmpty() ? path : "%s?%s=%s".formatted(path, SAID, notices.keep(said)));
    }

    StockMemory stock() {
        return stock;
    }

    /** Reads the stock for the first time, so that nobody waits for it; what cannot be read is said when somebody asks. */
    void readAhead() {
        try {
            parts.tally(book, List.of());
            stock.of(book, false);
        } catch (BadInput saidLater) {
            // the page that needs it says what is wrong
        } finally {
            read.countDown();
        }
    }

    /**
     * The stock a question is about, for a page that has the patience to wait for its answer.
     * @param job      a job that was taken on before and is planned: what is promised to it is free for it; empty for none
     * @param asFound  whether clubs are taken as they measure now, not as they should
     * @param patience how long to wait for the first reading of it; for ever when empty
     */
    Workshop stock(Optional<String> job, boolean asFound, Optional<Duration> patience) throws BadInput {
        Waiting.until(read, patience);
        return job.isEmpty() ? stock.of(book, asFound) : Workshop.of(book, job, asFound);
    }

    /** The parts in short. */
    StockList parts() {
        return parts;
    }

    SetRuns sets() {
        return sets;
    }

    /**
     * Answers with a page.
     * @param ctx      the request
     * @param template its file below {@code src/main/jte/web}, without ending
     * @param title    of the page
     * @param section  which entry of the navigation it belongs to
     * @param values   the template's own
     */
    void page(Context ctx, String template, String title, Section section, Map<String, Object> values) {
        Map<String, Object> all = new HashMap<>(values);
        all.put("frame", frame(ctx, title, section));
        ctx.html(filled(template, all));
    }

    /** Answers a script that asked for a part of a page with that part alone. */
    void part(Context ctx, String template, Map<String, Object> values) {
        ctx.html(filled(template, values));
    }

    /**
     * Answers with a drawing: a script with that part alone, else with a page of it.
     * @param ctx     the request
     * @param title   what is drawn
     * @param section which entry of the navigation it belongs to
     * @param svg     the drawing
     * @param back    address of the page it belongs to
     */
    void drawing(Context ctx, String title, Section section, String svg, String back) {
        if (wantsPart(ctx)) {
            part(ctx, "sketch", Map.of("svg", svg, "title", title));
        } else {
            page(ctx, "sketchPage", title, section, Map.of("svg", svg, "back", back));
        }
    }

    String filled(String template, Map<String, Object> values) {
        StringOutput page = new StringOutput();
        templates.render(template + ".jte", values, page);
        return page.toString();
    }

    private Frame frame(Context ctx, String title, Section section) {
        String theme = ctx.cookie(THEME);
        Standing standing = ctx.attribute(STANDING);
        return new Frame(title, section, ctx.attribute(TOKEN), "dark".equals(theme) || "light".equals(theme) ? theme : "",
            ctx.path(), standing == null ? Standing.STRANGER : standing, who(ctx), Form.query(ctx).text(SAID).map(notices::take).orElse(List.of()));
    }

    /** Who enters from this browser; empty when they did not say. */
    static String who(Context ctx) {
        String kept = ctx.cookie(WHO);
        if (kept == null || kept.length() > MOST_WHO) {
            return "";
        }
        try {
            return URLDecoder.decode(kept, StandardCharsets.UTF_8).strip();
        } catch (IllegalArgumentException notOurs) {
            return "";
        }
    }

    /** Whether a script asks for a part of a page. */
    static boolean wantsPart(Context ctx) {
        return "true".equals(ctx.header("HX-Request")) && !"true".equals(ctx.header("HX-Boosted"));
    }
}
