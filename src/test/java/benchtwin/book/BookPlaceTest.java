package benchtwin.book;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/**
 * Places by the platforms' own conventions. Published: XDG Base Directory Specification 0.8, "XDG_DATA_HOME" (its default, and
 * that a relative path in it counts for nothing); Apple, File System Programming Guide, "Application Support"; Microsoft, Known
 * Folders, FOLDERID_LocalAppData.
 */
class BookPlaceTest {

    private static final Path HOME = Path.of("/home/jo").toAbsolutePath();

    private static Path place(String system, String... environment) {
        return BookPlace.of(Optional.empty(), environment.length == 0 ? Map.of() : Map.of(environment[0], environment[1]), system,
            HOME);
    }

    @Test
    void onLinuxItLiesInTheUsersDataFolder() {
        assertThat(place("Linux")).isEqualTo(HOME.resolve(".local/share/benchtwin/workshop.book"));
    }

    @Test
    void onLinuxTheDataFolderMayBeSetToAnother() {
        Path data = Path.of("/data").toAbsolutePath();
        assertThat(place("Linux", "XDG_DATA_HOME", data.toString())).isEqualTo(data.resolve("benchtwin/workshop.book"));
    }

    @Test
    void aRelativeOrBlankDataFolderCountsForNothing() {
        assertThat(place("Linux", "XDG_DATA_HOME", "data")).isEqualTo(place("Linux"));
        assertThat(place("Linux", "XDG_DATA_HOME", " ")).isEqualTo(place("Linux"));
        assertThat(place("Linux", "XDG_DATA_HOME", "")).isEqualTo(place("Linux"));
    }

    @Test
    void onAMacItLiesInApplicationSupport() {
        assertThat(place("Mac OS X")).isEqualTo(HOME.resolve("Library/Application Support/benchtwin/workshop.book"));
        assertThat(place("Mac OS X", "XDG_DATA_HOME", "/data")).isEqualTo(place("Mac OS X"));
    }

    @Test
    void onWindowsItLiesInTheLocalApplicationData() {
        Path local = Path.of("/users/jo/local").toAbsolutePath();
        assertThat(place("Windows 11", "LOCALAPPDATA", local.toString())).isEqualTo(local.resolve("benchtwin/workshop.book"));
        assertThat(place("Windows 11")).isEqualTo(HOME.resolve("AppData/Local/benchtwin/workshop.book"));
    }

    @Test
    void theVariableNamesAnotherFileAndTheCommandLineGoesBeforeIt() {
        assertThat(place("Linux", "BENCHTWIN_BOOK", "/van/van.book")).isEqualTo(Path.of("/van/van.book"));
        assertThat(place("Linux", "BENCHTWIN_BOOK", "van.book")).isEqualTo(Path.of("van.book"));
        assertThat(place("Linux", "BENCHTWIN_BOOK", "")).isEqualTo(place("Linux"));
        assertThat(BookPlace.of(Optional.of(Path.of("named.book")), Map.of("BENCHTWIN_BOOK", "/van/van.book"), "Linux", HOME))
            .isEqualTo(Path.of("named.book"));
    }
}
