package benchtwin.cli;

import static org.assertj.core.api.Assertions.assertThat;

import benchtwin.club.BenchTime;
import benchtwin.club.MeasuredDifference;
import benchtwin.club.Quantity;
import benchtwin.club.Timeline;
import benchtwin.club.TimelineEntry;
import benchtwin.club.TimelineValue;
import benchtwin.club.ValueCorrection;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class TimelinePageTest {

    private static final BenchTime MARCH = BenchTime.at(LocalDateTime.of(2024, 3, 2, 16, 30));
    private static final BenchTime MORNING = BenchTime.at(LocalDateTime.of(2026, 5, 3, 9, 15));
    private static final BenchTime LATER = BenchTime.at(LocalDateTime.of(2026, 5, 3, 10, 2));

    private static String printed(Timeline timeline, boolean plain) {
        StringWriter text = new StringWriter();
        new TimelinePage(new Page(new PrintWriter(text), plain), timeline).print();
        String page = text.toString().replace(System.lineSeparator(), "\n");
        assertThat(page.lines()).allMatch(line -> line.length() <= Page.WIDTH);
        return page;
    }

    private static TimelineValue first(double value, double u, String gauge) {
        return new TimelineValue(value, u, Optional.empty(), Optional.ofNullable(gauge));
    }

    private static TimelineValue next(double value, double u, double moved, double uMoved, String gauge) {
        return new TimelineValue(value, u, Optional.of(new MeasuredDifference(moved, uMoved)), Optional.ofNullable(gauge));
    }

    private static Timeline bent() {
        return new Timeline("OAKES-DR, driver of N. Oakes", List.of(
            new TimelineEntry(MARCH, "Built and accepted", new EnumMap<>(Map.of(Quantity.LIE, first(58.3, 0.2, "LL-1"),
                Quantity.LOFT, first(9.4, 0.3, "LL-1"), Quantity.LENGTH, first(1149.35, 0.8, "ruler 2"),
                Quantity.SWING_WEIGHT, first(32.2, 0.2, null))), List.of()),
            new TimelineEntry(MORNING, "Found at the start of the week", Map.of(
                Quantity.LIE, next(59.1, 0.2, 0.8, 0.28, "LL-1"), Quantity.LOFT, next(9.4, 0.3, 0.5, 0.42, "LL-1")),
                List.of(new ValueCorrection(Quantity.LIE, 95.1, LATER, "digits swapped"),
                    new ValueCorrection(Quantity.FREQUENCY, 2488, LATER, ""))),
            new TimelineEntry(LATER, "Lie bent 0.8° flat.")));
    }

    @Test
    void everyEntrySaysWhenWhatAndWhatMoved() {
        assertThat(printed(bent(), false)).isEqualTo("""
            OAKES-DR, driver of N. Oakes: 3 entries, 2024-03-02 to 2026-05-03
            RULE
                                             read         ±              since before
            2024-03-02        Built and accepted.
                              loft           9.40°        ±0.30°
                              lie            58.30°       ±0.20°
                              length         45 1/4 in    ±0.8 mm
                              swing weight   D2.2         ±0.2 pt
                              Read on LL-1 (loft, lie), ruler 2 (length).
            2026-05-03 09:15  Found at the start of the week.
                              loft           9.40°        ±0.30°         +0.50°
                              lie            59.10°       ±0.20°         +0.80°       beyond
                              Read on LL-1.
                              Corrected 2026-05-03 10:02, in place of lie 95.10°: digits swapped.
                              Taken back 2026-05-03 10:02, frequency 2488.0 cpm.
            2026-05-03 10:02  Lie bent 0.8° flat.

            ± is one standard uncertainty. Beyond: the value moved by more than twice the standard uncertainty
            of the difference, which is more than measuring explains.
            """.replace("RULE", "─".repeat(100)));
    }

    @Test
    void plainKeepsItsColumns() {
        String page = printed(bent(), true);
        assertThat(page).matches("[ -~\n]*");
        assertThat(page).contains("""
                              lie            59.10d       +/-0.20d       +0.80d       beyond
            """.stripTrailing());
    }

    @Test
    void timesStandOnlyWhereADayHasMoreThanOneEntry() {
        Timeline apart = new Timeline("S-001", List.of(new TimelineEntry(MARCH, "received"), new TimelineEntry(MORNING, "pulled")));
        assertThat(printed(apart, false)).isEqualTo("""
            S-001: 2 entries, 2024-03-02 to 2026-05-03
            RULE
            2024-03-02  received.
            2026-05-03  pulled.
            """.replace("RULE", "─".repeat(100)));
        Timeline dayOnly = new Timeline("S-001", List.of(new TimelineEntry(BenchTime.on(LocalDate.of(2026, 5, 3)), "received"),
            new TimelineEntry(BenchTime.on(LocalDate.of(2026, 5, 3)), "pulled!")));
        assertThat(printed(dayOnly, false)).endsWith("\n2026-05-03  received.\n2026-05-03  pulled!\n");
    }

    @Test
    void nothingOnRecordIsSaid() {
        assertThat(printed(new Timeline("S-001", List.of()), false)).isEqualTo("S-001: nothing on record yet\n");
    }

    @Test
    void longTextsAreWrappedBesideTheirDate() {
        Timeline timeline = new Timeline("The " + "very ".repeat(30) + "long name", List.of(new TimelineEntry(MARCH,
            "Regripped, two layers of tape under the grip, ".repeat(5) + "x".repeat(200), Map.of(Quantity.LIE,
                first(60, 0.2, "gauge ".repeat(40).strip())), List.of())));
        assertThat(printed(timeline, false)).contains("2024-03-02  Regripped, two layers", "\n            Read on gauge gauge");
    }
}
