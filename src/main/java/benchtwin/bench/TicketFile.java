package benchtwin.bench;

import benchtwin.ticket.Paper;
import benchtwin.ticket.Ticket;
import benchtwin.ticket.TicketPage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Writes tickets into files. */
public final class TicketFile {

    private TicketFile() {
    }

    /**
     * Says whether a file can be written, before anything is worked out.
     * @param file      where to
     * @param overwrite whether it may be written over
     * @throws BadInput when it cannot, or is there already
     */
    public static void check(Path file, boolean overwrite) throws BadInput {
        Path folder = file.toAbsolutePath().getParent();
        if (folder != null && !Files.isDirectory(folder)) {
            throw new BadInput("%s cannot be written: there is no folder %s".formatted(file, folder));
        }
        if (Files.isDirectory(file)) {
            throw new BadInput("%s is a folder; expected the name of a file".formatted(file));
        }
        if (!overwrite && Files.exists(file)) {
            throw new BadInput("%s is there already; write over it with --overwrite, or name another with --pdf".formatted(file));
        }
    }

    /**
     * Writes a ticket.
     * @param ticket the ticket
     * @param paper  the paper
     * @param file   a path that {@link #check} let through
     * @param pdf    as PDF; otherwise as a page for a browser
     * @return how many sheets of paper it takes
     * @throws BadInput when it cannot be written, or there are no fonts to draw with
     */
    public static int write(Ticket ticket, Paper paper, Path file, boolean pdf) throws BadInput {
        TicketPage.File page = page(ticket, paper, pdf);
        try {
            Files.write(file, page.bytes());
            return page.pages();
        } catch (IOException unwritable) {
            throw new BadInput("%s cannot be written: %s".formatted(file, unwritable.getMessage()));
        }
    }

    /**
     * Lays a ticket out.
     * @param ticket the ticket
     * @param paper  the paper
     * @param pdf    as PDF; otherwise as a page for a browser, UTF-8
     * @return what stands in the file
     * @throws BadInput when there are no fonts to draw with
     */
    public static TicketPage.File page(Ticket ticket, Paper paper, boolean pdf) throws BadInput {
        try {
            return pdf ? TicketPage.pdf(ticket, paper) : TicketPage.html(ticket, paper);
        } catch (IllegalStateException noFonts) {
            throw new BadInput("the ticket was not printed: " + noFonts.getMessage());
        }
    }
}
