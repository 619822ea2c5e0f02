package benchtwin.web;

import static org.assertj.core.api.Assertions.assertThat;

import benchtwin.bench.PlayerBook;
import benchtwin.bench.StockViews;
import java.net.http.HttpResponse;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Tags and names as people and scanners write them: whatever letters they hold, links lead to them and acts reach them. */
class OddNamesTest {

    @RegisterExtension
    static final WebBook PAGES = new WebBook();
    private static final Pattern LINK = Pattern.compile("(?:href|hx-get)=\"(/(?:stock|clubs|players|bend|find)[^\"]*)\"");

    private final FormFiller filler = new FormFiller(PAGES);
    private final Visit visit = new Visit(PAGES);

    /** As a page has it. */
    private static String shown(String text) {
        return text.replace("&", "&amp;").replace("<", "&lt;");
    }

    @ParameterizedTest
    @ValueSource(strings = {"A/B", "A//B", "50%", "50%25", "%2F", "why?", "#1", "A+B", "two words", "Ä 漢字", "A;B=1", "A\\B", "A&B", "A\"B'C", "import",
        "several", "count", "head:X", "club:Y", "..A", "../A", "A/..", "~7e", "<b>", "🏌", "bag", "A,B"})
    void everyLinkAndEveryActReaches(String name) throws Exception {
        aPart(name);
        aPlayerWithAClub(name);
    }

    private void aPart(String tag) throws Exception {
        HttpResponse<String> look = visit.upload("/stock/import", "grips.csv",
            "tag,model,mass_g\n\"%s\",Moss,50\n".formatted(tag.replace("\"", "\"\"")));
        assertThat(look.body()).as(tag).contains("1 new, 0 changed");
        String shown = Caller.first(Pattern.compile("name=\"shown\" value=\"([^\"]+)\""), look.body());
        assertThat(visit.post(look.uri().getPath(), "shown", shown).body()).contains("<h1>Imported</h1>");
        String path = "/stock/" + FindPages.encoded("grip:" + tag);
        HttpResponse<String> page = filler.open(path);
        assertThat(page.statusCode()).as(path).isEqualTo(200);
        assertThat(page.body().replace("&#34;", "\"").replace("&#39;", "'")).contains(shown(tag));
        assertThat(visit.get("/stock?kind=grip&q=" + FindPages.encoded(tag.split(" ")[0])).body()).contains("\"" + path + "\"");
        String full = "grip:" + tag;
        HttpResponse<String> moved = filler.send("/stock/acts/move", "tag", full, "place", "van 7");
        assertThat(moved.statusCode()).as(tag).isEqualTo(200);
        assertThat(StockViews.show(PAGES.book(), full).part().place()).contains("van 7");
        assertThat(filler.send("/stock/acts/note", "tag", full, "note", "odd").statusCode()).isEqualTo(200);
        assertThat(visit.get("/stock/several?tag=" + FindPages.encoded(full)).body()).contains("van 7");
        linksLead(path);
    }

    private void aPlayerWithAClub(String name) throws Exception {
        HttpResponse<String> players = filler.open("/players");
        assertThat(players.statusCode()).isEqualTo(200);
        HttpResponse<String> player = filler.send("/players", "name", name, "hand", "right", "note", "");
        assertThat(player.statusCode()).as(name).isEqualTo(200);
        String path = "/players/" + FindPages.encoded(name);
        assertThat(player.uri().getRawPath()).isEqualTo(path);
        assertThat(filler.open("/players").body()).contains("\"" + path + "\"");
        filler.open(path);
        assertThat(filler.send(path + "/tolerances", "tol-loft", "0.3").statusCode()).isEqualTo(200);
        assertThat(PlayerBook.show(PAGES.book(), name).tolerances()).hasSize(1);
        filler.open(path + "/clubs");
        HttpResponse<String> club = filler.send(path + "/clubs", "tag", name, "category", "driver", "hand", "right", "state", "in play",
            "loft", "10.5");
        assertThat(club.statusCode()).as(name).isEqualTo(200);
        assertThat(club.uri().getRawPath()).isEqualTo("/clubs/" + FindPages.encoded(name));
        String at = "/clubs/" + FindPages.encoded(name);
        filler.open(at + "/read/lie");
        assertThat(filler.send(at + "/read/lie", "lie", "58", "value", "58").statusCode()).as(name).isEqualTo(200);
        linksLead(path);
        linksLead(at);
        assertThat(visit.get(path + "/bag").statusCode()).isEqualTo(200);
        assertThat(visit.get("/find?q=" + FindPages.encoded(name)).statusCode()).isEqualTo(200);
    }

    /** Every link on a page to something of ours has a page behind it; a plan that cannot be found is said in words. */
    private void linksLead(String path) {
        List<String> links = new ArrayList<>(LINK.matcher(visit.get(path).body()).results().map(found -> found.group(1)
            .replace("&amp;", "&")).distinct().toList());
        assertThat(links).as(path).isNotEmpty();
        for (String link : links) {
            HttpResponse<String> answer = visit.get(link);
            assertThat(answer.statusCode()).as(link).isIn(200, 400);
            assertThat(answer.body()).as(link).doesNotContain("This request cannot be answered", "no club is", "no player is", "no part is",
                "There is no such page");
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {".", "..", "..."})
    void dotsAloneAreNoNameAndThatIsSaidInWords(String dots) {
        filler.open("/players");
        HttpResponse<String> refused = filler.send("/players", "name", dots, "hand", "", "note", "");
        assertThat(refused.statusCode()).isEqualTo(400);
        assertThat(refused.body().replace("&#34;", "\"")).contains("\"%s\" cannot be the name of a player; expected 1 to 80 characters on one line, not dots alone"
            .formatted(dots));
        HttpResponse<String> look = visit.upload("/stock/import", "grips.csv", "tag,model,mass_g\n%s,Moss,50\n".formatted(dots));
        assertThat(look.body().replace("&#34;", "\"")).contains("is only dots; expected a tag with a letter or a digit in it");
    }

    @Test
    void anAddressOfDotsIsNoWayOut() {
        for (String path : new String[] {"/stock/%2e%2e", "/players/%2E%2E%2Fstock", "/clubs/..%2F..%2Fetc%2Fpasswd", "/clubs/%252e%252e"}) {
            assertThat(visit.get(path).statusCode()).as(path).isIn(400, 404);
        }
    }
}
