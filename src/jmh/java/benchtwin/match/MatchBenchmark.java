package benchtwin.match;

import benchtwin.club.Inventory;
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

/** A whole match for a cracked driver: every head of one model and hand, one third with 6 × 5 sleeves. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 4, time = 2)
@Measurement(iterations = 5, time = 2)
public class MatchBenchmark {

    /** Heads in stock. */
    @Param({"200", "2000", "10000", "100000"})
    public int heads;

    private MatchRequest request;

    /** Builds the stock. */
    @Setup
    public void stock() throws FavouriteOfRecord.NothingToMatch {
        Inventory inventory = new RandomStock(1).inventory(heads, 1 / 3.0, 10);
        Favourite favourite = FavouriteOfRecord.of(inventory.clubs().get(0), inventory, Tolerances.DEFAULT);
        request = new MatchRequest(favourite, inventory, Keep.SHAFT, false, 5, ShopSettings.DEFAULT,
            OptionalDouble.empty());
    }

    /** Screening, ranking, uncertainty and ties. */
    @Benchmark
    public MatchAnswer headsForAnOldShaft() {
        return Match.run(request);
    }
}
