package benchtwin.picture;

import static benchtwin.picture.ParsedSvg.number;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.List;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;

class SetSheetTest {

    @Test
    void theThreePicturesStandBelowEachOtherUnderTheirOwnHeadings() {
        ParsedSvg svg = new ParsedSvg(Sets.sheet("P. Quillby", 14).svg());
        assertThat(svg.words("title")).isEqualTo("The set of P. Quillby");
        assertThat(svg.in("title-line", "text").stream().map(Element::getTextContent)).containsExactly("The set of P. Quillby",
            "Frequency against length, 11 of 14 clubs in tolerance, 1 not built",
            "Swing weight across the set, 9 of 14 clubs in tolerance, 1 not built",
            "Lofts and gaps, 12 of 14 clubs in tolerance, 1 not built, 2 gaps uneven");
        List<Double> heads = svg.in("title-line", "text").stream().map(text -> ParsedSvg.box(text).getY()).toList();
        assertThat(heads).isSorted();
        assertThat(svg.in("rule", "line")).hasSize(3);
        for (int i = 0; i < 3; i++) {
            assertThat(number(svg.in("rule", "line").get(i), "y1")).isLessThan(heads.get(i + 1)).isGreaterThan(heads.get(i));
        }
    }

    @Test
    void eachIsWhatItIsByItself() {
        SetSheet sheet = Sets.sheet("P. Quillby", 14);
        ParsedSvg svg = new ParsedSvg(sheet.svg());
        for (SetPicture picture : sheet.pictures()) {
            assertThat(sheet.inWords()).contains(picture.inWords());
        }
        List<Element> alone = new ParsedSvg(sheet.pictures().get(1).svg()).in("row-line", "line");
        List<Element> together = svg.in("row-line", "line").subList(0, alone.size());
        double downPx = ParsedSvg.offsetY(together.get(0)) + number(together.get(0), "y1") - number(alone.get(0), "y1");
        assertThat(downPx).isPositive();
        for (int i = 0; i < alone.size(); i++) {
            assertThat(number(together.get(i), "y1") + ParsedSvg.offsetY(together.get(i)))
                .isCloseTo(number(alone.get(i), "y1") + downPx, within(0.003));
        }
    }

    @Test
    void theBitmapHasItsDotsWhereTheTextHasThem() throws IOException {
        SetSheet sheet = Sets.sheet("P. Quillby", 14);
        ParsedSvg svg = new ParsedSvg(sheet.svg());
        BufferedImage image = ImageIO.read(new ByteArrayInputStream(sheet.png()));
        assertThat(image.getHeight()).isEqualTo((int) svg.height());
        for (Element dot : svg.in("dot", "circle")) {
            int x = (int) Math.round(number(dot, "cx"));
            int y = (int) Math.round(number(dot, "cy") + ParsedSvg.offsetY(dot));
            assertThat(List.of(image.getRGB(x + 2, y + 2), image.getRGB(x + 2, y - 2), image.getRGB(x - 2, y + 2)))
                .as("dot at %d, %d", x, y).containsAnyOf(Look.ACCENT.getRGB(), Look.INK.getRGB());
        }
    }

    @Test
    void aSheetIsOfOnePlayer() {
        assertThatIllegalArgumentException().isThrownBy(() -> new SetSheet("P. Quillby", List.of(Sets.lofts("R. Quillby", 2))))
            .withMessage("a picture of R. Quillby cannot be on the sheet of P. Quillby");
        assertThatIllegalArgumentException().isThrownBy(() -> new SetSheet("P. Quillby", List.of()))
            .withMessage("a sheet needs at least one picture");
    }
}
