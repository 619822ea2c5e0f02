package benchtwin.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import org.junit.jupiter.api.Test;

class PageTest {

    private final StringWriter text = new StringWriter();

    private Page page(boolean plain) {
        return new Page(new PrintWriter(text), plain);
    }

    private String written() {
        return text.toString().replace(System.lineSeparator(), "\n");
    }

    @Test
    void whatWasTypedNeitherBreaksALineNorSteersTheTerminal() {
        page(false).line("%-4s|%s", "a\nb", "red \u001B[31m, bell \u0007, \u009B2J");
        page(false).wrapped("Note: ", "two\r\nlines\tand a \u001B[2J");
        assertThat(written()).isEqualTo("a b |red \uFFFD[31m, bell \uFFFD, \uFFFD2J\nNote: two lines and a \uFFFD[2J\n");
    }

    @Test
    void plainIsAsciiWhateverWasTyped() {
        page(true).line("%-12s|%s", "Ærø Größe", "ξ 🏌 −0.5° ±2 é\u0000");
        page(true).wrapped("", "Zoë’s club, 7½");
        assertThat(written()).isEqualTo("?r? Gro?e   |? ? -0.5d +/-2 e?\nZoe's club, 71/2\n");
    }

    @Test
    void aWordLongerThanTheLineIsCutAndStaysWhole() {
        String longWord = "🏌".repeat(30) + "x".repeat(150);
        page(false).wrapped("Lead: ", "short " + longWord + " end");
        assertThat(written().lines()).allMatch(line -> line.length() <= Page.WIDTH);
        assertThat(written().replace("\n", "").replace(" ", "")).isEqualTo("Lead:short" + longWord + "end");
        assertThat(written().lines().skip(1)).allMatch(line -> line.startsWith("      "));
    }

    @Test
    void noLineEndsInSpaces() {
        page(false).line("%-10s%-10s", "a", "");
        assertThat(written()).isEqualTo("a\n");
    }
}
