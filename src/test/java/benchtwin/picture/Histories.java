package benchtwin.picture;

import benchtwin.club.BenchTime;
import benchtwin.club.Quantity;
import benchtwin.club.Wanted;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;

/** Invented histories to draw. */
final class Histories {

    /** A name that does not fit on one line, with a letter outside the first plane. */
    static final String LONG_NAME = "OAKES-DR 🏌 " + Sets.LONG_NAME;

    private static final Map<Quantity, Double> DRIVER = new EnumMap<>(Map.of(Quantity.LOFT, 9.4, Quantity.LIE, 58.3, Quantity.FACE, -0.4,
        Quantity.LENGTH, 1149.35, Quantity.SWING_WEIGHT, 32.2, Quantity.FREQUENCY, 248.8, Quantity.TOTAL_MASS, 309.5,
        Quantity.TORQUE, 4.1));
    private static final Map<Quantity, Double> UNCERTAINTY = Map.of(Quantity.LOFT, 0.15, Quantity.LIE, 0.1, Quantity.FACE, 0.2,
        Quantity.LENGTH, 0.8, Quantity.SWING_WEIGHT, 0.2, Quantity.FREQUENCY, 0.5, Quantity.TOTAL_MASS, 0.1, Quantity.TORQUE, 0.1);

    private Histories() {
    }

    static BenchTime day(int year, int month, int day) {
        return BenchTime.on(LocalDate.of(year, month, day));
    }

    static BenchTime at(int day, int hour, int minute) {
        return BenchTime.at(LocalDateTime.of(2026, 5, day, hour, minute));
    }

    static Optional<Wanted> target(Quantity quantity) {
        return Optional.of(new Wanted(DRIVER.get(quantity), quantity.defaultTolerance(), 1));
    }

    static HistoryReading on(String gauge, BenchTime when, double value, double u) {
        return new HistoryReading(when, value, u, Optional.of(gauge), false);
    }

    static HistoryReading superseded(BenchTime when, double value, double u) {
        return new HistoryReading(when, value, u, Optional.empty(), true);
    }

    static HistoryPicture of(String subject, Quantity quantity, HistoryStrip strip, Intervention... done) {
        return new HistoryPicture(subject, Map.of(quantity, strip), List.of(done));
    }

    /** Seven days with times: a drift, a bend, a regrip, a slip of the pen, a second gauge, and no torque read. */
    static HistoryPicture week() {
        Map<Quantity, HistoryStrip> strips = new EnumMap<>(Quantity.class);
        for (Quantity quantity : DRIVER.keySet()) {
            List<HistoryReading> readings = new ArrayList<>();
            double tolerance = quantity.defaultTolerance();
            double[] off = quantity == Quantity.LIE ? new double[] {0.2, 2.9, 2.2, 0.3, 0.1}
                : quantity == Quantity.SWING_WEIGHT ? new double[] {-0.2, 0.1, 0, -2.8, -1.4} : new double[] {0.1, -0.4, 0.3, 0.5, -0.2};
            BenchTime[] when = {at(4, 8, 40), at(5, 17, 5), at(6, 9, 20), at(6, 10, 0), at(8, 16, 30)};
            for (int i = 0; i < off.length && quantity != Quantity.TORQUE; i++) {
                double value = DRIVER.get(quantity) + off[i] * tolerance;
                readings.add(i == 2 && quantity.isAngle() ? on("LL-2", when[i], value, UNCERTAINTY.get(quantity))
                    : HistoryReading.of(when[i], value, UNCERTAINTY.get(quantity)));
            }
            if (quantity == Quantity.LOFT) {
                readings.add(superseded(at(6, 10, 0), 9.9, 0.15));
            }
            strips.put(quantity, new HistoryStrip(target(quantity), readings));
        }
        return new HistoryPicture("OAKES-DR", strips, List.of(new Intervention(at(6, 9, 45), "bent 0.5° flat"),
            new Intervention(at(6, 9, 50), "regripped, one layer of tape more"), new Intervention(at(8, 12, 10), "sole ground")));
    }

    /** So many readings over ten years, by the day, with a deed a year. */
    static HistoryPicture decade(int perQuantity, int deeds) {
        Random random = new Random(11);
        Map<Quantity, HistoryStrip> strips = new EnumMap<>(Quantity.class);
        for (Quantity quantity : DRIVER.keySet()) {
            List<HistoryReading> readings = new ArrayList<>();
            for (int i = 0; i < perQuantity; i++) {
                BenchTime when = BenchTime.on(LocalDate.of(2016, 3, 1).plusDays(3700L * i / perQuantity + random.nextInt(9)));
                double value = DRIVER.get(quantity) + (random.nextGaussian() * 0.7 + (i % 17 == 5 ? 3.5 : 0)) * quantity.defaultTolerance();
                readings.add(new HistoryReading(when, value, UNCERTAINTY.get(quantity),
                    i % 11 == 3 ? Optional.of(List.of("LL-2", "LL-3", "CMM", "van").get(random.nextInt(4))) : Optional.empty(),
                    i % 23 == 7));
            }
            strips.put(quantity, new HistoryStrip(target(quantity), readings));
        }
        List<Intervention> done = new ArrayList<>();
        String[] words = {"regripped", "bent 0.5° upright", "shaft pulled", "head changed to H-014", "sole ground, 2 g off"};
        for (int i = 0; i < deeds; i++) {
            done.add(new Intervention(BenchTime.on(LocalDate.of(2016, 6, 1).plusDays(3500L * i / deeds)), words[i % words.length]));
        }
        return new HistoryPicture("OAKES-DR", strips, done);
    }

    /** One strip with everything read at once, or nearly. */
    static HistoryPicture crowded(int count) {
        Random random = new Random(5);
        List<HistoryReading> readings = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            readings.add(HistoryReading.of(at(4 + i * 4 / count, 8 + i % 10, i % 60), 58.3 + 0.5 * random.nextGaussian(), 0.1));
        }
        return of("OAKES-DR", Quantity.LIE, new HistoryStrip(target(Quantity.LIE), readings), new Intervention(at(5, 12, 0), "bent 0.3° flat"));
    }

    /** So many readings at one time. */
    static HistoryPicture crowded(int count, BenchTime when) {
        List<HistoryReading> readings = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            readings.add(HistoryReading.of(when, 58.3 + 0.002 * (i - count / 2), 0.1));
        }
        return of("OAKES-DR", Quantity.LIE, new HistoryStrip(target(Quantity.LIE), readings));
    }

    static HistoryPicture single(BenchTime when) {
        return of("OAKES-DR", Quantity.LIE, new HistoryStrip(target(Quantity.LIE), List.of(HistoryReading.of(when, 58.4, 0.1))));
    }

    /** A part: no targets at all. */
    static HistoryPicture shaft() {
        return new HistoryPicture("S-234", Map.of(
            Quantity.FREQUENCY, new HistoryStrip(Optional.empty(), List.of(HistoryReading.of(day(2024, 2, 1), 251.2, 0.5),
                HistoryReading.of(day(2025, 4, 9), 250.6, 0.5), superseded(day(2025, 4, 9), 205.6, 0.5))),
            Quantity.SWING_WEIGHT, new HistoryStrip(Optional.empty(), List.of(HistoryReading.of(day(2024, 2, 1), 32.2, 0.2))),
            Quantity.LENGTH, new HistoryStrip(Optional.empty(), List.of(HistoryReading.of(day(2024, 2, 1), 1149.35, 0.8),
                HistoryReading.of(day(2025, 4, 9), 1136.65, 0.8))),
            Quantity.SHAFT_MASS, new HistoryStrip(Optional.empty(), List.of(HistoryReading.of(day(2024, 2, 1), 62.3, 0.1))),
            Quantity.SHAFT_BALANCE, new HistoryStrip(Optional.empty(), List.of()),
            Quantity.BUTT_INERTIA, new HistoryStrip(Optional.of(new Wanted(2850, 10, 1)), List.of(HistoryReading.of(day(2024, 2, 1), 2853, 4)))),
            List.of(new Intervention(day(2025, 4, 9), "shaft pulled"), new Intervention(day(2025, 4, 9), "butt cut 1/2 in")));
    }

    /** Everything awkward at once: long words, other scripts, equal times, four other gauges, all off the strip. */
    static HistoryPicture awkward() {
        String unbroken = "WITHOUTANYPLACETOBREAK".repeat(8);
        List<HistoryReading> equal = new ArrayList<>();
        for (int i = 0; i < 9; i++) {
            equal.add(HistoryReading.of(at(4, 9, 15), 58 + i * 0.1, 0.1));
        }
        equal.add(superseded(at(4, 9, 15), 85.3, 0.1));
        equal.add(on("Größe & <b> 🏌 " + unbroken, at(4, 9, 20), 58.3, 0.1));
        List<HistoryReading> off = new ArrayList<>();
        for (int i = 0; i < 12; i++) {
            off.add(HistoryReading.of(at(4, 9, 5 * i), i % 2 == 0 ? 1180 : 1120 - i, 0.8));
        }
        off.add(on("LL-9", at(4, 9, 57), 1149, 0));
        off.add(on("Zoë’s gauge", at(4, 9, 30), 1149, 3));
        return new HistoryPicture(LONG_NAME, Map.of(Quantity.LIE, new HistoryStrip(target(Quantity.LIE), equal),
            Quantity.LENGTH, new HistoryStrip(target(Quantity.LENGTH), off),
            Quantity.MOMENT_12_INCH, new HistoryStrip(Optional.empty(), List.of()),
            Quantity.SWING_WEIGHT, new HistoryStrip(target(Quantity.SWING_WEIGHT), List.of(HistoryReading.of(at(4, 9, 59), 25, 0)))),
            List.of(new Intervention(at(4, 9, 55), "regripped by 日本 with an 🏌 grip & 2 layers <tape>"),
                new Intervention(at(4, 9, 55), unbroken), new Intervention(at(4, 9, 10), "bent")));
    }
}
