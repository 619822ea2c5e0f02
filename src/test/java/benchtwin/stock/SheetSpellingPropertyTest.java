package benchtwin.stock;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Files that say the same thing in other units, spellings and layouts give equal rows. */
class SheetSpellingPropertyTest {

    /** 1 in = 25.4 mm: NIST SP 811. */
    private static final BigDecimal MM_PER_INCH = new BigDecimal("25.4");
    private static final Set<String> WORDS = Set.of("category", "hand", "reading", "material", "adjust", "condition",
        "bore_kind", "tip_kind", "meant_for", "weighed_with", "length_method", "state", "turns_shaft", "over_grip", "rib");

    @TempDir
    Path folder;

    static IntStream seeds() {
        return IntStream.rangeClosed(1, 40);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void theSameSaidOtherwiseIsTheSameRow(int seed) {
        List<SheetRow> plain = Workshop.in(folder).readSheets().rows();
        assertThat(plain).hasSize(11);
        Random random = new Random(seed);
        Workshop workshop = Workshop.in(folder);
        for (StockKind kind : StockKind.values()) {
            for (Column column : kind.columns()) {
                if (workshop.columns(kind).contains(column.name()) && column.isLength() && random.nextBoolean()) {
                    workshop.rename(kind, column.name(), column.otherName().orElseThrow(), inTheOtherUnit(column.name()));
                } else if (WORDS.contains(column.name()) && random.nextBoolean()) {
                    workshop.rename(kind, column.name(), column.name(), otherwise(random));
                }
            }
            workshop.rename(kind, "swing_weight", "swing_weight_points", cell -> cell.equals("D2.4") ? "32.40" : cell);
            List<String> columns = new ArrayList<>(workshop.columns(kind));
            Collections.shuffle(columns, random);
            char separator = List.of(',', ';', '\t').get(random.nextInt(3));
            workshop.write(kind, workshop.text(kind, columns, separator, "\r\n", separator != ',' && random.nextBoolean()));
        }
        SheetRead read = InventoryReader.readSheets(StockFiles.inFolder(folder), false);
        assertThat(read.read().faults()).extracting(Fault::text).isEmpty();
        assertThat(read.rows()).isEqualTo(plain);
    }

    /** Written out by decimals, more than the millionth of a mm that counts. */
    private static UnaryOperator<String> inTheOtherUnit(String name) {
        return cell -> {
            if (cell.isEmpty()) {
                return cell;
            }
            return name.endsWith("_in") ? inches(cell).multiply(MM_PER_INCH).toPlainString()
                : new BigDecimal(cell).divide(MM_PER_INCH, 9, RoundingMode.HALF_UP).toPlainString();
        };
    }

    private static BigDecimal inches(String cell) {
        String[] parts = cell.split(" ");
        String last = parts[parts.length - 1];
        BigDecimal sum = parts.length == 2 ? new BigDecimal(parts[0]) : BigDecimal.ZERO;
        String[] fraction = last.split("/");
        return sum.add(fraction.length == 2 ? new BigDecimal(fraction[0]).divide(new BigDecimal(fraction[1])) : new BigDecimal(last));
    }

    private static UnaryOperator<String> otherwise(Random random) {
        return cell -> {
            String said = Optional.of(cell).filter("yes"::equals).map(yes -> "1").orElse(cell.equals("no") ? "FALSE" : cell);
            String spaced = random.nextBoolean() ? said.replace(' ', '_').replace('-', ' ') : said.replace("+", " | ");
            return random.nextBoolean() ? spaced.toUpperCase(Locale.ROOT) : spaced;
        };
    }
}
