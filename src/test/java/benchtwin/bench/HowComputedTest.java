package benchtwin.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import benchtwin.club.Quantity;
import benchtwin.match.Keep;
import benchtwin.match.MatchAnswer;
import benchtwin.match.Ranked;
import benchtwin.match.ShopSettings;
import benchtwin.match.Tolerances;
import benchtwin.match.Workings;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is said to stand behind a number does make the number, and its uncertainty. */
class HowComputedTest {

    private static MatchAnswer answer;

    @BeforeAll
    static void match(@TempDir Path folder) throws BadInput {
        answer = answer(folder, Map.of());
    }

    private static MatchAnswer answer(Path folder, Map<String, Map<Quantity, Double>> readings) throws BadInput {
        Workshop workshop = Workshop.of(BenchBooks.samples(folder), Optional.empty(), false);
        return MatchService.twinOf(workshop, "OAKES-DR", new MatchService.Wish(Keep.SHAFT, false, 3, Tolerances.DEFAULT, ShopSettings.DEFAULT,
            OptionalDouble.empty(), readings, Set.of()));
    }

    private static HowComputed how(Ranked option, Quantity quantity) throws BadInput {
        return HowComputed.of(option, answer.favourite().name(), quantity);
    }

    /** JCGM 100:2008, 5.1.2, equation (10): u² is the sum of the squares of what each input's u moves. */
    @Test
    void whatEachThingMovesAddsUpToTheUncertainty() throws BadInput {
        for (Ranked option : answer.results()) {
            for (Quantity quantity : option.predicted().keySet()) {
                HowComputed how = how(option, quantity);
                double sum = how.influences().stream().mapToDouble(one -> one.moves() * one.moves()).sum();
                assertThat(Math.sqrt(sum)).as(quantity.word()).isCloseTo(how.u(), within(1e-6));
                if (how.u() > 0) {
                    assertThat(how.influences().stream().mapToDouble(Workings.Influence::share).sum()).as(quantity.word())
                        .isCloseTo(1, within(1e-6));
                }
            }
        }
    }

    /** Masses add up, by hand: parts as listed, two grams a layer of tape, what is put on the head, and what the old club was off by. */
    @Test
    void theMassesListedAddUpToTheMass() throws BadInput {
        Ranked first = answer.results().get(0);
        HowComputed how = how(first, Quantity.TOTAL_MASS);
        List<String> whole = List.of("mass of head", "mass of shaft", "mass of grip", "mass of sleeve", "mass of adhesive", "mass of ferrule");
        double parts = how.influences().stream().filter(one -> whole.stream().anyMatch(one.what()::startsWith))
            .filter(one -> !one.what().equals("mass of head " + answer.favourite().head().orElseThrow().tag()))
            .mapToDouble(one -> one.value().orElseThrow()).sum();
        double done = how.doings().stream().mapToDouble(Workings.Doing::moves).sum();
        double carried = how.carried().map(Workings.CarriedOver::amount).orElse(0.0);
        // the inputs that cancel against the old club move nothing and are not listed: they are added from the record
        double known = shared(how, first);
        assertThat(parts + known + done + carried).isCloseTo(how.value(), within(1e-6));
    }

    private static double shared(HowComputed how, Ranked option) {
        double sum = 0;
        boolean shaftListed = how.influences().stream().anyMatch(one -> one.what().startsWith("mass of shaft"));
        boolean gripListed = how.influences().stream().anyMatch(one -> one.what().startsWith("mass of grip"));
        boolean sleeveListed = how.influences().stream().anyMatch(one -> one.what().startsWith("mass of sleeve"));
        boolean glueListed = how.influences().stream().anyMatch(one -> one.what().startsWith("mass of adhesive"));
        boolean ferruleListed = how.influences().stream().anyMatch(one -> one.what().startsWith("mass of ferrule"));
        sum += shaftListed ? 0 : option.shaft().massG().orElseThrow().value();
        sum += gripListed ? 0 : answer.favourite().grip().orElseThrow().massG().orElseThrow().value();
        sum += sleeveListed ? 0 : option.sleeve().orElseThrow().massG().orElseThrow().value();
        // handbook, section 12: 1 g of adhesive, 1.5 g of ferrule (memory)
        return sum + (glueListed ? 0 : 1) + (ferruleListed ? 0 : 1.5);
    }

    @Test
    void theFrequencyNamesItsConditionItsSourceAndItsDefaults() throws BadInput {
        HowComputed how = how(answer.results().get(0), Quantity.FREQUENCY);
        assertThat(how.conditions()).contains("5 in in the clamp, over the grip", "stiffness scaled to the newest reading of OAKES-DR");
        assertThat(how.formula().sources()).anyMatch(source -> source.startsWith("published: Thomson"));
        assertThat(how.restsOnDefault()).isTrue();
        assertThat(how.influences().get(0).what()).isEqualTo("the old club's frequency");
        assertThat(how.old().orElseThrow().value()).isCloseTo(248.8, within(1e-9));
    }

    @Test
    void everyQuantityThatIsPredictedHasAFormulaWithItsMarks() throws BadInput {
        for (Quantity quantity : answer.results().get(0).predicted().keySet()) {
            assertThat(how(answer.results().get(0), quantity).formula().sources()).as(quantity.word()).isNotEmpty()
                .allMatch(source -> source.matches("(published|common practice|memory|geometry|ours)(: .*)?"));
        }
    }

    @Test
    void whatWasReadIsNotSaidToBeComputed(@TempDir Path folder) throws BadInput {
        String first = answer.results().get(0).head().tag();
        Ranked read = answer(folder, Map.of(first, Map.of(Quantity.LOFT, 9.1))).results().get(0);
        assertThat(how(read, Quantity.LOFT).read()).isTrue();
        assertThat(how(read, Quantity.LOFT).value()).isEqualTo(9.1);
        assertThat(how(read, Quantity.LIE).read()).isFalse();
    }

    @Test
    void aPartThatIsLeftOutIsCountedAndNotShown(@TempDir Path folder) throws BadInput {
        String first = answer.results().get(0).head().tag();
        Workshop workshop = Workshop.of(BenchBooks.samples(folder), Optional.empty(), false);
        MatchAnswer without = MatchService.twinOf(workshop, "OAKES-DR", new MatchService.Wish(Keep.SHAFT, false, 3, Tolerances.DEFAULT,
            ShopSettings.DEFAULT, OptionalDouble.empty(), Map.of(), Set.of(first.toLowerCase(Locale.ROOT))));
        assertThat(without.results()).noneMatch(option -> option.head().tag().equals(first));
        assertThat(without.results().get(0).head().tag()).isEqualTo(answer.results().get(1).head().tag());
        assertThat(without.ruledOut()).containsEntry("left out by hand", 1);
    }
}
