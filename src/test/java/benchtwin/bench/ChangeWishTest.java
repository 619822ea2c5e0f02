package benchtwin.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import benchtwin.bench.ChangeService.Amount;
import benchtwin.club.Quantity;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What one types into one field asks for what the command line's words ask for. */
class ChangeWishTest {

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
        loft +0.5              | loft=+0.5
        loft+0.5               | loft=+0.5
        Loft −0,5              | loft=-0.5
        loft +0.5°             | loft=+0.5
        loft=+0.5              | loft=+0.5
        lie 58                 | lie=58
        swing weight D2        | swing-weight=D2
        swing-weight D2.5      | swing-weight=D2.5
        length -1/4            | length=-1/4
        length 45 1/4          | length=45 1/4
        cpm 252                | frequency=252
        frequency +2 cpm       | frequency=+2
        total mass 310 g       | total-mass=310
        face to -0.5           | face=to:-0.5
        face to:-0.5           | face=to:-0.5
        """)
    void aLineAsOneSpeaksIsTheSameWish(String line, String words) throws BadInput {
        assertThat(ChangeWish.typed(line).amounts()).isEqualTo(ChangeWish.read(List.of(words)).amounts()).isNotEmpty();
    }

    @Test
    void severalStandBetweenCommas() throws BadInput {
        Map<Quantity, Amount> asked = Map.of(Quantity.LOFT, new Amount(0.5, true), Quantity.SWING_WEIGHT, new Amount(32, false),
            Quantity.LIE, new Amount(58, false));
        assertThat(ChangeWish.typed("loft +0,5, swing weight D2; lie=58").amounts()).isEqualTo(asked);
        assertThat(ChangeWish.typed("loft +0.5,swing weight D2 and lie 58").amounts()).isEqualTo(asked);
    }

    @Test
    void aGripGoesByTagOrByMass() throws BadInput {
        assertThat(ChangeWish.typed("grip G-012").gripTag()).contains("G-012");
        assertThat(ChangeWish.typed("grip +5 g").gripMass()).contains(new Amount(5, true));
        assertThat(ChangeWish.typed("grip 52").gripMass()).contains(new Amount(52, false));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", " , ", "loft", "colour red", "loft high", "lie 58, lie 59"})
    void whatCannotBeReadSaysSo(String line) {
        assertThatThrownBy(() -> ChangeWish.typed(line)).isInstanceOf(BadInput.class).message().isNotBlank();
    }
}
