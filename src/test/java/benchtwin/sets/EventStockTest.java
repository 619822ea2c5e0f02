package benchtwin.sets;

import static org.assertj.core.api.Assertions.assertThat;

import benchtwin.club.Category;
import benchtwin.club.GroupRule;
import benchtwin.club.Hand;
import benchtwin.club.Head;
import benchtwin.club.HeadCondition;
import benchtwin.club.Shaft;
import benchtwin.club.ShaftCondition;
import benchtwin.club.WantedClub;
import benchtwin.samples.EventWorkshop;
import benchtwin.stock.InventoryRead;
import benchtwin.stock.InventoryReader;
import benchtwin.stock.SetTargetRead;
import benchtwin.stock.SetTargetReader;
import java.io.IOException;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What the made-up events promise to whoever measures with them. */
class EventStockTest {

    private static final Map<String, EventStock> MADE = new HashMap<>();
    private static final int CLUBS_A_SET = 13;

    private static EventStock event(char size, long seed) {
        return MADE.computeIfAbsent(size + " " + seed, key -> EventStock.of(size, seed));
    }

    @ParameterizedTest(name = "{0}, seed {1}")
    @CsvSource({"A, 1", "A, 2", "B, 1", "C, 1"})
    void theFilesAreReadWithoutAFaultOrAWarningAndAreTheSameAgain(char size, long seed, @TempDir Path folder)
        throws IOException {
        EventWorkshop.of(size, seed).write(folder);
        InventoryRead stock = InventoryReader.readFolder(folder, false);
        assertThat(stock.faults()).isEmpty();
        assertThat(stock.warnings()).isEmpty();
        assertThat(stock.unknownColumns().values()).allSatisfy(columns -> assertThat(columns).isEmpty());
        SetTargetRead wishes = SetTargetReader.read(folder.resolve("set-targets.csv"),
            Optional.of(folder.resolve("lines.csv")), false);
        assertThat(wishes.faults()).isEmpty();
        assertThat(wishes.warnings()).isEmpty();
        assertThat(wishes.unknownColumns()).isEmpty();
        assertThat(new EventStock(stock.inventory().orElseThrow(), wishes.targets().orElseThrow()))
            .isEqualTo(event(size, seed));
    }

    @ParameterizedTest(name = "{0}, seed {1}")
    @CsvSource({"A, 1, 1, 400", "A, 2, 1, 400", "B, 1, 8, 1500", "C, 1, 16, 3000"})
    void sizesAreWhatTheyAreSaidToBe(char size, long seed, int players, int parts) {
        EventStock event = event(size, seed);
        assertThat(event.inventory().heads()).hasSize(parts);
        assertThat(event.inventory().shafts()).hasSize(parts);
        assertThat(event.inventory().grips()).hasSizeGreaterThan(event.targets().clubs().size());
        assertThat(event.inventory().heads()).filteredOn(head -> head.hand() == Hand.LEFT)
            .hasSizeBetween(parts / 20, parts / 5);
        assertThat(event.targets().players()).hasSize(players).allSatisfy(player ->
            assertThat(event.targets().of(player)).hasSize(CLUBS_A_SET).extracting(WantedClub::hand)
                .containsOnly(event.targets().of(player).get(0).hand()));
        assertThat(event.targets().clubs()).allSatisfy(club -> {
            assertThat(event.targets().targetOf(club)).isPresent();
            assertThat(club.group()).isEqualTo(switch (club.category()) {
                case IRON -> Optional.of("irons");
                case WEDGE -> Optional.of("wedges");
                default -> Optional.empty();
            });
            assertThat(club.groupRule() == GroupRule.MUST).isEqualTo(club.category() == Category.IRON);
        });
    }

    @ParameterizedTest(name = "{0}, seed {1}")
    @CsvSource({"A, 1", "A, 2", "B, 1", "C, 1"})
    void everyClubHasAHeadButForScarceHybrids(char size, long seed) {
        EventStock event = event(size, seed);
        assertThat(event.targets().clubs()).filteredOn(club -> heads(event, club).isEmpty()).allSatisfy(club -> {
            assertThat(size).isEqualTo('C');
            assertThat(club.category()).isEqualTo(Category.HYBRID);
        });
    }

    @Test
    void theLargestEventWantsMoreHybridsThanThereAre() {
        EventStock event = event('C', 1);
        List<WantedClub> wanted = event.targets().clubs().stream().filter(club -> club.category() == Category.HYBRID)
            .toList();
        Map<String, List<WantedClub>> alike = wanted.stream().collect(Collectors.groupingBy(club -> club.hand().word()
            + club.number().orElseThrow() + event.targets().targetOf(club).orElseThrow().reading().word()));
        assertThat(alike.values()).allSatisfy(clubs ->
            assertThat(heads(event, clubs.get(0)).size()).isLessThanOrEqualTo(clubs.size()));
        assertThat(event.inventory().heads()).filteredOn(head -> head.category() == Category.HYBRID)
            .hasSizeBetween(wanted.size() / 2, wanted.size() - 1);
    }

    @ParameterizedTest(name = "{0}, seed {1}")
    @CsvSource({"A, 1", "B, 1", "C, 1"})
    void ironsComeInWholeSetsOfManyModelsAndShaftsInManyMoreFlexes(char size, long seed) {
        EventStock event = event(size, seed);
        Map<String, Set<String>> numbers = event.inventory().heads().stream()
            .filter(head -> head.category() == Category.IRON && head.hand() == Hand.RIGHT)
            .collect(Collectors.groupingBy(Head::model,
                Collectors.mapping(head -> head.number().orElseThrow(), Collectors.toCollection(TreeSet::new))));
        assertThat(numbers).hasSizeGreaterThanOrEqualTo(8);
        assertThat(numbers.values()).allSatisfy(of -> assertThat(of).containsExactly("4", "5", "6", "7", "8", "9", "PW"));
        List<Shaft> irons = event.inventory().shafts().stream()
            .filter(shaft -> shaft.meantFor().contains(Category.IRON)).toList();
        assertThat(irons.stream().map(Shaft::model).distinct()).hasSizeGreaterThanOrEqualTo(10);
        assertThat(irons.stream().map(Shaft::tipKind).distinct()).hasSize(2);
        assertThat(irons).extracting(Shaft::condition).contains(ShaftCondition.NEW, ShaftCondition.PULLED);
    }

    /** Parts are contested only where wishes run together: some line of frequencies is wanted by every third player. */
    @ParameterizedTest(name = "{0}, seed {1}")
    @CsvSource({"B, 1", "C, 1"})
    void playersWantAlikeThings(char size, long seed) {
        EventStock event = event(size, seed);
        Map<String, Set<String>> playersOfLine = event.targets().clubs().stream()
            .filter(club -> club.frequencyLine().isPresent()).collect(Collectors.groupingBy(
                club -> club.frequencyLine().orElseThrow(), Collectors.mapping(WantedClub::player, Collectors.toSet())));
        assertThat(playersOfLine.values()).anySatisfy(players ->
            assertThat(players.size()).isGreaterThanOrEqualTo(event.targets().players().size() / 3));
    }

    @Test
    void anotherSeedGivesAnotherEvent() {
        assertThat(event('A', 2).inventory()).isNotEqualTo(event('A', 1).inventory());
        assertThat(event('A', 2).targets()).isNotEqualTo(event('A', 1).targets());
    }

    /** Free heads of the wanted kind: category, hand, number and reading, whole and promised to nobody. */
    private static List<Head> heads(EventStock event, WantedClub club) {
        boolean wood = event.targets().targetOf(club).orElseThrow().reading().isWood();
        return event.inventory().heads().stream().filter(head -> head.category() == club.category()
            && head.hand() == club.hand() && head.isWood() == wood
            && (club.number().isEmpty() || head.number().equals(club.number()))
            && head.condition() != HeadCondition.CRACKED && head.keeping().reservedFor().isEmpty()).toList();
    }
}
