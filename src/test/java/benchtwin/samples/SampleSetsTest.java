package benchtwin.samples;

import static org.assertj.core.api.Assertions.assertThat;

import benchtwin.club.Category;
import benchtwin.club.GroupRule;
import benchtwin.club.Hand;
import benchtwin.club.Head;
import benchtwin.club.HeadCondition;
import benchtwin.club.Inventory;
import benchtwin.club.Quantity;
import benchtwin.club.SetTargets;
import benchtwin.club.Shaft;
import benchtwin.club.Target;
import benchtwin.club.TipKind;
import benchtwin.club.WantedClub;
import benchtwin.stock.SetTargetRead;
import benchtwin.stock.SetTargetReader;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** The sets that are wished for in the sample workshop, against what its drawers hold: most can be built, not all. */
class SampleSetsTest {

    private static final Inventory STOCK = SampleFolder.inventory();
    private static final SetTargetRead READ = SetTargetReader.read(SampleFolder.PATH.resolve("set-targets.csv"),
        Optional.of(SampleFolder.PATH.resolve("lines.csv")), false);
    private static final SetTargets SETS = READ.targets().orElseThrow();
    private static final Set<String> HEADS_IN_CLUBS = STOCK.clubs().stream().flatMap(club -> club.rows().stream())
        .flatMap(row -> row.head().stream()).collect(Collectors.toSet());
    private static final Set<String> SHAFTS_IN_CLUBS = STOCK.clubs().stream().flatMap(club -> club.rows().stream())
        .flatMap(row -> row.shaft().stream()).collect(Collectors.toSet());
    /** Memory: the loosest fit that still bonds with a shim, mm. */
    private static final double MOST_PLAY_MM = 0.5;
    private static final double CAP_MM = 3;

    @Test
    void theyAreReadWithoutAFaultOrAWarning() {
        assertThat(READ.faults()).isEmpty();
        assertThat(READ.warnings()).isEmpty();
        assertThat(READ.unknownColumns()).isEmpty();
    }

    @Test
    void eightPlayersWantNineToThirteenClubsTwoOfThemLeftHanded() {
        assertThat(SETS.players()).hasSize(8);
        SETS.players().forEach(player -> {
            assertThat(SETS.of(player)).as(player).hasSizeBetween(9, 13);
            assertThat(SETS.of(player)).extracting(WantedClub::hand).as(player).containsOnly(SETS.of(player).get(0).hand());
            assertThat(SETS.of(player)).extracting(WantedClub::category).as(player).doesNotContain(Category.PUTTER)
                .contains(Category.DRIVER, Category.FAIRWAY, Category.IRON, Category.WEDGE);
        });
        assertThat(SETS.players()).filteredOn(player -> SETS.of(player).get(0).hand() == Hand.LEFT).hasSize(2);
        assertThat(SETS.clubs()).filteredOn(club -> club.category() == Category.HYBRID).hasSizeGreaterThan(7);
    }

    @Test
    void ironsMustAndWedgesMayShareTheirModels() {
        assertThat(SETS.clubs()).filteredOn(club -> club.category() == Category.IRON).allSatisfy(club -> {
            assertThat(club.group()).contains("irons");
            assertThat(club.groupRule()).isEqualTo(GroupRule.MUST);
            assertThat(SETS.linesOf(club)).hasSize(club.player().equals("M. Sandrow") ? 3 : 2);
        });
        assertThat(SETS.clubs()).filteredOn(club -> club.category() == Category.WEDGE)
            .allMatch(club -> club.groupRule() == GroupRule.PREFER && club.group().equals(Optional.of("wedges")));
    }

    @Test
    void everyClubHasAWholeTargetAndFrequenciesRiseThroughTheIrons() {
        SETS.clubs().forEach(club -> {
            Target target = SETS.targetOf(club).orElseThrow();
            assertThat(target.wanted()).as(club.player() + " " + club.club()).containsKeys(Quantity.LOFT, Quantity.LIE,
                Quantity.LENGTH, Quantity.FREQUENCY);
            assertThat(target.of(Quantity.SWING_WEIGHT).isPresent() || target.of(Quantity.BUTT_INERTIA).isPresent()).isTrue();
        });
        SETS.players().forEach(player -> assertThat(SETS.of(player).stream()
            .filter(club -> club.category() == Category.IRON)
            .map(club -> SETS.targetOf(club).orElseThrow().of(Quantity.FREQUENCY).orElseThrow().value()).toList())
            .as(player).isSorted().doesNotHaveDuplicates());
    }

    @Test
    void onePlayerWantsEvenLoftGapsThroughTheIrons() {
        List<WantedClub> irons = SETS.of("M. Sandrow").stream().filter(club -> club.category() == Category.IRON).toList();
        assertThat(irons).allMatch(club -> club.loftLine().equals(Optional.of("even gaps")));
        assertThat(irons).extracting(club -> SETS.targetOf(club).orElseThrow().of(Quantity.LOFT).orElseThrow().value())
            .containsExactly(27.25, 31.5, 35.75, 40.0, 44.25);
    }

    @Test
    void nearlyEveryClubHasAHeadAndAShaftThatFitAndNotAll() {
        List<WantedClub> hopeless = SETS.clubs().stream().filter(club -> heads(club).isEmpty() || shafts(club).isEmpty())
            .toList();
        assertThat(hopeless).extracting(club -> club.player() + " " + club.club()).containsExactly("L. Wexcombe 60");
    }

    @Test
    void oneHybridMoreIsWantedThanThereIsAndMoreLeftHandedIrons() {
        Map<String, List<WantedClub>> alike = SETS.clubs().stream().filter(club -> club.category() != Category.DRIVER)
            .collect(Collectors.groupingBy(club -> "%s %s %s".formatted(club.hand().word(), club.category().word(),
                club.number().orElseThrow())));
        assertThat(alike.entrySet()).filteredOn(each -> each.getValue().size() > heads(each.getValue().get(0)).size())
            .extracting(Map.Entry::getKey).containsExactlyInAnyOrder("left hybrid 4", "left wedge 60", "left iron 5",
                "left iron 6", "left iron 8", "left iron PW");
        assertThat(alike.get("left hybrid 4")).hasSize(heads(alike.get("left hybrid 4").get(0)).size() + 1);
    }

    @Test
    void forOneLeftHandedIronSetTheHeadsAreThereAndForTwoTheyAreNot() {
        List<WantedClub> irons = SETS.clubs().stream()
            .filter(club -> club.hand() == Hand.LEFT && club.category() == Category.IRON).toList();
        assertThat(irons).hasSize(13).allSatisfy(club -> assertThat(sedge(club)).isNotEmpty());
        assertThat(irons).filteredOn(club -> club.number().orElseThrow().matches("5|6|8|PW")).hasSize(8)
            .allSatisfy(club -> assertThat(sedge(club)).hasSize(1));
    }

    private static List<Head> sedge(WantedClub club) {
        return heads(club).stream().filter(head -> head.model().equals("Sedge")).toList();
    }

    /** Free heads of the wanted kind: category, hand, number, whole and promised to nobody. */
    private static List<Head> heads(WantedClub club) {
        return STOCK.heads().stream().filter(head -> head.category() == club.category() && head.hand() == club.hand()
            && (club.number().isEmpty() || head.number().equals(club.number()))
            && head.condition() != HeadCondition.CRACKED && head.keeping().reservedFor().isEmpty()
            && !HEADS_IN_CLUBS.contains(head.tag())).toList();
    }

    /** Free shafts that go into one of those heads and are long enough. */
    private static List<Shaft> shafts(WantedClub club) {
        List<Head> heads = heads(club);
        return STOCK.shafts().stream().filter(shaft -> shaft.meantFor().contains(club.category())
            && shaft.keeping().reservedFor().isEmpty() && !SHAFTS_IN_CLUBS.contains(shaft.tag())
            && heads.stream().anyMatch(head -> goesInto(shaft, head, club))).toList();
    }

    private static boolean goesInto(Shaft shaft, Head head, WantedClub club) {
        double lengthMm = SETS.targetOf(club).orElseThrow().of(Quantity.LENGTH).orElseThrow().value();
        if (head.bore().isPresent()) {
            boolean kind = (shaft.tipKind() == TipKind.TAPER) == (head.bore().get().kind() == TipKind.TAPER);
            double play = head.bore().get().diameterMm() - shaft.tipMm();
            return kind && play >= 0 && play <= MOST_PLAY_MM
                && shaft.lengthMm() >= lengthMm - CAP_MM - head.bore().get().toGroundMm().map(r -> r.value()).orElse(30.0);
        }
        double seatMm = head.seat().orElseThrow().toGroundMm().map(r -> r.value()).orElse(45.0);
        return STOCK.sleeves().stream().filter(sleeve -> sleeve.fits(head)).anyMatch(sleeve -> {
            double play = sleeve.boreMm() - shaft.tipMm();
            double belowMm = sleeve.stopToSeatMm().map(r -> r.value()).orElse(0.0) + seatMm;
            return play >= 0 && play <= MOST_PLAY_MM && shaft.lengthMm() >= lengthMm - CAP_MM - belowMm;
        });
    }
}
