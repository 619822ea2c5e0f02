package benchtwin.match;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import benchtwin.club.Head;
import benchtwin.club.HeadCondition;
import benchtwin.club.Inventory;
import benchtwin.club.Keeping;
import benchtwin.club.Quantity;
import benchtwin.club.Shaft;
import benchtwin.club.ShaftMaterial;
import benchtwin.club.Target;
import benchtwin.club.Wanted;
import benchtwin.measure.Reading;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** What a choice of shafts carries over, picks and leaves out. */
class ShaftChoiceTest {

    private static final ShaftRequest.Picking NEAREST = new ShaftRequest.Picking(Pick.NEAREST, 12, 200, 3, 5);

    private static ShaftRequest request(Inventory stock, Head head, Map<Quantity, Double> written, ShaftRequest.Picking how)
        throws FavouriteOfRecord.NothingToMatch {
        return new ShaftRequest(FavouriteOfRecord.of(stock.clubs().get(0), stock, Tolerances.DEFAULT), head, stock,
            ShopSettings.DEFAULT, Tolerances.DEFAULT, written, OptionalDouble.empty(), Optional.empty(), false, Set.of(), how);
    }

    private static double wantedCpm(ShaftAnswer answer) {
        return answer.target().of(Quantity.FREQUENCY).orElseThrow().value();
    }

    private static Inventory with(Inventory stock, List<Head> heads, List<Shaft> shafts) {
        return new Inventory(heads, shafts, stock.grips(), stock.sleeves(), stock.weights(), stock.clubs());
    }

    private static Head sound(Head head, double moreG) {
        return new Head(moreG == 0 ? head.tag() : "OTHER", head.model(), head.category(), head.number(), head.hand(), head.angles(),
            head.offsetMm(), head.grind(),
            head.massG().map(m -> Reading.of(m.value() + moreG, m.standardUncertainty())), head.weighedWith(), head.bore(),
            head.seat(), head.material(), head.adjust(), head.ports(), head.hotMeltMaxG(), head.made(), head.bent(),
            head.mass(), head.size(), HeadCondition.USED, head.keeping());
    }

    @Test
    void theClubsOwnHeadAtItsOwnLengthWantsWhatTheClubRead() throws Exception {
        Inventory stock = new RandomStock(3).inventory(1, 1, 10);
        Head own = sound(stock.heads().get(0), 0);
        ShaftRequest asked = request(with(stock, List.of(own), stock.shafts()), own, Map.of(), NEAREST);
        ShaftAnswer answer = ShaftChoice.run(asked);
        assertThat(answer.headWork()).isEmpty();
        assertThat(wantedCpm(answer)).isCloseTo(250, within(1e-9));
        assertThat(answer.target().of(Quantity.SWING_WEIGHT).orElseThrow().value()).isCloseTo(32, within(1e-9));
    }

    /** Handbook: about 0.6 cpm a gram at the tip; the mass at the head is held, so nothing makes it good. */
    @Test
    void theSameShaftReadsLowerInAHeavierHead() throws Exception {
        Inventory stock = new RandomStock(3).inventory(1, 1, 10);
        Head own = sound(stock.heads().get(0), 0);
        Head heavier = sound(stock.heads().get(0), 5);
        ShaftRequest light = held(request(with(stock, List.of(own), stock.shafts()), own, Map.of(), NEAREST));
        ShaftRequest heavy = held(request(with(stock, List.of(own, heavier), stock.shafts()), heavier, Map.of(), NEAREST));
        double change = wantedCpm(ShaftChoice.run(heavy)) - wantedCpm(ShaftChoice.run(light));
        assertThat(change / 5).isBetween(-0.75, -0.45);
    }

    private static ShaftRequest held(ShaftRequest r) {
        return new ShaftRequest(r.club(), r.head(), r.inventory(), r.shop(), r.tolerances(), r.written(),
            OptionalDouble.of(0), r.material(), r.sameModel(), Set.of(), r.picking());
    }

    /** Handbook: about +6.5 cpm an inch off the butt of a raw shaft; a club's is alike. */
    @Test
    void theSameShaftReadsHigherInAShorterBuild() throws Exception {
        Inventory stock = new RandomStock(3).inventory(1, 1, 10);
        Head own = sound(stock.heads().get(0), 0);
        Inventory mended = with(stock, List.of(own), stock.shafts());
        double atLength = wantedCpm(ShaftChoice.run(held(request(mended, own, Map.of(Quantity.LENGTH, 1150.0), NEAREST))));
        double shorter = wantedCpm(ShaftChoice.run(held(request(mended, own, Map.of(Quantity.LENGTH, 1124.6), NEAREST))));
        double longer = wantedCpm(ShaftChoice.run(held(request(mended, own, Map.of(Quantity.LENGTH, 1160.0), NEAREST))));
        assertThat(shorter - atLength).isBetween(4.0, 9.0);
        assertThat(longer).isLessThan(atLength);
    }

    @Test
    void theMassThatBringsTheSwingWeightBackGoesOnTheHead() throws Exception {
        Inventory stock = new RandomStock(3).inventory(1, 1, 10);
        Head lighter = sound(stock.heads().get(0), -4);
        ShaftAnswer answer = ShaftChoice.run(request(with(stock, List.of(stock.heads().get(0), lighter), stock.shafts()),
            lighter, Map.of(), NEAREST));
        assertThat(answer.headAddedG()).isBetween(2.0, 5.0);
        assertThat(answer.headWork()).isNotEmpty();
        assertThat(answer.target().of(Quantity.SWING_WEIGHT).orElseThrow().value()).isCloseTo(32, within(0.5));
    }

    @Test
    void aWrittenFrequencyTakesThePlaceOfTheOneCarriedOver() throws Exception {
        Inventory stock = new RandomStock(5).inventory(1, 1, 30);
        ShaftAnswer answer = ShaftChoice.run(request(stock, stock.heads().get(1), Map.of(Quantity.FREQUENCY, 262.0), NEAREST));
        assertThat(wantedCpm(answer)).isEqualTo(262);
        double first = answer.picks().get(0).option().predicted().get(Quantity.FREQUENCY);
        assertThat(first).isCloseTo(262, within(2.0));
    }

    @Test
    void aModelGivesAtMostSoMany() throws Exception {
        Inventory stock = new RandomStock(5).inventory(1, 1, 30);
        List<Shaft> two = new ArrayList<>();
        for (int k = 0; k < stock.shafts().size(); k++) {
            two.add(k % 5 == 4 ? renamed(stock.shafts().get(k), "Fell") : stock.shafts().get(k));
        }
        ShaftAnswer answer = ShaftChoice.run(request(with(stock, stock.heads(), two), stock.heads().get(1), Map.of(),
            new ShaftRequest.Picking(Pick.NEAREST, 6, 2, 3, 5)));
        assertThat(answer.picks()).hasSize(4);
        assertThat(answer.picks().stream().filter(p -> p.option().shaft().model().equals("Brook"))).hasSize(2);
        assertThat(answer.picks().stream().filter(p -> p.option().shaft().model().equals("Fell"))).hasSize(2);
    }

    private static Shaft renamed(Shaft s, String model) {
        return new Shaft(s.tag(), model, s.material(), s.meantFor(), s.madeForNumber(), s.rawLengthMm(), s.massG(),
            s.balanceMm(), s.torqueDeg(), s.tipMm(), s.tipKind(), s.buttMm(), s.parallelTipMm(), s.tipCutMm(), s.buttCutMm(),
            s.frequencies(), s.sleeveOn(), s.gripOn(), s.orientation(), s.pulls(), s.condition(), s.keeping());
    }

    private static Shaft altered(Shaft s, Optional<Reading> torque, Keeping keeping, ShaftMaterial material) {
        return new Shaft(s.tag(), s.model(), material, s.meantFor(), s.madeForNumber(), s.rawLengthMm(), s.massG(),
            s.balanceMm(), torque, s.tipMm(), s.tipKind(), s.buttMm(), s.parallelTipMm(), s.tipCutMm(), s.buttCutMm(),
            s.frequencies(), s.sleeveOn(), s.gripOn(), s.orientation(), s.pulls(), s.condition(), keeping);
    }

    @Test
    void aShaftWithoutTorqueStandsBehindItsEqualAndSaysSo() throws Exception {
        Inventory stock = new RandomStock(5).inventory(1, 1, 1);
        Shaft drawer = stock.shafts().get(1);
        Shaft old = stock.shafts().get(0);
        Shaft equal = altered(drawer, old.torqueDeg(), drawer.keeping(), drawer.material());
        Shaft unread = new Shaft("A-FIRST-BY-TAG", equal.model(), equal.material(), equal.meantFor(), equal.madeForNumber(),
            equal.rawLengthMm(), equal.massG(), equal.balanceMm(), Optional.empty(), equal.tipMm(), equal.tipKind(),
            equal.buttMm(), equal.parallelTipMm(), equal.tipCutMm(), equal.buttCutMm(), equal.frequencies(),
            equal.sleeveOn(), equal.gripOn(), equal.orientation(), equal.pulls(), equal.condition(), equal.keeping());
        ShaftAnswer answer = ShaftChoice.run(request(with(stock, stock.heads(), List.of(old, unread, equal)),
            stock.heads().get(1), Map.of(), NEAREST));
        assertThat(answer.picks()).extracting(p -> p.option().shaft().tag())
            .containsExactly(equal.tag(), "A-FIRST-BY-TAG");
        assertThat(answer.picks().get(1).marks()).contains("its torque was never read: counted as one tolerance off");
        assertThat(answer.picks().get(1).option().predicted()).doesNotContainKey(Quantity.TORQUE);
    }

    @Test
    void aPromisedShaftStandsBelowTheLineAndAnotherMaterialIsCounted() throws Exception {
        Inventory stock = new RandomStock(5).inventory(1, 1, 3);
        List<Shaft> shafts = new ArrayList<>(stock.shafts());
        Shaft promised = shafts.get(1);
        shafts.set(1, altered(promised, promised.torqueDeg(),
            new Keeping(Optional.of("Alder Vane"), Optional.empty(), Optional.empty(), Map.of()), ShaftMaterial.GRAPHITE));
        shafts.set(2, altered(shafts.get(2), shafts.get(2).torqueDeg(), Keeping.UNRECORDED, ShaftMaterial.STEEL));
        Inventory mixed = with(stock, stock.heads(), shafts);
        ShaftRequest plain = request(mixed, stock.heads().get(1), Map.of(), NEAREST);
        ShaftAnswer answer = ShaftChoice.run(new ShaftRequest(plain.club(), plain.head(), mixed, plain.shop(),
            plain.tolerances(), plain.written(), plain.headAddedG(), Optional.of(ShaftMaterial.GRAPHITE), false,
            Set.of(), NEAREST));
        assertThat(answer.picks()).extracting(p -> p.option().shaft().tag()).doesNotContain(promised.tag());
        assertThat(answer.belowTheLine()).hasSize(1);
        assertThat(answer.belowTheLine().get(0).reason()).isEqualTo("promised to Alder Vane");
        assertThat(answer.ruledOut()).containsEntry("other material", 1);
    }

    @Test
    void aLadderWithMoreRungsThanShaftsNamesTheEmptyOnes() throws Exception {
        Inventory stock = new RandomStock(5).inventory(1, 1, 2);
        ShaftAnswer answer = ShaftChoice.run(request(stock, stock.heads().get(1), Map.of(),
            new ShaftRequest.Picking(Pick.LADDER, 12, 200, 3, 5)));
        assertThat(answer.picks().size() + answer.emptyRungs().size()).isEqualTo(5);
        assertThat(answer.picks()).hasSize((int) answer.considered());
    }

    @Test
    void withoutALengthThereIsNothingToChooseFor() throws Exception {
        Inventory stock = new RandomStock(5).inventory(1, 1, 2);
        Favourite club = FavouriteOfRecord.of(stock.clubs().get(0), stock, Tolerances.DEFAULT);
        Map<Quantity, Wanted> wanted = new EnumMap<>(Quantity.class);
        wanted.putAll(club.target().wanted());
        wanted.remove(Quantity.LENGTH);
        ShaftRequest asked = new ShaftRequest(
            club.withTarget(new Target(club.reading(), wanted)), stock.heads().get(1), stock,
            ShopSettings.DEFAULT, Tolerances.DEFAULT, Map.of(), OptionalDouble.empty(), Optional.empty(), false, Set.of(), NEAREST);
        assertThatThrownBy(() -> ShaftChoice.run(asked)).isInstanceOf(ShaftChoice.NothingToChooseFor.class)
            .hasMessage("the length of the new build is not known");
    }
}
