package benchtwin.web;

import benchtwin.bench.AnswerMemory;
import benchtwin.bench.BadInput;
import benchtwin.bench.Workshop;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.Duration;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;

/**
 * Answers that take longer than a page may: of a stock of thousands every pair of a backup, every way to change a club. After a moment
 * the page says so and asks again each second; the answer goes on being worked out meanwhile. Without scripts there is a link.
 */
final class Waiting implements Routes {

    /** How long a page waits for its answer; what it takes itself comes to it. */
    static final Duration PATIENCE = Duration.ofMillis(350);
    /** Of a part that is opened, or of what was sent. */
    static final Optional<Duration> FOR_EVER = Optional.empty();
    /** Says that a page or a part of one is only asking whether its answer is there. */
    private static final String HEADER = "X-Waiting";
    private static final String FOR_PAGE = "page";
    private static final int ACCEPTED = 202;
    private static final int NOTHING_NEW = 204;
    private static final int FAULT = 500;

    /** There is no answer yet. */
    private static final class NotYet extends RuntimeException {
        private static final long serialVersionUID = 1;

        NotYet() {
            super(null, null, false, false);
        }
    }

    private final Site site;

    Waiting(Site site) {
        this.site = site;
    }

    /**
     * The answer, where it is there in time; else the request is answered with a page that waits for it.
     * @param among    the answers of this kind
     * @param patience how long to wait; for ever when empty
     * @param newest   the stock
     * @param asked    what is asked
     * @param asks     works it out
     */
    static <A> A answer(AnswerMemory<A> among, Optional<Duration> patience, Workshop newest, Object asked, AnswerMemory.Asks<A> asks)
        throws BadInput {
        return among.within(patience, newest, asked, asks).orElseThrow(NotYet::new);
    }

    /** The same for what an answer needs: where it is not there in time, the page waits for it. */
    static void until(CountDownLatch there, Optional<Duration> patience) {
        try {
            if (patience.isPresent() && !there.await(patience.get().toMillis(), TimeUnit.MILLISECONDS)) {
                throw new NotYet();
            }
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
        }
    }

    @Override
    public void add(RoutesConfig routes) {
        routes.exception(NotYet.class, (notYet, ctx) -> say(ctx));
        routes.after(ctx -> {
            boolean there = ctx.statusCode() != NOTHING_NEW && ctx.statusCode() != ACCEPTED;
            if (there && ctx.header(HEADER) != null && (FOR_PAGE.equals(ctx.header(HEADER)) || ctx.statusCode() >= FAULT)) {
                ctx.header("HX-Refresh", "true");
            }
        });
    }

    private void say(Context ctx) {
        if (ctx.header(HEADER) != null) {
            ctx.status(NOTHING_NEW);
            return;
        }
        String address = ctx.path() + (ctx.queryString() == null ? "" : "?" + ctx.queryString());
        ctx.status(ACCEPTED);
        if (Site.wantsPart(ctx)) {
            site.part(ctx, "waiting", Map.of("address", address, "whole", false));
        } else {
            site.page(ctx, "waitingPage", "Working it out", Section.NONE, Map.of("address", address));
        }
    }
}
