package benchtwin.stock;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** A season's parts: the sample workshop's heads and shafts over and over, 10,000 of each, and 6,000 rows of its clubs. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 4, time = 2)
@Measurement(iterations = 5, time = 2)
public class StockBenchmark {

    private static final int PARTS = 10_000;
    private static final int CLUBS = 6_000;

    private final List<RecordedRow> parts = new ArrayList<>();
    private final List<RecordedRow> all = new ArrayList<>();
    private StockFiles files;

    /** Copies the rows under new tags, and writes the parts as files. */
    @Setup
    public void rows() throws IOException {
        List<SheetRow> sample =
            InventoryReader.readSheets(StockFiles.inFolder(Path.of("inventory-samples")), false).rows();
        Path folder = Files.createTempDirectory("stock");
        for (StockKind kind : List.of(StockKind.HEADS, StockKind.SHAFTS)) {
            List<SheetRow> copies = copies(sample, kind, PARTS);
            copies.forEach(row -> parts.add(RecordedRow.of(row)));
            Files.writeString(folder.resolve(kind.fileName()), SheetWriter.text(kind, copies));
        }
        files = StockFiles.inFolder(folder);
        all.addAll(parts);
        copies(sample, StockKind.CLUBS, CLUBS).forEach(row -> all.add(RecordedRow.of(row)));
    }

    private static List<SheetRow> copies(List<SheetRow> sample, StockKind kind, int count) {
        List<SheetRow> rows = sample.stream().filter(row -> row.kind() == kind).toList();
        List<SheetRow> copies = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            SheetRow row = rows.get(i % rows.size());
            Map<String, String> cells = new LinkedHashMap<>(row.cells());
            cells.put("tag", row.tag() + "/" + i / rows.size());
            copies.add(new SheetRow(kind, cells, row.extra()));
        }
        return copies;
    }

    /** Parts alone. */
    @Benchmark
    public InventoryRead recordedParts() {
        return InventoryOfRows.read(parts, false);
    }

    /** Parts and clubs. */
    @Benchmark
    public InventoryRead recordedPartsAndClubs() {
        return InventoryOfRows.read(all, false);
    }

    /** The parts out of their files. */
    @Benchmark
    public InventoryRead filesOfParts() {
        return InventoryReader.read(files, false);
    }

    /** The same with their rows. */
    @Benchmark
    public SheetRead filesOfPartsWithRows() {
        return InventoryReader.readSheets(files, false);
    }
}
