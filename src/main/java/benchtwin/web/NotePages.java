package benchtwin.web;

import benchtwin.bench.BadInput;
import benchtwin.bench.NoteBook;
import benchtwin.bench.OpenBook;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.List;
import java.util.Map;

/** A note on anything. Notes are only ever added, so two people may write one each. */
final class NotePages implements Routes {

    private final Site site;

    NotePages(Site site) {
        this.site = site;
    }

    @Override
    public void add(RoutesConfig routes) {
        routes.post("/notes", ctx -> Entering.post(site, ctx, NotePages::write, draft -> again(ctx, draft)));
    }

    private static Entering.Outcome write(Form form, OpenBook book) throws BadInput {
        String about = NoteBook.add(book, form.need("about", "what the note is about"), form.need("text", "the note"));
        return Entering.Outcome.done(OwnPath.of(form.text("back").orElse("/")), List.of("The note on %s is kept.".formatted(about)));
    }

    private void again(Context ctx, Draft draft) {
        site.page(ctx, "note", "A note", Section.NONE, Map.of("draft", draft));
    }
}
