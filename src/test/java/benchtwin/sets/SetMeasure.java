package benchtwin.sets;

import benchtwin.match.ShopSettings;
import java.lang.management.ManagementFactory;
import java.lang.management.MemoryPoolMXBean;
import java.lang.management.MemoryType;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;

/**
 * Measures plans of whole events with the real plans of every club: how good and how well proven after 1, 5, 30 and 60
 * seconds, how long the tables took and what memory. Not a test. Arguments: sizes such as {@code AB}, seeds such as
 * {@code 1,2,3}, seconds.
 */
final class SetMeasure {

    private static final double[] AT_SECONDS = {1, 5, 30, 60};
    private static final double NANOS = 1e9;

    private SetMeasure() {
    }

    /**
     * Prints a row for every size and seed.
     * @param args sizes, seeds, seconds
     */
    public static void main(String[] args) {
        String sizes = args.length > 0 ? args[0] : "A";
        String[] seeds = (args.length > 1 ? args[1] : "1").split(",");
        int seconds = args.length > 2 ? Integer.parseInt(args[2]) : 60;
        System.out.printf("%-6s%-6s%-10s%-9s%-8s", "size", "seed", "options", "tables", "first");
        for (double at : AT_SECONDS) {
            System.out.printf("%-28s", "at %.0f s: unbuilt cost gap".formatted(at));
        }
        System.out.printf("%-28s%s%n", "end", "heap");
        for (char size : sizes.toCharArray()) {
            for (String seed : seeds) {
                row(size, Long.parseLong(seed), seconds);
            }
        }
    }

    private static void row(char size, long seed, int seconds) {
        EventStock event = EventStock.of(size, seed);
        System.gc();
        resetPeaks();
        SetRequest request = new SetRequest(event.targets(), event.inventory(), ShopSettings.DEFAULT, Optional.empty(),
            List.of(), Set.of(), Alikeness.DEFAULT);
        List<PlanProgress> seen = new ArrayList<>();
        long start = System.nanoTime();
        PlanRun run = new PlanRun(request, new PlanLimits(Duration.ofSeconds(seconds), 0, OptionalInt.empty(), 1), seen::add,
            () -> false);
        double tablesSeconds = (System.nanoTime() - start) / NANOS;
        run.run();
        double end = (System.nanoTime() - start) / NANOS;
        int options = 0;
        for (int slot = 0; slot < run.model().slots(); slot++) {
            options += run.model().options(slot).size();
        }
        System.out.printf(Locale.ROOT, "%-6s%-6d%-10d%-9.2f%-8.2f", size, seed, options, tablesSeconds, seen.get(0).seconds());
        for (double at : AT_SECONDS) {
            PlanProgress last = null;
            for (PlanProgress progress : seen) {
                last = progress.seconds() <= at ? progress : last;
            }
            System.out.printf("%-28s", last == null ? "-" : words(last));
        }
        PlanProgress last = seen.get(seen.size() - 1);
        System.out.printf(Locale.ROOT, "%-28s%d MB%n", "%.1f s %s".formatted(end, words(last)), peakMb());
    }

    private static String words(PlanProgress progress) {
        return String.format(Locale.ROOT, "%d %.3f %s", progress.unbuilt(), progress.cost(),
            progress.gapPercent().isPresent() ? String.format(Locale.ROOT, "%.2f %%", progress.gapPercent().getAsDouble()) : "-");
    }

    private static void resetPeaks() {
        ManagementFactory.getMemoryPoolMXBeans().forEach(MemoryPoolMXBean::resetPeakUsage);
    }

    private static long peakMb() {
        return ManagementFactory.getMemoryPoolMXBeans().stream().filter(pool -> pool.getType() == MemoryType.HEAP)
            .mapToLong(pool -> pool.getPeakUsage().getUsed()).sum() >> 20;
    }
}
