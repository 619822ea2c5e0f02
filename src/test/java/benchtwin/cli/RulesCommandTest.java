package benchtwin.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** {@code benchtwin rules} as a technician types it. */
class RulesCommandTest {

    @TempDir
    private Path folder;

    private Typed with(String file, UnaryOperator<List<String>> change, String line) throws IOException {
        Typed typed = Typed.on(Typed.workshopWith(folder, file, change), line);
        return line.endsWith("--json") ? typed : typed.fitsThePage();
    }

    /** What was printed, paragraphs in one line each. */
    private static String text(Typed typed) {
        return typed.out().replaceAll("\\s+", " ");
    }

    private static JsonNode finding(JsonNode answer, String limit) {
        for (JsonNode finding : answer.path("clubs").get(0).path("findings")) {
            if (finding.path("limit").asText().equals(limit)) {
                return finding;
            }
        }
        throw new AssertionError("no " + limit);
    }

    @Test
    void oneClubShowsEveryLimitAndWhoDecides() {
        Typed typed = Typed.line("rules OAKES-DR").fitsThePage();
        assertThat(typed.status()).isEqualTo(Main.DONE);
        assertThat(text(typed)).contains("at most 1219.2 mm (48 in)", "at most 1168.4 mm (46 in)", "length, local rule",
            "OAKES-DR: Conformity rests on a published list: look it up.", "the governing bodies decide", "not measured",
            "measure from the sole to the top of the crown");
        assertThat(Typed.line("rules OAKES-DR --plain").fitsThePage().out()).matches("[ -~\n]+");
    }

    @Test
    void theReasonsNameEverySource() {
        assertThat(text(Typed.line("rules OAKES-DR --why").fitsThePage())).contains("Equipment Rules Part 2, 4b (published)",
            "Model Local Rule G-10 (published)", "(memory)", "at most 14 clubs", "read on 2026-04-14 along the axis");
    }

    @Test
    void theJsonHasValueLimitMarginAndVerdict() {
        JsonNode answer = Typed.line("rules OAKES-DR --json").json();
        assertThat(answer.path("doubtful").asBoolean()).isFalse();
        JsonNode length = finding(answer, "length-most");
        // 45 1/4 in at a lie of 58.3°: by hand 1149.35 + 1.669 mm
        assertThat(length.path("value").asDouble()).isCloseTo(1151.019, within(1e-3));
        assertThat(length.path("limitValue").asDouble()).isEqualTo(1219.2);
        assertThat(length.path("margin").asDouble()).isCloseTo(1219.2 - 1151.019, within(1e-3));
        assertThat(length.path("verdict").asText()).isEqualTo("clearly within");
        assertThat(length.path("chanceWithin").asDouble()).isEqualTo(1);
        JsonNode time = finding(answer, "characteristic-time-most");
        assertThat(time.path("verdict").asText()).isEqualTo("clearly within");
        assertThat(time.path("verdictOfLimitAlone").asText()).isEqualTo("clearly beyond");
        assertThat(time.path("mark").asText()).isEqualTo("memory");
        assertThat(finding(answer, "heel-to-toe-most").path("verdict").asText()).isEqualTo("not measured");
        assertThat(finding(answer, "heel-to-toe-most").has("value")).isFalse();
        assertThat(answer.path("clubs").get(0).path("publishedList").path("text").asText()).contains("look it up");
        assertThat(answer.path("whoDecides").asText()).contains("governing bodies");
    }

    @Test
    void theLocalRuleCountsWhereItIsInForce() throws IOException {
        Typed typed = with("clubs.csv", last("OAKES-DR,", "46 1/2"), "rules OAKES-DR");
        assertThat(typed.status()).isEqualTo(Main.DONE);
        assertThat(typed.out()).contains("clearly beyond *", "* Only where that local rule is in force");
        Typed inForce = Typed.on(folder, "rules OAKES-DR --local-rule");
        assertThat(inForce.status()).isEqualTo(Main.NOTHING_SUITABLE);
        assertThat(inForce.out()).contains("damaged: clearly beyond").doesNotContain(" *");
    }

    @Test
    void nearALimitThePageSaysHowToMeasure() throws IOException {
        Typed typed = with("clubs.csv", last("OAKES-DR,", "48"), "rules OAKES-DR");
        assertThat(typed.status()).isEqualTo(Main.NOTHING_SUITABLE);
        assertThat(text(typed)).contains("too close to call", "can read up to 4 mm less", "record the length as rules60");
    }

    /** The length in every row of a club that has one. */
    private static UnaryOperator<List<String>> last(String club, String inches) {
        return lines -> lines.stream().map(line -> line.startsWith(club) ? line.replace("45 1/4", inches) : line).toList();
    }

    @Test
    void aHeadsSizesAreReadFromItsFile() throws IOException {
        UnaryOperator<List<String>> sizes = lines -> {
            String added = "heel_toe_mm,face_back_mm,sole_crown_mm";
            return Stream.concat(Stream.of(lines.get(0) + "," + added), lines.stream().skip(1)
                .map(line -> line + (line.startsWith("H-106,") ? ",126.5,126.5,73" : ",,,"))).toList();
        };
        Typed typed = with("heads.csv", sizes, "rules OAKES-DR");
        assertThat(typed.status()).isEqualTo(Main.NOTHING_SUITABLE);
        assertThat(typed.out().lines().filter(line -> line.contains("heel to toe ") && line.contains("too close to call"))).hasSize(2);
        assertThat(typed.out().lines().filter(line -> line.contains("sole to crown"))).singleElement().asString()
            .contains("73.00 ±1.00 mm", "at most 71.12 mm", "−1.88", "clearly beyond");
    }

    @Test
    void aBagIsCountedAndFitsThePage() {
        Typed bag = Typed.line("rules --player \"j. quillby\"").fitsThePage();
        assertThat(bag.status()).isEqualTo(Main.DONE);
        assertThat(bag.out()).contains("The bag of J. Quillby", "14 clubs in play; a bag holds at most 14.",
            "Read its volume by what it displaces in water: QUILLBY-3W.");
        assertThat(bag.out().lines().filter(line -> line.contains("clearly within"))).hasSize(14);
        assertThat(Typed.line("rules --player \"L. Wexcombe\"").fitsThePage().out()).as("a left-handed bag").contains("WEXCOMBE-PT");
    }

    @Test
    void aLengthReadWithAnotherHeadIsNotThisClubs() throws IOException {
        Typed typed = with("clubs.csv", lines -> lines.stream().map(line -> line.contains("face cracked")
            ? line.replace("H-106", "H-110") : line).toList(), "rules OAKES-DR --json");
        assertThat(finding(typed.json(), "length-most").path("verdict").asText()).isEqualTo("not measured");
        assertThat(finding(typed.json(), "length-most").path("toMeasure").asText()).isEqualTo("read its length");
        assertThat(finding(typed.json(), "volume-most").path("from").asText()).startsWith("head H-110");
    }

    @Test
    void aFifteenthClubIsOneTooMany() throws IOException {
        Typed bag = with("clubs.csv", lines -> Stream.concat(lines.stream(), lines.stream()
            .filter(line -> line.startsWith("OAKES-3W,")).map(line -> line.replace("OAKES-3W,N. Oakes", "EXTRA,J. Quillby")
                .replace("H-", "X-").replace("S-", "Y-").replace("G-", "Z-"))).toList(), "rules --player \"J. Quillby\"");
        assertThat(bag.out()).contains("15 clubs in play; a bag holds at most 14: 1 too many.");
        assertThat(bag.status()).isEqualTo(Main.NOTHING_SUITABLE);
    }

    @Test
    void everyClubIsHeldAgainstTheLimitsOnce() throws IOException {
        List<String> tags = new ArrayList<>();
        Typed.line("rules --all --json").json().path("clubs").forEach(club -> tags.add(club.path("club").asText()));
        assertThat(tags).containsExactlyElementsOf(Files.readAllLines(Path.of(Typed.STOCK, "clubs.csv")).stream().skip(1)
            .map(line -> line.split(",")[0]).distinct().toList());
        assertThat(Typed.line("rules --all").fitsThePage().out()).contains("Every club on record");
        assertThat(Typed.line("rules --all --why").fitsThePage().out()).contains("Source: ");
    }

    @Test
    void theBookAnswersAsTheFilesDo() {
        AtTheBook book = AtTheBook.imported(folder);
        for (String asked : List.of("OAKES-DR", "QUILLBY-PT", "DUNMARSH-4H")) {
            assertThat(book.words("rules", asked, "--json").json().path("clubs")).as(asked)
                .isEqualTo(Typed.line("rules " + asked + " --json").json().path("clubs"));
        }
        assertThat(book.done("rules", "--player", "J. Quillby").out()).contains("14 clubs in play");
    }

    @Test
    void mistakesAreTold() {
        for (String line : List.of("rules", "rules OAKES-DR --all", "rules --all --player X", "rules NOBODY", "rules --player Nobody",
            "rules OAKES-DR --json --why")) {
            Typed typed = Typed.line(line);
            assertThat(typed.status()).as(line).isEqualTo(Main.BAD_INPUT);
            assertThat(typed.err()).as(line).startsWith("benchtwin: ");
        }
        assertThat(Typed.line("rules --player Quilby").err()).contains("no player Quilby has a club on record; nearest are J. Quillby");
    }
}
