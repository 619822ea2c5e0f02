package benchtwin.web;

import static benchtwin.web.FormFiller.words;
import static org.assertj.core.api.Assertions.assertThat;

import benchtwin.bench.ClubViews;
import benchtwin.bench.PartWords;
import benchtwin.bench.StockViews;
import benchtwin.club.Quantity;
import java.net.http.HttpResponse;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;

/** A part is read anew, and readings of parts and clubs are put right, by forms without scripts. Values of the sample workshop. */
class PartReadingPagesTest {

    @RegisterExtension
    static final WebBook PAGES = new WebBook();

    private final FormFiller kim = new FormFiller(PAGES);

    @Test
    void aReadingOfAHeadIsEnteredTheWayItWasReadLast() throws Exception {
        assertThat(words(kim.open("/stock/H-002/read/loft_deg"))).contains("Last read 15.20°").contains("soled");
        HttpResponse<String> after = kim.send("/stock/H-002/read/loft_deg", "value", "15,4", "how-reading", "soled", "gauge", "bench 2");
        assertThat(after.uri().getPath()).isEqualTo("/stock/head:H-002");
        assertThat(words(after)).contains("loft 15.40° is entered.").contains("measured: loft 15.40° (reading ");
        assertThat(StockViews.show(PAGES.book(), "H-002").part().readings()).as("beside what was read without a gauge").anySatisfy(loft -> {
            assertThat(loft.value()).isEqualTo(15.4);
            assertThat(loft.gauge()).contains("bench 2");
            assertThat(loft.condition()).containsEntry("reading", "soled");
        });
    }

    @Test
    void aShaftsFrequencySaysHowItWasClamped() throws Exception {
        String page = kim.open("/stock/S-002/read/frequency_cpm").body();
        assertThat(page).contains("name=\"how-clamp_mm\" size=\"9\" autocomplete=\"off\" value=\"5\"").contains("value=\"255\"");
        kim.send("/stock/S-002/read/frequency_cpm", "value", "282.4", "how-clamp_mm", "5 1/2", "how-tip_mass_g", "255", "how-over_grip", "no");
        assertThat(StockViews.show(PAGES.book(), "S-002").part().readings()).anySatisfy(read -> {
            assertThat(read.value()).isEqualTo(282.4);
            assertThat(read.condition()).containsEntry("clamp_mm", "139.7").containsEntry("tip_mass_g", "255").containsEntry("over_grip", "no");
        });
        HttpResponse<String> refused = kim.send("/stock/S-002/read/frequency_cpm", "value", "282.4", "how-free_length_mm", "60");
        assertThat(refused.statusCode()).isEqualTo(400);
        assertThat(words(refused)).contains("free length: 1524 is as long as the shaft or longer");
        assertThat(refused.body()).as("what was typed is still there").contains("value=\"282.4\"").contains("value=\"60\"");
    }

    @Test
    void whatWasNeverReadCanBeRead() throws Exception {
        assertThat(words(kim.open("/stock/H-001"))).contains("Read something else").contains("heel toe").doesNotContain("seat to ground");
        HttpResponse<String> chosen = kim.open("/stock/H-001/read?quantity=cg_up_mm");
        assertThat(chosen.uri().getPath()).isEqualTo("/stock/H-001/read/cg_up_mm");
        assertThat(words(chosen)).contains("Not read yet").contains("CG above the ground now, millimetres, such as 50.6");
        assertThat(words(kim.send("/stock/H-001/read/cg_up_mm", "value", "18.5"))).contains("CG above the ground 18.5 mm is entered.");
        assertThat(kim.open("/stock/H-001/read/face_deg").statusCode()).isEqualTo(400);
        assertThat(words(kim.open("/stock/W-01/read/mass_g"))).contains("\"mass_g\" is not read of weight W-01; nothing is");
    }

    @Test
    void whatIsOddIsAskedAndWhatCannotBeIsRefused() throws Exception {
        kim.open("/stock/H-003/read/mass_g");
        double mass = reading("H-003", "mass_g").value();
        HttpResponse<String> asked = kim.send("/stock/H-003/read/mass_g", "value", Double.toString(mass + 20), "how-weighed_with", "weights");
        assertThat(words(asked)).contains("is 20 g from the").contains("Yes, it is so");
        assertThat(reading("H-003", "mass_g").value()).isEqualTo(mass);
        assertThat(words(kim.send("/stock/H-003/read/mass_g", "value", Double.toString(mass + 20), "how-weighed_with", "weights", "so",
            "mass_g " + (mass + 20)))).contains("is entered.");
        HttpResponse<String> impossible = kim.send("/stock/H-003/read/mass_g", "value", "21000", "how-weighed_with", "weights", "so", "mass_g 21000");
        assertThat(impossible.statusCode()).isEqualTo(400);
        assertThat(words(impossible)).contains("mass: 21000 is not possible; expected grams from 20 to 2000");
        assertThat(words(kim.send("/stock/H-003/read/mass_g", "value", "heavy"))).contains("mass: \"heavy\" is not a value; expected grams, such as 190.6");
        assertThat(words(kim.send("/stock/H-003/read/mass_g", "value", "201", "how-weighed_with", "a ferrule"))).contains(
            "weighed with: \"a ferrule\"; expected bare, weights, sleeve, screw, several joined by +");
        assertThat(words(kim.send("/stock/H-003/read/mass_g", "value", "201", "on", "2999-01-01"))).contains("is still to come; expected today");
        assertThat(reading("H-003", "mass_g").value()).isEqualTo(mass + 20);
    }

    @Test
    void whatWasReadOtherwiseIsSaidToCountNoMore() {
        kim.open("/stock/H-002/read/lie_deg");
        assertThat(words(kim.send("/stock/H-002/read/lie_deg", "value", "56.2", "how-reading", "square"))).contains(
            "Read in another way and so not counted beside it: face, loft. Read them again in the same way.");
        kim.open("/stock/H-002/read/lie_deg");
        kim.send("/stock/H-002/read/lie_deg", "value", "56.2", "how-reading", "soled");
    }

    @Test
    void aReadingIsPutRightAndTheOldOneStaysInTheHistory() throws Exception {
        long id = reading("H-110", "loft_deg").id();
        assertThat(kim.open("/stock/H-110").body()).contains("/stock/head%3AH-110/correct/" + id);
        assertThat(words(kim.open("/stock/H-110/correct/" + id))).contains("loft 9.40°");
        HttpResponse<String> noReason = kim.send("/stock/H-110/correct/" + id, "value", "9.5");
        assertThat(noReason.statusCode()).isEqualTo(400);
        assertThat(words(noReason)).contains("a correction needs a reason, such as: digits swapped").doesNotContain("--");
        assertThat(noReason.body()).contains("value=\"9.5\"");
        HttpResponse<String> done = kim.send("/stock/H-110/correct/" + id, "value", "9.5", "why", "digits <b>swapped</b>");
        assertThat(words(done)).contains("loft 9.40° is put right: 9.50°. The old reading is kept.").contains(
            "in place of reading " + id + ", which said 9.40°: digits <b>swapped</b>");
        assertThat(done.body()).doesNotContain("<b>swapped");
        assertThat(reading("H-110", "loft_deg").value()).isEqualTo(9.5);
        assertThat(words(kim.open("/stock/H-110/correct/" + id))).contains("It was put right already. What stands in its place is reading "
            + reading("H-110", "loft_deg").id());

        long now = reading("H-110", "loft_deg").id();
        kim.open("/stock/H-110/correct/" + now);
        HttpResponse<String> impossible = kim.send("/stock/H-110/correct/" + now, "value", "95", "why", "no");
        assertThat(words(impossible)).contains("loft: 95 is not possible; expected degrees from -20 to 90");
        assertThat(words(kim.send("/stock/H-110/correct/" + now, "back", "yes", "why", "another head was on the gauge")))
            .contains("loft 9.50° is taken back. The old reading is kept.");
        assertThat(StockViews.show(PAGES.book(), "H-110").part().readings()).noneMatch(read -> read.quantity().equals("loft_deg"));
        assertThat(words(kim.open("/stock/H-110/correct/1"))).contains("head H-110 has no reading 1; its page lists them");
        assertThat(kim.open("/stock/H-110/correct/one").statusCode()).isEqualTo(400);
        assertThat(StockViews.audit(PAGES.book()).findings()).isEmpty();
    }

    @Test
    void aClubsReadingIsPutRight() throws Exception {
        ClubViews.ReadValue lie = ClubViews.show(PAGES.book(), "OAKES-DR", ClubViews.When.NOW).values().get(Quantity.LIE);
        String path = "/clubs/OAKES-DR/correct/" + lie.readings().get(0);
        assertThat(kim.open("/clubs/OAKES-DR").body()).contains(path);
        kim.open(path);
        assertThat(words(kim.send(path, "value", "20", "why", "a slip"))).contains("lie of 20.0°: expected 40.0° to 85.0°");
        assertThat(words(kim.send(path, "value", "58.1", "why", "a slip"))).contains("is put right: 58.10°");
        assertThat(ClubViews.show(PAGES.book(), "OAKES-DR", ClubViews.When.NOW).values().get(Quantity.LIE).value()).isEqualTo(58.1);
    }

    @Test
    void theSecondOfTwoIsToldAndKeepsWhatWasTyped() throws Exception {
        FormFiller fern = new FormFiller(PAGES);
        FormFiller heath = new FormFiller(PAGES);
        fern.open("/stock/G-001/read/mass_g");
        heath.open("/stock/G-001/read/mass_g");
        fern.send("/stock/G-001/read/mass_g", "value", "49.4");
        HttpResponse<String> told = heath.send("/stock/G-001/read/mass_g", "value", "49.6", "note", "second scale");
        assertThat(told.statusCode()).isEqualTo(409);
        assertThat(words(told)).contains("Nothing was entered").contains("mass 49.4 g");
        assertThat(told.body()).contains("value=\"49.6\"").contains("value=\"second scale\"");
        long id = reading("G-001", "mass_g").id();
        fern.open("/stock/G-001/correct/" + id);
        heath.open("/stock/G-001/correct/" + id);
        fern.send("/stock/G-001/correct/" + id, "value", "49.5", "why", "misread");
        assertThat(heath.send("/stock/G-001/correct/" + id, "value", "49.7", "why", "misread").statusCode()).isEqualTo(409);
        assertThat(reading("G-001", "mass_g").value()).isEqualTo(49.5);
    }

    private static StockViews.PartReading reading(String tag, String quantity) throws Exception {
        return PartWords.inOrder(StockViews.show(PAGES.book(), tag).part()).stream().filter(read -> read.quantity().equals(quantity))
            .findFirst().orElseThrow();
    }
}
