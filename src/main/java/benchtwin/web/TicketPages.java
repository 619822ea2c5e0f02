package benchtwin.web;

import benchtwin.bench.BadInput;
import benchtwin.bench.JobTicket;
import benchtwin.bench.OpenBook;
import benchtwin.bench.ResinShelf;
import benchtwin.bench.TicketFile;
import benchtwin.bench.TicketWish;
import benchtwin.ticket.Paper;
import benchtwin.ticket.Ticket;
import benchtwin.ticket.TicketPage;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** A job's ticket, to be printed. */
final class TicketPages implements Routes {

    private final Site site;

    TicketPages(Site site) {
        this.site = site;
    }

    @Override
    public void add(RoutesConfig routes) {
        routes.get("/jobs/{number}/ticket", this::choose);
        routes.get("/jobs/{number}/ticket.pdf", ctx -> ticket(ctx, true));
        routes.get("/jobs/{number}/ticket.html", ctx -> ticket(ctx, false));
    }

    /** Paper, resin and start. */
    private void choose(Context ctx) throws BadInput {
        String number = ctx.pathParam("number");
        List<String> resins = ResinShelf.names(site.book());
        Ticket ticket = JobTicket.of(site.book(), number, usual(site.book()));
        site.page(ctx, "ticketWish", "Ticket of job " + ticket.job(), Section.NONE, Map.of("ticket", ticket, "resins", resins));
    }

    /** What a ticket is made with where nothing is said: the first resin, no temperature, work that begins now. */
    static TicketWish usual(OpenBook book) throws BadInput {
        return new TicketWish(ResinShelf.choose(book, Optional.empty(), ResinShelf.names(book).stream().findFirst(), new ArrayList<>()),
            OptionalDouble.empty(), Optional.empty());
    }

    private void ticket(Context ctx, boolean pdf) throws BadInput {
        Form form = Form.query(ctx);
        Optional<String> warm = form.text("temperature");
        Optional<String> from = form.text("start").map(text -> text.replace('T', ' '));
        OptionalDouble temperature = warm.isEmpty() ? OptionalDouble.empty()
            : OptionalDouble.of(TicketWish.celsius(warm.get(), "temperature"));
        Optional<LocalDateTime> start = from.isEmpty() ? Optional.empty()
            : Optional.of(TicketWish.start(from.get(), LocalDate.now(), "start"));
        Ticket ticket = JobTicket.of(site.book(), ctx.pathParam("number"), new TicketWish(ResinShelf.choose(site.book(), Optional.empty(),
            form.text("resin"), new ArrayList<>()), temperature, start));
        TicketPage.File file = TicketFile.page(ticket, form.choice("paper", "paper", Paper.values()).orElse(Paper.A4), pdf);
        if (pdf) {
            Printed.pdf(ctx, file.bytes(), "job-%s.pdf".formatted(ticket.job()));
        } else {
            Printed.page(ctx, file.bytes());
        }
    }
}
