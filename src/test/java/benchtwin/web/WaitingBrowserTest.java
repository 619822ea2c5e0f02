package benchtwin.web;

import benchtwin.bench.AnswerMemory;
import benchtwin.bench.BadInput;
import benchtwin.bench.WayIn;
import benchtwin.bench.Workshop;
import benchtwin.club.Inventory;
import java.time.Clock;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;

/** The page that waits for its answer, and how it turns into the answer by itself. */
class WaitingBrowserTest {

    private static final CountDownLatch NOBODY_LOOKS = new CountDownLatch(1);
    private static final CountDownLatch SLOW = new CountDownLatch(1);

    @RegisterExtension
    static final WebBook PAGES = new WebBook(Access.here(), Clock.systemUTC(), List.of(slow("/slow", NOBODY_LOOKS), slow("/turning", SLOW)));
    @RegisterExtension
    static final Browser BROWSER = Browser.at(PAGES);

    /** A page whose answer is there once a latch opens. */
    private static Routes slow(String path, CountDownLatch latch) {
        AnswerMemory<String> answers = new AnswerMemory<>();
        Workshop stock = new Workshop(Inventory.EMPTY, List.of(), WayIn.PAGES);
        return routes -> routes.get(path, ctx -> ctx.html("<main><h1>" + Waiting.answer(answers, Optional.of(Duration.ZERO), stock, path,
            () -> waitedFor(latch)) + "</h1></main>"));
    }

    private static String waitedFor(CountDownLatch latch) throws BadInput {
        try {
            latch.await();
            return "There it is";
        } catch (InterruptedException stopped) {
            throw new BadInput("stopped");
        }
    }

    @AfterAll
    static void letGo() {
        NOBODY_LOOKS.countDown();
    }

    @Test
    void itLooksLikeEveryOtherPage() {
        Look.at(BROWSER, "waiting", "/slow");
    }

    @Test
    void itTurnsIntoTheAnswerByItself() {
        BROWSER.open("/turning").sees("The whole stock is being looked through");
        SLOW.countDown();
        BROWSER.sees("There it is");
    }
}
