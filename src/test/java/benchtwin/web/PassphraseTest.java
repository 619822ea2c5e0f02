package benchtwin.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import benchtwin.bench.BadInput;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.security.SecureRandom;
import java.util.HexFormat;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javax.crypto.SecretKeyFactory;
import javax.crypto.spec.PBEKeySpec;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PassphraseTest {

    private static final PassphraseHash HASH = PassphraseHash.of("Zwölf Wörter  und mehr");

    /** RFC 7914, section 11: PBKDF2-HMAC-SHA-256 of "passwd" and "salt" with one round, the first 32 bytes; memory. */
    @Test
    void javasSlowFunctionIsThePublishedOne() throws Exception {
        byte[] made = SecretKeyFactory.getInstance("PBKDF2WithHmacSHA256").generateSecret(new PBEKeySpec("passwd".toCharArray(),
            "salt".getBytes(), 1, 256)).getEncoded();
        assertThat(HexFormat.of().formatHex(made)).isEqualTo("55ac046e56e3089fec1691c22544b605f94185216dde0465e68b9d57c20dacbc");
    }

    @Test
    void onlyTheSameWordsMatch() {
        assertThat(HASH.matches("Zwölf Wörter  und mehr")).isTrue();
        assertThat(HASH.matches(" Zwo\u0308lf Wo\u0308rter und mehr\n")).as("typed on another keyboard").isTrue();
        assertThat(HASH.matches("zwölf wörter und mehr")).isFalse();
        assertThat(HASH.matches("")).isFalse();
        assertThat(HASH.matches("x".repeat(1_000_000))).isFalse();
    }

    @Test
    void whatIsKeptIsSlowAndSaltedAndNotTheWords() {
        String kept = HASH.text();
        assertThat(kept).doesNotContain("Zw").matches("pbkdf2-sha256 \\d+ \\S+ \\S+");
        assertThat(Integer.parseInt(kept.split(" ")[1])).isGreaterThanOrEqualTo(600_000);
        assertThat(PassphraseHash.of("Zwölf Wörter und mehr").text()).as("the same words, another salt").isNotEqualTo(kept);
        assertThat(PassphraseHash.parse(kept).matches("Zwölf Wörter und mehr")).isTrue();
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "pbkdf2-sha256", "md5 600000 AAAAAAAAAAAAAAAAAAAAAA== AAAA", "pbkdf2-sha256 1000 AAAAAAAAAAAAAAAAAAAAAA== "
        + "AAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAA=", "pbkdf2-sha256 600000 AAAA AAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAA=",
        "pbkdf2-sha256 600000 AAAAAAAAAAAAAAAAAAAAAA== AAAA", "pbkdf2-sha256 many ! !"})
    void nothingWeakerIsTaken(String text) {
        assertThatThrownBy(() -> PassphraseHash.parse(text)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void aMadeUpOneIsHardToGuessAndEasyToType() {
        assertThat(MadeUpPassphrase.bits()).isGreaterThanOrEqualTo(60);
        List<String> many = IntStream.range(0, 500).mapToObj(k -> MadeUpPassphrase.of(new SecureRandom())).toList();
        assertThat(many).doesNotHaveDuplicates().allMatch(one -> one.matches("([bdghlmnprstvwz][aeiou]){2}( ([bdghlmnprstvwz][aeiou]){2}){4}"))
            .allMatch(one -> one.length() >= PassphraseHash.LEAST_SIGNS);
        assertThat(String.join("", many).chars().distinct().count()).as("every letter turns up").isEqualTo(14 + 5 + 1);
    }

    @Test
    void itLiesBesideTheBookForItsOwnerAlone(@TempDir Path folder) throws Exception {
        PassphraseFile file = PassphraseFile.beside(folder.resolve("season.book"));
        assertThat(file.kept()).isEmpty();
        file.keep(HASH);
        assertThat(file.file()).isEqualTo(folder.resolve("season.book.passphrase"));
        if (Files.getFileStore(folder).supportsFileAttributeView("posix")) {
            assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(file.file()))).isEqualTo("rw-------");
        }
        file.keep(PassphraseHash.of("another of some words"));
        assertThat(file.kept().orElseThrow().matches("another of some words")).isTrue();
        try (Stream<Path> left = Files.list(folder)) {
            assertThat(left).containsExactly(file.file());
        }
    }

    @Test
    void aFileWithSomethingElseInItIsRefused(@TempDir Path folder) throws Exception {
        PassphraseFile file = PassphraseFile.beside(folder.resolve("season.book"));
        Files.writeString(file.file(), "letmein");
        assertThatThrownBy(file::kept).isInstanceOf(BadInput.class).hasMessage(
            "%s does not hold what is kept of a passphrase: delete it, or give --new-passphrase".formatted(file.file()));
    }
}
