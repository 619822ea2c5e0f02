package benchtwin.stock;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import benchtwin.club.AngleReading;
import benchtwin.club.Category;
import benchtwin.club.GroupRule;
import benchtwin.club.Hand;
import benchtwin.club.Keeping;
import benchtwin.club.Line;
import benchtwin.club.LinePer;
import benchtwin.club.Margin;
import benchtwin.club.Quantity;
import benchtwin.club.SetTargets;
import benchtwin.club.Target;
import benchtwin.club.Wanted;
import benchtwin.club.WantedClub;
import benchtwin.samples.SampleFolder;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** What is written is read back as it was. */
class SetTargetWriterTest {

    private static final List<Line> LINES = List.of(new Line("irons, firm", Quantity.FREQUENCY, "7", 307.25, 8.4, LinePer.INCH),
        new Line("even", Quantity.SWING_WEIGHT, "7", 32.4, 0, LinePer.CLUB),
        new Line("heft", Quantity.BUTT_INERTIA, "7", 2655.5, 0, LinePer.CLUB),
        new Line("gaps", Quantity.LOFT, "7", 33.3, 4.1, LinePer.CLUB));

    @TempDir
    Path folder;

    private SetTargets readBack(SetTargets targets) throws IOException {
        Path clubs = Files.writeString(folder.resolve("set-targets.csv"), SetTargetWriter.clubs(targets));
        Path lines = Files.writeString(folder.resolve("lines.csv"), SetTargetWriter.lines(targets));
        SetTargetRead read = SetTargetReader.read(clubs, Optional.of(lines), false);
        assertThat(read.faults()).as(SetTargetWriter.clubs(targets)).isEmpty();
        return read.targets().orElseThrow();
    }

    @Test
    void theSampleWorkshopsSetsComeBack() throws IOException {
        SetTargets sample = SetTargetReader.read(SampleFolder.PATH.resolve("set-targets.csv"),
            Optional.of(SampleFolder.PATH.resolve("lines.csv")), false).targets().orElseThrow();
        assertThat(readBack(sample)).isEqualTo(sample);
        assertThat(SetTargetWriter.lines(sample)).as("the very file")
            .isEqualTo(Files.readString(SampleFolder.PATH.resolve("lines.csv")));
    }

    @Test
    void aRowReadsAsAPersonWouldWriteIt() {
        Target target = new Target(AngleReading.EDGE, Map.of(Quantity.LOFT, new Wanted(34, 0.25, 1), Quantity.LENGTH,
            new Wanted(37.0625 * 25.4, 25.4 / 8, 1), Quantity.SWING_WEIGHT, new Wanted(32.4, 0.5, 2)));
        WantedClub club = new WantedClub("R. Fenn", "7", Category.IRON, Optional.of("7"), Hand.RIGHT, Optional.of("irons"),
            GroupRule.MUST, Optional.of(target), Optional.of("irons, firm"), Optional.empty(), 3, Optional.empty(),
            Keeping.UNRECORDED);
        SetTargets targets = new SetTargets(List.of(club), LINES.subList(0, 1));
        assertThat(SetTargetWriter.clubs(targets)).isEqualTo("""
            player,club,category,number,hand,group,group_rule,loft_deg,lie_deg,face_deg,reading,bounce_deg,length_in,\
            swing_weight,butt_inertia_kg_cm2,frequency_cpm,frequency_line,swing_line,loft_line,total_mass_g,length_tol_in,\
            swing_weight_weight,priority,needed_by,note
            R. Fenn,7,iron,7,right,irons,must,34,,,edge,,37.0625,D2.4,,,"irons, firm",,,,0.125,2,3,,
            """);
        assertThat(SetTargetWriter.lines(targets)).isEqualTo("""
            line,quantity,anchor_club,anchor_value,slope,per
            "irons, firm",frequency,7,307.25,8.4,inch
            """);
    }

    /** 1 in = 25.4 mm (NIST SP 811). A length a bit away from what the inches give stays in millimetres. */
    @ParameterizedTest
    @CsvSource({"939.8, 37", "1149.35, 45.25", "1.5875, 0.0625", "1150, ", "939.81, "})
    void inchesOnlyWhereTheyAreExact(double mm, String inches) {
        assertThat(ExactText.inches(mm)).isEqualTo(Optional.ofNullable(inches));
    }

    @ParameterizedTest
    @CsvSource({"32.4, D2.4", "30, D0", "29.96, C9.96", "0.5, A0.5", "69.9, G9.9", "70, ", "-0.1, "})
    void swingWeightsGoByTheLetterWhileThereIsOne(double points, String text) {
        assertThat(ExactText.swingWeight(points)).isEqualTo(Optional.ofNullable(text));
    }

    @Test
    void whatTheFilesCannotSayIsLeftOutOrRefused() throws IOException {
        WantedClub own = new WantedClub("R. Fenn", "7", Category.IRON, Optional.of("7"), Hand.RIGHT, Optional.empty(),
            GroupRule.MUST, Optional.of(new Target(AngleReading.EDGE, Map.of(Quantity.LOFT, new Wanted(34, 0.25, 1)))),
            Optional.empty(), Optional.empty(), Optional.of("gaps"), 3, Optional.empty(), Keeping.UNRECORDED,
            Map.of(Quantity.FREQUENCY, new Margin(1, 1)));
        SetTargets targets = new SetTargets(List.of(own), LINES);
        SetTargets back = readBack(targets);
        assertThat(back.clubs().get(0).lineNames()).as("its own value counts").isEmpty();
        assertThat(back.targetOf(back.clubs().get(0))).isEqualTo(targets.targetOf(own));
        assertThatIllegalArgumentException().isThrownBy(() -> SetTargetWriter.clubs(new SetTargets(List.of(wanting("7",
            Category.IRON, AngleReading.EDGE, Map.of(Quantity.TORQUE, new Wanted(3, 0.3, 1)))), List.of())))
            .withMessage("set-targets.csv has no column for torque");
    }

    private static WantedClub wanting(String name, Category category, AngleReading reading, Map<Quantity, Wanted> wanted) {
        return new WantedClub("R. Fenn", name, category, Optional.of(name), Hand.RIGHT, Optional.empty(), GroupRule.PREFER,
            Optional.of(new Target(reading, wanted)), Optional.empty(), Optional.empty(), 3, Optional.empty(),
            Keeping.UNRECORDED);
    }

    static IntStream seeds() {
        return IntStream.range(0, 20);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void anySetsComeBackToTheLastBit(int seed) throws IOException {
        Random random = new Random(seed);
        List<WantedClub> clubs = new ArrayList<>();
        for (String player : List.of("Ansel Brook", "E. O'Kestrel, \"Red\"")) {
            for (String club : List.of("driver", "hybrid", "6", "7", "8", "PW")) {
                clubs.add(random(player, club, random));
            }
        }
        SetTargets targets = new SetTargets(clubs, LINES);
        assertThat(readBack(targets)).as("seed %d", seed).isEqualTo(targets);
    }

    private static WantedClub random(String player, String name, Random random) {
        Category category = name.equals("driver") ? Category.DRIVER : name.equals("hybrid") ? Category.HYBRID : Category.IRON;
        AngleReading reading = category == Category.IRON ? AngleReading.EDGE
            : random.nextBoolean() ? AngleReading.SOLED : AngleReading.SQUARE;
        boolean inertia = random.nextBoolean();
        Optional<String> frequency = line("irons, firm", random);
        Optional<String> swing = line(inertia ? "heft" : "even", random);
        Optional<String> loft = line("gaps", random);
        Map<Quantity, Wanted> wanted = new EnumMap<>(Quantity.class);
        wanted.put(Quantity.LENGTH, around(random.nextBoolean() ? 25.4 * (36 + random.nextInt(32) / 16.0)
            : 900 + 100 * random.nextDouble(), Quantity.LENGTH, 1, random));
        maybe(wanted, loft, Quantity.LOFT, 10 + 40 * random.nextDouble(), random);
        maybe(wanted, Optional.empty(), Quantity.LIE, 60 + random.nextInt(50) / 10.0, random);
        maybe(wanted, Optional.empty(), reading.isWood() ? Quantity.FACE : Quantity.BOUNCE, random.nextGaussian(), random);
        maybe(wanted, inertia ? Optional.empty() : swing, Quantity.SWING_WEIGHT, 25 + random.nextInt(120) / 10.0, random);
        maybe(wanted, inertia ? swing : Optional.empty(), Quantity.BUTT_INERTIA, 2500 + 300 * random.nextDouble(), random);
        maybe(wanted, frequency, Quantity.FREQUENCY, 250 + random.nextInt(700) / 10.0, random);
        maybe(wanted, Optional.empty(), Quantity.TOTAL_MASS, 300 + random.nextInt(1200) / 10.0, random);
        Map<Quantity, Margin> margins = new EnumMap<>(Quantity.class);
        frequency.ifPresent(line -> margin(margins, Quantity.FREQUENCY, random));
        swing.ifPresent(line -> margin(margins, inertia ? Quantity.BUTT_INERTIA : Quantity.SWING_WEIGHT, random));
        loft.ifPresent(line -> margin(margins, Quantity.LOFT, random));
        boolean grouped = category == Category.IRON;
        return new WantedClub(player, name, category, category == Category.IRON ? Optional.of(name) : Optional.empty(),
            Hand.LEFT, grouped ? Optional.of("irons; all") : Optional.empty(), grouped ? GroupRule.MUST : GroupRule.PREFER,
            Optional.of(new Target(reading, wanted)), frequency, swing, loft, 1 + random.nextInt(9),
            random.nextBoolean() ? Optional.of(LocalDate.of(2026, 5, 1 + random.nextInt(28))) : Optional.empty(),
            new Keeping(Optional.empty(), Optional.empty(),
                random.nextBoolean() ? Optional.of("\"soft\", or so\nhe says") : Optional.empty(),
                random.nextBoolean() ? Map.of("Locker", "12, left") : Map.of()), margins);
    }

    private static Optional<String> line(String name, Random random) {
        return random.nextBoolean() ? Optional.of(name) : Optional.empty();
    }

    private static void maybe(Map<Quantity, Wanted> wanted, Optional<String> line, Quantity quantity, double value,
                              Random random) {
        if (line.isEmpty() && random.nextBoolean()) {
            wanted.put(quantity, around(value, quantity, 0, random));
        }
    }

    private static Wanted around(double value, Quantity quantity, double leastWeight, Random random) {
        Margin usual = Margin.ofDefaults(quantity);
        return new Wanted(value, random.nextBoolean() ? usual.tolerance() : 0.5 + random.nextDouble(),
            random.nextBoolean() ? usual.weight() : leastWeight + random.nextInt(3) / 3.0);
    }

    private static void margin(Map<Quantity, Margin> margins, Quantity quantity, Random random) {
        if (random.nextBoolean()) {
            margins.put(quantity, random.nextBoolean() ? Margin.ofDefaults(quantity)
                : new Margin(0.5 + random.nextDouble(), random.nextInt(4)));
        }
    }
}
