package benchtwin.cli;

import static org.assertj.core.api.Assertions.assertThat;

import benchtwin.club.Quantity;
import benchtwin.club.SideBySide;
import benchtwin.club.ValueComparison;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class SideBySidePageTest {

    private static final SideBySide TWO_DATES = new SideBySide("OAKES-DR on 2024-03-02", "OAKES-DR on 2026-05-03", Map.of(
        Quantity.LOFT, ValueComparison.of(9.4, 9.5, 0.42, 0.25, List.of("LL-1")),
        Quantity.LIE, ValueComparison.of(58.3, 58.9, 0.1, 0.25, List.of("LL-1", "LL-2")),
        Quantity.LENGTH, ValueComparison.of(1149.35, 1149.35, 0.4, 1.5875, List.of("ruler 2")),
        Quantity.SWING_WEIGHT, ValueComparison.of(32.2, 31.0, 0.28, 0.5, List.of()),
        Quantity.TOTAL_MASS, new ValueComparison(OptionalDouble.of(309.5), OptionalDouble.empty(), OptionalDouble.empty(), 3,
            List.of("scale 1"))));

    private static String printed(SideBySide compared, boolean plain) {
        StringWriter text = new StringWriter();
        new SideBySidePage(new Page(new PrintWriter(text), plain), compared).print();
        String page = text.toString().replace(System.lineSeparator(), "\n");
        assertThat(page.lines()).allMatch(line -> line.length() <= Page.WIDTH);
        return page;
    }

    /** The strips by hand: one character is a sixth of a tolerance, the middle is A, the whisker twice the uncertainty. */
    @Test
    void everyValueStandsSideBySideInTolerances() {
        assertThat(printed(TWO_DATES, false)).isEqualTo("""
            A: OAKES-DR on 2024-03-02
            B: OAKES-DR on 2026-05-03

                              A            B            B less A                              ±
               loft           9.40°        9.50°        +0.10°       ─────[─────┼─●───]─────  ±0.42
               lie            58.30°       58.90°       +0.60°       ·····[·····┼·····]···─▸  ±0.10    beyond
               length         45 1/4 in    45 1/4 in    0            ·····[··───●───··]·····  ±0.4
               swing weight   D2.2         D1.0         −1.2 pt      ◂───·[·····┼·····]·····  ±0.3     beyond
               total mass     309.5 g      not read

            Differs by more than measuring explains: lie, swing weight. Not read on both: total mass.
            Rests on LL-1 for loft.
            Rests on LL-1 and LL-2 for lie.
            Rests on ruler 2 for length.
            Rests on scale 1 for total mass.
            Rests on no named gauge for swing weight.
            The strip shows B about A, in tolerances. ± is one standard uncertainty of the difference. Beyond:
            the difference is more than twice that, which is more than measuring explains.
            """);
    }

    @Test
    void plainKeepsItsColumns() {
        String page = printed(TWO_DATES, true);
        assertThat(page).matches("[ -~\n]*");
        assertThat(page).contains("   length         45 1/4 in    45 1/4 in    0            .....[..---*---..].....  +/-0.4\n");
        assertThat(page).contains("   lie            58.30d       58.90d       +0.60d");
    }

    @Test
    void theFindingSaysWhenNothingDiffersAndWhenNothingCanBeSaid() {
        ValueComparison same = ValueComparison.of(60, 60.1, 0.2, 0.25, List.of("LL-1"));
        assertThat(printed(new SideBySide("a", "b", Map.of(Quantity.LIE, same)), false))
            .contains("\nNothing differs by more than measuring explains.\n");
        ValueComparison neither = new ValueComparison(OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty(), 1,
            List.of());
        assertThat(printed(new SideBySide("a", "b", Map.of(Quantity.LIE, neither)), false))
            .contains("\n   lie            not read     not read\n", "\nNothing was read on both.\n").doesNotContain("Rests on");
    }

    @Test
    void longNamesAreWrapped() {
        String name = "The driver of " + "a player with many names ".repeat(8);
        assertThat(printed(new SideBySide(name, "b", Map.of(Quantity.LIE, ValueComparison.of(1, 1, 0, 1,
            List.of("gauge " + "with a name ".repeat(15), "y".repeat(120))))), false)).contains("A: The driver of", "\n   ");
    }
}
