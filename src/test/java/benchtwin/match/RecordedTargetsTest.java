package benchtwin.match;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import benchtwin.club.AddedMasses;
import benchtwin.club.AngleReading;
import benchtwin.club.Category;
import benchtwin.club.ClubRow;
import benchtwin.club.ClubState;
import benchtwin.club.FrequencyReading;
import benchtwin.club.GroupRule;
import benchtwin.club.Hand;
import benchtwin.club.HeadAngles;
import benchtwin.club.Inventory;
import benchtwin.club.LengthMethod;
import benchtwin.club.Line;
import benchtwin.club.LinePer;
import benchtwin.club.Margin;
import benchtwin.club.Quantity;
import benchtwin.club.RecordedClub;
import benchtwin.club.SetTargets;
import benchtwin.club.Target;
import benchtwin.club.Wanted;
import benchtwin.club.WantedClub;
import benchtwin.measure.Reading;
import benchtwin.mechanics.ClubModel;
import benchtwin.mechanics.FrequencyCondition;
import benchtwin.mechanics.RulesLength;
import benchtwin.mechanics.Stiffness;
import benchtwin.samples.SampleFolder;
import benchtwin.stock.SetTargetRead;
import benchtwin.stock.SetTargetReader;
import benchtwin.stock.SetTargetWriter;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Sets out of the record: the sample workshop's players, and a small record of clubs without parts. */
class RecordedTargetsTest {

    private static final double ARITHMETIC = 1e-9;
    /** What stands in for the grip factor where no pair of readings taught it: memory. */
    private static final double GRIP_FACTOR = 0.98;
    /** Values of the set are written to a hundredth. */
    private static final double HALF_A_HUNDREDTH = 0.005 + ARITHMETIC;

    @TempDir
    Path folder;

    private static RecordedClub club(String tag, Category category, String number, ClubRow... rows) {
        return new RecordedClub(tag, "R. Fenn", category, Optional.ofNullable(number), Hand.RIGHT, List.of(rows));
    }

    private static ClubRow row(String day, ClubState state, double loftDeg, double lengthIn, LengthMethod method, double cpm,
                               double clampMm, boolean overGrip) {
        Optional<HeadAngles> angles = Double.isNaN(loftDeg) ? Optional.empty() : Optional.of(new HeadAngles(AngleReading.EDGE,
            Optional.of(Reading.of(loftDeg, 0.2)), Optional.of(Reading.of(62, 0.2)), Optional.empty(), Optional.empty()));
        return new ClubRow(LocalDate.parse(day), state, Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(),
            Optional.empty(), angles, reading(lengthIn * 25.4, 0.8), method, Optional.empty(),
            reading(cpm, 0.5).map(read -> new FrequencyReading(read, OptionalDouble.of(clampMm), OptionalDouble.empty(),
                OptionalDouble.empty(), overGrip, OptionalDouble.empty())),
            Optional.empty(), AddedMasses.ONE_LAYER, Optional.empty(), Optional.empty(), Map.of());
    }

    private static Optional<Reading> reading(double value, double uncertainty) {
        return Double.isNaN(value) ? Optional.empty() : Optional.of(Reading.of(value, uncertainty));
    }

    private static ClubRow bare(double loftDeg, double lengthIn, double cpm) {
        return row("2026-05-03", ClubState.IN_PLAY, loftDeg, lengthIn, LengthMethod.AXIS, cpm, 127, false);
    }

    private static RecordedTargets of(boolean straightened, RecordedClub... clubs) {
        return RecordedTargets.of(record(clubs), "R. Fenn", Tolerances.DEFAULT, straightened);
    }

    private static Inventory record(RecordedClub... clubs) {
        return new Inventory(List.of(), List.of(), List.of(), List.of(), List.of(), List.of(clubs));
    }

    /**
     * Lengths 38, 37.5, 37, 36.5 and cpm 300, 304, 309, 311: means 37.25 and 306; Σ(x − x̄)² = 1.25, Σ(x − x̄)(y − ȳ) = −9.5; so
     * 7.6 cpm for each inch shorter, 306 + 7.6 · 0.25 = 307.9 at 37 in. The line gives 300.3, 304.1, 307.9, 311.7.
     */
    private static RecordedClub[] fourIrons() {
        return new RecordedClub[] {club("F-8", Category.IRON, "8", bare(38, 36.5, 311)),
            club("F-7", Category.IRON, "7", bare(34, 37, 309)), club("F-6", Category.IRON, "6", bare(30.5, 37.5, 304)),
            club("F-5", Category.IRON, "5", bare(27, 38, 300))};
    }

    private static Wanted wanted(SetTargets targets, String club, Quantity quantity) {
        return targets.targetOf(named(targets, club)).flatMap(target -> target.of(quantity)).orElseThrow();
    }

    private static WantedClub named(SetTargets targets, String club) {
        return targets.clubs().stream().filter(one -> one.club().equals(club)).findFirst().orElseThrow();
    }

    @Test
    void everyIronKeepsItsFrequencyUnlessTheyAreStraightened() {
        RecordedTargets kept = of(false, fourIrons());
        assertThat(kept.targets().clubs()).extracting(WantedClub::club).containsExactly("5-iron", "6-iron", "7-iron", "8-iron");
        assertThat(kept.targets().lines()).isEmpty();
        assertThat(kept.targets().clubs()).extracting(one -> wanted(kept.targets(), one.club(), Quantity.FREQUENCY).value())
            .containsExactly(300.0, 304.0, 309.0, 311.0);
        assertThat(kept.ironLine()).contains(new Line("irons of record of R. Fenn", Quantity.FREQUENCY, "7-iron", 307.9, 7.6,
            LinePer.INCH));
        RecordedTargets straight = of(true, fourIrons());
        assertThat(straight.targets().lines()).containsExactly(kept.ironLine().orElseThrow());
        double[] onTheLine = {300.3, 304.1, 307.9, 311.7};
        for (int i = 0; i < onTheLine.length; i++) {
            WantedClub iron = straight.targets().clubs().get(i);
            assertThat(iron.frequencyLine()).contains("irons of record of R. Fenn");
            assertThat(wanted(straight.targets(), iron.club(), Quantity.FREQUENCY).value())
                .isCloseTo(onTheLine[i], within(ARITHMETIC));
            assertThat(wanted(straight.targets(), iron.club(), Quantity.LOFT))
                .isEqualTo(wanted(kept.targets(), iron.club(), Quantity.LOFT));
        }
        assertThat(straight.notes()).contains("the irons lie on a line of 7.60 cpm an inch, 307.90 cpm at the 7-iron; on record "
            + "the 7-iron is furthest off it, by +1.1 cpm");
    }

    @Test
    void tolerancesOfTheJobGoAlongOnTheLineToo() {
        Tolerances job = new Tolerances(Map.of(Quantity.FREQUENCY, 1.0, Quantity.LOFT, 0.4), Map.of(Quantity.FREQUENCY, 2.0));
        RecordedTargets kept = RecordedTargets.of(record(fourIrons()), "R. Fenn", job, false);
        RecordedTargets straight = RecordedTargets.of(record(fourIrons()), "R. Fenn", job, true);
        assertThat(wanted(kept.targets(), "7-iron", Quantity.FREQUENCY)).isEqualTo(new Wanted(309, 1, 2));
        assertThat(wanted(straight.targets(), "7-iron", Quantity.FREQUENCY)).isEqualTo(new Wanted(307.9, 1, 2));
        assertThat(named(straight.targets(), "7-iron").lineMargins()).isEqualTo(Map.of(Quantity.FREQUENCY, new Margin(1, 2)));
        assertThat(wanted(straight.targets(), "7-iron", Quantity.LOFT)).isEqualTo(new Wanted(34, 0.4, 1));
    }

    @Test
    void whatAllowsNoLineKeepsItsFrequencies() {
        RecordedClub[] two = {fourIrons()[0], fourIrons()[1]};
        RecordedClub[] alike = {club("F-5", Category.IRON, "5", bare(27, 37, 300)), club("F-6", Category.IRON, "6",
            bare(30, 37.25, 303)), club("F-7", Category.IRON, "7", bare(34, 37.5, 301))};
        for (RecordedClub[] irons : List.of(two, alike)) {
            RecordedTargets set = of(true, irons);
            assertThat(set.ironLine()).isEmpty();
            assertThat(set.targets().lines()).isEmpty();
            assertThat(set.targets().clubs()).allMatch(one -> one.target().orElseThrow().of(Quantity.FREQUENCY).isPresent());
            assertThat(set.notes()).contains("the irons keep their frequencies: a line takes three irons with length and "
                + "frequency, 3/4 in apart or more");
        }
    }

    @Test
    void anIronTakesAMissingFrequencyFromTheLineAndStaysOffItWithoutALength() {
        List<RecordedClub> irons = new ArrayList<>(List.of(fourIrons()));
        irons.add(club("F-9", Category.IRON, "9", bare(42, 36, Double.NaN)));
        irons.add(club("F-PW", Category.IRON, "PW", bare(46, Double.NaN, 320)));
        RecordedTargets set = of(true, irons.toArray(RecordedClub[]::new));
        assertThat(set.targets().clubs()).extracting(WantedClub::club).endsWith("9-iron", "PW");
        assertThat(wanted(set.targets(), "9-iron", Quantity.FREQUENCY).value()).isCloseTo(307.9 + 7.6, within(ARITHMETIC));
        assertThat(named(set.targets(), "PW").frequencyLine()).isEmpty();
        assertThat(wanted(set.targets(), "PW", Quantity.FREQUENCY).value()).isEqualTo(320);
        assertThat(set.notes()).contains("9-iron takes a frequency from the line",
            "PW keeps off the line: it has no length, or nothing else of it counts",
            "F-9: frequency was never read on club F-9: it cannot be matched, the rest is");
    }

    @Test
    void frequenciesComeToTheBareButtOrAreLeftFree() {
        RecordedTargets set = of(false, club("F-7", Category.IRON, "7",
            row("2026-05-03", ClubState.IN_PLAY, 34, 37, LengthMethod.AXIS, 300, 127, true)), club("F-8", Category.IRON, "8",
            row("2026-05-03", ClubState.IN_PLAY, 38, 36.5, LengthMethod.AXIS, 315, 178, false)));
        assertThat(wanted(set.targets(), "7-iron", Quantity.FREQUENCY).value())
            .isCloseTo(300 / GRIP_FACTOR, within(HALF_A_HUNDREDTH));
        assertThat(named(set.targets(), "8-iron").target().orElseThrow().of(Quantity.FREQUENCY)).isEmpty();
        assertThat(set.notes()).contains("1 frequency was read over the grip or in another clamp, carried to the bare butt",
            "F-8: its frequency was read in a clamp of 178 mm and cannot be carried to the usual one without its parts: left "
                + "free");
    }

    /** A recorded iron of the sample, said to have been read in a longer clamp: what the model reads there comes back bare. */
    @Test
    void anotherClampIsCarriedByTheModelOfTheClub() throws FavouriteOfRecord.NothingToMatch {
        Inventory stock = SampleFolder.inventory();
        Favourite favourite = FavouriteOfRecord.of(stock.club("QUILLBY-7I").orElseThrow(), stock, Tolerances.DEFAULT);
        double over = favourite.target().of(Quantity.FREQUENCY).orElseThrow().value();
        double bare = BareFrequency.cpm(favourite, over).orElseThrow();
        OldClub old = favourite.old().orElseThrow();
        var longer = new FrequencyCondition(178, true);
        double root = Stiffness.rootFromClub(old.assembly(), old.setup(), old.condition(), over);
        double there = ClubModel.predict(old.assembly(), old.setup(), longer, root,
            favourite.reading())[Quantity.FREQUENCY.ordinal()];
        assertThat(there).as("a shorter beam is quicker").isGreaterThan(over + 5);
        Favourite longClamp = new Favourite(favourite.name(), favourite.player(), favourite.category(), favourite.number(),
            favourite.hand(), favourite.head(), favourite.shaft(), favourite.sleeve(), favourite.setting(), favourite.grip(),
            favourite.carried(), favourite.target(), longer, favourite.reading(),
            Optional.of(new OldClub(old.assembly(), old.setup(), longer, old.measured())), favourite.assemblies(), List.of());
        assertThat(BareFrequency.cpm(longClamp, there).orElseThrow()).isCloseTo(bare, within(1e-6));
        assertThat(bare).isCloseTo(over / favourite.assemblies().factor().value(), within(ARITHMETIC));
    }

    @Test
    void theLastSoundReadingCountsAndLengthsAreCarriedToTheAxis() {
        RecordedTargets set = of(false, club("F-7", Category.IRON, "7",
            row("2026-04-01", ClubState.IN_PLAY, 33, 36.75, LengthMethod.AXIS, 300, 127, false),
            row("2026-05-01", ClubState.IN_PLAY, 34, 37, LengthMethod.RULES60, 305, 127, false),
            row("2026-05-20", ClubState.DAMAGED, Double.NaN, Double.NaN, LengthMethod.AXIS, Double.NaN, 127, false)));
        assertThat(wanted(set.targets(), "7-iron", Quantity.LOFT).value()).isEqualTo(34);
        assertThat(wanted(set.targets(), "7-iron", Quantity.LENGTH).value()).as("longer along the axis at 62°")
            .isBetween(37 * 25.4, 37 * 25.4 + 5).isCloseTo(37 * 25.4 + RulesLength.shorterByMm(62,
                RulesLength.IRON_SOLE_CENTRE_MM, RulesLength.SOLE_RADIUS_MM),
                within(HALF_A_HUNDREDTH));
        assertThat(named(set.targets(), "7-iron").keeping().note()).contains("as F-7 on 2026-05-01");
    }

    @Test
    void clubsAreNamedByKindAndTwoOfAKindAreCounted() {
        RecordedTargets set = of(false, club("F-PT", Category.PUTTER, null, bare(3, 34, Double.NaN)),
            club("F-58", Category.WEDGE, "58", bare(58, 35, 320)), club("F-GW", Category.WEDGE, "GW", bare(50, 35, 320)),
            club("F-PW", Category.IRON, "PW", bare(46, 35.5, 318)), club("F-DR2", Category.DRIVER, "1", bare(10, 45, 250)),
            club("F-DR", Category.DRIVER, null, bare(9, 45, 251)), club("F-3W", Category.FAIRWAY, "3", bare(15, 43, 260)),
            club("F-4H", Category.HYBRID, "4", bare(22, 40, 275)), club("F-7", Category.IRON, "7", bare(34, 37, 309)),
            club("F-7b", Category.IRON, "7", row("2026-05-03", ClubState.BACKUP, 34.5, 37, LengthMethod.AXIS, 309, 127, false)));
        assertThat(set.targets().clubs()).extracting(WantedClub::club).containsExactly("driver", "driver 2", "3-wood",
            "4-hybrid", "7-iron", "7-iron 2", "PW", "58", "GW", "putter");
        assertThat(set.notes()).contains("F-7b is on record as a backup");
        assertThat(set.targets().clubs()).allSatisfy(one -> {
            assertThat(one.player()).isEqualTo("R. Fenn");
            assertThat(one.priority()).isEqualTo(WantedClub.DEFAULT_PRIORITY);
            assertThat(one.group()).isEqualTo(switch (one.category()) {
                case IRON -> Optional.of("irons");
                case WEDGE -> Optional.of("wedges");
                default -> Optional.<String>empty();
            });
        });
    }

    @Test
    void whatCannotBeUsedIsLeftOutWithANote() {
        ClubRow nothing = row("2026-05-03", ClubState.IN_PLAY, Double.NaN, Double.NaN, LengthMethod.AXIS, Double.NaN, 127, false);
        RecordedTargets set = of(false, club("F-PT", Category.PUTTER, null, nothing), club("F-?", Category.IRON, null,
            bare(34, 37, 309)), club("F-7", Category.IRON, "7", bare(34, 37, 309)), club("F-8", Category.IRON, "8",
            row("2026-05-03", ClubState.DAMAGED, 38, 36.5, LengthMethod.AXIS, 311, 127, false)), club("F-9", Category.IRON, "9",
            row("2026-05-03", ClubState.IN_PLAY, Double.NaN, Double.NaN, LengthMethod.AXIS, 311, 178, false)));
        assertThat(set.targets().clubs()).extracting(WantedClub::club).containsExactly("7-iron");
        assertThat(set.notes()).contains(
            "F-PT is left out: club F-PT has no reading that a twin could be matched to",
            "F-? is left out: an iron without a number, by which a head could be chosen",
            "F-8 is left out: club F-8 has no reading from before it was damaged; a twin needs one",
            "F-9 is left out: nothing that was read of it can be wanted of a set",
            "the irons prefer to share models: those of F-7 are not known");
        assertThat(RecordedTargets.of(record(fourIrons()), "N. Body", Tolerances.DEFAULT, true)).satisfies(nobody -> {
            assertThat(nobody.targets().clubs()).isEmpty();
            assertThat(nobody.notes()).containsExactly("no club of N. Body is on record");
        });
    }

    @Test
    void theSampleShowsIronsThatShareModelsAndTheirLine() {
        Inventory stock = SampleFolder.inventory();
        RecordedTargets set = RecordedTargets.of(stock, "J. Quillby", Tolerances.DEFAULT, true);
        assertThat(set.targets().clubs()).extracting(WantedClub::club).containsExactly("driver", "3-wood", "3-hybrid", "4-iron",
            "5-iron", "6-iron", "7-iron", "8-iron", "9-iron", "PW", "50", "54", "58", "putter");
        assertThat(set.targets().clubs()).filteredOn(club -> club.category() == Category.IRON).hasSize(7)
            .allMatch(club -> club.groupRule() == GroupRule.MUST && club.frequencyLine().isPresent());
        assertThat(wanted(set.targets(), "7-iron", Quantity.LOFT)).as("clubs.csv, 13 May").isEqualTo(new Wanted(34.1, 0.25, 1));
        Line line = set.ironLine().orElseThrow();
        assertThat(line.anchorClub()).isEqualTo("7-iron");
        assertThat(line.slope()).as("common practice, no source: 7 to 10 cpm an inch").isBetween(7.0, 10.0);
        assertThat(set.targets().clubs()).allMatch(
            club -> set.targets().targetOf(club).orElseThrow().of(Quantity.TORQUE).isEmpty());
    }

    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void everySetOfTheSampleCanBeWrittenReadAndIsTheSame(boolean straightened) throws IOException {
        Inventory stock = SampleFolder.inventory();
        for (String player : stock.clubs().stream().map(RecordedClub::player).distinct().toList()) {
            SetTargets targets = RecordedTargets.of(stock, player, Tolerances.DEFAULT, straightened).targets();
            Path clubs = Files.writeString(folder.resolve("set-targets.csv"), SetTargetWriter.clubs(targets));
            Path lines = Files.writeString(folder.resolve("lines.csv"), SetTargetWriter.lines(targets));
            SetTargetRead read = SetTargetReader.read(clubs, Optional.of(lines), false);
            assertThat(read.faults()).as(player).isEmpty();
            assertThat(read.targets()).as(player).contains(targets);
        }
    }

    @Test
    void targetsOfARecordedClubAreThoseOfItsTwin() throws FavouriteOfRecord.NothingToMatch {
        Inventory stock = SampleFolder.inventory();
        Target twin = FavouriteOfRecord.of(stock.club("WEXCOMBE-5I").orElseThrow(), stock, Tolerances.DEFAULT).target();
        Target set = named(RecordedTargets.of(stock, "L. Wexcombe", Tolerances.DEFAULT, false).targets(), "5-iron").target()
            .orElseThrow();
        assertThat(set.reading()).isEqualTo(twin.reading());
        for (Quantity same : List.of(Quantity.LOFT, Quantity.LIE, Quantity.BOUNCE, Quantity.LENGTH, Quantity.SWING_WEIGHT,
            Quantity.TOTAL_MASS)) {
            assertThat(set.of(same)).as(same.word()).isEqualTo(twin.of(same)).isPresent();
        }
        assertThat(set.of(Quantity.FREQUENCY).orElseThrow().value()).as("clubs.csv: 293.9 over the grip").isGreaterThan(293.9);
    }
}
