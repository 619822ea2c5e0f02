package benchtwin.web;

import static org.assertj.core.api.Assertions.assertThat;

import benchtwin.samples.TestClock;
import java.time.Instant;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Other machines are let in with a passphrase. */
class SignInTest {

    private static final String WORDS = "lantern gravel seven spoons";
    private static final TestClock CLOCK = TestClock.at(Instant.parse("2026-05-21T07:00:00Z"));

    @RegisterExtension
    static final WebBook PAGES = new WebBook(Access.network(PassphraseHash.of(WORDS), List.of("bench.local")), CLOCK, List.of());

    private final Caller stranger = Caller.elsewhere(PAGES);

    @AfterEach
    void wrongTriesAreForgotten() {
        CLOCK.on(TryLimit.WINDOW.multipliedBy(2));
    }

    @ParameterizedTest
    @ValueSource(strings = {"/", "/players", "/stock?q=driver", "/clubs/OAKES-DR", "/nothing", "/assets/nothing.js", "/assets/../players"})
    void aStrangerSeesNothingOfTheBook(String path) throws Exception {
        HttpResponse<String> answer = stranger.get(path.replace("..", "%2E%2E"));
        assertThat(answer.statusCode()).isIn(303, 400);
        assertThat(answer.headers().firstValue("Location").orElse("/sign-in")).startsWith("/sign-in");
        assertThat(answer.body()).doesNotContain("Oakes", "H-110");
    }

    @Test
    void aStrangersScriptsAndFormsAreRefused() throws Exception {
        HttpResponse<String> part = stranger.send("GET", "/stock", BodyPublishers.noBody(), "HX-Request", "true");
        assertThat(part.statusCode()).isEqualTo(401);
        assertThat(part.headers().firstValue("HX-Redirect")).hasValue("/sign-in");
        stranger.get("/sign-in");
        assertThat(stranger.post("/clubs/OAKES-DR/twin", Map.of("head", "H-110", "shaft", "S-234")).statusCode()).isEqualTo(401);
        assertThat(stranger.post("/sign-out", Map.of()).statusCode()).isEqualTo(401);
    }

    @Test
    void thePassphraseLetsIn() throws Exception {
        HttpResponse<String> asked = stranger.get("/stock?q=driver");
        String signIn = asked.headers().firstValue("Location").orElseThrow();
        assertThat(signIn).isEqualTo("/sign-in?next=%2Fstock%3Fq%3Ddriver");
        assertThat(stranger.get(signIn).body()).contains("travels in the clear", "value=\"/stock?q=driver\"").doesNotContain("Stock</a>");
        String before = stranger.identity();
        HttpResponse<String> in = stranger.post("/sign-in", Map.of("passphrase", "  lantern gravel  seven spoons ", "next", "/stock?q=driver"));
        assertThat(in.statusCode()).isEqualTo(303);
        assertThat(in.headers().firstValue("Location")).hasValue("/stock?q=driver");
        assertThat(stranger.identity()).as("nobody can have planted this one").isNotEqualTo(before);
        assertThat(stranger.get("/players").body()).contains("N. Oakes", "Sign out");
        assertThat(stranger.get("/sign-in?next=//elsewhere.example").headers().firstValue("Location")).hasValue("/");
    }

    @Test
    void signingOutEndsIt() throws Exception {
        signedIn();
        stranger.get("/");
        assertThat(stranger.post("/sign-out", Map.of()).headers().firstValue("Location")).hasValue("/sign-in");
        assertThat(stranger.get("/players").statusCode()).isEqualTo(303);
    }

    @Test
    void aTabletThatLiesUnusedIsSignedOut() throws Exception {
        signedIn();
        CLOCK.on(Sessions.IDLE.minusSeconds(1));
        assertThat(stranger.get("/players").statusCode()).isEqualTo(200);
        CLOCK.on(Sessions.IDLE.plusSeconds(1));
        assertThat(stranger.get("/players").statusCode()).isEqualTo(303);
    }

    @Test
    void aTokenIsForOneSessionAlone() throws Exception {
        stranger.get("/sign-in");
        String before = stranger.token();
        signedIn();
        assertThat(stranger.send("POST", "/sign-out", BodyPublishers.ofString("token=" + before), "Content-Type", "application/x-www-form-urlencoded").statusCode())
            .isEqualTo(403);
        assertThat(stranger.get("/players").statusCode()).isEqualTo(200);
    }

    @Test
    void wrongTriesWaitLongerAndLonger() throws Exception {
        stranger.get("/sign-in");
        for (int k = 0; k < TryLimit.FREE; k++) {
            HttpResponse<String> wrong = stranger.post("/sign-in", Map.of("passphrase", "wrong words " + k));
            assertThat(wrong.statusCode()).isEqualTo(403);
            assertThat(wrong.body()).contains("That is not the passphrase");
        }
        HttpResponse<String> tooOften = stranger.post("/sign-in", Map.of("passphrase", WORDS));
        assertThat(tooOften.statusCode()).as("even the right one waits").isEqualTo(429);
        assertThat(tooOften.headers().firstValue("Retry-After")).hasValue("2");
        assertThat(tooOften.body()).contains("Wait 2 s, then try again.");
        CLOCK.on(TryLimit.FIRST_WAIT);
        assertThat(stranger.post("/sign-in", Map.of("passphrase", WORDS)).statusCode()).isEqualTo(303);
    }

    @Test
    void whoSitsAtThisMachineIsNeverLockedOut() throws Exception {
        stranger.get("/sign-in");
        for (int k = 0; k < TryLimit.FREE + 1; k++) {
            stranger.post("/sign-in", Map.of("passphrase", "wrong"));
        }
        Caller here = Caller.here(PAGES);
        assertThat(here.get("/players").body()).contains("N. Oakes").doesNotContain("Sign out");
    }

    @ParameterizedTest
    @ValueSource(strings = {"Forwarded", "X-Forwarded-For", "X-Real-IP", "Via"})
    void whatIsPassedOnIsNotThisMachine(String header) {
        assertThat(Wire.send(PAGES.port(), "GET /players HTTP/1.1", "Host: localhost", header + ": 127.0.0.1")).startsWith("HTTP/1.1 303");
    }

    @Test
    void aGivenNameIsOursAndNoOther() {
        assertThat(Wire.send(PAGES.port(), "GET /players HTTP/1.1", "Host: bench.local:" + PAGES.port())).startsWith("HTTP/1.1 200");
        assertThat(Wire.send(PAGES.port(), "GET /players HTTP/1.1", "Host: elsewhere.example")).startsWith("HTTP/1.1 421");
    }

    @Test
    void anIdentityOfOnesOwnMakingLetsNobodyIn() {
        assertThat(Wire.send(PAGES.port(), "GET /players HTTP/1.1", "Host: localhost", "Via: x",
            "Cookie: benchtwin-%d=%s".formatted(PAGES.port(), "A".repeat(43)))).startsWith("HTTP/1.1 303");
    }

    private void signedIn() throws Exception {
        stranger.get("/sign-in");
        assertThat(stranger.post("/sign-in", Map.of("passphrase", WORDS)).statusCode()).isEqualTo(303);
        CLOCK.on(Duration.ofSeconds(1));
    }
}
