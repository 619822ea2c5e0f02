package benchtwin.web;

import benchtwin.bench.BadInput;
import benchtwin.bench.Corrections;
import benchtwin.bench.OpenBook;
import benchtwin.bench.Seen;
import benchtwin.bench.StockViews;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Puts one reading of a club or a part right, or takes it back. What it said stays in the history, with the reason. */
final class CorrectionPages implements Routes {

    private final Site site;

    CorrectionPages(Site site) {
        this.site = site;
    }

    /** Whose reading it is: how it is looked up, put right, and where its page is. */
    private record Of(String path, Corrections.Old old, Section section) {
    }

    @Override
    public void add(RoutesConfig routes) {
        for (String whose : List.of("/stock", "/clubs")) {
            boolean part = whose.equals("/stock");
            routes.get(whose + "/{tag}/correct/{reading}", ctx -> show(ctx, of(ctx, part), Draft.empty(site.book().lastEntry())));
            routes.post(whose + "/{tag}/correct/{reading}", ctx -> Entering.post(site, ctx, (form, book) -> enter(ctx, form, book, part),
                draft -> show(ctx, of(ctx, part), draft)));
        }
    }

    private Of of(Context ctx, boolean part) throws BadInput {
        String tag = ctx.pathParam("tag");
        return part ? new Of("/stock/" + FindPages.encoded(tag), Corrections.readOfPart(site.book(), tag, number(ctx)), Section.STOCK)
            : new Of("/clubs/" + FindPages.encoded(tag), Corrections.readOfClub(site.book(), tag, number(ctx)), Section.PLAYERS);
    }

    private static long number(Context ctx) throws BadInput {
        String typed = ctx.pathParam("reading");
        if (!typed.matches("\\d{1,18}")) {
            throw new BadInput("\"%s\" is no reading's number".formatted(typed));
        }
        return Long.parseLong(typed);
    }

    private void show(Context ctx, Of of, Draft draft) {
        site.page(ctx, "correct", "Reading %d of %s".formatted(of.old().id(), of.old().of()), of.section(), Map.of("path", of.path(), "old",
            of.old(), "draft", draft));
    }

    private Entering.Outcome enter(Context ctx, Form form, OpenBook book, boolean part) throws BadInput {
        String tag = ctx.pathParam("tag");
        boolean back = form.isTicked("back");
        Optional<String> value = back ? Optional.empty() : Optional.of(form.need("value", "what it should have said"));
        String why = form.text("why").orElse("");
        Seen seen = Entering.seen(form);
        Corrections.Corrected corrected = part
            ? Corrections.ofPart(book.asSeen(seen.part(StockViews.show(site.book(), tag).part().fullTag())), tag, number(ctx), value, why)
            : Corrections.ofClub(book.asSeen(seen.club(tag)), tag, number(ctx), value, why);
        return Entering.Outcome.done((part ? "/stock/" : "/clubs/") + FindPages.encoded(tag), List.of(corrected.now().isPresent()
            ? "%s %s is put right: %s. The old reading is kept.".formatted(corrected.what(), corrected.was(), corrected.now().get())
            : "%s %s is taken back. The old reading is kept.".formatted(corrected.what(), corrected.was())));
    }
}
