package benchtwin.web;

import benchtwin.bench.BagGrid;
import benchtwin.bench.ClubViews;
import benchtwin.bench.Sitting;
import benchtwin.club.LengthMethod;
import benchtwin.club.Quantity;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;

/** A player, the player's whole bag, a new club. */
@Tag("browser")
class PlayerBrowserTest {

    @RegisterExtension
    static final WebBook PAGES = new WebBook();
    @RegisterExtension
    static final Browser BROWSER = Browser.at(PAGES);

    @Test
    void aBagThatDriftedIsPutRight() throws Exception {
        double loft = ClubViews.show(PAGES.book(), "QUILLBY-7I", ClubViews.When.NOW).values().get(Quantity.LOFT).value();
        BagGrid.enter(PAGES.book(), "J. Quillby", Map.of("QUILLBY-7I", sitting(Map.of(Quantity.LOFT, List.of(loft - 1.2))),
            "QUILLBY-DR", sitting(Map.of(Quantity.FREQUENCY, List.of(238.0)))), false);
        BROWSER.open("/players").press("J. Quillby").sees("QUILLBY-PT").press("The whole bag");
        BROWSER.sees("−1.20° drifted").sees("Bend loft 1.2° weak, then read.").sees("frequency does not drift by itself");
        BROWSER.sees("never bend a cracked or unknown head");
        Look.asItStands(BROWSER, "bag");
        Look.at(BROWSER, "bag-club", "/players/J.%20Quillby/bag/QUILLBY-7I");
    }

    @Test
    void aPlayerWithANoteAndANewClub() {
        Look.at(BROWSER, "players", "/players");
        BROWSER.type("Name", "O. Brackenside").press("Put into the book").landsOn("/players/O\\.%20Brackenside\\?said=\\d+");
        BROWSER.type("A note", "likes a firm step").press("Keep the note").sees("The note on player O. Brackenside is kept.").sees("likes a firm step");
        Look.asItStands(BROWSER, "player");
        BROWSER.press("Add a club");
        Look.asItStands(BROWSER, "new-club");
        BROWSER.type("Club's tag", "BRACKENSIDE-7I").choose("Category", "iron").type("Number", "7").type("loft", "34.1").type("lie", "620");
        BROWSER.press("Put into the book").sees("lie of 620.0°: expected 40.0° to 85.0°");
        BROWSER.type("lie", "62").press("Put into the book").landsOn("/clubs/BRACKENSIDE-7I\\?said=\\d+").sees("34.10°").sees("62.00°");
        BROWSER.press("O. Brackenside").sees("BRACKENSIDE-7I");
    }

    private static Sitting sitting(Map<Quantity, List<Double>> values) {
        return new Sitting(values, Optional.empty(), LengthMethod.AXIS, Optional.empty(), OptionalDouble.of(127), true, Optional.empty(),
            Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());
    }
}
