package benchtwin.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** {@code benchtwin set} as a technician types it, on the sample workshop and on copies of it with something wrong. */
class SetCommandTest {

    /** JSON numbers are rounded to six decimals; three of them stand in one comparison. */
    private static final double ROUNDED = 3e-6;
    /** Two players who compete for nothing: one left-handed, with clubs the stock has no heads for. */
    private static final String TWO = "--players \"j. quillby,L. Wexcombe\" --rounds 2 --seed 1";

    private static Typed page;
    private static JsonNode plan;

    @BeforeAll
    static void planned() {
        page = set(TWO + " --why");
        plan = set(TWO + " --json").json();
    }

    private static Typed set(String options) {
        return Typed.line("set " + options);
    }

    private static List<JsonNode> list(JsonNode array) {
        return StreamSupport.stream(array.spliterator(), false).toList();
    }

    private static Stream<JsonNode> clubs() {
        return list(plan.get("players")).stream().flatMap(player -> list(player.get("clubs")).stream());
    }

    private static String fixed(JsonNode number, int decimals) {
        return String.format(Locale.ROOT, "%." + decimals + "f", number.asDouble());
    }

    @Test
    void aPageHasEveryClubWithItsPartsAndHowTheSetIsAlike() {
        page.fitsThePage();
        assertThat(page.status()).isEqualTo(Main.DONE);
        assertThat(page.err()).isEmpty();
        assertThat(page.out()).startsWith("Sets for 2 players: ").contains("J. Quillby   13 clubs", "L. Wexcombe   ",
            "needed by 2026-05-21", "one head model (", "one shaft model (", "Beside each value", "What each rule costs",
            "seed 1", "Caution: Bending", "benchtwin ");
        // shown once each, in the order of the targets
        assertThat(list(plan.get("players")).stream().map(p -> p.get("player").asText()).toList())
            .containsExactly("J. Quillby", "L. Wexcombe");
        assertThat(list(plan.get("players").get(0).get("clubs")).stream().map(c -> c.get("club").asText()).toList())
            .containsExactly("driver", "3-wood", "3-hybrid", "4-iron", "5-iron", "6-iron", "7-iron", "8-iron", "9-iron", "PW",
                "50", "54", "58");
    }

    @Test
    void pageAndJsonSayTheSame() {
        String text = page.out();
        clubs().filter(club -> club.get("built").asBoolean()).forEach(club -> assertThat(text).containsPattern(
            Pattern.quote(club.get("club").asText()) + " .* " + Pattern.quote(fixed(club.get("miss"), 2)) + "\\n    "
                + Pattern.quote(club.get("head").asText() + " + " + club.get("shaft").asText() + ": ")));
        clubs().filter(club -> !club.get("built").asBoolean()).forEach(club -> assertThat(text.replaceAll("\\s+", " ")).contains(
            club.get("club").asText() + " not built: " + club.get("unbuilt").get("reason").asText()));
        JsonNode score = plan.get("score");
        assertThat(text.replaceAll("\\s+", " ")).contains("%d of %d clubs built; cost %s squared tolerances".formatted(
            score.get("clubs").asInt() - score.get("unbuilt").asInt(), score.get("clubs").asInt(), fixed(score.get("cost"), 2)));
        list(plan.get("players")).forEach(player -> list(player.get("groups")).forEach(group -> {
            if (group.has("frequencySpreadCpm")) {
                assertThat(text.replaceAll("\\s+", " ")).contains(fixed(group.get("frequencySpreadCpm"), 2) + " cpm of their line");
            }
        }));
        double inAll = list(plan.get("why")).stream().mapToDouble(line -> line.get("cost").asDouble()).sum();
        assertThat(text).contains("In all: " + String.format(Locale.ROOT, "%.3f", inAll));
    }

    @Test
    void everyClubIsWhatItsTargetAndItsDifferenceMakeIt() {
        clubs().filter(club -> club.get("built").asBoolean()).forEach(club -> {
            Set<String> out = new HashSet<>();
            club.get("difference").fields().forEachRemaining(entry -> {
                double off = entry.getValue().asDouble();
                assertThat(club.get("predicted").get(entry.getKey()).asDouble()).as(entry.getKey())
                    .isCloseTo(club.get("target").get(entry.getKey()).asDouble() + off, within(ROUNDED));
                if (Math.abs(off) > club.get("target").get("tolerance").get(entry.getKey()).asDouble()) {
                    out.add(entry.getKey());
                }
            });
            assertThat(list(club.get("outOfTolerance")).stream().map(JsonNode::asText)).containsExactlyInAnyOrderElementsOf(out);
        });
    }

    @Test
    void noPartIsInTwoClubsAndGroupsThatMustShareDo() {
        List<String> parts = clubs().filter(club -> club.get("built").asBoolean())
            .flatMap(club -> Stream.of("head " + club.get("head").asText(), "shaft " + club.get("shaft").asText())).toList();
        assertThat(parts).doesNotHaveDuplicates().hasSizeGreaterThan(30);
        list(plan.get("players")).forEach(player -> list(player.get("groups")).stream()
            .filter(group -> group.get("rule").asText().equals("must")).forEach(group -> {
                assertThat(group.get("headModels")).hasSize(1);
                assertThat(group.get("shaftModels")).hasSize(1);
            }));
    }

    /** The short plan has the numbers of the steps: read out of the steps' own words. */
    @Test
    void thePlanInShortHasTheNumbersOfTheSteps() {
        Pattern inMm = Pattern.compile("([0-9.]+) mm");
        String[] pages = page.out().split("\\n");
        int trims = 0;
        for (JsonNode club : clubs().filter(c -> c.get("built").asBoolean()).toList()) {
            String start = "    " + club.get("head").asText() + " + " + club.get("shaft").asText() + ": ";
            StringBuilder line = new StringBuilder();
            for (int k = 0; k < pages.length; k++) {
                if (pages[k].startsWith(start)) {
                    line.append(pages[k]).append(' ').append(pages[k + 1]);
                }
            }
            for (JsonNode step : list(club.get("plan").get("steps"))) {
                Matcher mm = inMm.matcher(step.get("words").asText());
                String kind = step.get("kind").asText();
                if ((kind.equals("tip trim") || kind.equals("butt cut")) && mm.find()) {
                    trims++;
                    String asShown = mm.group(1).replaceFirst("\\.0$", "");
                    assertThat(line.toString()).contains(kind.substring(0, kind.indexOf(' ')) + " " + asShown);
                }
                if (kind.startsWith("bend")) {
                    String bend = step.get("words").asText().replace("Bend ", "").replace(", then read.", "");
                    assertThat(line.toString()).contains(bend);
                }
            }
        }
        assertThat(trims).isGreaterThan(15);
    }

    @Test
    void aClubThatCannotBeBuiltStandsInItsPlaceWithTheReason() {
        JsonNode wedge = clubs().filter(club -> club.get("club").asText().equals("60")).findFirst().orElseThrow();
        assertThat(wedge.get("built").asBoolean()).isFalse();
        assertThat(wedge.get("unbuilt").get("reason").asText()).contains("left-handed 60 wedge");
        JsonNode pitching = clubs().filter(club -> club.get("club").asText().equals("PW") && !club.get("built").asBoolean())
            .findFirst().orElseThrow();
        assertThat(pitching.get("unbuilt").get("nearest").get("head").asText()).isNotEmpty();
        assertThat(page.out()).contains("Not built: L. Wexcombe ", "nearest of what is left: "
            + pitching.get("unbuilt").get("nearest").get("head").asText());
    }

    @Test
    void pinsAreKeptAndMarkedBansAreKeptAndPlainIsAscii() {
        String free = list(plan.get("players").get(0).get("clubs")).get(10).get("head").asText();
        Typed typed = set("--players \"J. Quillby\" --rounds 1 --plain --pin 7-iron=shaft:s-114,head:H-145 --ban " + free)
            .fitsThePage();
        assertThat(typed.status()).isEqualTo(Main.DONE);
        assertThat(typed.out()).contains("H-145 (pinned) + S-114 (pinned): ").doesNotContain(free);
        assertThat(typed.out().chars()).allMatch(c -> c < 128);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
        --players Quillby | --players: no set is wanted for "Quillby"; nearest are J. Quillby
        --pin 7-iron=head:H-145 | there is one for each of J. Quillby, L. Wexcombe
        --pin 7-irn=head:H-145 | --pin 7-irn: no such club is planned; expected its name in the set; nearest are 7-iron
        --pin "J. Quillby/7-iron=head:H-999" | --pin J. Quillby/7-iron: no head is tagged H-999; nearest are
        --pin "J. Quillby/7-iron=head:H-210" | head H-210 cannot be used there: wrong hand; expected a sound right-handed 7 iron head
        --pin "J. Quillby/7-iron=head:H-091" | head H-091 cannot be used there: other number
        --pin "J. Quillby/3-hybrid=head:H-027" | head H-027 cannot be used there: promised to somebody else
        --pin "J. Quillby/7-iron=shaft:S-159" | shaft S-159 cannot be used there: not meant for this category
        --pin "J. Quillby/7-iron=head:H-145" --ban H-145 | head H-145 is pinned and banned; expected one or the other
        --pin "J. Quillby/7-iron=head:H-145" --pin "J. Quillby/7-iron=head:H-170" | its head is pinned to H-145 and to H-170
        --pin "J. Quillby/7-iron=head:H-145" --pin "T. Tolver/7-iron=head:H-145" | head H-145 is pinned to J. Quillby/7-iron as well
        --players "J. Quillby" --pin "T. Tolver/7-iron=head:H-145" | --pin T. Tolver/7-iron: no such club is planned
        --pin 7-iron | expected a club and its parts
        --ban H-9999 | --ban H-9999: no head or shaft has that tag; nearest are
        --grip G-9999 | no grip is tagged G-9999; nearest are
        --time 5 | --time "5": expected a time with its unit
        --gap lots | --gap "lots": expected per cent
        --rounds -1 | --rounds -1: expected 0 to 1000000
        --seed x | 'x' is not a whole number
        --out pom.xml | --out pom.xml is not a folder
        --out nowhere/at/all | cannot be made: there is no folder
        --plot set.txt | expected a name ending in .svg or .png
        --plot set.svg | --plot draws one player's set: name the player with --players
        --json --why | --json prints everything already
        --targets nowhere.csv | nowhere.csv: is not there
        """)
    void whatCannotBeAskedGetsAMessageThatSaysWhy(String options, String message) {
        Typed typed = set(options);
        assertThat(typed.status()).isEqualTo(Main.BAD_INPUT);
        assertThat(typed.out()).isEmpty();
        assertThat(typed.err()).startsWith("benchtwin: ").contains(message);
    }

    @Test
    void pinnedPartsThatDoNotGoTogetherAreNamed(@TempDir Path folder) throws IOException {
        // 0.335 in tips: 1.65 mm of play is more than a shim takes up
        Path stock = Typed.workshopWith(folder, "heads.csv", Typed.cell("H-018", "bore_in", "0.4"));
        Typed typed = Typed.on(stock, "set --pin \"J. Quillby/3-wood=head:H-018,shaft:S-031\"");
        assertThat(typed.status()).isEqualTo(Main.BAD_INPUT);
        assertThat(typed.err()).contains("head H-018 and shaft S-031 do not go together there; expected a tip and a bore");
    }

    @Test
    void everythingWrongWithPinsIsSaidAtOnce() {
        Typed typed = set("--pin \"J. Quillby/driver=head:H-145\" --pin nothing=shaft:S-1 --pin \"T. Tolver/PW=shaft:S-9999\"");
        assertThat(typed.status()).isEqualTo(Main.BAD_INPUT);
        assertThat(typed.err().lines()).hasSize(3).allMatch(line -> line.startsWith("benchtwin: --pin "));
    }

    @Test
    void brokenTargetsAndBrokenStockAreSaidAtOnceAsTheCheckSaysThem(@TempDir Path folder) throws IOException {
        Typed.workshopWith(folder, "set-targets.csv", lines -> {
            lines.set(1, lines.get(1).replace(",right,", ",rihgt,"));
            lines.set(4, lines.get(4).replace("firm irons", "soft irons"));
            return lines;
        });
        Path heads = folder.resolve("heads.csv");
        List<String> rows = new ArrayList<>(Files.readAllLines(heads));
        rows.set(5, rows.get(5).replaceFirst(",right,|,left,", ",both,"));
        Files.write(heads, rows);
        Typed typed = Typed.on(folder, "set --rounds 1");
        assertThat(typed.status()).isEqualTo(Main.BAD_INPUT);
        assertThat(typed.out()).isEmpty();
        List<String> faults = checked(folder, "set-targets.csv", "lines.csv");
        faults.addAll(checked(folder, "heads.csv"));
        assertThat(faults).hasSizeGreaterThanOrEqualTo(3);
        assertThat(typed.err().lines()).contains(faults.stream().map(fault -> "benchtwin: " + fault).toArray(String[]::new));
        assertThat(typed.err().lines().filter(line -> line.contains("Nothing was read"))).hasSize(1);
    }

    /** The faults {@code stock check} prints for some of a folder's files. */
    private static List<String> checked(Path folder, String... files) {
        List<String> line = new ArrayList<>(List.of("stock", "check"));
        Stream.of(files).map(file -> folder.resolve(file).toString()).forEach(line::add);
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        Main.run(new PrintStream(out, true, StandardCharsets.UTF_8), System.err,
            line.toArray(String[]::new));
        return new ArrayList<>(out.toString(StandardCharsets.UTF_8).lines()
            .filter(text -> text.matches("\\S+\\.csv line \\d+, column .*")).filter(text -> !text.contains("unusual")).toList());
    }

    @Test
    void theHelpHasExamples() {
        Typed typed = set("--help");
        assertThat(typed.err()).isEmpty();
        assertThat(typed.out()).contains("--players \"J. Quillby\" --time 10s", "--gap 1% --out sets", "Ctrl-C");
    }

    /** One club of a set that nothing in the stock can be. */
    private static Path wedgeAlone(Path folder, String... changes) throws IOException {
        List<String> rows = Files.readAllLines(Path.of(Typed.STOCK, "set-targets.csv"));
        String row = rows.stream().filter(line -> line.startsWith("L. Wexcombe,60,")).findFirst().orElseThrow();
        for (int k = 0; k < changes.length; k += 2) {
            assertThat(row).contains(changes[k]);
            row = row.replace(changes[k], changes[k + 1]);
        }
        return Files.write(folder.resolve("one.csv"), List.of(rows.get(0), row));
    }

    @Test
    void nothingSuitableIsFoundWhenNotOneClubCanBeBuilt(@TempDir Path folder) throws IOException {
        Typed typed = set("--targets " + wedgeAlone(folder) + " --rounds 1").fitsThePage();
        assertThat(typed.status()).isEqualTo(Main.NOTHING_SUITABLE);
        assertThat(typed.out()).contains("0 of 1 clubs built", "not built: 1 left-handed 60 wedge head");
    }

    @Test
    void theGoodRowsAreTakenWhenAsked(@TempDir Path folder) throws IOException {
        Path targets = wedgeAlone(folder);
        List<String> rows = new ArrayList<>(Files.readAllLines(targets));
        rows.add(rows.get(1).replace("Wexcombe", "Wexcome").replace(",left,", ",lift,"));
        Files.write(targets, rows);
        assertThat(set("--targets " + targets + " --rounds 1").status()).isEqualTo(Main.BAD_INPUT);
        Typed typed = set("--targets " + targets + " --rounds 1 --good-rows");
        assertThat(typed.status()).isEqualTo(Main.NOTHING_SUITABLE);
        assertThat(typed.out()).contains("A set for L. Wexcombe", "Files: left out: one.csv line 3, column hand");
    }

    @Test
    void longNamesAndEveryQuantityAtOnceStillFitThePage(@TempDir Path folder) throws IOException {
        String name = "the sixty for firm bunkers, a name longer than its column";
        Path targets = wedgeAlone(folder, ",60,wedge", ",\"" + name + "\",wedge", ",left,", ",right,", "L. Wexcombe",
            "Somebody with quite a long name who would stand alone on a line of their own");
        List<String> rows = new ArrayList<>(Files.readAllLines(targets));
        rows.set(0, rows.get(0) + ",butt_inertia_kg_cm2,total_mass_g");
        rows.set(1, rows.get(1) + ",2700,470");
        Files.write(targets, rows);
        Typed typed = set("--targets " + targets + " --rounds 1 --why").fitsThePage();
        assertThat(typed.status()).isEqualTo(Main.DONE);
        assertThat(typed.out()).contains(name, "kg·cm²", "mass");
    }

    @Test
    void theFolderHoldsAPageAPlayerWithEveryStepAndTheJson(@TempDir Path folder) throws IOException {
        Path out = folder.resolve("sets");
        Path plot = folder.resolve("wexcombe.svg");
        Typed typed = set("--players \"L. Wexcombe\" --rounds 2 --seed 1 --json --plot " + plot + " --out "
            + out);
        assertThat(typed.status()).isEqualTo(Main.DONE);
        assertThat(Files.readString(plot)).isEqualTo(Files.readString(out.resolve("l-wexcombe.svg"))).contains("<svg", "L. Wexcombe",
            "GW");
        assertThat(typed.err()).contains("5 files written into " + out);
        try (Stream<Path> files = Files.list(out)) {
            assertThat(files.map(file -> file.getFileName().toString())).containsExactlyInAnyOrder("l-wexcombe.txt", "l-wexcombe.svg",
                "plan.json", "set-targets.csv", "lines.csv");
        }
        Typed again = set("--targets " + out.resolve("set-targets.csv") + " --rounds 2 --seed 1 --json");
        assertThat(again.json().get("players")).as("the written targets plan the same").isEqualTo(typed.json().get("players"));
        assertThat(new ObjectMapper().readTree(Files.readString(out.resolve("plan.json")))).isEqualTo(typed.json());
        String text = Files.readString(out.resolve("l-wexcombe.txt"));
        assertThat(text.lines()).allSatisfy(line -> assertThat(line).hasSizeLessThanOrEqualTo(Page.WIDTH)
            .isEqualTo(line.stripTrailing()));
        String oneLine = text.replaceAll("\\s+", " ");
        list(typed.json().get("players").get(0).get("clubs")).stream().filter(club -> club.get("built").asBoolean())
            .forEach(club -> list(club.get("plan").get("steps")).forEach(step ->
                assertThat(oneLine).contains(step.get("words").asText())));
        assertThat(oneLine).contains("Right the first time", "Caution: Bending", "drawer");
    }

    @Test
    void aRecordedSetIsBuiltAgainFromStock() throws IOException {
        Typed typed = set("--from-record \"j. quillby\" --straighten --rounds 2 --json");
        assertThat(typed.status()).isEqualTo(Main.DONE);
        JsonNode player = typed.json().get("players").get(0);
        assertThat(player.get("player").asText()).isEqualTo("J. Quillby");
        assertThat(list(player.get("clubs")).stream().map(club -> club.get("club").asText())).contains("7-iron", "PW");
        assertThat(set("--from-record Nobody").err()).contains("no club of \"Nobody\" is on record; nearest are");
        assertThat(set("--from-record \"J. Quillby\" --players \"J. Quillby\"").err()).contains("leave out --targets");
        assertThat(set("--straighten").status()).isEqualTo(Main.BAD_INPUT);
    }
}
