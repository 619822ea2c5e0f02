package benchtwin.mechanics;

import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** Club frequencies a second on one core, the beam built anew for each. */
@State(Scope.Thread)
@BenchmarkMode(org.openjdk.jmh.annotations.Mode.Throughput)
@OutputTimeUnit(TimeUnit.SECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
public class FrequencyBenchmark {

    private final Assembly club = Samples.driverClub();
    private final Setup setup = Setup.plain(1, 0);
    private double grams;

    /** Cuts, balance and first mode of one club. */
    @Benchmark
    public double clubFrequency() {
        grams = grams > 10 ? 0 : grams + 0.01;
        CutClub cut = new CutClub(club, setup, MechanicsDefaults.CLAMP_MM);
        return cut.unitMode(cut.headCgMm(58), grams).cpm();
    }
}
