package benchtwin.web;

import static org.assertj.core.api.Assertions.assertThat;

import benchtwin.bench.NoteBook;
import benchtwin.bench.PlayerBook;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;

/** Whatever somebody typed is shown as it was typed, and never becomes part of a page. */
class TypedAsShownTest {

    private static final String SCRIPT = "<script>alert(1)</script>";

    @RegisterExtension
    static final WebBook PAGES = new WebBook();

    private final Caller caller = Caller.here(PAGES);

    @Test
    void aPlayerCalledLikeAScriptIsAPlayer() throws Exception {
        PlayerBook.add(PAGES.book(), SCRIPT, Optional.empty(), Map.of(), Optional.empty());
        for (String path : new String[] {"/players", "/players/" + FindPages.encoded(SCRIPT), "/find?q=" + Caller.encoded(SCRIPT + "x")}) {
            String page = caller.get(path).body().replace("&gt;", ">");   // which need not be escaped, and is in some places
            assertThat(page).as(path).doesNotContain("<script>alert").contains("&lt;script>alert(1)&lt;/script>");
        }
        assertThat(caller.get("/find?q=" + Caller.encoded(SCRIPT)).headers().firstValue("Location"))
            .hasValue("/players/" + FindPages.encoded(SCRIPT));
    }

    @Test
    void quotesStayInsideTheirPlace() throws Exception {
        String typed = "\"><img src=x onerror=alert(1)>' onfocus='alert(1)";
        for (String path : new String[] {"/find?q=", "/stock?q=", "/clubs/OAKES-DR/twin?keep="}) {
            assertThat(caller.get(path + Caller.encoded(typed)).body()).as(path).doesNotContain("<img");
        }
        assertThat(caller.get("/stock?q=" + Caller.encoded(typed)).body()).contains("value=\"&#34;>&lt;img src=x onerror=alert(1)>&#39; onfocus=&#39;alert(1)\"");
    }

    @Test
    void aNoteOfTenThousandEmojiIsShownWhole() throws Exception {
        String note = "\uD83C\uDFCC".repeat(2_500) + "\uD83D\uDD27".repeat(7_500);
        NoteBook.add(PAGES.book(), "H-110", note);
        assertThat(caller.get("/stock/H-110").body()).contains(note);
    }
}
