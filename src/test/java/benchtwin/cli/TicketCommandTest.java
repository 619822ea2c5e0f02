package benchtwin.cli;

import static benchtwin.cli.AtTheBook.list;
import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Tickets as typed, from jobs of the sample workshop. */
class TicketCommandTest {

    private static final String SLOW_18 = " --resins inventory-samples/resins.csv --resin slow --temperature 18C --start \"2030-05-20 09:00\"";

    @TempDir
    private Path folder;
    private AtTheBook book;

    @BeforeEach
    void aTwinThatIsBentAndBonded() {
        book = AtTheBook.samples(folder);
        book.type("match --club TOLVER-DR --top 1 --promise 1 --due \"2030-05-21 14:20\"");
    }

    /** Pull 8, bend 12, bond 10 minutes (handbook, section 11); 36 h 9 min at 18 °C is worked by hand from the sample's rows. */
    @Test
    void writesThePageAndSaysWhenItCanBeHandedOver() throws IOException {
        Path pdf = folder.resolve("twin.pdf");
        String said = book.done("ticket 1 --paper letter --pdf " + pdf + SLOW_18);

        assertThat(said.replaceAll("\\s+", " ")).contains("The ticket of job 1 is in " + pdf + ".",
            "LATE: Hand over from 2030-05-21 21:39. Start 2030-05-20 09:00, 30 min at the bench; resin slow at 18 °C: handle after "
                + "9 h 24 min, full cure after 36 h 9 min. That is after the job is due, 2030-05-21 14:20.");
        assertThat(Files.readString(pdf, java.nio.charset.StandardCharsets.ISO_8859_1)).startsWith("%PDF-");
    }

    @Test
    void theStepsStandInWorkingOrderWithTheirTargetsAndCautions() {
        JsonNode ticket = book.json("ticket 1" + SLOW_18);

        assertThat(list(ticket.get("steps"))).extracting(step -> step.get("title").asText())
            .containsExactly("Pull", "Prepare", "Dry fit", "Bend", "Glue", "Cure", "Final measure");
        JsonNode bend = ticket.get("steps").get(3);
        assertThat(bend.get("cautions").get(0).asText()).startsWith("Bending: wear eye protection");
        assertThat(list(bend.get("lines"))).extracting(line -> line.get("what").asText()).containsExactly("loft", "lie", "face");
        assertThat(bend.get("lines").get(1).get("tolerance").asText()).isEqualTo("0.25°");
        assertThat(list(ticket.get("parts"))).extracting(part -> part.get("tag").asText()).startsWith("H-069", "S-133");
        assertThat(ticket.get("parts").get(0).get("where").asText()).isEqualTo("driver drawer 2");
        assertThat(ticket.get("parts").get(1).get("where").asText()).isEqualTo("on TOLVER-DR");
        assertThat(ticket.get("ready").get("late").asBoolean()).isTrue();
        assertThat(ticket.get("code").asText()).isEqualTo("job:1");
        assertThat(ticket.get("sketch").asText()).contains("before", "after");
    }

    /** Bounce goes along with the loft: the ticket says where it will be, beside where it should be. */
    @Test
    void whatThePlanDragsOutOfToleranceIsSaidBesideItsTarget() {
        book.done("change --club LARKFIELD-7I loft=-0.8 --promise 1");
        JsonNode ticket = book.json("ticket 2");
        JsonNode steps = ticket.get("steps");
        JsonNode last = steps.get(steps.size() - 1).get("lines");
        JsonNode bounce = list(last).stream().filter(line -> line.get("what").asText().equals("bounce")).findFirst().orElseThrow();
        assertThat(bounce.get("target").asText()).isEqualTo("4.40°");
        assertThat(bounce.get("comesTo").asText()).isEqualTo("3.60°");
        assertThat(list(last).stream().filter(line -> line.has("comesTo"))).hasSize(1);
    }

    @Test
    void withoutWhatItTakesNoHandOverIsWorkedOut() {
        assertThat(ready("ticket 1")).isEqualTo("No resin table: follow the resin maker's sheet for handling and full cure. No hand-over "
            + "is worked out.");
        assertThat(ready("ticket 1 --resins inventory-samples/resins.csv --resin slow")).contains("temperature at the bench was not given");
        assertThat(ready("ticket 1 --resins inventory-samples/resins.csv --resin SLOW --temperature 8C")).isEqualTo("Resin slow: its maker "
            + "states nothing for 8 °C, only 15 to 35 °C. No hand-over is worked out; follow the maker's sheet.");
        assertThat(ready("ticket 1 --resins inventory-samples/resins.csv --resin slow --temperature 64F --start \"2030-05-19 09:00\""))
            .contains("resin slow at 17.778 °C").doesNotContain("after the job is due");
    }

    private String ready(String line) {
        return book.json(line).get("ready").get("words").asText();
    }

    @Test
    void theTableBesideTheBookIsFoundByItsName() throws IOException {
        Files.writeString(folder.resolve("resins.csv"), "resin,temperature_c,handling_min,full_cure_h\nown,20,60,2\n");
        assertThat(ready("ticket 1 --temperature 20C --start \"2030-05-20 09:00\"")).contains("resin own at 20 °C: handle after 60 min");
        Files.writeString(folder.resolve("resins.csv"), "resin,temperature_c,handling_min,full_cure_h\nown,20,60,2\nown,25,90,2\n");
        assertThat(book.type("ticket 1 --json").err()).contains("resins.csv line 3, column handling_min", "Nothing was read.");
    }

    @Test
    void aJobOfSeveralClubsHasARowEach() {
        book.done("bag --player \"J. Quillby\" --regrip \"Moss round\" --promise");
        JsonNode ticket = book.json("ticket 2");
        assertThat(ticket.get("title").asText()).isEqualTo("Change, 13 clubs");
        assertThat(ticket.get("rows")).hasSize(13);
        assertThat(ticket.get("rows").get(0).get("work").get(0).asText()).isEqualTo("new grip");
        assertThat(ticket.get("cautions").toString()).contains("Solvents");
    }

    @Test
    void aJobWithoutAPlanHasRoomToWriteOne() {
        book.done("job add repair --club OAKES-3W --note \"loose ferrule\"");
        JsonNode ticket = book.json("ticket 2");
        assertThat(ticket.get("words").asText()).isEqualTo("loose ferrule");
        assertThat(ticket.get("steps")).hasSize(7);
        assertThat(ticket.get("parts")).isNotEmpty();
        assertThat(ticket.get("notes").toString()).contains("Not planned yet");
    }

    @Test
    void theBrowsersPageIsWrittenAsWell() throws IOException {
        Path html = folder.resolve("twin.html");
        book.done("ticket 1 --html " + html);
        assertThat(Files.readString(html)).startsWith("<!DOCTYPE html>").contains("TOLVER-DR");
    }

    @Test
    void whatCannotBeIsRefused() {
        book.refused("ticket 9 --json", "there is no job 9; benchtwin job list --all lists them");
        book.refused("ticket 1 --pdf " + folder, folder + " is a folder; expected the name of a file");
        book.refused("ticket 1 --json --temperature warm", "--temperature \"warm\": expected a temperature from -20 to 150 °C, such as 18C "
            + "or 64F");
        book.refused("ticket 1 --json --start soon", "--start \"soon\": expected a day and an hour, 2026-05-20 09:00, or 09:00 for today");
        book.refused("ticket 1 --json --resins inventory-samples/resins.csv",
            "inventory-samples/resins.csv holds several resins; say which is used with --resin: slow, quick");
        book.refused("ticket 1 --json --resins inventory-samples/resins.csv --resin glue",
            "--resin glue is not in inventory-samples/resins.csv; there is slow, quick");
        book.refused("ticket 1 --json --resin slow", "--resin slow: there is no table of resins; name it with --resins FILE, or put it into "
            + folder.resolve("resins.csv"));
        assertThat(book.type("ticket 1 --paper a9").err()).contains("--paper");
    }
}
