package benchtwin.cli;

import static org.assertj.core.api.Assertions.assertThat;

import benchtwin.sets.PlanProgress;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** The line a terminal shows while a search runs. */
class ProgressLineTest {

    private static final PlanProgress SOME = new PlanProgress(40, 12, 55.4321, OptionalDouble.of(1.26), 21, 9.4);

    @Test
    void itSaysWhereTheSearchStands() {
        assertThat(ProgressLine.text(SOME, 95, 12.3)).isEqualTo(
            "Round 40: 83 of 95 built, 21 out of tolerance, cost 55.43, 1.3% from proven, 12 s; Ctrl-C keeps this plan");
        assertThat(ProgressLine.text(new PlanProgress(0, 0, 3, OptionalDouble.empty(), 0, 1), 13, 1)).isEqualTo(
            "Round 0: 13 of 13 built, 0 out of tolerance, cost 3.00, not proven yet, 1 s; Ctrl-C keeps this plan");
        assertThat(ProgressLine.text(null, 95, 2)).isEqualTo("Working out what fits 95 clubs ... 2 s");
    }

    @Test
    void itIsWrittenOverItselfAndGoneAtTheEnd() {
        StringWriter terminal = new StringWriter();
        try (ProgressLine line = new ProgressLine(new PrintWriter(terminal), 95)) {
            line.accept(SOME);
        }
        String written = terminal.toString();
        assertThat(written).doesNotContain("\n").contains("\rRound 40: 83 of 95 built");
        String last = written.substring(written.lastIndexOf('\r', written.length() - 2));
        String shown = written.substring(written.indexOf("\rRound 40"));
        int longest = shown.substring(1, shown.indexOf('\r', 1)).length();
        assertThat(last).isEqualTo("\r" + " ".repeat(longest) + "\r");
    }
}
