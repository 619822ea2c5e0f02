package benchtwin.stock;

import static org.assertj.core.api.Assertions.assertThat;

import benchtwin.club.Inventory;
import benchtwin.club.SetTargets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** How a spreadsheet lays a file out does not change what is read. */
class LayoutPropertyTest {

    @TempDir
    Path folder;

    static IntStream seeds() {
        return IntStream.rangeClosed(1, 40);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void columnOrderSeparatorAndDecimalMarkDoNotMatter(int seed) {
        Inventory plain = Workshop.in(folder).read().inventory().orElseThrow();
        Optional<SetTargets> plainSets = Workshop.in(folder).readSets(false).targets();
        Random random = new Random(seed);
        Workshop workshop = Workshop.in(folder);
        for (StockKind kind : StockKind.values()) {
            List<String> columns = new ArrayList<>(workshop.columns(kind));
            Collections.shuffle(columns, random);
            char separator = List.of(',', ';', '\t').get(random.nextInt(3));
            String lineEnd = List.of("\n", "\r\n", "\r").get(random.nextInt(3));
            String mark = random.nextBoolean() ? "\uFEFF" : "";
            workshop.write(kind, mark + workshop.text(kind, columns, separator, lineEnd,
                separator != ',' && random.nextBoolean()));
        }
        InventoryRead read = InventoryReader.readFolder(folder, false);
        assertThat(read.faults()).extracting(Fault::text).isEmpty();
        assertThat(read.inventory()).contains(plain);
        SetTargetRead sets = SetTargetReader.read(folder.resolve("set-targets.csv"),
            Optional.of(folder.resolve("lines.csv")), false);
        assertThat(sets.faults()).extracting(Fault::text).isEmpty();
        assertThat(sets.targets()).isPresent().isEqualTo(plainSets);
    }
}
