package benchtwin.picture;

import static benchtwin.picture.ParsedSvg.number;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;

class BendCountPictureTest {

    private static final BendCount HABIT = new BendCount("ask for what is left", "3 % passed", List.of(0.4, 0.3, 0.2, 0.1, 0.0), 2.0);
    private static final BendCount ADVISED = new BendCount("as advised", "6 % passed", List.of(0.75, 0.2, 0.05, 0.0, 0.0), 1.3);
    private static final BendCountPicture PICTURE = new BendCountPicture("Advised, heads take fewer bends",
        List.of(new BendCountPicture.Scene("Metal that follows by a gain", List.of(HABIT, ADVISED))));
    /** Coordinates are written to 0.001 px. */
    private static final double WRITTEN_PX = 0.003;

    @Test
    void everyBarIsAllHeadsAndItsPartsTheirShares() {
        ParsedSvg svg = new ParsedSvg(PICTURE.svg());
        for (int bar = 1; bar <= 2; bar++) {
            List<Double> shares = (bar == 1 ? HABIT : ADVISED).shares();
            List<Element> parts = svg.in("bar-1-" + bar, "rect").stream().filter(part -> !part.getAttribute("fill").equals("none")).toList();
            double whole = parts.stream().mapToDouble(part -> number(part, "width")).sum();
            for (int k = 0; k < parts.size(); k++) {
                assertThat(number(parts.get(k), "width") / whole).isCloseTo(shares.get(k), within(WRITTEN_PX));
            }
            assertThat(parts.size()).isGreaterThanOrEqualTo((int) shares.stream().filter(share -> share > 0).count());
        }
    }

    @Test
    void itsWordsHoldEveryNumber() {
        assertThat(PICTURE.inWords()).isEqualTo("Metal that follows by a gain. ask for what is left: 2.00 bends a head on average, 40 % took 1, "
            + "30 % took 2, 20 % took 3, 10 % took 4, 0 % took 5 or more; 3 % passed. as advised: 1.30 bends a head on average, 75 % took 1, "
            + "20 % took 2, 5 % took 3, 0 % took 4, 0 % took 5 or more; 6 % passed.");
        assertThat(PICTURE.png()).startsWith(0x89, 'P', 'N', 'G');
    }

    @Test
    void whatCannotBeDrawnIsRefused() {
        assertThatIllegalArgumentException().isThrownBy(() -> new BendCount("x", "", List.of(0.8, 0.3), 1));
        assertThatIllegalArgumentException().isThrownBy(() -> new BendCount("x", "", List.of(Double.NaN), 1));
        assertThatIllegalArgumentException().isThrownBy(() -> new BendCountPicture("x", List.of()));
        assertThatIllegalArgumentException().isThrownBy(() -> new BendCountPicture.Scene("x", List.of(HABIT, new BendCount("y", "", List.of(1.0), 1))));
    }
}
