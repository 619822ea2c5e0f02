package benchtwin.web;

import static benchtwin.web.FormFiller.words;
import static org.assertj.core.api.Assertions.assertThat;

import benchtwin.bench.ClubViews;
import benchtwin.bench.StockViews;
import benchtwin.club.Quantity;
import java.net.http.HttpResponse;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;

/** What a club is made of is put down anew, by a form without scripts. Values of the sample workshop. */
class ClubMadePagesTest {

    private static final Pattern FIELD = Pattern.compile("<input name=\"(\\w+)\" size=\"12\" autocomplete=\"off\" value=\"([^\"]*)\"");

    @RegisterExtension
    static final WebBook PAGES = new WebBook();

    private final FormFiller kim = new FormFiller(PAGES);

    @Test
    void anotherGripIsPutDownAndWhatItMovesCountsNoMore() throws Exception {
        String grip = StockViews.list(PAGES.book(), new StockViews.Asked(List.of("grip"), List.of(), true, false)).get(0).tag();
        String path = "/clubs/SANDROW-DR/made";
        assertThat(kim.open("/clubs/SANDROW-DR").body()).contains("href=\"" + path + "\"");
        HttpResponse<String> done = kim.send(path, filled(kim.open(path), "grip", grip, "tape_layers", "2"));
        assertThat(words(done)).contains("What has changed of SANDROW-DR is entered.").contains("so no longer counted: ").contains(
            "swing weight");
        ClubViews.Club club = ClubViews.show(PAGES.book(), "SANDROW-DR", ClubViews.When.NOW);
        assertThat(club.fact("grip")).contains(grip);
        assertThat(club.fact("tape_layers")).contains("2");
        assertThat(club.values()).containsKey(Quantity.LOFT).doesNotContainKey(Quantity.SWING_WEIGHT);
        assertThat(StockViews.show(PAGES.book(), "grip:" + grip).part().club()).contains("SANDROW-DR");
        assertThat(StockViews.audit(PAGES.book()).findings()).isEmpty();
    }

    @Test
    void aClubThatBrokeSaysSo() throws Exception {
        String path = "/clubs/QUILLBY-PW/made";
        kim.send(path, filled(kim.open(path), "state", "damaged", "note", "<i>bent on a root</i>"));
        assertThat(ClubViews.show(PAGES.book(), "QUILLBY-PW", ClubViews.When.NOW).fact("state")).contains("damaged");
        assertThat(kim.open("/clubs/QUILLBY-PW").body()).doesNotContain("<i>bent");
    }

    @Test
    void whatCannotBeIsRefusedAndKept() throws Exception {
        String path = "/clubs/OAKES-3W/made";
        HttpResponse<String> nothing = kim.send(path, filled(kim.open(path)));
        assertThat(nothing.statusCode()).isEqualTo(400);
        assertThat(words(nothing)).contains("nothing was changed, so nothing was entered");
        HttpResponse<String> much = kim.send(path, filled(kim.open(path), "melt_g", "61", "ferrule", "black"));
        assertThat(words(much)).contains("hot melt 61.0: expected 0 to 60").doesNotContain("--melt");
        assertThat(much.body()).contains("value=\"61\"").contains("value=\"black\"");
        String taken = ClubViews.show(PAGES.book(), "QUILLBY-9I", ClubViews.When.NOW).fact("head").orElseThrow();
        assertThat(words(kim.send(path, filled(kim.open(path), "head", taken)))).contains("sits in club QUILLBY-9I");
        assertThat(words(kim.send(path, filled(kim.open(path), "state", "lost")))).contains("how it stands: \"lost\"; expected one of in play");
    }

    @Test
    void theSecondOfTwoIsTold() throws Exception {
        FormFiller fern = new FormFiller(PAGES);
        FormFiller heath = new FormFiller(PAGES);
        String path = "/clubs/QUILLBY-9I/made";
        HttpResponse<String> page = fern.open(path);
        heath.open(path);
        fern.send(path, filled(page, "ferrule", "black"));
        HttpResponse<String> told = heath.send(path, filled(page, "ferrule", "white"));
        assertThat(told.statusCode()).isEqualTo(409);
        assertThat(told.body()).contains("value=\"white\"");
        assertThat(ClubViews.show(PAGES.book(), "QUILLBY-9I", ClubViews.When.NOW).fact("ferrule")).contains("black");
    }

    /** The page's fields as they stand, and these in their place. */
    private static String[] filled(HttpResponse<String> page, String... instead) {
        List<String> fields = new ArrayList<>();
        Matcher field = FIELD.matcher(page.body());
        List<String> named = List.of(instead);
        while (field.find()) {
            if (!named.contains(field.group(1))) {
                fields.addAll(List.of(field.group(1), field.group(2)));
            }
        }
        fields.addAll(named);
        return fields.toArray(String[]::new);
    }
}
