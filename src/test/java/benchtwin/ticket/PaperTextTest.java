package benchtwin.ticket;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PaperTextTest {

    @ParameterizedTest
    @ValueSource(strings = {"Ida Oakes", "Ærøskøbing ÿ", "Ελένη Ωμέγα", "Щукин, Ђорђе, Їжак", "<script>alert('$1\\')</script>",
        "9.4° ± 0.25, 45 1/4 in – “so”", "Ḗ ấ ơ̆"})
    void leavesLatinGreekAndCyrillicAsTheyAre(String name) {
        PaperText text = PaperText.forPrint();

        assertThat(text.show("player", name)).isEqualTo(java.text.Normalizer.normalize(name, java.text.Normalizer.Form.NFC));
        assertThat(text.replaced()).isEmpty();
    }

    /** One box for what a reader takes for one character. Scripts and categories: Unicode Standard, as Java has it. */
    @Test
    void replacesEachOtherCharacterAndSaysWhich() {
        PaperText text = PaperText.forPrint();

        assertThat(text.show("player", "李 Oakes 🏌🏽")).isEqualTo("\uFFFD Oakes \uFFFD");
        assertThat(text.show("head", "مضرب")).isEqualTo("\uFFFD\uFFFD\uFFFD\uFFFD");
        assertThat(text.show("head", "tur\u202Enround\u0007")).isEqualTo("tur\uFFFDnround\uFFFD");
        assertThat(text.replaced()).containsExactly("player: U+674E, U+1F3CC U+1F3FD",
            "head: U+0645, U+0636, U+0631, U+0628, U+202E, U+0007");
    }

    @Test
    void aBrowserGetsOtherScriptsButNothingThatIsNoLetter() {
        PaperText text = PaperText.forScreen();

        assertThat(text.show("player", "李 مضرب 🏌")).isEqualTo("李 مضرب 🏌");
        assertThat(text.show("player", "a\u202Eb\u0000c\uD800")).isEqualTo("a\uFFFDb\uFFFDc\uFFFD");
        assertThat(text.replaced()).containsExactly("player: U+202E, U+0000, U+D800");
    }

    @Test
    void namesNoMoreThanADozenOfThem() {
        PaperText text = PaperText.forPrint();
        text.show("player", "一丁七万丈三上下不与丐丑专");

        assertThat(text.replaced()).singleElement().asString().endsWith("and 1 more");
    }

    @Test
    void linesBecomeOne() {
        assertThat(PaperText.forPrint().show("note", " two\n lines\u2028three ")).isEqualTo("two lines three");
    }

    @Test
    void theReplacementCanBePrinted() {
        assertThat(Typeface.has(PaperText.REPLACEMENT.codePointAt(0))).isTrue();
        assertThat(Typeface.has(0x4E2D)).isFalse();
    }
}
