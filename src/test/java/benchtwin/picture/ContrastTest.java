package benchtwin.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.Color;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Every pair of colours that meet in a picture, by the contrast ratio of W3C, WCAG 2.2 (formula and limits: memory). */
class ContrastTest {

    /** Success criterion 1.4.3, level AA: text below 24 px, or below 18.66 px in bold. */
    private static final double TEXT = 4.5;
    /** Success criterion 1.4.11, level AA: graphics that one has to see to understand. */
    private static final double MARK = 3;

    static Stream<Arguments> pairs() {
        return Stream.of(
            Arguments.of("text on paper", Look.INK, Look.PAPER, TEXT),
            Arguments.of("trim on the band", Look.INK, Look.BAND, TEXT),
            Arguments.of("notes on paper", Look.QUIET, Look.PAPER, TEXT),
            Arguments.of("dots and moves on paper", Look.ACCENT, Look.PAPER, MARK),
            Arguments.of("dots and moves on the band", Look.ACCENT, Look.BAND, MARK),
            Arguments.of("out of tolerance on paper", Look.STOP, Look.PAPER, MARK),
            Arguments.of("out of tolerance on the band", Look.STOP, Look.BAND, MARK),
            Arguments.of("edges of the band, whiskers", Look.INK, Look.BAND, MARK),
            Arguments.of("default shape on paper", Look.QUIET, Look.PAPER, MARK),
            Arguments.of("default shape and rungs on the band", Look.QUIET, Look.BAND, MARK));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("pairs")
    void eachPairCanBeSeen(String what, Color colour, Color ground, double least) {
        assertThat(ratio(colour, ground)).as(what).isGreaterThanOrEqualTo(least);
    }

    /** Its fill alone is too faint, which is why the band has edges. */
    @Test
    void theBandAloneWouldNotDo() {
        assertThat(ratio(Look.BAND, Look.PAPER)).isLessThan(MARK);
    }

    /** Black on white is 21:1 by definition; #777777 on white, 4.48:1, is known as the grey that just fails (memory). */
    @Test
    void theFormulaGivesTheKnownRatios() {
        assertThat(ratio(Color.BLACK, Color.WHITE)).isCloseTo(21, within(1e-9));
        assertThat(ratio(new Color(0x777777), Color.WHITE)).isCloseTo(4.48, within(0.005));
    }

    private static double ratio(Color one, Color other) {
        double a = luminance(one);
        double b = luminance(other);
        return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
    }

    private static double luminance(Color colour) {
        return 0.2126 * linear(colour.getRed()) + 0.7152 * linear(colour.getGreen()) + 0.0722 * linear(colour.getBlue());
    }

    private static double linear(int channel) {
        double s = channel / 255.0;
        return s <= 0.04045 ? s / 12.92 : Math.pow((s + 0.055) / 1.055, 2.4);
    }
}
