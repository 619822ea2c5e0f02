package benchtwin.samples;

import static org.assertj.core.api.Assertions.assertThat;

import benchtwin.club.Adjust;
import benchtwin.club.Hand;
import benchtwin.club.Head;
import benchtwin.club.Inventory;
import benchtwin.club.RecordedClub;
import benchtwin.club.Shaft;
import benchtwin.club.Sleeve;
import benchtwin.mechanics.SleeveSettings;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What stock for benchmarks and property tests promises. */
class StockGeneratorTest {

    private static final long SEED = 7;

    @Test
    void theSameSeedGivesTheSameStock() {
        assertThat(new StockGenerator(SEED).workshop(60, 20, 0.3)).isEqualTo(new StockGenerator(SEED).workshop(60, 20, 0.3))
            .isNotEqualTo(new StockGenerator(SEED + 1).workshop(60, 20, 0.3));
    }

    @Test
    void aLargerStockBeginsWithTheSmallerOne() {
        StockGenerator generator = new StockGenerator(SEED);
        assertThat(generator.heads(90, 0.5)).startsWith(generator.heads(30, 0.5).toArray(new Head[0]));
        assertThat(generator.shafts(40)).startsWith(generator.shafts(10).toArray(new Shaft[0]));
    }

    @Test
    void headsAreOfOneModelAndHandMeasuredAndSleevedInTheAskedShare() {
        List<Head> heads = new StockGenerator(SEED).heads(300, 1 / 3.0);
        assertThat(heads).hasSize(300).extracting(Head::tag).doesNotHaveDuplicates();
        assertThat(heads).extracting(Head::model).containsOnly("Alder 2");
        assertThat(heads).extracting(Head::hand).containsOnly(Hand.RIGHT);
        assertThat(heads).filteredOn(head -> head.adjust() == Adjust.SLEEVE).hasSize(100);
        assertThat(heads).filteredOn(head -> head.adjust() == Adjust.BEND).hasSize(200);
        assertThat(heads).allSatisfy(head -> {
            assertThat(head.massG()).isPresent();
            assertThat(head.angles().loftDeg()).isPresent();
            assertThat(head.angles().lieDeg()).isPresent();
            assertThat(head.angles().faceDeg()).isPresent();
            assertThat(head.keeping().reservedFor()).isEmpty();
        });
    }

    @Test
    void theRecordedClubHasItsPartsAndASleeveOfThirtySettings() {
        Inventory workshop = new StockGenerator(SEED).workshop(12, 5, 0.5);
        RecordedClub club = workshop.club(StockGenerator.CLUB).orElseThrow();
        Sleeve sleeve = workshop.sleeve(club.newest().sleeve().orElseThrow()).orElseThrow();
        assertThat(SleeveSettings.labels(sleeve)).hasSize(30);
        assertThat(workshop.head(club.newest().head().orElseThrow())).hasValueSatisfying(
            head -> assertThat(sleeve.fits(head)).isTrue());
        assertThat(workshop.shaft(club.newest().shaft().orElseThrow()).orElseThrow().sleeveOn()).hasValue(sleeve.name());
        assertThat(workshop.heads()).hasSize(13);
        assertThat(workshop.shafts()).hasSize(6);
    }
}
