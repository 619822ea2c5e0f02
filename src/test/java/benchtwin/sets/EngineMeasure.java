package benchtwin.sets;

import com.sun.management.OperatingSystemMXBean;
import java.lang.management.ManagementFactory;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * Measures the engine on seeded invented events of three sizes; not a test. Arguments: sizes (A, B, C), processor seconds, seed.
 * Every player has seven irons and three wedges that must share their models, and three single woods.
 */
public final class EngineMeasure {

    /** Trims raise the frequency by this much a step, tolerances. */
    private static final double STEP = 1.1;
    private static final String[] CATEGORIES = {"iron", "wedge", "driver", "fairway", "hybrid"};
    private static final int PHASES = 15;
    private static final int[] NUMBERS = {7, 3, 1, 1, 1};
    private static final int[] HEAD_MODELS = {8, 6, 5, 5, 4};
    private static final double[] HEAD_SHARE = {0.58, 0.22, 0.08, 0.08, 0.04};
    /** Shafts: for irons and wedges, for driver and fairway, for hybrids. */
    private static final int[] SHAFT_MODELS = {10, 8, 4};
    private static final double[] SHAFT_SHARE = {0.70, 0.22, 0.08};
    private static final int[] SHAFT_KIND = {0, 0, 1, 1, 2};

    private record Head(int model, int category, int number, double loft, double mass) {
    }

    private record Shaft(int model, int kind, double stiffness, double mass) {
    }

    private EngineMeasure() {
    }

    /** Sizes, seconds, seed. */
    public static void main(String[] arguments) {
        String sizes = arguments.length > 0 ? arguments[0] : "ABC";
        double seconds = arguments.length > 1 ? Double.parseDouble(arguments[1]) : 30;
        long seed = arguments.length > 2 ? Long.parseLong(arguments[2]) : 1;
        for (char size : sizes.toCharArray()) {
            SetModel model = switch (size) {
                case 'A' -> event(seed, 1, 400, 400, 40);
                case 'B' -> event(seed, 8, 1500, 1500, 40);
                default -> event(seed, 16, 3000, 3000, 14);
            };
            run(size, model, seconds, seed);
        }
    }

    private static void run(char size, SetModel model, double seconds, long seed) {
        int options = 0;
        for (int s = 0; s < model.slots(); s++) {
            options += model.options(s).size();
        }
        System.out.printf("%s: %d slots, %d groups, %d options%n", size, model.slots(), model.groups().size(), options);
        double start = processor();
        SetEngine engine = new SetEngine(model, seed);
        double[] marks = {0.2, 0.5, 1, 2, 5, 10, 20, 30, 45, 60, 90};
        int mark = 0;
        boolean more = true;
        double[] spent = new double[PHASES + 1];
        while (more && elapsed(start) < seconds) {
            int phase = engine.rounds() == 0 ? PHASES : engine.rounds() % PHASES;
            double before = processor();
            more = engine.next(() -> elapsed(start) >= seconds);
            spent[phase] += processor() - before;
            if (engine.rounds() == 1 || !more || mark < marks.length && elapsed(start) >= marks[mark]) {
                while (mark < marks.length && elapsed(start) >= marks[mark]) {
                    mark++;
                }
                print(engine, elapsed(start));
            }
        }
        print(engine, elapsed(start));
        System.out.println("  processor seconds by phase of the period, the first round last: "
            + Arrays.stream(spent).mapToObj("%.2f"::formatted).toList());
    }

    private static void print(SetEngine engine, double seconds) {
        System.out.printf("  %6.2f s  round %5d  empty %.2f  score %.6f  gap %s%n", seconds, engine.rounds(),
            engine.plan().emptyCost() / (double) EMPTY, engine.plan().soft() / 1e6,
            engine.gap().isEmpty() ? "not proven full" : "%.5f %%".formatted(100 * engine.gap().getAsDouble()));
    }

    /** Seconds of processor time, all threads: less at the mercy of what else runs. */
    private static double processor() {
        return ((OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean()).getProcessCpuTime() / 1e9;
    }

    private static double elapsed(double start) {
        return processor() - start;
    }

    private static final long EMPTY = 100_000_000_000L;

    /**
     * An event.
     * @param seed    same seed, same event
     * @param players how many
     * @param heads   in stock
     * @param shafts  in stock
     * @param hybrids how many of the heads are hybrids
     */
    static SetModel event(long seed, int players, int heads, int shafts, int hybrids) {
        Random random = new Random(seed * 7919 + players);
        List<Head> headList = heads(random, heads, hybrids);
        List<Shaft> shaftList = shafts(random, shafts);
        Map<Integer, List<Integer>> headsOf = new HashMap<>();
        for (int h = 0; h < headList.size(); h++) {
            Head head = headList.get(h);
            headsOf.computeIfAbsent(head.category() * 10 + head.number(), key -> new ArrayList<>()).add(h);
        }
        List<SlotGroup> groups = new ArrayList<>();
        List<List<Option>> options = new ArrayList<>();
        List<Long> empty = new ArrayList<>();
        for (int player = 0; player < players; player++) {
            for (int c = 0; c < CATEGORIES.length; c++) {
                List<Integer> slots = new ArrayList<>();
                double stiff = random.nextGaussian();
                double mass = 0.7 * random.nextGaussian();
                double loft = 0.7 * random.nextGaussian();
                for (int number = 0; number < NUMBERS[c]; number++) {
                    slots.add(options.size());
                    options.add(options(options.size(), headsOf.get(c * 10 + number), headList, shaftList, SHAFT_KIND[c],
                        new double[] {stiff, mass, loft}));
                    empty.add(EMPTY * (1 + player % 2));
                }
                groups.add(new SlotGroup(slots, slots.size() > 1, new long[] {1, 1, 0}, 0));
            }
        }
        return new SetModel(groups, empty.stream().mapToLong(Long::longValue).toArray(),
            headList.stream().mapToInt(Head::model).toArray(), shaftList.stream().mapToInt(Shaft::model).toArray(), options);
    }

    private static List<Head> heads(Random random, int count, int hybrids) {
        List<Head> list = new ArrayList<>();
        for (int c = 0; c < CATEGORIES.length; c++) {
            int share = c == 4 ? hybrids : (int) Math.round(HEAD_SHARE[c] * count);
            for (int i = 0; i < share; i++) {
                int model = random.nextInt(HEAD_MODELS[c]);
                list.add(new Head(c * 100 + model, c, i % NUMBERS[c], random.nextGaussian() * 1.6, random.nextGaussian() * 1.8));
            }
        }
        return list;
    }

    private static List<Shaft> shafts(Random random, int count) {
        List<Shaft> list = new ArrayList<>();
        for (int kind = 0; kind < SHAFT_MODELS.length; kind++) {
            double[] centre = random.doubles(SHAFT_MODELS[kind], -4, 2).toArray();
            for (int i = 0; i < Math.round(SHAFT_SHARE[kind] * count); i++) {
                int model = random.nextInt(SHAFT_MODELS[kind]);
                list.add(new Shaft(kind * 100 + model, kind, centre[model] + random.nextGaussian() * 1.2,
                    random.nextGaussian() * 1.2));
            }
        }
        return list;
    }

    private static List<Option> options(int slot, List<Integer> heads, List<Head> headList, List<Shaft> shaftList, int kind,
            double[] wish) {
        Map<Integer, List<Option>> byPair = new HashMap<>();
        List<Option> all = new ArrayList<>();
        List<Integer> nearHeads = heads.stream().sorted(Comparator.comparingDouble(h ->
            Math.abs(headList.get(h).loft() - wish[2]) + 0.5 * Math.abs(headList.get(h).mass() - wish[1]))).limit(40).toList();
        List<Integer> nearShafts = IntStream.range(0, shaftList.size()).filter(s -> shaftList.get(s).kind() == kind).boxed()
            .sorted(Comparator.comparingDouble(s -> Math.abs(shaftList.get(s).stiffness() + STEP - wish[0]))).limit(300).toList();
        for (int h : nearHeads) {
            for (int s : nearShafts) {
                Option option = option(slot, h, s, headList.get(h), shaftList.get(s), wish);
                if (option != null) {
                    all.add(option);
                    byPair.computeIfAbsent(headList.get(h).model() * 1000 + shaftList.get(s).model(),
                        key -> new ArrayList<>()).add(option);
                }
            }
        }
        Comparator<Option> order = Comparator.comparingLong(Option::cost).thenComparingInt(Option::head)
            .thenComparingInt(Option::shaft);
        all.sort(order);
        Set<Option> kept = new LinkedHashSet<>(all.subList(0, Math.min(400, all.size())));
        byPair.values().forEach(list -> {
            list.sort(order);
            kept.addAll(list.subList(0, Math.min(6, list.size())));
        });
        return kept.stream().sorted(Comparator.comparingInt(Option::head).thenComparingInt(Option::shaft)).toList();
    }

    /** The best plan of one pair: a bend, tip trims, head weight; null where the shaft is too stiff or the bend too far. */
    private static Option option(int slot, int h, int s, Head head, Shaft shaft, double[] wish) {
        double loft = head.loft() - wish[2];
        double bent = Math.signum(loft) * Math.min(Math.abs(loft), 1.0);
        double best = Double.POSITIVE_INFINITY;
        double bestFrequency = 0;
        double bestSwing = 0;
        for (int trim = 0; trim <= 2; trim++) {
            for (int grams = 0; grams <= 1; grams++) {
                double mass = head.mass() + 0.8 * grams;
                double frequency = shaft.stiffness() + STEP * trim - 0.15 * mass - wish[0];
                double swing = 0.9 * mass + 0.5 * shaft.mass() - wish[1];
                double cost = frequency * frequency + swing * swing + Math.pow(loft - bent, 2) + 0.10 * trim + 0.06 * grams
                    + 0.15 * Math.abs(bent);
                if (cost < best) {
                    best = cost;
                    bestFrequency = frequency;
                    bestSwing = swing;
                }
            }
        }
        if (Math.abs(bestFrequency) > 3 || Math.abs(loft) > 4) {
            return null;
        }
        return new Option(slot, h, s, Math.round(best * 1e6), (int) Math.round(bestFrequency * 1000),
            (int) Math.round(bestSwing * 1000), (int) Math.round(shaft.mass() * 1000));
    }
}
