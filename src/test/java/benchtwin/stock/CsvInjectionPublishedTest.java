package benchtwin.stock;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** OWASP, CSV Injection: its two examples of an input and what to write for it, quotes included. */
class CsvInjectionPublishedTest {

    @Test
    void theTwoExamples() {
        assertThat(written("=1+2\";=1+2")).isEqualTo("\"'=1+2\"\";=1+2\"");
        assertThat(written("=1+2'\" ;,=1+2")).isEqualTo("\"'=1+2'\"\" ;,=1+2\"");
    }

    private static String written(String text) {
        String[] lines = CsvText.table(List.of("note"), List.of(Map.of("note", text))).split("\n");
        assertThat(lines).hasSize(2);
        return lines[1];
    }
}
