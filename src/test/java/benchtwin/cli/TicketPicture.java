package benchtwin.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;

/** Draws the ticket that the README shows, from the sample workshop. DEVELOPERS.md says how it is run. */
final class TicketPicture {

    private static final int DPI = 80;

    private TicketPicture() {
    }

    /**
     * Draws it.
     * @param args the picture, a PNG
     * @throws IOException when it cannot be written
     */
    public static void main(String[] args) throws IOException {
        Path folder = Files.createTempDirectory("benchtwin-ticket");
        AtTheBook book = AtTheBook.samples(folder);
        book.type("match --club TOLVER-DR --top 1 --promise 1 --due \"2030-05-22 14:20\"");
        Path pdf = folder.resolve("ticket.pdf");
        book.done("ticket 1 --resins inventory-samples/resins.csv --resin slow --temperature 18C --start \"2030-05-20 09:00\" --pdf " + pdf);
        try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
            ImageIO.write(new PDFRenderer(document).renderImageWithDPI(0, DPI, ImageType.GRAY), "png", Path.of(args[0]).toFile());
        }
    }
}
