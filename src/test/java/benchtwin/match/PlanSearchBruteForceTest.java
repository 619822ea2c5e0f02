package benchtwin.match;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import benchtwin.club.AddedMasses;
import benchtwin.club.Head;
import benchtwin.club.Inventory;
import benchtwin.club.Quantity;
import benchtwin.club.StepKind;
import benchtwin.mechanics.HoselTilt;
import benchtwin.mechanics.Input;
import benchtwin.mechanics.Setup;
import benchtwin.mechanics.SleeveSettings;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The fast search against every plan on a coarse grid, each costed the long way: the whole model predicted anew, effort added
 * up step by step from the handbook's table.
 */
class PlanSearchBruteForceTest {

    /** Coarse enough to try everything: half degrees, 2 g, 5 mm. */
    private static final ShopSettings COARSE =
        new ShopSettings(0.5, 2, 5, 25.4, 4, 10, 5, 1440, 120, Map.of(), 0.002, 0.05, 0.02, 0.005);

    private static final Tolerances TORQUE_TOO = new Tolerances(Map.of(Quantity.TORQUE, 0.05), Map.of(Quantity.TORQUE, 2.0));

    static LongStream seeds() {
        return LongStream.range(1, 7);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void noPlanOnTheGridCostsLess(long seed) throws FavouriteOfRecord.NothingToMatch {
        Inventory stock = new RandomStock(seed).inventory(6, 0.5, 3);
        Favourite favourite = FavouriteOfRecord.of(stock.clubs().get(0), stock,
            seed % 2 == 0 ? TORQUE_TOO : Tolerances.DEFAULT);
        TwinModel twin = new TwinModel(favourite.old(), Keep.SHAFT, favourite.condition(), favourite.reading());
        PlanSearch search = new PlanSearch(favourite.target(), twin, COARSE, stock.weights(), AddedMasses.ONE_LAYER,
            Double.POSITIVE_INFINITY, Levers.ALL);
        List<Candidate> candidates =
            new Screening(favourite, stock, false).headsForTheOldShaft().fit();
        assertThat(candidates).hasSizeGreaterThan(3);
        for (Candidate candidate : candidates) {
            double least = everyPlan(candidate, favourite, twin, stock);
            FoundPlan found = search.best(candidate, Double.POSITIVE_INFINITY);
            assertThat(found.cost()).as(candidate.head().tag()).isCloseTo(least, within(1e-10));
            assertThat(search.best(candidate, least - 1e-9) == null).as("nothing below the least").isTrue();
        }
    }

    private record Aimed(Setup.Aim aim, double effort) {
    }

    private static double everyPlan(Candidate candidate, Favourite favourite, TwinModel twin, Inventory stock) {
        double joining = candidate.joining().stream().mapToDouble(s -> 0.002 * s.kind().defaultMinutes()).sum();
        double least = Double.POSITIVE_INFINITY;
        double[] ports = {4, 2, 6, 9};
        double[] tips = candidate.tipFree() ? new double[] {0, 2} : new double[] {0};
        for (Aimed aimed : aims(candidate)) {
            for (double port : ports) {
                for (double tape = 0; tape <= 4; tape += 2) {
                    for (double melt = 0; melt <= candidate.head().hotMeltMaxG(); melt += 2) {
                        for (double tip : tips) {
                            for (int butt = -10; butt <= 10; butt += 5) {
                                double effort = joining + aimed.effort() + (port == 4 ? 0 : 0.002)
                                    + Math.max(0, port - 4) * 0.005 + (tape > 0 ? 0.002 : 0) + tape * 0.005
                                    + (melt > 0 ? 0.02 : 0) + melt * 0.005 + (tip > 0 ? 0.02 + 0.005 * tip : 0)
                                    + (butt > 0 ? 0.002 * (5 + 5) + 0.05 : butt < 0 ? 0.002 * (8 + 5) + 0.005 * 5 : 0);
                                Setup setup = new Setup(0, Math.max(0, butt), Math.max(0, -butt), butt < 0 ? 5 : 0, 1,
                                    port + tape + melt, tip, aimed.aim());
                                double miss = CostTerms.missSquared(favourite.target(),
                                    twin.predict(candidate.assembly(), setup));
                                least = Math.min(least, miss + effort);
                            }
                        }
                    }
                }
            }
        }
        return least;
    }

    private static List<Aimed> aims(Candidate candidate) {
        List<Aimed> aims = new ArrayList<>();
        Head head = candidate.head();
        if (candidate.sleeve().isPresent()) {
            for (String label : SleeveSettings.labels(candidate.sleeve().get())) {
                Setup.Aim aim = SleeveSettings.aim(candidate.sleeve().get(), head.hand(),
                    head.seat().orElseThrow().readAtSetting(), label).orElseThrow();
                aims.add(new Aimed(aim, candidate.settingNow().equals(Optional.of(label)) ? 0
                    : 0.002 * StepKind.SLEEVE_SETTING.defaultMinutes()));
            }
            return aims;
        }
        aims.add(new Aimed(Setup.AS_READ, 0));
        double lie = candidate.assembly().get(Input.HEAD_LIE_DEG);
        for (double up = -2; up <= 2; up += 0.5) {
            for (double turn = -4; turn <= 4; turn += 0.5) {
                HoselTilt tilt = HoselTilt.forWood(lie, lie + up, turn);
                if ((up != 0 || turn != 0) && candidate.limits().allow(tilt)) {
                    aims.add(new Aimed(new Setup.Tilted(tilt), 0.024 + 0.02 * tilt.totalDeg()));
                }
            }
        }
        return aims;
    }
}
