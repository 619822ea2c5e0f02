package benchtwin.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import benchtwin.match.ShopSettings;
import benchtwin.sets.PlanLimits;
import benchtwin.stock.StockFiles;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

class SetRunsTest {

    private static final PlanLimits UNTIL_TOLD = new PlanLimits(Duration.ZERO, 0, OptionalInt.of(100_000), 1);
    private static Workshop workshop;

    private final AtomicLong nanos = new AtomicLong(1);
    private final SetRuns runs = new SetRuns(nanos::get);

    @BeforeAll
    static void read() throws BadInput {
        workshop = Workshop.load(StockFiles.inFolder(Path.of("inventory-samples")), false);
    }

    private SetRun start(String player) throws BadInput {
        return runs.start(workshop, WantedSets.ofRecord(workshop, List.of(player), false), new SetService.Wish(List.of(), List.of(),
            List.of(), Optional.empty(), ShopSettings.DEFAULT), UNTIL_TOLD, Optional.empty());
    }

    private static void end(SetRun run) throws InterruptedException {
        SetRun.Now now = run.now();
        while (!now.over()) {
            now = run.after(now.version(), Duration.ofSeconds(1));
        }
    }

    @Test
    void oneRunsAtATimeAndTheNextOnceItIsOver() throws Exception {
        SetRun first = start("L. Wexcombe");
        assertThat(runs.running()).contains(first);
        assertThatThrownBy(() -> start("M. Sandrow")).isInstanceOf(BadInput.class)
            .hasMessage("the sets of L. Wexcombe are being planned; one plan at a time: wait for it, or stop it");
        first.stop();
        end(first);
        assertThat(first.answer()).as("the best plan so far is kept").isPresent();
        assertThat(first.isAbandoned()).isFalse();
        assertThat(runs.running()).isEmpty();
        SetRun second = start("M. Sandrow");
        assertThat(second.id()).isNotEqualTo(first.id());
        second.stop();
        end(second);
    }

    @Test
    void aRunNobodyLooksAtEndsWithItsBestPlan() throws Exception {
        SetRun run = start("L. Wexcombe");
        nanos.addAndGet(SetRun.ABANDONED.toNanos() + 1);
        while (!run.isOver()) {
            Thread.sleep(50);   // without looking
        }
        assertThat(run.isAbandoned()).isTrue();
        assertThat(run.answer()).isPresent();
    }

    @Test
    void onlyTheLastPlansAreKept() throws Exception {
        SetRun first = start("M. Sandrow");
        for (int i = 0; i < 5; i++) {
            SetRun run = runs.all().get(0);
            run.stop();
            end(run);
            start("M. Sandrow");
        }
        runs.close();
        end(runs.all().get(0));
        assertThat(runs.all()).hasSize(5).doesNotContain(first);
        assertThatThrownBy(() -> runs.get(first.id())).isInstanceOf(BadInput.class).hasMessageContaining("is not kept");
    }
}
