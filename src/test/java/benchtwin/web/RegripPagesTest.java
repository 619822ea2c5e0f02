package benchtwin.web;

import static benchtwin.web.FormFiller.words;
import static org.assertj.core.api.Assertions.assertThat;

import benchtwin.bench.JobBook;
import benchtwin.bench.Regrip;
import benchtwin.bench.StockBook;
import benchtwin.bench.StockViews;
import benchtwin.match.ShopSettings;
import java.net.http.HttpResponse;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;

/** New grips for a bag, by forms without scripts. Values of the sample workshop. */
class RegripPagesTest {

    private static final Pattern PLAN = Pattern.compile("name=\"plan\" value=\"([^\"]*)\"");

    @RegisterExtension
    static final WebBook PAGES = new WebBook();

    private final FormFiller kim = new FormFiller(PAGES);

    @Test
    void theBagLeadsThereAndAModelIsChosen() throws Exception {
        assertThat(kim.open("/players/J.%20Quillby/bag").body()).contains("href=\"/players/J.%20Quillby/regrip\"");
        HttpResponse<String> asked = kim.open("/players/J.%20Quillby/regrip");
        for (Regrip.Model model : Regrip.models(PAGES.book())) {
            assertThat(words(asked)).contains("%s, %d free".formatted(model.name(), model.free()));
        }
        assertThat(words(asked)).doesNotContain("Make it a job");
        assertThat(kim.open("/players/J.%20Quillby/regrip?model=%3Cb%3E").body()).doesNotContain("<b>");
        assertThat(words(kim.open("/players/Nobody/regrip"))).contains("no player is called Nobody");
    }

    @Test
    void whatItChangesIsWhatTheCommandSaysAndBecomesAJob() throws Exception {
        Regrip.Plan plan = Regrip.of(PAGES.book(), "K. Larkfield", "Moss round", false, ShopSettings.DEFAULT);
        HttpResponse<String> seen = kim.open("/players/K.%20Larkfield/regrip?model=Moss+round");
        for (Regrip.Club club : plan.clubs()) {
            assertThat(words(seen)).contains(club.club()).contains(club.fresh().orElseThrow().tag());
        }
        assertThat(words(seen)).contains("Solvent");
        HttpResponse<String> job = kim.send("/players/K.%20Larkfield/regrip", "model", "Moss round", "plan",
            FormFiller.held(seen, PLAN), "due", "2026-05-22T09:30");
        assertThat(words(job)).contains("%d new grips for K. Larkfield, promised to it.".formatted(plan.served())).contains("due 2026-05-22 09:30");
        String number = job.uri().getPath().substring("/jobs/".length());
        assertThat(JobBook.show(PAGES.book(), number).player()).contains("K. Larkfield");
        for (Regrip.Club club : plan.clubs()) {
            assertThat(StockViews.show(PAGES.book(), "grip:" + club.fresh().orElseThrow().tag()).part().promises()).hasSize(1);
        }
    }

    @Test
    void whatWasNotLookedAtBecomesNoJob() throws Exception {
        String path = "/players/A.%20Penhollow/regrip";
        HttpResponse<String> seen = kim.open(path + "?model=Moss+round");
        String key = FormFiller.held(seen, PLAN);
        String taken = "grip:" + key.split("[=;]")[1];
        StockBook.reserve(PAGES.book(), List.of(taken), java.util.Optional.empty(), "W. Wexcombe", 1);
        HttpResponse<String> told = kim.send(path, "model", "Moss round", "plan", key, "due", "2026-05-23T10:00");
        assertThat(told.statusCode()).isEqualTo(400);
        assertThat(words(told)).contains("no job was made: other grips are free now than when you opened the page");
        assertThat(told.body()).contains("value=\"2026-05-23T10:00\"").doesNotContain("plan\" value=\"" + key);
        assertThat(kim.send(path, "model", "None such", "plan", key).statusCode()).isEqualTo(400);
        assertThat(words(kim.send(path, "model", "None such", "plan", key))).contains("no free grip of the model None such");
    }
}
