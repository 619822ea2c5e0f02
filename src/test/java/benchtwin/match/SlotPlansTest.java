package benchtwin.match;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import benchtwin.club.AddedMasses;
import benchtwin.club.Head;
import benchtwin.club.Inventory;
import benchtwin.club.Quantity;
import benchtwin.club.SetTargets;
import benchtwin.club.Shaft;
import benchtwin.club.ShaftMaterial;
import benchtwin.club.StepKind;
import benchtwin.club.Target;
import benchtwin.club.WantedClub;
import benchtwin.mechanics.Assemblies;
import benchtwin.mechanics.FrequencyCondition;
import benchtwin.mechanics.GripFactors;
import benchtwin.mechanics.Setup;
import benchtwin.samples.SampleFolder;
import benchtwin.stock.SetTargetReader;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class SlotPlansTest {

    /** Coarse enough to try every cut and mass: 2 g, 5 mm, half-inch trims. */
    private static final ShopSettings COARSE =
        new ShopSettings(0.5, 2, 5, 12.7, 4, 120, 5, 1440, 120, Map.of(), 0.002, 0.05, 0.02, 0.005);

    private static final Inventory STOCK = SampleFolder.inventory();
    private static final SetTargets TARGETS = SetTargetReader.read(SampleFolder.PATH.resolve("set-targets.csv"),
        Optional.of(SampleFolder.PATH.resolve("lines.csv")), false).targets().orElseThrow();

    private static Favourite wanted(WantedClub club) {
        Target target = TARGETS.targetOf(club).orElseThrow();
        return new Favourite(club.club(), Optional.of(club.player()), club.category(), club.number(), club.hand(),
            Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), STOCK.grip("G-030"), AddedMasses.ONE_LAYER,
            target, FrequencyCondition.BARE, target.reading(), Optional.empty(),
            new Assemblies(GripFactors.learn(STOCK.shafts()).of(Optional.empty())), List.of());
    }

    static LongStream seeds() {
        return LongStream.range(1, 9);
    }

    /** A club, a head and a shaft that go together, drawn by seed. */
    private record Drawn(Favourite wanted, SlotPlans plans, SlotPlan plan) {

        static Drawn of(long seed, ShopSettings shop) {
            Random random = new Random(seed);
            while (true) {
                WantedClub club = TARGETS.clubs().get(random.nextInt(TARGETS.clubs().size()));
                Favourite wanted = SlotPlansTest.wanted(club);
                SlotPlans plans = new SlotPlans(wanted, STOCK, shop);
                if (!plans.heads().isEmpty()) {
                    Head head = plans.heads().get(random.nextInt(plans.heads().size()));
                    Shaft shaft = plans.shafts().get(random.nextInt(plans.shafts().size()));
                    Optional<SlotPlan> plan = plans.plan(head, shaft, Double.POSITIVE_INFINITY);
                    if (plan.isPresent()) {
                        return new Drawn(wanted, plans, plan.get());
                    }
                }
            }
        }
    }

    /** Every cut and every mass of the same parts with the same angles, each predicted anew by the whole model. */
    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void noCutsAndMassesCostLess(long seed) {
        Drawn drawn = Drawn.of(seed, COARSE);
        FoundPlan found = drawn.plan().plan();
        Candidate candidate = found.candidate();
        TwinModel twin = new TwinModel(Optional.empty(), Keep.NONE, FrequencyCondition.BARE, drawn.wanted().reading());
        List<HeadMass.Option> masses = HeadMass.all(candidate.head().ports(), candidate.head().hotMeltMaxG(), STOCK.weights(),
            COARSE, AddedMasses.ONE_LAYER);
        double angleEffort = angleEffort(found);
        double joining = candidate.joining().stream().mapToDouble(w -> COARSE.effort(w.kind())).sum();
        double least = Double.POSITIVE_INFINITY;
        double mostTrim = candidate.trimmable() ? Cuts.mostTipTrimMm(candidate) : 0;
        double mostButt = candidate.gripOff() ? candidate.shaft().lengthMm() / 2 : COARSE.buttCutMaxMm();
        for (double trim = 0; trim <= mostTrim + 1e-9; trim += 12.7) {
            for (double butt = -25; butt <= Math.min(mostButt, 250); butt += 5) {
                boolean tooLongAnExtension = -butt > (candidate.shaft().material() == ShaftMaterial.STEEL
                    ? Cuts.STEEL_EXTENSION_MAX_MM : Cuts.GRAPHITE_EXTENSION_MAX_MM);
                if (tooLongAnExtension) {
                    continue;
                }
                double regrip = butt != 0 && !candidate.gripOff() ? COARSE.effort(StepKind.REGRIP) : 0;
                double cut = (trim > 0 ? COARSE.effort(StepKind.TIP_TRIM) : 0) + regrip
                    + (butt > 0 ? COARSE.effort(StepKind.BUTT_CUT) : butt < 0 ? COARSE.effort(StepKind.EXTENSION) + 5 * 0.005 : 0);
                for (HeadMass.Option mass : masses) {
                    Setup setup = new Setup(trim, Math.max(0, butt), Math.max(0, -butt), butt < 0 ? 5 : 0, 1, mass.addedG(), 0,
                        found.angle().aim());
                    double cost = joining + angleEffort + cut + mass.effort()
                        + CostTerms.missSquared(drawn.wanted().target(), twin.predict(candidate.assembly(), setup));
                    least = Math.min(least, cost);
                }
            }
        }
        assertThat(drawn.plan().cost()).isLessThanOrEqualTo(least + 1e-9);
        boolean tipWeighted = found.cut().tipWeight() != null;
        assertThat(tipWeighted ? least : drawn.plan().cost()).as("and it is one of them").isCloseTo(least, within(1e-9));
    }

    private static double angleEffort(FoundPlan found) {
        if (found.angle().setting() != null) {
            return found.candidate().settingNow().equals(Optional.of(found.angle().setting())) ? 0
                : COARSE.effort(StepKind.SLEEVE_SETTING);
        }
        if (!(found.angle().aim() instanceof Setup.Tilted tilted)) {
            return 0;
        }
        boolean wood = found.candidate().head().isWood();
        int bends = wood ? 1 : (found.angle().lieSteps() != 0 ? 1 : 0) + (found.angle().turnSteps() != 0 ? 1 : 0);
        return bends * COARSE.effort(wood ? StepKind.BEND_WOOD : StepKind.BEND_IRON) + 0.02 * tilted.tilt().totalDeg();
    }

    /** The match, given the same target and a stock of the two parts alone, is the outside opinion. */
    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void theExactPlanIsTheMatchOfTheTwoParts(long seed) {
        Drawn drawn = Drawn.of(seed, ShopSettings.DEFAULT);
        Inventory two = new Inventory(List.of(drawn.plan().head()), List.of(drawn.plan().shaft()), STOCK.grips(),
            STOCK.sleeves(), STOCK.weights(), List.of());
        MatchAnswer match = Match.run(new MatchRequest(drawn.wanted(), two, Keep.NONE, true, 1, ShopSettings.DEFAULT,
            OptionalDouble.empty()));
        SlotPlan exact = drawn.plans().exact(drawn.plan());
        assertThat(exact.cost()).isLessThanOrEqualTo(match.results().get(0).cost() + 1e-12);
        if (drawn.plan().shaft().sleeveOn().isEmpty()) {
            assertThat(exact.cost()).isCloseTo(match.results().get(0).cost(), within(1e-12));
        }
        assertThat(drawn.plan().cost() - exact.cost()).as("what angles apart give away").isBetween(-1e-12, 0.02);
        assertThat(drawn.plans().explained(exact).cost()).isEqualTo(exact.cost());
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void aPullBringsTheFrequencyNearerAndItsCostIsTheClubsOwn(long seed) {
        Drawn drawn = Drawn.of(seed, ShopSettings.DEFAULT);
        SlotPlan exact = drawn.plans().exact(drawn.plan());
        double tolerance = drawn.wanted().target().of(Quantity.FREQUENCY).orElseThrow().tolerance();
        double toward = exact.value(Quantity.FREQUENCY) + 3 * tolerance;
        double weight = 0.5;
        SlotPlan pulled = drawn.plans().pulled(exact, List.of(new SlotPlans.Pull(Quantity.FREQUENCY, toward, tolerance, weight)));
        double before = exact.cost() + weight * square((exact.value(Quantity.FREQUENCY) - toward) / tolerance);
        double after = pulled.cost() + weight * square((pulled.value(Quantity.FREQUENCY) - toward) / tolerance);
        assertThat(after).isLessThanOrEqualTo(before + 1e-9);
        assertThat(pulled.cost()).isGreaterThanOrEqualTo(exact.cost() - 1e-9);
        assertThat(pulled.cost()).as("miss and work, without the pull").isCloseTo(
            CostTerms.missSquared(drawn.wanted().target(), allOf(pulled)) + drawn.plans().explained(pulled).effort(), within(1e-9));
    }

    private static double[] allOf(SlotPlan plan) {
        double[] values = new double[Quantity.values().length];
        for (Quantity quantity : Quantity.values()) {
            values[quantity.ordinal()] = plan.value(quantity);
        }
        return values;
    }

    private static double square(double x) {
        return x * x;
    }

    @Test
    void aPartPromisedToSomebodyElseIsNotThere() {
        List<String> promised = new ArrayList<>();
        STOCK.heads().stream().filter(h -> h.keeping().reservedFor().isPresent()).forEach(h -> promised.add(h.tag()));
        assertThat(promised).isNotEmpty();
        for (WantedClub club : TARGETS.clubs()) {
            new SlotPlans(wanted(club), STOCK, ShopSettings.DEFAULT).heads().forEach(head ->
                assertThat(head.keeping().reservedFor().filter(who -> !who.equals(club.player()) && !who.equals(club.club())))
                    .as("%s for %s", head.tag(), club.player()).isEmpty());
        }
    }
}
