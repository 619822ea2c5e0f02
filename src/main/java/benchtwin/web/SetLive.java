package benchtwin.web;

import benchtwin.bench.BadInput;
import benchtwin.bench.SetRun;
import benchtwin.bench.SetRuns;
import io.javalin.config.RoutesConfig;
import io.javalin.http.sse.SseClient;
import java.time.Duration;
import java.util.Map;
import java.util.concurrent.atomic.AtomicInteger;

/** Tells a page that is looked at how a plan of sets gets better, a few times a second at most, until it is over. */
final class SetLive implements Routes {

    /** Each holds a thread; who comes later reloads. */
    private static final int MOST_WATCHING = 12;
    private static final Duration PATIENCE = Duration.ofSeconds(1);
    private static final long BREATH_MS = 400;

    private final Site site;
    private final SetRuns runs;
    private final AtomicInteger watching = new AtomicInteger();

    SetLive(Site site, SetRuns runs) {
        this.site = site;
        this.runs = runs;
    }

    @Override
    public void add(RoutesConfig routes) {
        routes.sse("/sets/{id}/events", this::tell);
    }

    private void tell(SseClient client) {
        if (watching.incrementAndGet() > MOST_WATCHING) {
            watching.decrementAndGet();
            client.sendEvent("full", "reload to see how it stands");
            return;
        }
        try {
            SetRun run = runs.get(client.ctx().pathParam("id"));
            SetRun.Now now = run.now();
            while (!now.over() && !client.terminated()) {
                client.sendEvent("now", site.filled("setNow", Map.of("now", now)).replaceAll("\\s*\\n\\s*", " "));
                Thread.sleep(BREATH_MS);
                now = run.after(now.version(), PATIENCE);
            }
            client.sendEvent("over", run.id());
        } catch (BadInput gone) {
            client.sendEvent("over", "gone");
        } catch (InterruptedException closing) {
            Thread.currentThread().interrupt();
        } finally {
            watching.decrementAndGet();
        }
    }
}
