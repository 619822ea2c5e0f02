package benchtwin.match;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

class BelowTheLineTest {

    private static Ranked option(int rank, double cost) {
        return new Ranked(rank, null, null, null, null, null, null, null, null, null, cost, 0, 0, null, List.of(), List.of(),
            List.of(), List.of(), null);
    }

    @Test
    void aPromisedOptionSaysWhichResultItWouldStandBefore() {
        List<Ranked> results = List.of(option(1, 0.04), option(2, 0.09), option(3, 0.16));
        assertThat(new MatchAnswer.Below(option(0, 0.01), "promised").nearerThan(results)).hasValue(1);
        assertThat(new MatchAnswer.Below(option(0, 0.1), "promised").nearerThan(results)).hasValue(3);
        assertThat(new MatchAnswer.Below(option(0, 0.16), "promised").nearerThan(results)).as("as near is not nearer")
            .isEqualTo(OptionalInt.empty());
        assertThat(new MatchAnswer.Below(option(0, 0.16), "promised").nearerThan(List.of())).isEmpty();
    }
}
