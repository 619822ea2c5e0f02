package benchtwin.sets;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** In a process of its own: what a library prints, it prints once, when it is first used. */
class SolverSilenceTest {

    @Test
    void neitherLogsNorWarningsReachTheTerminal() throws IOException, InterruptedException {
        Process process = new ProcessBuilder(Path.of(System.getProperty("java.home"), "bin", "java").toString(),
            "-cp", System.getProperty("java.class.path"), SolverStart.class.getName()).redirectErrorStream(true).start();
        String printed = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(printed).isEmpty();
        assertThat(process.waitFor()).isZero();
    }
}
