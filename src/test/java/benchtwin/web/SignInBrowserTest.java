package benchtwin.web;

import java.time.Clock;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;

/** A tablet on the workshop's network signs in and out. */
@Tag("browser")
class SignInBrowserTest {

    private static final String WORDS = "lantern gravel seven spoons";

    @RegisterExtension
    static final WebBook PAGES = new WebBook(Access.network(PassphraseHash.of(WORDS), List.of()), Clock.systemUTC(), List.of());
    @RegisterExtension
    static final Browser BROWSER = Browser.at(PAGES);

    /** As if another machine asked. */
    @BeforeEach
    void fromElsewhere() {
        BROWSER.driver().executeCdpCommand("Network.enable", Map.of());
        BROWSER.driver().executeCdpCommand("Network.setExtraHTTPHeaders", Map.of("headers", Map.of("Via", "1.1 tablet")));
    }

    @Test
    void inWithThePassphraseAndOutAgain() {
        BROWSER.open("/players").landsOn("/sign-in.*").sees("travels in the clear");
        Look.asItStands(BROWSER, "sign-in");
        BROWSER.type("Passphrase", "some other words").press("Sign in").sees("That is not the passphrase");
        BROWSER.type("Passphrase", WORDS).press("Sign in").landsOn("/players").sees("N. Oakes");
        Look.asItStands(BROWSER, "signed-in");
        BROWSER.press("Sign out").landsOn("/sign-in");
        BROWSER.open("/players").landsOn("/sign-in.*");
    }
}
