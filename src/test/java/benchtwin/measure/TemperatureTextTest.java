package benchtwin.measure;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class TemperatureTextTest {

    /** 64 °F is 17.778 °C, 32 °F is 0 °C, −40 is the same on both: the definition of the Fahrenheit scale, NIST SP 811. */
    @ParameterizedTest
    @CsvSource({"18, 18", "18C, 18", "18.5 °C, 18.5", "64F, 17.778", "32f, 0", "-40 F, -40", "−3C, -3"})
    void readsWhatPeopleWrite(String text, double celsius) {
        assertThat(TemperatureText.celsius(text)).hasValue(celsius);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "warm", "18K", "18 20", "C", "1e3"})
    void refusesTheRest(String text) {
        assertThat(TemperatureText.celsius(text)).isEmpty();
    }
}
