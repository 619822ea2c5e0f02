package benchtwin.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class HostCheckTest {

    private static final HostCheck HERE = new HostCheck(Access.here());
    private static final HostCheck NETWORK = new HostCheck(Access.network(PassphraseHash.of("four words of a test"), List.of("Bench.local")));

    @ParameterizedTest
    @ValueSource(strings = {"localhost", "localhost:8417", "LOCALHOST", "127.0.0.1:80", "[::1]", "[::1]:8417"})
    void theLoopbacksNamesAreOurs(String host) {
        assertThat(HERE.isOurs(host, "127.0.0.1")).isTrue();
        assertThat(NETWORK.isOurs(host, "127.0.0.1")).isTrue();
    }

    @ParameterizedTest
    @ValueSource(strings = {"", ":8417", "elsewhere.example", "localhost.elsewhere.example", "localhost@elsewhere.example", "127.0.0.1.elsewhere.example",
        "localhost:8417:80", "localhost:port", "127.0.0.2", "0.0.0.0", "[::]", "bench.local.", "2130706433", "[::ffff:192.0.2.5%25]"})
    void anyOtherIsNot(String host) {
        assertThat(HERE.isOurs(host, "127.0.0.1")).isFalse();
        assertThat(NETWORK.isOurs(host, "127.0.0.1")).isFalse();
    }

    @Test
    void noNameAtAllIsNot() {
        assertThat(HERE.isOurs(null, "127.0.0.1")).isFalse();
    }

    @Test
    void onTheNetworkTheAddressTheConnectionCameInOnIsOurs() {
        assertThat(NETWORK.isOurs("192.0.2.5:8417", "192.0.2.5")).isTrue();
        assertThat(NETWORK.isOurs("192.0.2.6:8417", "192.0.2.5")).isFalse();
        assertThat(HERE.isOurs("192.0.2.5", "192.0.2.5")).isFalse();
        assertThat(NETWORK.isOurs("[2001:db8::5]:8417", "2001:db8:0:0:0:0:0:5")).isTrue();
        assertThat(NETWORK.isOurs("[2001:db8::6]", "2001:db8:0:0:0:0:0:5")).isFalse();
    }

    @Test
    void onTheNetworkAGivenNameIsOurs() {
        assertThat(NETWORK.isOurs("bench.LOCAL:8417", "192.0.2.5")).isTrue();
        assertThat(HERE.isOurs("bench.local", "192.0.2.5")).isFalse();
    }

    @ParameterizedTest
    @CsvSource({"127.0.0.1, true", "127.8.9.1, true", "0:0:0:0:0:0:0:1, true", "[::1], true", "192.0.2.5, false", "2001:db8::5, false"})
    void knowsThisMachinesOwnConnections(String address, boolean loopback) {
        assertThat(HostCheck.isLoopback(address)).isEqualTo(loopback);
    }
}
