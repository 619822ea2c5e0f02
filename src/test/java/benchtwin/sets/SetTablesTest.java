package benchtwin.sets;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import benchtwin.club.Quantity;
import benchtwin.match.SlotPlan;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

class SetTablesTest {

    private static final String PLAYER = "J. Quillby";

    @Test
    void anOptionIsItsPlanInWholeNumbers() {
        SetTables tables = new SetTables(SampleSets.request(SampleSets.group(PLAYER, "irons"), List.of(), Set.of()));
        SetModel model = tables.model();
        for (int slot = 0; slot < model.slots(); slot++) {
            assertThat(model.options(slot)).isNotEmpty();
            Option option = model.options(slot).get(model.options(slot).size() / 2);
            SlotPlan plan = tables.plan(option);
            double target = tables.slots().get(slot).target().of(Quantity.FREQUENCY).orElseThrow().value();
            assertThat(option.cost()).isEqualTo(Math.round(plan.cost() * 1e6));
            // a price of 0.15 for a tolerance of 2 cpm: the square of the residual, in millionths, is that price
            double price = 0.15 * Math.pow((plan.value(Quantity.FREQUENCY) - target) / 2, 2);
            assertThat((double) option.frequency() * option.frequency() / 1e6).isCloseTo(price,
                within(0.002 * Math.sqrt(price) + 1e-6));
            assertThat(plan.head().tag()).isEqualTo(tables.head(option.head()).tag());
        }
        assertThat(model.groups()).hasSize(1);
        assertThat(model.groups().get(0).sameModels()).isTrue();
    }

    @Test
    void aPinnedClubTakesItsPartsAndNobodyElseDoes() {
        SetTables free = new SetTables(SampleSets.request(SampleSets.group(PLAYER, "irons"), List.of(), Set.of()));
        SetModel before = free.model();
        Option some = before.options(3).get(0);
        String head = free.head(some.head()).tag();
        String shaft = free.shaft(some.shaft()).tag();
        String club = free.slots().get(3).club().club();
        SetTables tables = new SetTables(SampleSets.request(SampleSets.group(PLAYER, "irons"),
            List.of(new SetPin(PLAYER, club, Optional.of(head), Optional.empty()),
                new SetPin(PLAYER, club, Optional.empty(), Optional.of(shaft))), Set.of()));
        SetModel model = tables.model();
        for (int slot = 0; slot < model.slots(); slot++) {
            for (Option option : model.options(slot)) {
                assertThat(option.head() == some.head() && option.shaft() == some.shaft()).isEqualTo(slot == 3);
                assertThat(option.head() == some.head() || option.shaft() == some.shaft()).isEqualTo(slot == 3);
            }
        }
        assertThat(model.options(3)).hasSize(1);
        assertThat(tables.slots().get(3).isPinned()).isTrue();
    }

    @Test
    void aBannedPartIsNotThere() {
        SetTables free = new SetTables(SampleSets.request(SampleSets.group(PLAYER, "wedges"), List.of(), Set.of()));
        Set<String> heads = new HashSet<>();
        free.model().options(0).forEach(option -> heads.add(free.head(option.head()).tag()));
        String banned = heads.iterator().next();
        SetTables tables = new SetTables(SampleSets.request(SampleSets.group(PLAYER, "wedges"), List.of(), Set.of(banned)));
        tables.model().options(0).forEach(option -> assertThat(tables.head(option.head()).tag()).isNotEqualTo(banned));
        assertThat(heads).hasSizeGreaterThan(1);
    }

    @Test
    void dearPartsBringInOthersThatWereNotWorkedOut() {
        SetTables tables = new SetTables(SampleSets.request(SampleSets.group(PLAYER, "wedges"), List.of(), Set.of()));
        SetModel model = tables.model();
        Option[] plan = new Option[model.slots()];
        Prices dear = Prices.none(model);
        for (int slot = 0; slot < model.slots(); slot++) {
            plan[slot] = model.options(slot).stream().min(Comparator.comparingLong(Option::cost)).orElseThrow();
            model.options(slot).forEach(option -> dear.shaft()[option.shaft()] = 2e6);
        }
        SetModel wider = new Widening(tables, model, dear, plan).run();
        int fresh = 0;
        for (int slot = 0; slot < model.slots(); slot++) {
            assertThat(wider.options(slot)).containsAll(model.options(slot));
            Set<Option> known = new HashSet<>(model.options(slot));
            for (Option option : wider.options(slot)) {
                if (!known.contains(option)) {
                    fresh++;
                    assertThat(dear.shaft()[option.shaft()]).as("its shaft is not a dear one").isZero();
                }
            }
        }
        assertThat(fresh).isPositive();
        SetModel again = new Widening(tables, model, Prices.none(model), plan).run();
        assertThat(again.options(0).size() - model.options(0).size())
            .as("without prices little promises better").isLessThan(10);
    }
}
