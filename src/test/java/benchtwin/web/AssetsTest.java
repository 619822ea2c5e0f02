package benchtwin.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Styles and scripts are kept for good, because another content has another address. */
class AssetsTest {

    @RegisterExtension
    static final WebBook PAGES = new WebBook();
    private static final Pattern ADDRESS = Pattern.compile("(?:href|src)=\"(/assets/[^\"]+)\"");

    private final Caller caller = Caller.here(PAGES);

    static List<String> names() {
        return Assets.names().stream().sorted().toList();
    }

    @ParameterizedTest
    @MethodSource("names")
    void eachIsKeptForGoodUnderAnAddressThatHoldsItsFingerprint(String name) throws Exception {
        HttpResponse<String> answer = caller.get(Assets.at(name));
        assertThat(answer.statusCode()).isEqualTo(200);
        assertThat(answer.headers().firstValue("Cache-Control")).hasValue("max-age=31536000, immutable");
        assertThat(answer.headers().firstValue("Content-Type").orElseThrow()).startsWith(name.endsWith(".css") ? "text/css" : "text/javascript");
        assertThat(Assets.at(name)).contains(Assets.fingerprint(answer.body().getBytes(StandardCharsets.UTF_8)));
    }

    @ParameterizedTest
    @ValueSource(strings = {"/", "/stock", "/clubs/OAKES-DR/read/loft", "/nothing"})
    void everyPageNamesThemByThatAddress(String page) throws Exception {
        List<String> named = ADDRESS.matcher(caller.get(page).body()).results().map((MatchResult found) -> found.group(1)).toList();
        assertThat(named).contains(Assets.at("bench.css"), Assets.at("bench.js"));
        for (String address : named) {
            assertThat(caller.get(address).statusCode()).as(address).isEqualTo(200);
        }
    }

    @Test
    void anotherContentHasAnotherFingerprint() {
        // SHA-256 of "abc", FIPS 180-2, appendix B.1
        assertThat(Assets.fingerprint("abc".getBytes(StandardCharsets.US_ASCII))).isEqualTo("ba7816bf8f01cfea");
        assertThat(Assets.fingerprint("abd".getBytes(StandardCharsets.US_ASCII))).isNotEqualTo("ba7816bf8f01cfea");
    }

    @Test
    void whoHasNotSignedInSeesTheStylesOfTheSignIn() throws Exception {
        assertThat(Assets.isListed(Assets.at("bench.css"))).isTrue();
        assertThat(Assets.isListed("/assets/bench.css")).isFalse();
    }
}
