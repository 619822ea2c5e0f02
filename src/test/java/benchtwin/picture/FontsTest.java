package benchtwin.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A machine without fonts: a second Java is started with an empty fontconfig, which only Linux reads. */
class FontsTest {

    /** Draws the smallest ladder and prints what comes of it. */
    public static final class Draw {
        private Draw() {
        }

        public static void main(String[] args) {
            try {
                byte[] png = Ladders.high(1).png();
                System.out.println("drawn, " + (Ladders.high(1).svg().startsWith("<svg") && png.length > 0));
            } catch (IllegalStateException noFont) {
                System.out.println(noFont.getMessage());
            }
        }
    }

    @Test
    void aMachineWithoutFontsIsToldSoInPlainWords(@TempDir Path home) throws IOException, InterruptedException {
        assumeTrue(System.getProperty("os.name").equals("Linux"));
        Path none = Files.writeString(home.resolve("fonts.conf"), "<fontconfig></fontconfig>");
        assertThat(drawn(home, none.toString())).isEqualTo("pictures need a font, and Java finds none on this machine; install"
            + " one (on Debian: fontconfig and fonts-dejavu-core), or ask for the table without the picture");
        assertThat(drawn(home, null)).isEqualTo("drawn, true");
    }

    private static String drawn(Path home, String fontSetUp) throws IOException, InterruptedException {
        ProcessBuilder java = new ProcessBuilder(Path.of(System.getProperty("java.home"), "bin", "java").toString(),
            "-Djava.awt.headless=true", "-Duser.home=" + home, "-cp", System.getProperty("java.class.path"),
            Draw.class.getName());
        if (fontSetUp != null) {
            java.environment().put("FONTCONFIG_FILE", fontSetUp);
        }
        Process process = java.redirectError(home.resolve("err.txt").toFile()).start();
        String out = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8).strip();
        assertThat(process.waitFor()).as(Files.readString(home.resolve("err.txt"))).isZero();
        return out;
    }
}
