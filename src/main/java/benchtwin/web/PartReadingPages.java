package benchtwin.web;

import benchtwin.bench.BadInput;
import benchtwin.bench.ColumnText;
import benchtwin.bench.GaugeBook;
import benchtwin.bench.OpenBook;
import benchtwin.bench.PartReadings;
import benchtwin.bench.StockViews;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** A reading of a part, with the number pad. */
final class PartReadingPages implements Routes {

    private static final String VALUE = "value";
    private static final String HOW = "how-";

    private final Site site;

    PartReadingPages(Site site) {
        this.site = site;
    }

    @Override
    public void add(RoutesConfig routes) {
        routes.get("/stock/{tag}/read", PartReadingPages::chosen);
        routes.get("/stock/{tag}/read/{quantity}", ctx -> show(ctx, Draft.empty(site.book().lastEntry())));
        routes.post("/stock/{tag}/read/{quantity}", ctx -> Entering.post(site, ctx, (form, book) -> enter(ctx, form, book),
            draft -> show(ctx, draft)));
    }

    /** The list on the part's page names a quantity. */
    private static void chosen(Context ctx) throws BadInput {
        ctx.redirect("/stock/%s/read/%s".formatted(FindPages.encoded(ctx.pathParam("tag")), FindPages.encoded(Form.query(ctx)
            .need("quantity", "what is read"))));
    }

    private void show(Context ctx, Draft draft) throws BadInput {
        PartReadings.Ask ask = PartReadings.ask(site.book(), ctx.pathParam("tag"), ctx.pathParam("quantity"));
        site.page(ctx, "partRead", "%s of %s %s".formatted(ColumnText.name(ask.quantity()), ask.part().kind(), ask.part().tag()),
            Section.STOCK, Map.of("ask", ask, "draft", draft, "gauges", GaugeBook.list(site.book())));
    }

    private Entering.Outcome enter(Context ctx, Form form, OpenBook book) throws BadInput {
        StockViews.Part part = StockViews.show(site.book(), ctx.pathParam("tag")).part();
        String quantity = ctx.pathParam("quantity");
        Map<String, String> condition = new LinkedHashMap<>();
        form.typed().keySet().stream().filter(name -> name.startsWith(HOW)).forEach(name -> form.text(name).ifPresent(text ->
            condition.put(name.substring(HOW.length()), text)));
        PartReadings.Read read = new PartReadings.Read(quantity, form.need(VALUE, ColumnText.name(quantity)), condition,
            form.text("gauge"), form.day("on", "the day"), form.text("note"));
        List<String> odd = PartReadings.questions(site.book(), part.fullTag(), read);
        String answer = "%s %s".formatted(quantity, read.value());
        if (!odd.isEmpty() && !Entering.isSo(form, answer)) {
            return Entering.Outcome.asked(odd, answer);
        }
        PartReadings.Entered entered = PartReadings.read(book.asSeen(Entering.seen(form).part(part.fullTag())), part.fullTag(), read);
        List<String> said = new ArrayList<>(List.of(entered.words() + " is entered."));
        said.addAll(entered.remarks());
        return Entering.Outcome.done("/stock/" + FindPages.encoded(part.fullTag()), said);
    }
}
