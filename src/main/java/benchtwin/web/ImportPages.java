package benchtwin.web;

import benchtwin.bench.BadInput;
import benchtwin.bench.StockImport;
import benchtwin.bench.StockLook;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Stock files brought to the pages: their faults beside their rows, what they would change, and their way into the book. */
final class ImportPages implements Routes {

    private final Site site;
    private final Shelf<Brought> shelf = new Shelf<>(6, brought -> Uploads.remove(brought.files));

    ImportPages(Site site) {
        this.site = site;
    }

    /** Files on their way into the book. */
    private static final class Brought {
        private final List<Path> files;
        private StockImport.Imported done;

        Brought(List<Path> files) {
            this.files = files;
        }
    }

    @Override
    public void add(RoutesConfig routes) {
        routes.get("/stock/import", ctx -> ask(ctx, List.of()));
        routes.post("/stock/import", this::take);
        routes.get("/stock/import/{id}", this::look);
        routes.post("/stock/import/{id}", this::enter);
    }

    private void ask(Context ctx, List<String> wrong) {
        site.page(ctx, "importAsk", "Import a file", Section.STOCK, Map.of("wrong", wrong));
    }

    private void take(Context ctx) {
        try {
            ctx.redirect("/stock/import/" + shelf.put(new Brought(Uploads.lay(ctx.uploadedFiles("files")))));
        } catch (BadInput cannot) {
            ctx.status(400);
            ask(ctx, cannot.messages());
        }
    }

    private Brought brought(Context ctx) throws BadInput {
        return shelf.get(ctx.pathParam("id")).orElseThrow(() -> new BadInput(
            "these files lay here too long and were put away; bring them again under Stock, Import a file"));
    }

    private void look(Context ctx) throws BadInput {
        Brought brought = brought(ctx);
        boolean goodRows = Form.query(ctx).isTicked("good");
        synchronized (brought) {
            if (brought.done != null) {
                site.page(ctx, "importDone", "Imported", Section.STOCK, Map.of("done", brought.done));
            } else {
                shown(ctx, brought, goodRows, List.of());
            }
        }
    }

    private void shown(Context ctx, Brought brought, boolean goodRows, List<String> wrong) throws BadInput {
        site.page(ctx, "importLook", "Import a file", Section.STOCK, Map.of("look", StockLook.at(site.book(), brought.files, goodRows),
            "goodRows", goodRows, "wrong", wrong, "id", ctx.pathParam("id")));
    }

    /** Enters what was shown, no more and no less. */
    private void enter(Context ctx) throws BadInput {
        Brought brought = brought(ctx);
        Form form = Form.posted(ctx);
        boolean goodRows = form.isTicked("good");
        synchronized (brought) {
            if (brought.done == null) {
                StockLook look = StockLook.at(site.book(), brought.files, goodRows);
                Optional<StockImport.Imported> foreseen = look.foreseen();
                if (foreseen.isEmpty() || !form.text("shown").equals(Optional.of(mark(foreseen.get())))) {
                    ctx.status(409);
                    shown(ctx, brought, goodRows, List.of("Nothing was entered: what these files would change is not what was shown before. "
                        + "Somebody entered something meanwhile; look at it again."));
                    return;
                }
                brought.done = StockImport.enter(site.book(ctx), look.read().orElseThrow(), foreseen.get());
                Uploads.remove(brought.files);
            }
        }
        ctx.redirect("/stock/import/" + ctx.pathParam("id"));
    }

    /** Goes with the button, so that only what was shown is entered. */
    static String mark(StockImport.Imported foreseen) {
        return Integer.toHexString(foreseen.hashCode());
    }
}
