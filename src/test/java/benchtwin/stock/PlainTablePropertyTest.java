package benchtwin.stock;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** A table of hostile texts comes back as it was, and a spreadsheet runs none of them. */
class PlainTablePropertyTest {

    private static final List<String> PIECES = List.of("=1+1", "+", "-", "@SUM", "\t", "\n", "\r\n", "\"", "'", "''", ",", ";", " ",
        "é", "🏌️", "\u202e", "0", "-0.5", "null", "{\"a\":\"b\"}", "\\");

    static Stream<Long> seeds() {
        return IntStream.range(0, 200).mapToObj(k -> 31_000L + k);
    }

    private static Optional<String> text(Random random) {
        StringBuilder text = new StringBuilder();
        int pieces = random.nextInt(5);
        for (int k = 0; k < pieces; k++) {
            text.append(PIECES.get(random.nextInt(PIECES.size())));
        }
        return text.isEmpty() ? Optional.empty() : Optional.of(text.toString());
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void whatIsWrittenIsReadBack(long seed) throws IOException, PlainTable.NoTable {
        Random random = new Random(seed);
        List<List<Optional<String>>> rows = new ArrayList<>();
        int count = random.nextInt(6);
        for (int k = 0; k < count; k++) {
            rows.add(List.of(Optional.of("row " + k), text(random), text(random)));
        }
        PlainTable table = new PlainTable(List.of("id", "one", "other"), rows);
        assertThat(PlainTable.read("t.csv", new StringReader(table.text()))).isEqualTo(table);
    }

    @Test
    void aRowOfAnotherWidthAndAnOpenQuoteAreToldWithTheirPlace() {
        assertThatThrownBy(() -> PlainTable.read("t.csv", new StringReader("a,b\n1,2\n3\n")))
            .isInstanceOf(PlainTable.NoTable.class).hasMessage("t.csv line 3: has 1 cells; expected 2, one for each column");
        assertThatThrownBy(() -> PlainTable.read("t.csv", new StringReader("a,b\n\"1,2\n"))).isInstanceOf(PlainTable.NoTable.class);
        assertThatThrownBy(() -> PlainTable.read("t.csv", new StringReader(""))).hasMessageContaining("is empty");
    }
}
