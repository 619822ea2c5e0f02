package benchtwin.match;

import benchtwin.club.Inventory;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
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

/** A whole choice of shafts for a new head: every shaft trimmed, predicted and ranked, the picks explained. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 4, time = 2)
@Measurement(iterations = 5, time = 2)
public class ShaftBenchmark {

    /** Shafts in the drawer. */
    @Param({"200", "5000", "100000"})
    public int shafts;

    private Inventory inventory;
    private Favourite club;

    /** Builds the drawer. */
    @Setup
    public void stock() throws FavouriteOfRecord.NothingToMatch {
        inventory = new RandomStock(1).inventory(1, 0, shafts);
        club = FavouriteOfRecord.of(inventory.clubs().get(0), inventory, Tolerances.DEFAULT);
    }

    private ShaftAnswer choose(Pick pick) throws ShaftChoice.NothingToChooseFor {
        return ShaftChoice.run(new ShaftRequest(club, inventory.heads().get(1), inventory, ShopSettings.DEFAULT,
            Tolerances.DEFAULT, Map.of(), OptionalDouble.empty(), Optional.empty(), false, Set.of(),
            new ShaftRequest.Picking(pick, 12, 200, 3, 5)));
    }

    /** The nearest twelve. */
    @Benchmark
    public ShaftAnswer nearest() throws ShaftChoice.NothingToChooseFor {
        return choose(Pick.NEAREST);
    }

    /** A ladder of five. */
    @Benchmark
    public ShaftAnswer ladder() throws ShaftChoice.NothingToChooseFor {
        return choose(Pick.LADDER);
    }
}
