package benchtwin.web;

import static benchtwin.web.FormFiller.words;
import static org.assertj.core.api.Assertions.assertThat;

import benchtwin.bench.JobBook;
import benchtwin.bench.PlayerBook;
import java.net.http.HttpResponse;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a page says is to be done can be done on a page. */
class WordsOfPagesTest {

    @RegisterExtension
    static final WebBook PAGES = new WebBook();

    private final FormFiller kim = new FormFiller(PAGES);

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
        /jobs/99                          | there is no job 99; open ones stand on the page of today
        /players/N. New/bag               | N. New has no clubs in play in the book; put one in from the player's page, or import a file in Stock
        /stock/NONE-1                     | no part is tagged NONE-1 in the book
        /bend/H-002                       |""")
    void aPageNamesNoOption(String path, String said) throws Exception {
        if (path.contains("N. New") && PlayerBook.list(PAGES.book()).stream().noneMatch(player -> player.name().equals("N. New"))) {
            PlayerBook.add(PAGES.book(), "N. New", Optional.empty(), Map.of(), Optional.empty());
        }
        String page = words(kim.open(path.replace(" ", "%20").replace("+", "%2B")));
        assertThat(page).contains(said == null ? "" : said).doesNotContainPattern("--[a-z]").doesNotContainPattern("benchtwin (club|stock|job|change|match) ");
    }

    @Test
    void handingOverSaysWhatToDoOnThePage() throws Exception {
        String number = JobBook.add(PAGES.book(), new JobBook.Order(JobBook.What.REPAIR, Optional.of("N. Oakes"), Optional.empty(), Optional.empty(), "x"));
        kim.open("/jobs/" + number + "/hand-over");
        HttpResponse<String> told = kim.send("/jobs/" + number + "/hand-over", "as", "NEW-9");
        assertThat(told.statusCode()).isEqualTo(400);
        assertThat(words(told)).contains("has no plan, so it makes no new club: leave the new club's tag empty, or put it in from its player's page");
        assertThat(words(kim.send("/jobs/" + number + "/hand-over", "loft", "34"))).contains(
            "nothing can be entered of one; leave the readings empty, and enter them on the club's page");
        assertThat(words(kim.send("/jobs/" + number + "/hand-over", "loft", "34", "on", "2999-01-01"))).doesNotContain("--on");
    }
}
