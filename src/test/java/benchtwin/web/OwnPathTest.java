package benchtwin.web;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class OwnPathTest {

    @ParameterizedTest
    @ValueSource(strings = {"/", "/players/N.%20Oakes", "/clubs/OAKES-DR/twin?keep=head&tol-loft=0.3", "/find?q=https://elsewhere.example/"})
    void pathsOfOursStayAsTheyAre(String path) {
        assertThat(OwnPath.of(path)).isEqualTo(path);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "players", "//elsewhere.example", "https://elsewhere.example/", "javascript:alert(1)", "/\\elsewhere.example",
        "\\\\elsewhere.example", "/\t/elsewhere.example", "/\n/elsewhere.example", "/\r\nSet-Cookie: a=b", " /", "/ /elsewhere.example",
        "/\u0000", "/\u2028/elsewhere.example"})
    void everythingElseGoesToTheFirstPage(String path) {
        assertThat(OwnPath.of(path)).isEqualTo("/");
    }
}
