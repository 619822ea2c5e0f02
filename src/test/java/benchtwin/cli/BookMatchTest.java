package benchtwin.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The sample workshop out of the book answers what it answers out of its files, letter for letter. */
class BookMatchTest {

    @TempDir
    private static Path folder;
    private static AtTheBook book;

    @BeforeAll
    static void theSampleWorkshop() {
        book = AtTheBook.samples(folder);
    }

    @ParameterizedTest
    @ValueSource(strings = {"match --club OAKES-DR", "match --club HARKWELL-DR --keep head --top 2",
        "match --club OAKES-DR --keep none --top 1", "shafts --club OAKES-DR --head H-014 --top 3",
        "shafts --club OAKES-DR --head H-014 --pick ladder --step 3", "shafts --profile S-001",
        "change --club SANDROW-DR swing-weight=+2 length=-1/4", "change --club QUILLBY-5I lie=+1",
        "predict --head H-110 --shaft S-234 --setting 4/4"})
    void sameAnswer(String line) throws Exception {
        Typed files = Typed.on(AtTheBook.workshop(), line + " --json");
        Typed there = book.type(line + " --json");
        assertThat(files.out()).isNotBlank();
        assertThat(there.out()).isEqualTo(files.out());
        assertThat(there.status()).isEqualTo(files.status());
    }

    @Test
    @Tag("slow")
    void samePlanOfSets() throws Exception {
        List<String> words = new ArrayList<>(List.of("set", "--targets", AtTheBook.workshop().resolve("set-targets.csv").toString(),
            "--players", "J. Quillby", "--rounds", "1", "--json"));
        Typed there = book.words(words.toArray(String[]::new));
        words.addAll(List.of("--stock", AtTheBook.workshop().toString()));
        assertThat(there.out()).isEqualTo(Typed.run(words).out());
    }

    @Test
    void theToleranceAPlayerPrefersStandsWhereNoneIsNamed(@TempDir Path own) {
        AtTheBook mine = AtTheBook.samples(own);
        mine.done("player describe \"N. Oakes\" --tolerance loft=0.15,length=1/32");
        var tolerance = mine.json("match --club OAKES-DR --top 1").get("target").get("tolerance");
        assertThat(tolerance.get("loftDeg").asDouble()).isEqualTo(0.15);
        assertThat(tolerance.get("lengthMm").asDouble()).isEqualTo(0.79375);
        var named = mine.json("match --club OAKES-DR --top 1 --tolerance loft=0.3").get("target").get("tolerance");
        assertThat(named.get("loftDeg").asDouble()).isEqualTo(0.3);
    }

    @Test
    void filesAndBookAtOnceAreRefused() {
        Typed typed = book.type("match --club OAKES-DR --stock inventory-samples");
        assertThat(typed.err()).contains("the stock is in the files that were named or in the book: leave out --book, or the files");
        assertThat(typed.status()).isEqualTo(Main.BAD_INPUT);
    }

    @Test
    void whatIsPromisedOutOfFilesIsRefused() {
        Typed typed = Typed.line("match --club OAKES-DR --promise");
        assertThat(typed.status()).isEqualTo(Main.BAD_INPUT);
        assertThat(typed.err()).contains("--promise");
        assertThat(typed.out()).isEmpty();
    }
}
