package benchtwin.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Names of files for players of any name. */
class SetFilesTest {

    @Test
    void anyNameBecomesOneThatEveryFileSystemTakes() {
        Set<String> taken = new HashSet<>();
        List<String> names = List.of("J. Quillby", "j quillby", "../../etc", "Zoë Ångwick", "李", "\u0000", "con", "a".repeat(300),
            "A/B\\C:D*E?", "-");
        assertThat(names.stream().map(name -> SetFiles.fileName(name, taken)).toList()).containsExactly("j-quillby",
            "j-quillby-2", "etc", "zoe-angwick", "player", "player-2", "player-con", "a".repeat(60), "a-b-c-d-e", "player-3");
    }
}
