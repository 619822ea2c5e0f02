package benchtwin.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** {@code benchtwin label} as somebody types it; what is on the sheets is read back with PDFBox. */
class LabelCommandTest {

    @TempDir
    private Path folder;

    private Path out() {
        return folder.resolve("labels.pdf");
    }

    private String printed() throws IOException {
        try (PDDocument document = Loader.loadPDF(out().toFile())) {
            return new PDFTextStripper().getText(document).replace('\u00a0', ' ');
        }
    }

    @Test
    void tagsArePrintedWithWhatTheyAre() throws IOException {
        Typed typed = Typed.line("label h-014 S-234 OAKES-DR --out " + out()).fitsThePage();
        assertThat(typed.status()).isEqualTo(Main.DONE);
        assertThat(typed.out().replaceAll("\\s+", " ")).contains("3 labels on 1 sheet a4-3x7 in " + out(), "next time begin with --from 4.");
        assertThat(printed().replaceAll("\\s+", " ")).contains("H-014", "Alder 2 driver, right", "loft 9.4°", "takes sleeve lock-2", "driver drawer 1", "S-234",
            "OAKES-DR", "N. Oakes");
    }

    @Test
    void kindAndPlaceChoose() throws IOException {
        Typed typed = Typed.line("label --kind heads --place \"DRIVER drawer 1\" --sheet A4-5x13 --from 64 --copies 2 --json --out " + out());
        JsonNode json = typed.json();
        assertThat(json.get("of").size()).isGreaterThan(3);
        assertThat(json.get("of").toString()).contains("head:H-014").doesNotContain("shaft:");
        assertThat(json.get("said").asText()).startsWith(json.get("of").size() * 2 + " labels on 2 sheets a4-5x13 in ");
        assertThat(printed().split("H-014", -1)).as("two copies").hasSize(3);
    }

    @Test
    void whatIsPutDownAsPrintedIsNewNoMore() throws IOException {
        AtTheBook book = AtTheBook.imported(folder);
        String file = out().toString();
        assertThat(book.done("label", "H-014", "OAKES-DR", "--mark", "--out", file).out()).contains("put down as printed");
        assertThat(book.words("label", "H-014", "--new", "--out", file).status()).isEqualTo(Main.NOTHING_SUITABLE);
        Typed left = book.done("label", "--kind", "head,club", "--new", "--json", "--out", file);
        JsonNode of = new ObjectMapper().readTree(left.out()).get("of");
        assertThat(of.toString()).contains("\"head:H-015\"").doesNotContain("\"head:H-014\"", "\"club:OAKES-DR\"");
        assertThat(book.done("stock", "show", "H-014").out()).contains("label printed");
        assertThat(book.done("stock", "audit").out()).isNotBlank();
        Path export = folder.resolve("export");
        book.done("stock", "export", export.toString());
        assertThat(Typed.on(export, "label H-014 --out " + file).status()).as("what is exported can be read again").isEqualTo(Main.DONE);
        book.done("stock", "import", export.toString());
        assertThat(book.words("label", "H-014", "--new", "--out", file).status()).as("still printed").isEqualTo(Main.NOTHING_SUITABLE);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "label | name the tags, or say which with --kind, --place or --new",
        "label H-9999 | nothing here is tagged H-9999; nearest are H-",
        "label --kind boots | \"boots\" is nothing that has a label; expected one of head, shaft, grip, sleeve, weight, club",
        "label H-014 --sheet a5-1x1 | --sheet \"a5-1x1\" is not known; expected one of a4-2x7, a4-3x7, ",
        "label H-014 --from 22 | --from 22: a sheet a4-3x7 has labels 1 to 21",
        "label H-014 --from 0 | --from 0: a sheet a4-3x7 has labels 1 to 21",
        "label H-014 --copies 0 | --copies 0: expected 1 to 100",
        "label H-014 --shift 1 | --shift \"1\": expected millimetres to the right and down, at most 20, such as 1.5,-0.5",
        "label H-014 --shift 1,21 | --shift \"1,21\": expected millimetres",
        "label H-014 --new | --new and --mark go with the book",
        "label H-014 --mark | --new and --mark go with the book",
        "label H-014 --out x.doc | \"x.doc\" does not say which file it is to be; expected a name ending in .pdf"})
    void whatCannotBeIsRefused(String line, String message) {
        Typed typed = Typed.line(line + (line.contains("--out") ? "" : " --out " + out()));
        assertThat(typed.status()).isEqualTo(Main.BAD_INPUT);
        assertThat(typed.err().replaceAll("\\s+", " ")).contains(message);
        assertThat(Files.exists(out())).isFalse();
    }

    @Test
    void nothingAsAskedPrintsNothing() {
        Typed typed = Typed.line("label --kind head --place \"no such drawer\" --out " + out());
        assertThat(typed.status()).isEqualTo(Main.NOTHING_SUITABLE);
        assertThat(typed.out()).contains("Nothing is as asked: no label was printed.");
        assertThat(Files.exists(out())).isFalse();
    }

    @Test
    void theSheetsAreListed() {
        Typed typed = Typed.line("label --sheets").fitsThePage();
        assertThat(typed.out()).contains("a4-3x7", "63.5 × 38.1", "letter-3x10", "215.9 × 279.4 mm");
        assertThat(Typed.line("label --sheets --plain").out().chars()).allMatch(c -> c < 128);
    }
}
