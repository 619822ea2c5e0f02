package benchtwin.match;

import benchtwin.club.Inventory;
import benchtwin.club.Shaft;
import java.util.List;
import java.util.OptionalDouble;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** The best backup from 1,000 heads and 1,000 shafts. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 2, time = 4)
@Measurement(iterations = 3, time = 4)
public class PairBenchmark {

    /** {@code mixed}: one shaft in eight is cut, with sleeve and grip on; {@code raw}: all are as made. */
    @Param({"mixed", "raw"})
    public String drawer;

    private MatchRequest request;

    /** Builds the stock. */
    @Setup
    public void stock() throws FavouriteOfRecord.NothingToMatch {
        Inventory all = new RandomStock(1).inventory(1000, 1 / 3.0, 1140);
        List<Shaft> shafts = all.shafts().stream()
            .filter(s -> s.tag().equals("KEPT") || drawer.equals("mixed") || s.sleeveOn().isEmpty()).limit(1001).toList();
        Inventory inventory =
            new Inventory(all.heads(), shafts, all.grips(), all.sleeves(), all.weights(), all.clubs());
        Favourite favourite = FavouriteOfRecord.of(inventory.clubs().get(0), inventory, Tolerances.DEFAULT);
        request = new MatchRequest(favourite, inventory, Keep.NONE, false, 5, ShopSettings.DEFAULT,
            OptionalDouble.empty());
    }

    /** The whole match. */
    @Benchmark
    public MatchAnswer backupFromStock() {
        return Match.run(request);
    }
}
