package benchtwin.match;

import static org.assertj.core.api.Assertions.assertThat;

import benchtwin.club.Shaft;
import benchtwin.mechanics.Assembler;
import benchtwin.mechanics.Assembly;
import benchtwin.mechanics.CutClub;
import benchtwin.mechanics.Setup;
import benchtwin.mechanics.Stiffness;
import benchtwin.mechanics.MechanicsDefaults;
import java.util.Optional;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What the search by halves relies on: at one length, a longer tip trim is never softer by more than its slack. */
class TrimPropertyTest {

    private static final double SLACK_CPM = 0.3;

    static LongStream seeds() {
        return LongStream.range(1, 40);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void atOneLengthALongerTipTrimIsStiffer(long seed) {
        RandomStock stock = new RandomStock(seed);
        Shaft shaft = stock.shaft("S", false);
        Assembly club = Assembler.of(stock.bored("H"), shaft, Optional.empty(), Optional.of(RandomStock.grip()));
        double root = Stiffness.rootFromRaw(club);
        double highest = 0;
        for (double trim = 0; trim <= 42; trim += 25.4 / 8) {
            CutClub cut = new CutClub(club, new Setup(trim, 60 - trim, 0, 0, 1, 0, 0, Setup.AS_READ),
                MechanicsDefaults.CLAMP_MM);
            double cpm = cut.unitMode(cut.headCgMm(58), 0).cpm() * root;
            assertThat(cpm).isGreaterThan(highest - SLACK_CPM);
            highest = Math.max(highest, cpm);
        }
    }

}
