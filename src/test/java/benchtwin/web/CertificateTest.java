package benchtwin.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import benchtwin.bench.BadInput;
import benchtwin.bench.OpenBook;
import java.io.InputStream;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.KeyStore;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import javax.net.ssl.SSLContext;
import javax.net.ssl.TrustManagerFactory;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CertificateTest {

    private static final String PASSWORD = "opensesame";
    @TempDir
    static Path folder;
    private static Path file;

    @BeforeAll
    static void aCertificateOfItsOwn() throws Exception {
        file = folder.resolve("bench.p12");
        Process made = new ProcessBuilder(Path.of(System.getProperty("java.home"), "bin", "keytool").toString(), "-genkeypair", "-keyalg", "EC",
            "-alias", "bench", "-dname", "CN=bench", "-ext", "san=dns:localhost", "-validity", "2", "-storetype", "PKCS12", "-keystore",
            file.toString(), "-storepass", PASSWORD).redirectErrorStream(true).start();
        assertThat(made.waitFor()).as(new String(made.getInputStream().readAllBytes())).isZero();
    }

    @Test
    void thePagesAreEncryptedAndSoIsTheCookie() throws Exception {
        OpenBook book = OpenBook.open(Optional.of(folder.resolve("empty.book")), Optional.of("Jo"));
        Access access = Access.here().encrypted(Certificate.read(file, PASSWORD, Instant.now()));
        try (BenchServer server = BenchServer.start(book, 0, access)) {
            HttpClient client = HttpClient.newBuilder().sslContext(trusting()).build();
            HttpResponse<String> page = client.send(HttpRequest.newBuilder(URI.create("https://localhost:%d/".formatted(server.port()))).build(),
                BodyHandlers.ofString());
            assertThat(page.statusCode()).isEqualTo(200);
            assertThat(page.headers().firstValue("Set-Cookie").orElseThrow()).contains("; Secure", "; HttpOnly", "; SameSite=Lax");
            assertThat(Wire.send(server.port(), "GET / HTTP/1.1", "Host: localhost")).as("in the clear").doesNotContain("benchtwin");
        }
    }

    @Test
    void whatIsNoCertificateIsRefused() throws Exception {
        assertThatThrownBy(() -> Certificate.read(folder.resolve("nosuch.p12"), PASSWORD, Instant.now())).isInstanceOf(BadInput.class)
            .hasMessageEndingWith("nosuch.p12 is not there");
        assertThatThrownBy(() -> Certificate.read(file, "wrong", Instant.now())).isInstanceOf(BadInput.class)
            .hasMessageEndingWith("bench.p12 cannot be opened: it is no PKCS #12 file, or its password is another one");
        Path text = Files.writeString(folder.resolve("text.p12"), "certificate");
        assertThatThrownBy(() -> Certificate.read(text, PASSWORD, Instant.now())).isInstanceOf(BadInput.class)
            .hasMessageContaining("text.p12 cannot be opened");
        assertThatThrownBy(() -> Certificate.read(file, PASSWORD, Instant.now().plus(Duration.ofDays(3)))).isInstanceOf(BadInput.class)
            .hasMessageContaining("bench.p12 ran out on ");
    }

    private static SSLContext trusting() throws Exception {
        KeyStore own = KeyStore.getInstance("PKCS12");
        try (InputStream in = Files.newInputStream(file)) {
            own.load(in, PASSWORD.toCharArray());
        }
        KeyStore trusted = KeyStore.getInstance("PKCS12");
        trusted.load(null, null);
        trusted.setCertificateEntry("bench", own.getCertificate("bench"));
        TrustManagerFactory trust = TrustManagerFactory.getInstance(TrustManagerFactory.getDefaultAlgorithm());
        trust.init(trusted);
        SSLContext context = SSLContext.getInstance("TLS");
        context.init(null, trust.getTrustManagers(), null);
        return context;
    }
}
