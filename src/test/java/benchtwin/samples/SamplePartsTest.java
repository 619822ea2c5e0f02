package benchtwin.samples;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import benchtwin.bend.HoselLimits;
import benchtwin.club.Adjust;
import benchtwin.club.Category;
import benchtwin.club.Hand;
import benchtwin.club.Head;
import benchtwin.club.HeadCondition;
import benchtwin.club.Inventory;
import benchtwin.club.Port;
import benchtwin.club.Shaft;
import benchtwin.club.ShaftCondition;
import benchtwin.club.ShaftMaterial;
import benchtwin.club.Sleeve;
import benchtwin.club.TipKind;
import benchtwin.club.WeighedWith;
import benchtwin.club.Weight;
import benchtwin.measure.Reading;
import benchtwin.mechanics.GripFactor;
import benchtwin.mechanics.GripFactors;
import benchtwin.mechanics.ShaftStiffness;
import benchtwin.mechanics.SleeveSettings;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** What the sample workshop's drawers hold: enough of everything, scattered as real parts are, the awkward ones too. */
class SamplePartsTest {

    private static final Inventory STOCK = SampleFolder.inventory();

    @Test
    void thereAreTwoHundredAndFiftyHeadsOfEveryKindForBothHands() {
        assertThat(STOCK.heads()).hasSizeBetween(240, 270);
        Map<Category, Long> byCategory = STOCK.heads().stream()
            .collect(Collectors.groupingBy(Head::category, Collectors.counting()));
        assertThat(byCategory.get(Category.DRIVER)).isBetween(60L, 85L);
        assertThat(byCategory.get(Category.FAIRWAY)).isBetween(25L, 45L);
        assertThat(byCategory.get(Category.HYBRID)).isBetween(12L, 25L);
        assertThat(byCategory.get(Category.IRON)).isBetween(80L, 100L);
        assertThat(byCategory.get(Category.WEDGE)).isBetween(30L, 45L);
        assertThat(byCategory.get(Category.PUTTER)).isBetween(6L, 15L);
        for (Category category : Category.values()) {
            assertThat(heads(head -> head.category() == category && head.hand() == Hand.LEFT)).as("left %s", category)
                .isNotEmpty();
        }
        assertThat(heads(head -> head.category() == Category.IRON)).extracting(head -> head.number().orElseThrow())
            .contains("4", "5", "6", "7", "8", "9", "PW");
    }

    @Test
    void headsAreBendableFixedAndSleevedWithOneRingAndTwo() {
        assertThat(heads(head -> head.adjust() == Adjust.BEND)).hasSizeGreaterThan(80);
        assertThat(heads(head -> head.adjust() == Adjust.FIXED)).hasSizeGreaterThan(5);
        assertThat(heads(head -> takesRings(head, 1))).hasSizeGreaterThan(15);
        assertThat(heads(head -> takesRings(head, 2))).hasSizeGreaterThan(40);
        assertThat(heads(head -> head.adjust() == Adjust.SLEEVE)).allSatisfy(
            head -> assertThat(sleeves(head)).as(head.tag()).isNotEmpty());
    }

    @Test
    void thereAreSleevesOfTwelveSixteenAndThirtySettings() {
        assertThat(STOCK.sleeves()).extracting(sleeve -> SleeveSettings.labels(sleeve).size()).contains(12, 16, 30);
        assertThat(STOCK.sleeves()).filteredOn(sleeve -> !sleeve.measured().isEmpty())
            .singleElement().satisfies(sleeve -> assertThat(sleeve.measured()).hasSize(12));
        assertThat(STOCK.sleeves()).filteredOn(sleeve -> sleeve.fits().size() > 1).isNotEmpty();
    }

    @Test
    void aSleeveServesSeveralModelsAndTwoThatLookAlikeDoNotInterchange() {
        Sleeve quad = STOCK.sleeve("quad-335").orElseThrow();
        assertThat(heads(quad::fits)).extracting(Head::category).contains(Category.DRIVER, Category.FAIRWAY);
        Sleeve first = STOCK.sleeve("lock-1-335").orElseThrow();
        Sleeve second = STOCK.sleeve("lock-2-335").orElseThrow();
        assertThat(first.rings()).hasSameSizeAs(second.rings());
        assertThat(heads(head -> head.model().equals("Alder"))).isNotEmpty().noneMatch(second::fits);
        assertThat(heads(head -> head.model().equals("Alder 2"))).isNotEmpty().noneMatch(first::fits);
    }

    @Test
    void thereAreTwoHundredAndFiftyShaftsNewAndPulled() {
        assertThat(STOCK.shafts()).hasSizeBetween(235, 265);
        assertThat(shafts(shaft -> shaft.condition() == ShaftCondition.NEW)).hasSizeGreaterThan(90);
        assertThat(shafts(shaft -> shaft.sleeveOn().isPresent())).hasSizeGreaterThan(15);
        assertThat(shafts(shaft -> shaft.gripOn().isPresent())).hasSizeGreaterThan(40);
        assertThat(shafts(shaft -> shaft.tipKind() == TipKind.TAPER)).hasSizeGreaterThan(20)
            .allMatch(shaft -> shaft.madeForNumber().isPresent());
        assertThat(shafts(shaft -> shaft.material() == ShaftMaterial.STEEL)).hasSizeGreaterThan(40);
        assertThat(shafts(shaft -> shaft.meantFor().contains(Category.IRON) && shaft.material() == ShaftMaterial.GRAPHITE))
            .isNotEmpty();
        assertThat(shafts(shaft -> shaft.frequencies().size() >= 4)).hasSizeBetween(4, 10);
    }

    /** Common practice, no source: what a drawer of 9.0° driver heads measures. */
    @Test
    void nineDegreeDriversMeasureFromEightThreeToNineEight() {
        DoubleSummaryStatistics lofts = heads(head -> head.category() == Category.DRIVER
            && head.made().loftDeg().orElse(0) == 9).stream().map(head -> head.angles().loftDeg())
            .flatMap(Optional::stream).mapToDouble(Reading::value).summaryStatistics();
        assertThat(lofts.getCount()).isGreaterThan(30);
        assertThat(lofts.getMin()).isBetween(8.3, 8.5);
        assertThat(lofts.getMax()).isBetween(9.6, 9.8);
    }

    /** Common practice, no source: heads of one model and number within 3 g either way. */
    @Test
    void headsOfOneModelAndNumberAreWithinThreeGramsOfTheirNominal() {
        Map<String, List<Head>> alike = heads(head -> head.massG().isPresent()
            && !head.weighedWith().contains(WeighedWith.SCREW)).stream().collect(Collectors.groupingBy(
                head -> head.category().word() + head.model() + head.number().orElse("") + head.made().loftDeg()));
        assertThat(alike).hasSizeGreaterThan(30);
        alike.forEach((name, heads) -> {
            DoubleSummaryStatistics bare = heads.stream().mapToDouble(SamplePartsTest::bareG).summaryStatistics();
            assertThat(bare.getMax() - bare.getMin()).as(name).isBetween(0.0, 6.0);
        });
    }

    /** Common practice, no source: new shafts of one model within 4 cpm either way, and 0.8 cpm of the sample gauge. */
    @Test
    void newShaftsOfOneModelAreWithinFourCpmOfEachOthersMiddle() {
        Map<String, List<Shaft>> alike = shafts(shaft -> shaft.condition() == ShaftCondition.NEW
            && !shaft.frequencies().isEmpty() && shaft.frequencies().get(0).clampMm().isPresent()).stream()
            .collect(Collectors.groupingBy(shaft -> shaft.model() + shaft.madeForNumber()));
        assertThat(alike).hasSizeGreaterThan(10);
        alike.forEach((name, shafts) -> {
            DoubleSummaryStatistics cpm = shafts.stream().mapToDouble(shaft -> shaft.frequencies().get(0).cpm().value())
                .summaryStatistics();
            assertThat(cpm.getMax() - cpm.getMin()).as(name).isLessThanOrEqualTo(2 * (4 + 0.8));
        });
        DoubleSummaryStatistics brook = alike.get("Brook 60 SOptional.empty").stream()
            .mapToDouble(shaft -> shaft.frequencies().get(0).cpm().value()).summaryStatistics();
        assertThat(brook.getMax() - brook.getMin()).isGreaterThan(4);
    }

    @Test
    void someReadingsAreMissing() {
        assertThat(heads(head -> head.massG().isEmpty())).isNotEmpty();
        assertThat(heads(head -> head.angles().lieDeg().isEmpty())).isNotEmpty();
        assertThat(heads(head -> head.isWood() && head.angles().faceDeg().isEmpty())).isNotEmpty();
        assertThat(heads(head -> head.seat().isPresent() && head.seat().get().readAtSetting().isEmpty())).isNotEmpty();
        assertThat(heads(head -> head.adjust() == Adjust.BEND && !head.bent().isComplete())).isNotEmpty();
        assertThat(shafts(shaft -> shaft.frequencies().isEmpty())).isNotEmpty();
        assertThat(shafts(shaft -> !shaft.frequencies().isEmpty() && shaft.frequencies().get(0).clampMm().isEmpty()))
            .isNotEmpty();
        assertThat(shafts(shaft -> shaft.massG().isEmpty())).isNotEmpty();
        assertThat(shafts(shaft -> shaft.torqueDeg().isEmpty())).isNotEmpty();
    }

    /** The invented bench 1 reads 0.978 of the bare butt over a grip. */
    @Test
    void sixShaftsReadBothWaysTeachTheGripFactorOfBenchOne() {
        GripFactor learned = GripFactors.learn(STOCK.shafts()).of(Optional.of("bench 1"));
        assertThat(learned.pairs()).isEqualTo(6);
        assertThat(learned.value()).isCloseTo(0.978, within(2 * learned.standardUncertainty()));
        assertThat(learned.standardUncertainty()).isLessThan(0.002);
        assertThat(shafts(shaft -> shaft.frequencies().size() == 1 && !ShaftStiffness.of(shaft, learned).isKnown()))
            .as("the only reading has no condition").hasSize(3);
    }

    /** Read by a gauge of its own (Stodola's method), to 0.1 cpm with an error of 0.3: three of those, and what is rounded off. */
    @Test
    void theShaftsReadAlongFitAProfile() {
        List<ShaftStiffness> own = STOCK.shafts().stream().map(shaft -> ShaftStiffness.of(shaft, GripFactor.DEFAULT))
            .filter(stiffness -> stiffness.profile().isPresent()).toList();
        assertThat(own).hasSize(5).flatExtracting(ShaftStiffness::readings).hasSize(20)
            .allSatisfy(r -> assertThat(Math.abs(r.residualCpm())).isLessThan(1));
    }

    @Test
    void someHeadsAreCrackedSomePromisedAndSomeNearTheirBendLimit() {
        assertThat(heads(head -> head.condition() == HeadCondition.CRACKED)).hasSizeBetween(3, 12);
        assertThat(heads(head -> head.keeping().reservedFor().isPresent())).hasSizeBetween(3, 25);
        assertThat(shafts(shaft -> shaft.keeping().reservedFor().isPresent())).hasSizeBetween(3, 25);
        assertThat(heads(head -> head.bent().isComplete() && HoselLimits.lifeLimitDeg(head.material()) > 0
            && head.condition() != HeadCondition.CRACKED && leastLeftDeg(head) <= 0.3)).hasSizeGreaterThanOrEqualTo(3);
    }

    @Test
    void twoHeadsAreAlikeToTheTenth() {
        List<Head> alder = heads(head -> head.model().equals("Alder 2") && head.massG().isPresent());
        assertThat(alder).anySatisfy(one -> assertThat(alder).anySatisfy(other -> {
            assertThat(other.tag()).isNotEqualTo(one.tag());
            assertThat(other.hand()).isEqualTo(one.hand());
            assertThat(other.angles().loftDeg()).isEqualTo(one.angles().loftDeg());
            assertThat(other.angles().lieDeg()).isEqualTo(one.angles().lieDeg());
            assertThat(other.seat()).isEqualTo(one.seat());
            assertThat(Math.abs(other.massG().get().value() - one.massG().get().value())).isLessThan(0.15);
        }));
    }

    @Test
    void everyPortKindHasWeightsInTheDrawerAndSoHasTheTip() {
        List<String> kinds = STOCK.heads().stream().flatMap(head -> head.ports().stream()).map(Port::type).distinct()
            .toList();
        assertThat(kinds).hasSize(2);
        assertThat(STOCK.weights()).extracting(Weight::port).contains(Weight.TIP).containsAll(kinds);
        assertThat(STOCK.weights()).anyMatch(weight -> weight.count() == 0);
    }

    private static double leastLeftDeg(Head head) {
        HoselLimits left = HoselLimits.of(head);
        return Math.min(Math.min(left.uprightDeg(), left.flatDeg()), Math.min(left.forwardDeg(), left.backDeg()));
    }

    private static double bareG(Head head) {
        double weights = head.weighedWith().contains(WeighedWith.WEIGHTS)
            ? head.ports().stream().mapToDouble(Port::massG).sum() : 0;
        return head.massG().orElseThrow().value() - weights;
    }

    private static boolean takesRings(Head head, int rings) {
        return sleeves(head).stream().anyMatch(sleeve -> sleeve.rings().size() == rings);
    }

    private static List<Sleeve> sleeves(Head head) {
        return STOCK.sleeves().stream().filter(sleeve -> sleeve.fits(head)).toList();
    }

    private static List<Head> heads(Predicate<Head> which) {
        return STOCK.heads().stream().filter(which).toList();
    }

    private static List<Shaft> shafts(Predicate<Shaft> which) {
        return STOCK.shafts().stream().filter(which).toList();
    }
}
