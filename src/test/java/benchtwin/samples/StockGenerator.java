package benchtwin.samples;

import benchtwin.club.AddedMasses;
import benchtwin.club.Adjust;
import benchtwin.club.ClubRow;
import benchtwin.club.ClubState;
import benchtwin.club.FrequencyReading;
import benchtwin.club.Grip;
import benchtwin.club.Hand;
import benchtwin.club.Head;
import benchtwin.club.HeadAngles;
import benchtwin.club.Inventory;
import benchtwin.club.LengthMethod;
import benchtwin.club.Port;
import benchtwin.club.Quantity;
import benchtwin.club.RecordedClub;
import benchtwin.club.Shaft;
import benchtwin.club.ShaftCondition;
import benchtwin.club.Sleeve;
import benchtwin.club.TipKind;
import benchtwin.measure.DefaultUncertainty;
import benchtwin.measure.Reading;
import benchtwin.mechanics.Assembler;
import benchtwin.mechanics.Assembly;
import benchtwin.mechanics.ClubModel;
import benchtwin.mechanics.FrequencyCondition;
import benchtwin.mechanics.Setup;
import benchtwin.mechanics.Stiffness;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;

/**
 * Stock of any size for benchmarks and property tests: drivers of one model and hand, part of them with a 6 × 5 sleeve's
 * seat and the rest bored and bendable, and shafts of one model. The same seed gives the same stock, and a larger stock
 * begins with the smaller one.
 */
public final class StockGenerator {

    /** Tag of the recorded club in {@link #workshop}. */
    public static final String CLUB = "FAVOURITE-DR";
    private static final String SIZE = "9";
    private static final HeadLine SLEEVED = HeadLines.ALDER_2;
    private static final HeadLine BORED = new HeadLine(SLEEVED.model(), SLEEVED.category(), SLEEVED.reading(),
        SLEEVED.material(), HeadLine.Fitting.bored(Adjust.BEND, 0.340, TipKind.PARALLEL, 34, 26), SLEEVED.ports(),
        SLEEVED.hotMeltMaxG(), SLEEVED.volumeCm3(), SLEEVED.sizes());

    private final Draw draw;

    /**
     * A generator.
     * @param seed decides everything
     */
    public StockGenerator(long seed) {
        this.draw = new Draw(seed);
    }

    /**
     * Drivers of one model, right-handed, every one measured.
     * @param count        how many
     * @param sleevedShare share of them that takes the sleeve, 0 to 1, spread evenly
     * @return heads tagged {@code H-000001} and on
     */
    public List<Head> heads(int count, double sleevedShare) {
        List<Head> heads = new ArrayList<>(count);
        for (int i = 0; i < count; i++) {
            boolean sleeved = Math.floor((i + 1) * sleevedShare) > Math.floor(i * sleevedShare);
            heads.add(head(draw.of("head " + i), sleeved).toHead(tag("H", i + 1)));
        }
        return heads;
    }

    /**
     * New driver shafts of one model.
     * @param count how many
     * @return shafts tagged {@code S-000001} and on, every one measured
     */
    public List<Shaft> shafts(int count) {
        List<Shaft> shafts = new ArrayList<>(count);
        for (int i = 0; i < count; i++) {
            shafts.add(new ShaftMaker(draw.of("shaft " + i)).make(ShaftLines.BROOK_60_S, "").toShaft(tag("S", i + 1)));
        }
        return shafts;
    }

    /**
     * A whole workshop: that many heads and shafts, the sleeves and weights of the sample workshop, and one recorded club,
     * {@link #CLUB}, in a 6 × 5 sleeve, whose own head and shaft come on top.
     * @param heads        heads in the drawers
     * @param shafts       shafts in the rack
     * @param sleevedShare share of the heads that takes the sleeve, 0 to 1
     * @return the inventory
     */
    public Inventory workshop(int heads, int shafts, double sleevedShare) {
        List<Sleeve> sleeves = new Sleeves(draw.of("sleeves")).all();
        Grip grip = new Grips(draw.of("grip")).onto(Grips.MOSS, CLUB);
        Head ownHead = head(draw.of("own head"), true).toHead("H-OWN");
        ShaftDraft shaft = new ShaftMaker(draw.of("own shaft")).make(ShaftLines.BROOK_60_S, "");
        shaft.tipCutIn = 1;
        shaft.buttCutIn = 2.25;
        shaft.condition = ShaftCondition.PULLED;
        shaft.sleeveOn = sleeves.get(0).name();
        shaft.gripOn = grip.tag();
        Shaft ownShaft = shaft.toShaft("S-OWN");
        List<Head> allHeads = new ArrayList<>(heads(heads, sleevedShare));
        allHeads.add(ownHead);
        List<Shaft> allShafts = new ArrayList<>(shafts(shafts));
        allShafts.add(ownShaft);
        return new Inventory(allHeads, allShafts, List.of(grip), sleeves, Weights.all(),
            List.of(favourite(ownHead, ownShaft, sleeves.get(0), grip)));
    }

    private static HeadDraft head(Draw own, boolean sleeved) {
        HeadDraft head = new HeadMaker(own).make(sleeved ? SLEEVED : BORED, SIZE, Hand.RIGHT);
        if (!sleeved) {
            HeadMaker.bend(head, 0, 0, 0, 0);
        }
        return head;
    }

    /** A club that measures what the mechanics say of its parts. */
    private static RecordedClub favourite(Head head, Shaft shaft, Sleeve sleeve, Grip grip) {
        Assembly assembly = Assembler.of(head, shaft, Optional.of(sleeve), Optional.of(grip));
        Setup setup = Setup.plain(1, head.ports().stream().mapToDouble(Port::massG).sum());
        FrequencyCondition condition = new FrequencyCondition(FrequencyCondition.BARE.clampMm(), true);
        double[] model = ClubModel.predict(assembly, setup, condition, Stiffness.rootFromRaw(assembly),
            head.angles().reading());
        Function<Quantity, Double> of = quantity -> model[quantity.ordinal()];
        FrequencyReading frequency = new FrequencyReading(
            Reading.of(of.apply(Quantity.FREQUENCY), DefaultUncertainty.FREQUENCY_CPM),
            OptionalDouble.of(condition.clampMm()), OptionalDouble.empty(), OptionalDouble.empty(), true,
            OptionalDouble.empty());
        HeadAngles angles = new HeadAngles(head.angles().reading(), head.angles().loftDeg(), head.angles().lieDeg(),
            head.angles().faceDeg(), Optional.empty());
        ClubRow row = new ClubRow(LocalDate.of(2026, 4, 14), ClubState.IN_PLAY, Optional.of(head.tag()),
            Optional.of(shaft.tag()), Optional.of(grip.tag()), Optional.of(sleeve.name()),
            head.seat().orElseThrow().readAtSetting(), Optional.of(angles),
            Optional.of(Reading.of(of.apply(Quantity.LENGTH), DefaultUncertainty.LENGTH_MM)), LengthMethod.AXIS,
            Optional.of(Reading.of(of.apply(Quantity.SWING_WEIGHT), DefaultUncertainty.SWING_WEIGHT_POINTS)),
            Optional.of(frequency), Optional.of(Reading.of(of.apply(Quantity.TOTAL_MASS), DefaultUncertainty.MASS_G)),
            AddedMasses.ONE_LAYER, Optional.empty(), Optional.empty(), Map.of());
        return new RecordedClub(CLUB, "N. Oakes", head.category(), Optional.empty(), head.hand(), List.of(row));
    }

    private static String tag(String prefix, int number) {
        return String.format(Locale.ROOT, "%s-%06d", prefix, number);
    }
}
