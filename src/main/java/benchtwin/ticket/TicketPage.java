package benchtwin.ticket;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;

/**
 * A ticket on paper, or as a page for a browser, from one template. It is set in the largest letters with which it fits on one
 * sheet; what does not fit in the smallest goes on, in letters that can be read, on a second, and says so.
 */
public final class TicketPage {

    /** Sizes of letters, as parts of the usual one. Below the last nobody reads it at the bench; found by looking. */
    private static final List<Double> SIZES = List.of(1.3, 1.15, 1.0, 0.92, 0.85, 0.78, 0.72, 0.67);
    private static final double SIZE_OF_SEVERAL_PAGES = 0.78;

    private static final double SKETCH_MM = 130;

    private TicketPage() {
    }

    /**
     * A finished file.
     * @param bytes what stands in it
     * @param pages how many sheets of paper
     */
    public record File(byte[] bytes, int pages) {
    }

    /**
     * The ticket as PDF.
     * @param ticket the ticket
     * @param paper  the paper
     * @return one sheet, or as many as it needs
     */
    public static File pdf(Ticket ticket, Paper paper) {
        Fitted fitted = fit(ticket, paper);
        return new File(fitted.pdf().bytes(), fitted.pdf().pages());
    }

    /**
     * The ticket as a page for a browser, which prints it as the PDF is.
     * @param ticket the ticket
     * @param paper  the paper it is printed on
     * @return UTF-8
     */
    public static File html(Ticket ticket, Paper paper) {
        Fitted fitted = fit(ticket, paper);
        String page = filled(ticket, PaperText.forScreen(), paper, fitted.size(), fitted.pdf().pages());
        return new File(page.getBytes(StandardCharsets.UTF_8), fitted.pdf().pages());
    }

    private record Fitted(Pdf pdf, double size) {
    }

    private static Fitted fit(Ticket ticket, Paper paper) {
        Fitted best = null;
        int larger = 0;
        int end = SIZES.size();
        while (larger < end) {   // the largest that fits, by halves: laying a page out takes a while
            int middle = (larger + end) / 2;
            Pdf pdf = printed(ticket, paper, SIZES.get(middle), 1);
            if (pdf.pages() == 1) {
                best = new Fitted(pdf, SIZES.get(middle));
                end = middle;
            } else {
                larger = middle + 1;
            }
        }
        if (best != null) {
            return best;
        }
        int pages = printed(ticket, paper, SIZE_OF_SEVERAL_PAGES, 2).pages();
        return new Fitted(printed(ticket, paper, SIZE_OF_SEVERAL_PAGES, pages), SIZE_OF_SEVERAL_PAGES);
    }

    private static Pdf printed(Ticket ticket, Paper paper, double size, int pages) {
        PaperText text = PaperText.forPrint();
        return Pdf.of(filled(ticket, text, paper, size, pages),
            new Pdf.About(TicketFacts.title(ticket, text), ticket.made()));
    }

    private static String filled(Ticket ticket, PaperText text, Paper paper, double size, int pages) {
        return Templates.filled("ticket.jte", Map.of("ticket", ticket, "text", text, "styles", TicketStyle.of(paper, size),
            "sketchMm", Math.min(SKETCH_MM * size, paper.widthMm() - 2 * TicketStyle.MARGIN_MM), "pages", pages));
    }
}
