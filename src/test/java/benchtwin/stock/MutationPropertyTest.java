package benchtwin.stock;

import static org.assertj.core.api.Assertions.assertThat;

import benchtwin.club.SetTargets;
import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** A thousand damaged files: never an exception, never a part of a workshop taken for the whole. */
class MutationPropertyTest {

    private static final int FILES_PER_SEED = 50;
    private static final List<String> ODD_CELLS = List.of("1e400", "-1e400", "NaN", "9".repeat(400), "9".repeat(39), "-1",
        "1e-320", "0", "\"", "\"\"\"", "=1+1", "1/0", "0/0", "45 1/0", "\uFEFF", "\u2028", "+", "+++", "|", "2026-13-45",
        "D99", "\uD83D\uDE00", "in play", "sleeve", "\r", "\n", "''", "%s%n%d", "1,5", "1.5.5", "mm", "1e9 mm", "/");

    private static final List<StockKind> STOCK =
        Arrays.stream(StockKind.values()).filter(StockKind::isStock).toList();

    @TempDir
    Path folder;

    static IntStream seeds() {
        return IntStream.rangeClosed(1, 20);
    }

    @Test
    void undamagedItReadsClean() {
        InventoryRead read = Workshop.in(folder).read();
        assertThat(read.isClean()).isTrue();
        assertThat(read.warnings()).isEmpty();
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void damagedItIsRefusedOrWhole(int seed) {
        Random random = new Random(seed);
        Workshop workshop = Workshop.in(folder);
        workshop.write();
        int refused = 0;
        for (int i = 0; i < FILES_PER_SEED; i++) {
            StockKind kind = STOCK.get(random.nextInt(STOCK.size()));
            byte[] good = workshop.text(kind).getBytes(StandardCharsets.UTF_8);
            byte[] bad = good;
            for (int damage = 0; damage <= random.nextInt(3); damage++) {
                bad = damaged(bad, random);
            }
            workshop.write(kind, bad);
            String what = "seed %d, file %d, %s: %s".formatted(seed, i, kind, new String(bad, StandardCharsets.UTF_8));
            InventoryRead read = InventoryReader.readFolder(folder, false);
            assertThat(read.inventory().isEmpty()).as(what).isEqualTo(read.faultCount() > 0);
            read.faults().forEach(fault -> assertThat(fault.text()).as(what)
                .startsWith(kindOf(fault).fileName()).contains("; expected ").doesNotContain("\n").doesNotContain("Exception"));
            read.inventory().ifPresent(inventory -> assertThat(inventory.heads().size() + inventory.shafts().size()
                + inventory.grips().size() + inventory.sleeves().size() + inventory.weights().size()
                + inventory.clubs().stream().mapToInt(club -> club.rows().size()).sum()).as(what)
                .isEqualTo(read.rowsRead().entrySet().stream()
                    .filter(file -> !file.getKey().startsWith("sleeve-settings") && !file.getKey().startsWith("frequencies"))
                    .mapToInt(file -> file.getValue()).sum()));
            InventoryRead goodRows = InventoryReader.readFolder(folder, true);
            assertThat(goodRows.inventory()).as(what).isPresent();
            StockFiles files = StockFiles.inFolder(folder);
            assertThat(InventoryReader.readSheets(files, false).read()).as(what).isEqualTo(read);
            assertThat(InventoryReader.readSheets(files, true).read()).as(what).isEqualTo(goodRows);
            refused += read.inventory().isEmpty() ? 1 : 0;
            workshop.write(kind, good);
        }
        assertThat(refused).as("damage is mostly noticed").isGreaterThan(FILES_PER_SEED / 3);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void damagedWishesAreRefusedOrWhole(int seed) {
        Random random = new Random(seed);
        Workshop workshop = Workshop.in(folder);
        workshop.write();
        int refused = 0;
        for (int i = 0; i < FILES_PER_SEED; i++) {
            StockKind kind = random.nextInt(3) == 0 ? StockKind.LINES : StockKind.SET_TARGETS;
            byte[] good = workshop.text(kind).getBytes(StandardCharsets.UTF_8);
            byte[] bad = good;
            for (int damage = 0; damage <= random.nextInt(3); damage++) {
                bad = damaged(bad, random);
            }
            workshop.write(kind, bad);
            String what = "seed %d, file %d, %s: %s".formatted(seed, i, kind, new String(bad, StandardCharsets.UTF_8));
            SetTargetRead read = readWishes(false);
            assertThat(read.targets().isEmpty()).as(what).isEqualTo(read.faultCount() > 0);
            read.faults().forEach(fault -> assertThat(fault.text()).as(what)
                .startsWith(kindOf(fault).fileName()).contains("; expected ").doesNotContain("\n").doesNotContain("Exception"));
            read.targets().ifPresent(targets -> {
                assertThat(targets.clubs()).as(what).hasSize(read.rowsRead().get("set-targets.csv"));
                assertThat(targets.lines()).as(what).hasSize(read.rowsRead().get("lines.csv"));
            });
            SetTargets goodRows = readWishes(true).targets().orElseThrow();
            goodRows.clubs().forEach(club -> goodRows.linesOf(club).forEach(
                line -> assertThat(goodRows.valueAt(line, club)).as(what).isPresent()));
            refused += read.targets().isEmpty() ? 1 : 0;
            workshop.write(kind, good);
        }
        assertThat(refused).as("damage is mostly noticed").isGreaterThan(FILES_PER_SEED / 3);
    }

    private SetTargetRead readWishes(boolean goodRowsOnly) {
        return SetTargetReader.read(folder.resolve("set-targets.csv"), Optional.of(folder.resolve("lines.csv")), goodRowsOnly);
    }

    private static StockKind kindOf(Fault fault) {
        return StockCheck.kindOfName(fault.file()).orElseThrow();
    }

    private static byte[] damaged(byte[] bytes, Random random) {
        if (bytes.length == 0) {
            return bytes;
        }
        int at = random.nextInt(bytes.length);
        return switch (random.nextInt(9)) {
            case 0 -> flipped(bytes, at, random);
            case 1 -> Arrays.copyOf(bytes, at);
            case 2 -> put(bytes, at, at, "\"");
            case 3 -> put(bytes, at, at, "\0");
            case 4 -> swapped(bytes, random.nextBoolean() ? ';' : '\t');
            case 5 -> cells(bytes, random, (cells, i) -> cells.remove(i));
            case 6 -> cells(bytes, random, (cells, i) -> cells.add(i, cells.get(i)));
            case 7 -> cells(bytes, random, (cells, i) -> cells.set(i, ODD_CELLS.get(random.nextInt(ODD_CELLS.size()))));
            default -> put(bytes, at, Math.min(bytes.length, at + random.nextInt(20)), "");
        };
    }

    private static byte[] flipped(byte[] bytes, int at, Random random) {
        byte[] changed = bytes.clone();
        changed[at] ^= (byte) (1 << random.nextInt(8));
        return changed;
    }

    private static byte[] put(byte[] bytes, int from, int to, String between) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        out.write(bytes, 0, from);
        out.writeBytes(between.getBytes(StandardCharsets.UTF_8));
        out.write(bytes, to, bytes.length - to);
        return out.toByteArray();
    }

    private static byte[] swapped(byte[] bytes, char separator) {
        return new String(bytes, StandardCharsets.ISO_8859_1).replace(',', separator).getBytes(StandardCharsets.ISO_8859_1);
    }

    private interface CellChange {
        void in(List<String> cells, int at);
    }

    private static byte[] cells(byte[] bytes, Random random, CellChange change) {
        String[] lines = new String(bytes, StandardCharsets.UTF_8).split("\n", -1);
        int line = random.nextInt(lines.length);
        List<String> cells = new ArrayList<>(List.of(lines[line].split(",", -1)));
        change.in(cells, random.nextInt(cells.size()));
        lines[line] = String.join(",", cells);
        return String.join("\n", lines).getBytes(StandardCharsets.UTF_8);
    }
}
