package benchtwin.web;

import benchtwin.bench.BadInput;
import benchtwin.bench.ClubBook;
import benchtwin.bench.ClubViews;
import benchtwin.bench.GaugeBook;
import benchtwin.bench.OddReading;
import benchtwin.bench.OpenBook;
import benchtwin.bench.Sitting;
import benchtwin.club.Quantity;
import benchtwin.club.QuantityText;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A reading of a club, with the number pad. */
final class ReadingPages implements Routes {

    private static final String ACCEPT = "accept";

    private final Site site;

    ReadingPages(Site site) {
        this.site = site;
    }

    @Override
    public void add(RoutesConfig routes) {
        routes.get("/clubs/{tag}/read/{quantity}", ctx -> show(ctx, Draft.empty(site.book().lastEntry())));
        routes.post("/clubs/{tag}/read/{quantity}", ctx -> Entering.post(site, ctx, (form, book) -> enter(ctx, form, book),
            draft -> show(ctx, draft)));
    }

    private static Quantity quantity(Context ctx) throws BadInput {
        String word = ctx.pathParam("quantity");
        return Readings.named(word).orElseThrow(() -> new BadInput("\"%s\" is not read of a whole club".formatted(word)));
    }

    private void show(Context ctx, Draft draft) throws BadInput {
        Quantity quantity = quantity(ctx);
        ClubViews.Club club = ClubViews.show(site.book(), ctx.pathParam("tag"), ClubViews.When.NOW);
        site.page(ctx, "read", "%s of %s".formatted(QuantityText.name(quantity), club.tag()), Section.PLAYERS, Map.of("club", club,
            "quantity", quantity, "draft", draft, "last", Optional.ofNullable(club.values().get(quantity)), "should",
            Optional.ofNullable(club.accepted().get(quantity)), "gauges", GaugeBook.list(site.book())));
    }

    private Entering.Outcome enter(Context ctx, Form form, OpenBook book) throws BadInput {
        String tag = ctx.pathParam("tag");
        Quantity quantity = quantity(ctx);
        form.need(quantity.word(), QuantityText.name(quantity));
        Sitting sitting = Readings.of(form);
        List<String> odd = OddReading.questions(site.book(), tag, sitting);
        if (!odd.isEmpty() && !Entering.isSo(form, Readings.typed(form))) {
            return Entering.Outcome.asked(odd, Readings.typed(form));
        }
        boolean found = !form.text("as").equals(Optional.of(ACCEPT));
        ClubBook.Entered entered = ClubBook.record(book.asSeen(Entering.seen(form).club(tag)), tag, sitting, Map.of(), Optional.empty(),
            found);
        List<String> said = new ArrayList<>(List.of("%s %s is entered%s.".formatted(QuantityText.name(quantity), QuantityText.value(quantity,
            sitting.values().get(quantity).get(0)), found ? " as found" : "; what the club measures now is what it should")));
        said.addAll(entered.remarks());
        return Entering.Outcome.done("/clubs/" + FindPages.encoded(tag), said);
    }
}
