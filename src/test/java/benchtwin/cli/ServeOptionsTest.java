package benchtwin.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import benchtwin.bench.BadInput;
import benchtwin.web.Access;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

class ServeOptionsTest {

    private static final Secrets NOBODY = prompt -> Optional.empty();

    @Command
    private static final class Asked {
        @Mixin
        private LanOptions lan;
    }

    @TempDir
    private Path folder;
    private final StringWriter said = new StringWriter();

    @Test
    void withoutLanNothingIsAskedAndNothingKept() throws Exception {
        Access access = access(prompt -> {
            throw new AssertionError("asked: " + prompt);
        });
        assertThat(access.passphrase()).isEmpty();
        assertThat(folder).isEmptyDirectory();
    }

    @Test
    void whereNobodyCanBeAskedOneIsMadeUpAndShownOnce() throws Exception {
        access(NOBODY, "--lan");
        assertThat(said.toString()).containsPattern("The passphrase for other machines: [a-z]{4}( [a-z]{4}){4}\n").contains("is not shown again");
        String words = said.toString().replaceFirst("(?s).*machines: ([a-z ]+)\n.*", "$1");
        assertThat(Files.readString(kept())).doesNotContain(words);
        said.getBuffer().setLength(0);
        access(NOBODY, "--lan");
        assertThat(said.toString()).isEqualTo("The passphrase is the one of before; --new-passphrase makes another." + System.lineSeparator());
    }

    @Test
    void aChosenOneIsNeitherShownNorKept() throws Exception {
        Access access = access(prompt -> Optional.of("lantern gravel seven"), "--lan", "--host", "bench.local");
        assertThat(access.passphrase()).isPresent();
        assertThat(access.names()).contains("bench.local");
        assertThat(said.toString()).doesNotContain("lantern").contains("lies in " + kept());
        assertThat(Files.readString(kept())).doesNotContain("lantern");
    }

    @Test
    void anotherTakesThePlaceOfTheOneBefore() throws Exception {
        access(NOBODY, "--lan");
        String before = Files.readString(kept());
        access(NOBODY, "--lan", "--new-passphrase");
        assertThat(Files.readString(kept())).isNotEqualTo(before);
    }

    @Test
    void aShortOneIsRefused() {
        assertThatThrownBy(() -> access(prompt -> Optional.of("short"), "--lan")).isInstanceOf(BadInput.class).hasMessage(
            "the passphrase has 5 signs; expected at least 12: a few words that do not belong together are best");
        assertThat(kept()).doesNotExist();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "serve --host bench.local | --host is for other machines: give --lan too",
        "serve --new-passphrase | --new-passphrase is for other machines: give --lan too",
        "serve --lan --host http://bench/ | --host \"http://bench/\" is not a name; expected one such as bench.local, without http:// and port",
        "serve --certificate nosuch.p12 | the certificate's password is missing: put it into BENCHTWIN_CERTIFICATE_PASSWORD",
        "serve --port 70000 | --port 70000: expected 0 to 65535"})
    void whatCannotBeIsRefusedBeforeAnythingIsServed(String line, String message) {
        Typed typed = AtTheBook.none(folder).type(line);
        assertThat(typed.status()).isEqualTo(Main.BAD_INPUT);
        assertThat(typed.err().strip()).isEqualTo("benchtwin: " + message);
    }

    @Test
    void eachSystemHasItsOwnWayToOpenAPage() {
        String page = "http://localhost:8417/";
        assertThat(SystemBrowser.command("Linux", page)).isEqualTo(List.of("xdg-open", page));
        assertThat(SystemBrowser.command("Mac OS X", page)).isEqualTo(List.of("open", page));
        assertThat(SystemBrowser.command("Windows 11", page)).isEqualTo(List.of("rundll32", "url.dll,FileProtocolHandler", page));
        assertThat(SystemBrowser.open(List.of(folder.resolve("nosuch").toString(), page))).isFalse();
    }

    private Access access(Secrets secrets, String... words) throws BadInput {
        Asked asked = new Asked();
        new CommandLine(asked).parseArgs(words);
        asked.lan.check();
        return asked.lan.access(folder.resolve("season.book"), secrets, new PrintWriter(said, true));
    }

    private Path kept() {
        return folder.resolve("season.book.passphrase");
    }
}
