package benchtwin.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import benchtwin.bench.OpenBook;
import benchtwin.bench.Workshop;
import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** {@code benchtwin gauge}: what the readings in a book show of its gauges, and what is used once it is accepted. */
class GaugeCommandTest {

    /** JSON numbers are rounded to six decimals. */
    private static final double ROUNDED = 1e-6;

    @TempDir
    private Path folder;
    private AtTheBook book;

    @BeforeEach
    void readTwoIronsOnTwoGauges() {
        book = new AtTheBook(folder.resolve("gauges.book"));
        for (String tag : new String[] {"I-7", "I-8"}) {
            book.done("club", "add", tag, "--player", "N. Oakes", "--category", "iron", "--number", tag.substring(2), "--hand", "right");
        }
        book.done("club", "record", "I-7", "loft=34.0", "loft=34.2", "loft=34.4", "loft=34.2", "--gauge", "old", "--on", "2026-04-01");
        book.done("club", "record", "I-8", "loft=38.1", "loft=38.3", "loft=38.2", "--gauge", "old", "--on", "2026-04-01");
        book.done("gauge", "add", "old", "--kind", "loft-and-lie");
        book.done("gauge", "add", "new", "--kind", "loft-and-lie", "--uncertainty", "loft=0.1");
    }

    @Test
    void repeatabilityIsThePooledScatterWithinParts() {
        // by hand: squares about the two means 0.08 and 0.02, 3 + 2 degrees of freedom
        JsonNode loft = check("old").path("quantities").get(0);
        assertThat(loft.path("quantity").asText()).isEqualTo("loft_deg");
        assertThat(loft.path("repeatability").path("standardUncertainty").asDouble()).isCloseTo(Math.sqrt(0.10 / 5), within(ROUNDED));
        assertThat(loft.path("repeatability").path("degreesOfFreedom").asInt()).isEqualTo(5);
    }

    @Test
    void anOffsetIsProposedAndUsedOnlyOnceItIsAccepted() {
        book.done("club", "record", "I-7", "loft=34.8", "--gauge", "new", "--on", "2026-04-02", "--found");
        JsonNode before = compare();
        assertThat(before.path("values").get(0).path("difference").asDouble()).as("as read").isCloseTo(0.6, within(ROUNDED));
        assertThat(before.path("remarks").toString()).contains("what they read apart is not known");
        JsonNode offset = check("new").path("quantities").get(0).path("offsets").get(0);
        assertThat(offset.path("against").asText()).isEqualTo("old");
        assertThat(offset.path("offset").asDouble()).as("34.8 less the mean of 34.0 to 34.4").isCloseTo(0.6, within(ROUNDED));
        assertThat(compare()).as("proposed only").isEqualTo(before);
        book.done("gauge", "check", "new", "--accept", "--against", "old");
        JsonNode after = compare();
        assertThat(after.path("values").get(0).path("difference").asDouble()).as("carried to one gauge").isCloseTo(0, within(ROUNDED));
        assertThat(after.path("values").get(0).path("beyondUncertainty").asBoolean()).isFalse();
        assertThat(after.path("values").get(0).path("gauges").toString()).contains("old", "new");
        assertThat(after.path("remarks")).isEmpty();
        book.done("stock", "audit");
    }

    @Test
    void aReadingIsTrustedAsFarAsItsGaugeIs() {
        book.done("club", "record", "I-8", "lie=62.5", "loft=38.2", "--gauge", "new");
        JsonNode measures = book.done("club", "show", "I-8", "--json").json().path("measures");
        assertThat(measures.get(0).path("uncertainty").asDouble()).as("loft, as stated of the gauge").isEqualTo(0.1);
        assertThat(measures.get(1).path("uncertainty").asDouble()).as("lie, of which nothing is stated").isEqualTo(0.2);
    }

    @Test
    void theStockIsCarriedToOneGaugeOnceAnOffsetIsAccepted() throws Exception {
        book.done("club", "record", "I-7", "loft=34.8", "--gauge", "new", "--on", "2026-04-02");
        assertThat(loftOfTheStock()).isCloseTo(34.8, within(ROUNDED));
        book.done("gauge", "check", "new", "--accept", "--against", "old");
        assertThat(loftOfTheStock()).as("0.6 less, as the old gauge reads").isCloseTo(34.2, within(ROUNDED));
    }

    private double loftOfTheStock() throws Exception {
        return Workshop.of(OpenBook.open(Optional.of(book.book()), Optional.empty()), Optional.empty(), true).club("I-7").newest()
            .angles().orElseThrow().loftDeg().orElseThrow().value();
    }

    @Test
    void anOffsetTheOtherWayRoundTakesTheFirstOnesPlace() {
        book.done("club", "record", "I-7", "loft=34.8", "--gauge", "new", "--on", "2026-04-02", "--found");
        book.done("gauge", "check", "new", "--accept", "--against", "old");
        book.done("gauge", "check", "old", "--accept", "--against", "new");
        JsonNode gauges = book.done("gauge", "list", "--json").json().path("gauges");
        long offsets = java.util.stream.StreamSupport.stream(gauges.spliterator(), false)
            .flatMap(gauge -> java.util.stream.StreamSupport.stream(gauge.path("figures").spliterator(), false))
            .filter(figure -> figure.has("offset")).count();
        assertThat(offsets).as("the same readings count once").isEqualTo(1);
    }

    @Test
    void readingsBeforeAndAfterABendAreNotHeldTogether() {
        book.done("club", "record", "I-7", "loft=36.0", "--gauge", "new", "--head", "H-1");
        book.done("club", "record", "I-7", "loft=36.0", "--gauge", "new", "--head", "H-2");
        Typed check = book.words("gauge", "check", "new");
        assertThat(check.out()).contains("too few repeat readings");
        assertThat(check.out()).as("another head is another club to a gauge").contains("reads");
    }

    @Test
    void aGaugeWithTooFewReadingsSaysSo() {
        book.done("club", "record", "I-7", "lie=62", "--gauge", "new");
        Typed check = book.words("gauge", "check", "new");
        assertThat(check.status()).isEqualTo(Main.NOTHING_SUITABLE);
        assertThat(check.out()).contains("too few repeat readings of lie on new to say");
        assertThat(book.words("gauge", "check", "new", "--accept").err()).contains("nothing of new can be accepted");
        assertThat(book.words("gauge", "check", "none").err()).contains("no gauge is called none in the book");
        assertThat(book.words("gauge", "add", "x", "--kind", "thermometer").err()).contains("expected loft-and-lie, face, scale");
    }

    @Test
    void aCheckThatIsDueIsSaid() {
        book.done("gauge", "add", "old", "--checked", "2020-01-01", "--every", "30");
        assertThat(book.done("gauge", "list").out()).contains("old, loft and lie gauge, checked 2020-01-01, a check is due");
    }

    private JsonNode check(String gauge) {
        return book.done("gauge", "check", gauge, "--json").json();
    }

    private JsonNode compare() {
        return ((com.fasterxml.jackson.databind.node.ObjectNode) book.done("club", "compare", "I-7", "--as-of", "2026-04-01",
            "--known-now", "--json").json()).without("version");
    }
}
