package benchtwin.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import benchtwin.club.Quantity;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Element;

/** What holds for every picture of a set, the plain ones and the awkward. */
class SetPicturesTest {

    private static final String ODD = "<7-ирон> & \"ξύλο\" ]]>";
    private static final String LONG = "driver for windy days, the second spare one of the old model";
    private static final String UNBROKEN = "withoutanyplacetobreak".repeat(3);

    static Stream<Picture> pictures() {
        SetTarget target = Sets.target(32, 0.5);
        List<SetPoint> awkward = List.of(Sets.built(ODD, 32, 0, target), Sets.built(ODD, 32, 0, target),
            Sets.built(LONG, 32, 0, Sets.target(32, 0)), Sets.built(UNBROKEN, 45.5, 3, target), Sets.notBuilt("5-iron", target),
            Sets.notBuilt("6-iron", null), Sets.notKnown("7-iron", target), Sets.notKnown("8-iron", null),
            Sets.built("9-iron", -6, 0.2, null));
        FrequencyPoint[] byLength = IntStream.range(0, awkward.size()).mapToObj(i -> Sets.at(38 - i / 2, lifted(awkward.get(i))))
            .toArray(FrequencyPoint[]::new);
        return Stream.of(
            IntStream.of(1, 2, 3, 14).boxed().flatMap(count -> Stream.of(Sets.frequency("P. Quillby", count),
                Sets.swing("P. Quillby", count), Sets.inertia("P. Quillby", count), Sets.lofts("P. Quillby", count),
                Sets.sheet("P. Quillby", count))),
            Stream.of(Sets.frequency(Sets.LONG_NAME, byLength), new SwingPicture(Sets.LONG_NAME, Quantity.SWING_WEIGHT, awkward),
                new LoftGapPicture(Sets.LONG_NAME, 0.5, awkward), Sets.sheet(Sets.LONG_NAME, 14),
                new SwingPicture("P", Quantity.BUTT_INERTIA, List.of(Sets.notKnown("x", null))),
                Sets.frequency("P", new FrequencyPoint(Sets.notKnown("x", null), OptionalDouble.empty(), OptionalDouble.empty()))))
            .flatMap(all -> all);
    }

    /** The same with cpm in place of points. */
    private static SetPoint lifted(SetPoint point) {
        return new SetPoint(point.club(),
            point.value().isPresent() ? OptionalDouble.of(point.value().getAsDouble() + 270) : point.value(), point.standardUncertainty(),
            point.target().map(t -> new SetTarget(t.value() + 270, t.tolerance(), t.line())), point.built());
    }

    @ParameterizedTest
    @MethodSource("pictures")
    void noWordsOverlapOrLeaveTheSheet(Picture picture) {
        ParsedSvg svg = new ParsedSvg(picture.svg());
        List<Element> texts = svg.textElements();
        for (int i = 0; i < texts.size(); i++) {
            Rectangle2D box = ParsedSvg.box(texts.get(i));
            String words = texts.get(i).getTextContent();
            assertThat(new Rectangle2D.Double(0, 0, svg.width(), svg.height()).contains(box)).as(words + " on the sheet").isTrue();
            for (Element other : texts.subList(0, i)) {
                assertThat(box.intersects(ParsedSvg.box(other))).as("%s over %s", words, other.getTextContent()).isFalse();
            }
        }
    }

    @ParameterizedTest
    @MethodSource("pictures")
    void everyPictureSaysInWordsWhatItShows(Picture picture) {
        String text = picture.svg();
        ParsedSvg svg = new ParsedSvg(text);
        assertThat(text).doesNotContain("NaN", "Infinity", "null", "Optional");
        assertThat(svg.root().getAttribute("role")).isEqualTo("img");
        assertThat(svg.words("title")).isEqualTo(picture.title()).isNotBlank();
        assertThat(svg.words("desc")).isEqualTo(picture.inWords()).isNotBlank();
        assertThat(picture.png()).isNotEmpty();
    }

    @Test
    void oddLettersStayWhatTheyAre() {
        SetPoint club = Sets.built(ODD, 32, 0, Sets.target(32, 1));
        for (Picture picture : List.of(new SwingPicture(ODD, Quantity.SWING_WEIGHT, List.of(club)),
            new LoftGapPicture(ODD, 1, List.of(club)), Sets.frequency(ODD, Sets.at(40, club)))) {
            ParsedSvg svg = new ParsedSvg(picture.svg());
            assertThat(svg.words("title")).startsWith(ODD + ": ");
            assertThat(svg.words("desc")).contains(ODD);
            String names = Stream.of("club-name", "club-label").flatMap(part -> svg.in(part, "text").stream())
                .map(Element::getTextContent).collect(Collectors.joining(" "));
            assertThat(names).as("on one line or two").isEqualTo(ODD);
        }
    }

    @Test
    void theSamePictureIsTheSameTextInAnyLocale() {
        String first = Sets.sheet("P. Quillby", 14).svg();
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
            assertThat(Sets.sheet("P. Quillby", 14).svg().equals(first)).as(Locale.getDefault().toString()).isTrue();
            Locale.setDefault(Locale.GERMANY);
            assertThat(Sets.sheet("P. Quillby", 14).svg().equals(first)).as(Locale.getDefault().toString()).isTrue();
        } finally {
            Locale.setDefault(before);
        }
    }

    @Test
    void nothingIsDrawnFromNumbersThatCannotBe() {
        SetTarget target = Sets.target(32, 0.5);
        assertThatIllegalArgumentException().isThrownBy(() -> Sets.built("7-iron", Double.NaN, 0, target))
            .withMessage("club 7-iron: a value of NaN is no number");
        assertThatIllegalArgumentException().isThrownBy(() -> Sets.built("7-iron", 32, -1, target))
            .withMessage("club 7-iron: an uncertainty of -1.0 is not 0 or more");
        assertThatIllegalArgumentException().isThrownBy(() -> Sets.built(" ", 32, 0, target))
            .withMessage("a picture's club is empty; it must say something");
        assertThatIllegalArgumentException().isThrownBy(() -> Sets.target(Double.POSITIVE_INFINITY, 1))
            .withMessage("a target of Infinity is no number");
        assertThatIllegalArgumentException().isThrownBy(() -> Sets.target(32, -0.5))
            .withMessage("a tolerance of -0.5 is not 0 or more");
        assertThatIllegalArgumentException()
            .isThrownBy(() -> new SetPoint("7-iron", OptionalDouble.of(32), 0, Optional.empty(), false))
            .withMessage("club 7-iron: it is not built, so it cannot measure 32.0");
        assertThatIllegalArgumentException().isThrownBy(() -> Sets.at(-1, Sets.built("7-iron", 300, 0, null)))
            .withMessageStartingWith("club 7-iron: a length of -25.4");
        assertThatIllegalArgumentException().isThrownBy(() -> Sets.frequency("P"))
            .withMessage("a picture of a set needs at least one club");
        assertThatIllegalArgumentException()
            .isThrownBy(() -> new SwingPicture("P", Quantity.LIE, List.of(Sets.built("7-iron", 62, 0, null))))
            .withMessage("this picture is of swing weight or butt inertia, not of lie");
    }

    /** 0.1 + 0.2 is not 0.3: a value at its limit is in tolerance all the same. */
    @Test
    void aValueAtItsLimitIsInTolerance() {
        assertThat(Sets.built("a", 0.1 + 0.2, 0, Sets.target(0, 0.3)).side()).isZero();
        assertThat(Sets.built("a", 310, 0, Sets.target(308, 2)).side()).isZero();
        assertThat(Sets.built("a", 310.001, 0, Sets.target(308, 2)).side()).isEqualTo(1);
        assertThat(Sets.built("a", 305.999, 0, Sets.target(308, 2)).side()).isEqualTo(-1);
        assertThat(Sets.notBuilt("a", Sets.target(308, 2)).side()).isZero();
    }
}
