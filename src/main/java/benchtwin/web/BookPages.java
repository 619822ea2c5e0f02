package benchtwin.web;

import benchtwin.bench.BadInput;
import benchtwin.bench.BookCare;
import benchtwin.bench.BookCopies;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;

/** The book as a whole: where it lies, copies of it, whether it is in order. */
final class BookPages implements Routes {

    private static final String HERE = "/book";

    private final Site site;

    BookPages(Site site) {
        this.site = site;
    }

    @Override
    public void add(RoutesConfig routes) {
        routes.get(HERE, ctx -> show(ctx, List.of()));
        routes.post("/book/copies", this::copy);
        routes.get("/book/check", ctx -> checked(ctx, "the book", BookCare.check(site.book())));
        routes.get("/book/copies/{name}", this::download);
        routes.get("/book/copies/{name}/check", ctx -> checked(ctx, "the copy " + ctx.pathParam("name"), copies().check(ctx.pathParam("name"))));
    }

    private BookCopies copies() {
        return new BookCopies(site.book());
    }

    private void show(Context ctx, List<String> wrong) throws BadInput {
        site.page(ctx, "book", "The book", Section.NONE, Map.of("file", site.book().file().toAbsolutePath().toString(), "folder",
            copies().folder().toString(), "copies", copies().all(), "wrong", wrong));
    }

    private void copy(Context ctx) throws BadInput {
        try {
            Path copy = copies().make();
            site.goOn(ctx, HERE, List.of("Copied to %s. Save it on a stick or another machine too: this one lies on the same disk.".formatted(copy)));
        } catch (BadInput cannot) {
            ctx.status(400);
            show(ctx, cannot.messages());
        }
    }

    private void checked(Context ctx, String what, BookCare.Check check) {
        site.page(ctx, "bookCheck", "Check of " + what, Section.NONE, Map.of("what", what, "check", check));
    }

    private void download(Context ctx) throws BadInput, IOException {
        Path copy = copies().file(ctx.pathParam("name"));
        ctx.header("Content-Disposition", "attachment; filename=\"%s\"".formatted(copy.getFileName().toString().replaceAll("[^\\w.-]", "_")))
            .contentType("application/octet-stream").result(Files.newInputStream(copy));
    }
}
