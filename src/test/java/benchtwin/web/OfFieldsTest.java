package benchtwin.web;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a service says of an option is said of the field of that name. */
class OfFieldsTest {

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '^', textBlock = """
        name one with --sleeve                          | name one in the field “sleeve”
        needs the grip it is built with: --grip TAG     | needs the grip it is built with in the field “grip”
        say why with --although "WORDS"; they are kept  | say why in the field “although”; they are kept
        give a limit and words: --limit 1 --although "WORDS" | give a limit and words in the field “limit” in the field “although”
        use --keep none, or record it                   | choose that it keeps nothing, or record it
        no head is tagged H-9                           | no head is tagged H-9
        """)
    void anOptionIsAField(String said, String shown) {
        assertThat(OfFields.said(said)).isEqualTo(shown);
    }
}
