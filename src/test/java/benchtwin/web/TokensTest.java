package benchtwin.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class TokensTest {

    private final Tokens tokens = new Tokens();

    @Test
    void aTokenBelongsToOneBrowserOfOneRun() {
        String own = tokens.identity();
        String other = tokens.identity();
        assertThat(tokens.belong(tokens.of(own), own)).isTrue();
        assertThat(tokens.belong(tokens.of(other), own)).isFalse();
        assertThat(new Tokens().belong(tokens.of(own), own)).isFalse();
    }

    @Test
    void whoKnowsTheCookieHasNoToken() {
        String own = tokens.identity();
        assertThat(tokens.belong(own, own)).isFalse();
        assertThat(tokens.belong("", own)).isFalse();
        assertThat(tokens.belong(null, own)).isFalse();
        assertThat(tokens.belong(tokens.of(own) + "x", own)).isFalse();
    }

    @Test
    void identitiesAreLongAndNeverTheSame() {
        assertThat(IntStream.range(0, 1000).mapToObj(k -> tokens.identity())).doesNotHaveDuplicates().allMatch(Tokens::isIdentity);
        assertThat(Tokens.isIdentity(null)).isFalse();
        assertThat(Tokens.isIdentity("short")).isFalse();
        assertThat(Tokens.isIdentity("x".repeat(42) + ";")).isFalse();
    }
}
