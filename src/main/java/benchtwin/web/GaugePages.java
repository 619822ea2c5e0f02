package benchtwin.web;

import benchtwin.bench.BadInput;
import benchtwin.bench.GaugeBook;
import benchtwin.bench.GaugeCheck;
import benchtwin.bench.OpenBook;
import benchtwin.club.Quantity;
import benchtwin.club.QuantityText;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The workshop's gauges: how far each is trusted, what its readings show, what it reads apart from others. */
final class GaugePages implements Routes {

    private final Site site;

    GaugePages(Site site) {
        this.site = site;
    }

    @Override
    public void add(RoutesConfig routes) {
        routes.get("/gauges", ctx -> list(ctx, Draft.empty(site.book().lastEntry())));
        routes.post("/gauges", ctx -> Entering.post(site, ctx, GaugePages::add, draft -> list(ctx, draft)));
        routes.get("/gauges/{name}", ctx -> show(ctx, Draft.empty(site.book().lastEntry())));
        routes.post("/gauges/{name}", ctx -> Entering.post(site, ctx, (form, book) -> describe(ctx, form, book), draft -> show(ctx, draft)));
        routes.post("/gauges/{name}/accept", ctx -> Entering.post(site, ctx, (form, book) -> accept(ctx, form, book),
            draft -> show(ctx, draft)));
    }

    private void list(Context ctx, Draft draft) throws BadInput {
        site.page(ctx, "gauges", "Gauges", Section.NONE, Map.of("gauges", GaugeBook.list(site.book()), "draft", draft));
    }

    private void show(Context ctx, Draft draft) throws BadInput {
        GaugeBook.Standing gauge = GaugeBook.show(site.book(), ctx.pathParam("name"));
        site.page(ctx, "gauge", gauge.name(), Section.NONE, Map.of("gauge", gauge, "checked", GaugeCheck.of(site.book(), gauge.name()),
            "draft", draft));
    }

    private static Entering.Outcome add(Form form, OpenBook book) throws BadInput {
        String name = form.need("name", "the gauge's name");
        if (GaugeBook.list(book).stream().anyMatch(gauge -> gauge.name().equalsIgnoreCase(name))) {
            throw new BadInput("a gauge called %s is in the book already: choose it in the list".formatted(name));
        }
        GaugeBook.Kind kind = form.choice("kind", "what it is", GaugeBook.Kind.values()).orElseThrow(() -> new BadInput("what it is, is missing"));
        String added = GaugeBook.describe(book, new GaugeBook.Described(name, Optional.of(kind), Map.of(), Map.of(), Optional.empty(),
            Optional.empty()));
        return Entering.Outcome.done(path(added), List.of("Gauge %s is in the book.".formatted(added)));
    }

    private Entering.Outcome describe(Context ctx, Form form, OpenBook book) throws BadInput {
        GaugeBook.Standing gauge = GaugeBook.show(site.book(), ctx.pathParam("name"));
        Optional<Double> every = form.number("every", "how often it wants checking");
        if (every.filter(days -> days != Math.rint(days)).isPresent()) {
            throw new BadInput("how often it wants checking: expected whole days");
        }
        GaugeBook.Described described = new GaugeBook.Described(gauge.name(), form.choice("kind", "what it is", GaugeBook.Kind.values()),
            columns(form, "u-", "the standard uncertainty of ", gauge.quantities()), columns(form, "mark-", "the marks of ", gauge.quantities()),
            form.day("checked", "the day it was checked"), GaugeBook.interval("how often it wants checking,", every.map(Double::intValue)));
        GaugeBook.describe(book.asSeen(Entering.seen(form).gauge(gauge.name())), described);
        return Entering.Outcome.done(path(gauge.name()), List.of("What is known of %s is put down.".formatted(gauge.name())));
    }

    /** Figures above 0, by the names the book keeps them under. */
    private static Map<String, Double> columns(Form form, String before, String called, List<Quantity> quantities) throws BadInput {
        Map<String, Double> columns = new LinkedHashMap<>();
        for (Quantity quantity : quantities) {
            Optional<Double> typed = form.number(before + quantity.word(), called + QuantityText.name(quantity));
            if (typed.filter(figure -> !(figure > 0)).isPresent()) {
                throw new BadInput("%s%s: %s is not above 0".formatted(called, QuantityText.name(quantity), form.text(before + quantity.word())
                    .orElse("")));
            }
            typed.ifPresent(figure -> GaugeBook.columns(quantity).forEach(column -> columns.put(column, figure)));
        }
        return columns;
    }

    /** What is accepted is what was looked at, or nothing. */
    private Entering.Outcome accept(Context ctx, Form form, OpenBook book) throws BadInput {
        String name = ctx.pathParam("name");
        GaugeCheck.Checked checked = GaugeCheck.of(site.book(), name);
        if (!form.text("found").equals(Optional.of(checked.key()))) {
            throw new BadInput("nothing was accepted: more was read since you opened the page. What the readings show now is below");
        }
        int figures = GaugeCheck.accept(book.asSeen(Entering.seen(form).gauge(name)), checked, form.text("against"));
        return Entering.Outcome.done(path(checked.gauge()), List.of("%d figure%s used from now on.".formatted(figures,
            figures == 1 ? " is" : "s are")));
    }

    private static String path(String name) {
        return "/gauges/" + FindPages.encoded(name);
    }
}
