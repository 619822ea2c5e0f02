package benchtwin.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.NetworkInterface;
import java.net.Socket;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What the pages answer to who means no good, on this machine alone. */
class SafetyTest {

    private static final String FORM = "application/x-www-form-urlencoded";

    /** A page with a fault beside those there are. */
    @RegisterExtension
    static final WebBook PAGES = new WebBook(Access.here(), Clock.systemUTC(), List.of(routes -> {
        routes.get("/faulty", ctx -> {
            throw new IllegalStateException("secret of the inside");
        });
    }));

    private final Caller caller = Caller.here(PAGES);

    @Test
    void onlyThisMachineCanConnect() throws Exception {
        List<InetAddress> others = new ArrayList<>(NetworkInterface.networkInterfaces().flatMap(NetworkInterface::inetAddresses)
            .filter(address -> !address.isLoopbackAddress()).toList());
        others.add(InetAddress.getByName("127.0.0.2"));   // every system has this one, and a server on all addresses would answer there
        for (InetAddress address : others) {
            assertThat(connects(address)).as(address.toString()).isFalse();
        }
        assertThat(connects(InetAddress.getByName("127.0.0.1"))).isTrue();
    }

    private static boolean connects(InetAddress address) {
        try (Socket socket = new Socket()) {
            socket.connect(new InetSocketAddress(address, PAGES.port()), 2_000);
            return true;
        } catch (java.io.IOException refused) {
            return false;
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"elsewhere.example", "localhost.elsewhere.example:80", "192.0.2.5", "", "127.0.0.1.elsewhere.example"})
    void aNameThatIsNotOursIsNotAnswered(String host) {
        String answer = Wire.send(PAGES.port(), "GET /players HTTP/1.1", "Host: " + host);
        assertThat(answer).doesNotContain("Oakes").containsPattern("^HTTP/1.1 (421|400)");
    }

    @ParameterizedTest
    @CsvSource({"/, 200", "/players, 200", "/assets/bench.css, 404", "/assets/nothing.css, 404", "/nothing, 404", "/favicon.ico, 204",
        "/clubs/NOSUCH, 400", "/clubs/OAKES-DR/twin?tol-loft=abc, 400", "/faulty, 500", "/find?q=OAKES-DR, 302"})
    void everyAnswerIsLabelled(String path, int status) throws Exception {
        HttpResponse<String> answer = caller.get(path);
        assertThat(answer.statusCode()).isEqualTo(status);
        isLabelled(answer);
        assertThat(answer.headers().firstValue("Cache-Control")).hasValue("no-store");
        assertThat(answer.headers().map()).doesNotContainKeys("server", "x-powered-by", "access-control-allow-origin");
        assertThat(answer.body()).doesNotContain("secret of the inside");
    }

    private static void isLabelled(HttpResponse<String> answer) {
        assertThat(answer.headers().firstValue("Content-Security-Policy").orElseThrow()).contains("default-src 'none'", "script-src 'self'",
            "frame-ancestors 'none'").doesNotContain("unsafe", "*", "data:", "http");
        assertThat(answer.headers().firstValue("X-Content-Type-Options")).hasValue("nosniff");
        assertThat(answer.headers().firstValue("Referrer-Policy")).hasValue("same-origin");
        assertThat(answer.headers().firstValue("Cross-Origin-Resource-Policy")).hasValue("same-origin");
        assertThat(answer.headers().firstValue("Cross-Origin-Opener-Policy")).hasValue("same-origin");
    }

    @ParameterizedTest
    @ValueSource(strings = {"GET / HTTP/1.1", "NOTHING", "GET /%2e%2e/%2e%2e/etc/passwd HTTP/1.1\r\nHost: localhost", "GET /stock/%00 HTTP/1.1\r\nHost: localhost",
        "GET / HTTP/1.1\r\nHost: localhost\r\nContent-Length: many", "OPTIONS * HTTP/1.1\r\nHost: localhost", "GET / HTTP/1.1\r\nHost: a\r\nHost: localhost"})
    void whatIsNoRequestGetsPlainWords(String request) {
        assertThat(Wire.send(PAGES.port(), request)).containsPattern("^HTTP/1.1 4\\d\\d").contains("Content-Security-Policy: default-src 'none'",
            "X-Content-Type-Options: nosniff", "This request cannot be answered.").doesNotContainIgnoringCase("jetty", "java", "exception");
    }

    @ParameterizedTest
    @ValueSource(strings = {"/assets/", "/assets", "/assets/../bench.css", "/assets/..%2fbench.css", "/assets/%2e%2e/book/V1__the_book.sql",
        "/assets/..;/book/V1__the_book.sql", "/assets//bench.css", "/assets/bench.css%00", "/assets/bench-0000000000000000.css", "/assets/..\\..\\pom.xml", "/benchtwin/web/bench.css",
        "/META-INF/MANIFEST.MF", "/WEB-INF/web.xml", "/..%5c..%5cpom.xml", "/assets/%252e%252e/pom.xml"})
    void onlyListedFilesAreServed(String path) {
        String answer = Wire.send(PAGES.port(), "GET " + path + " HTTP/1.1", "Host: localhost");
        assertThat(answer).as(path).containsPattern("^HTTP/1.1 4\\d\\d").doesNotContain("--paper", "CREATE TABLE", "Manifest", "<project",
            "Directory");
    }

    @ParameterizedTest
    @ValueSource(strings = {"PUT", "DELETE", "PATCH", "OPTIONS", "PROPFIND"})
    void nothingAnswersToOtherMethods(String method) throws Exception {
        HttpResponse<String> answer = caller.send(method, "/", BodyPublishers.noBody());
        assertThat(answer.statusCode()).isEqualTo(405);
        assertThat(answer.headers().firstValue("Allow")).hasValue("GET, HEAD, POST");
        isLabelled(answer);
    }

    @Test
    void aMethodAPageDoesNotHaveIsSaidToBeSo() throws Exception {
        caller.get("/");
        assertThat(caller.post("/find", Map.of()).statusCode()).isEqualTo(405);
        assertThat(caller.get("/theme").statusCode()).isEqualTo(405);
        assertThat(Wire.send(PAGES.port(), "TRACE / HTTP/1.1", "Host: localhost", "X-Secret: told")).startsWith("HTTP/1.1 405").doesNotContain("told");
    }

    @Test
    void theCookieIsForThesePagesAlone() throws Exception {
        HttpResponse<String> first = caller.get("/");
        assertThat(first.headers().allValues("Set-Cookie")).singleElement().asString()
            .matches("benchtwin-%d=[A-Za-z0-9_-]{43}; Path=/; HttpOnly; SameSite=Lax".formatted(PAGES.port()));
        assertThat(caller.get("/").headers().allValues("Set-Cookie")).as("a known browser keeps it").isEmpty();
        assertThat(first.body()).doesNotContain(caller.identity());
    }

    @Test
    void onlyAFormOfOurOwnIsTaken() throws Exception {
        assertThat(caller.post("/theme", Map.of("theme", "dark")).statusCode()).as("no cookie yet").isEqualTo(403);
        caller.get("/");
        assertThat(caller.post("/theme", Map.of("theme", "dark")).statusCode()).isEqualTo(302);
        Caller other = Caller.here(PAGES);
        other.get("/");
        for (String body : List.of("theme=dark", "token=&theme=dark", "token=" + other.token() + "&theme=dark",
            "token=" + caller.identity() + "&theme=dark")) {
            HttpResponse<String> answer = caller.send("POST", "/theme", BodyPublishers.ofString(body), "Content-Type", FORM);
            assertThat(answer.statusCode()).as(body).isEqualTo(403);
            assertThat(answer.headers().allValues("Set-Cookie")).as(body).isEmpty();
            isLabelled(answer);
        }
        assertThat(caller.send("POST", "/theme", BodyPublishers.ofString("theme=dark"), "Content-Type", FORM, "X-Token", caller.token()).statusCode())
            .as("as a script of ours sends it").isEqualTo(302);
    }

    @ParameterizedTest
    @ValueSource(strings = {"application/json", "text/plain", "application/xml", "application/octet-stream", "text/html; charset=utf-8"})
    void onlyFormsAreTaken(String type) throws Exception {
        caller.get("/");
        assertThat(caller.send("POST", "/theme", BodyPublishers.ofString("{}"), "Content-Type", type, "X-Token", caller.token()).statusCode())
            .isEqualTo(415);
    }

    @Test
    void aFormIsNoLongerThanFormsAre() throws Exception {
        caller.get("/");
        String most = "theme=dark&more=" + "x".repeat(BodyLimit.FORM - 200);
        assertThat(caller.send("POST", "/theme", BodyPublishers.ofString(most), "Content-Type", FORM, "X-Token", caller.token()).statusCode()).isEqualTo(302);
        HttpResponse<String> longer = caller.send("POST", "/theme", BodyPublishers.ofString(most + "x".repeat(400)), "Content-Type", FORM, "X-Token",
            caller.token());
        assertThat(longer.statusCode()).isEqualTo(413);
        assertThat(longer.body()).contains("larger than 256 kB");
    }

    @Test
    void whatDoesNotSayHowLongItIsIsNotRead() throws Exception {
        caller.get("/");
        assertThat(caller.send("POST", "/theme", BodyPublishers.fromPublisher(BodyPublishers.ofString("theme=dark")), "Content-Type", FORM, "X-Token",
            caller.token()).statusCode()).isEqualTo(411);
    }

    @Test
    void aFileIsTakenByItsEndingAndSize() throws Exception {
        caller.get("/");
        HttpResponse<String> taken = upload("../../etc/heads.csv", "tag\n");
        assertThat(taken.statusCode()).isEqualTo(302);
        assertThat(caller.get(taken.headers().firstValue("Location").orElseThrow()).body()).contains("heads.csv").doesNotContain("/etc", "/tmp");
        assertThat(upload("heads.exe", "tag\n").body()).contains("heads.exe is no CSV file; expected a name ending in .csv or .txt");
        assertThat(upload("", "").body()).contains("no file was chosen");
        HttpResponse<String> large = upload("heads.csv", "x".repeat((BodyLimit.FILE_MB << 20) + BodyLimit.FORM));
        assertThat(large.statusCode()).isEqualTo(413);
        assertThat(large.body()).contains("larger than 16 MB. Nothing of it was taken.");
    }

    @Test
    void aBrokenUploadIsRefused() throws Exception {
        for (String type : List.of("multipart/form-data", "multipart/form-data; boundary=other", "multipart/form-data; boundary=")) {
            caller.get("/");   // on a fresh connection: what cannot be read to its end ends the one it came on
            int status = caller.send("POST", "/stock/import", BodyPublishers.ofString("--b\r\nrubbish"), "Content-Type", type, "X-Token", caller.token()).statusCode();
            assertThat(status).as(type).isBetween(400, 499);
        }
    }

    private HttpResponse<String> upload(String name, String content) throws Exception {
        String body = "--b\r\nContent-Disposition: form-data; name=\"token\"\r\n\r\n%s\r\n--b\r\nContent-Disposition: form-data; name=\"files\"; filename=\"%s\"\r\nContent-Type: text/csv\r\n\r\n%s\r\n--b--\r\n"
            .formatted(caller.token(), name, content);
        return caller.send("POST", "/stock/import", BodyPublishers.ofString(body), "Content-Type", "multipart/form-data; boundary=b");
    }

    @ParameterizedTest
    @ValueSource(strings = {"//elsewhere.example", "https://elsewhere.example/", "/\\elsewhere.example", "/\t/elsewhere.example",
        "/\r\nSet-Cookie: planted=1", "/\nLocation: https://elsewhere.example/"})
    void aRedirectStaysHere(String back) throws Exception {
        caller.get("/");
        HttpResponse<String> answer = caller.post("/theme", Map.of("theme", "dark", "back", back));
        assertThat(answer.headers().firstValue("Location")).hasValue("/");
        assertThat(answer.headers().allValues("Set-Cookie")).noneMatch(cookie -> cookie.contains("planted"));
    }

    @Test
    void whatIsLookedForNeverBecomesAHeader() throws Exception {
        for (String typed : List.of("OAKES-DR\r\nSet-Cookie: planted=1", "%0d%0aSet-Cookie:%20planted=1", "//elsewhere.example")) {
            HttpResponse<String> answer = caller.get("/find?q=" + Caller.encoded(typed));
            assertThat(answer.headers().allValues("Set-Cookie")).noneMatch(cookie -> cookie.contains("planted"));
            assertThat(answer.headers().firstValue("Location").orElse("/")).startsWith("/").doesNotStartWith("//");
        }
    }
}
