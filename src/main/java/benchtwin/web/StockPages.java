package benchtwin.web;

import benchtwin.bench.StockViews;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.Arrays;
import java.util.List;
import java.util.Map;

/** The parts: browse, filter, one part. */
final class StockPages implements Routes {

    /** More rows than these are not shown at once. */
    private static final int MOST = 200;

    private final Site site;

    StockPages(Site site) {
        this.site = site;
    }

    @Override
    public void add(RoutesConfig routes) {
        routes.get("/stock", this::list);
        routes.get("/stock/{tag}", this::show);
    }

    private void list(Context ctx) throws Exception {
        Form form = Form.query(ctx);
        String words = form.text("q").orElse("");
        String kind = form.text("kind").orElse("");
        StockViews.Asked asked = new StockViews.Asked(kind.isEmpty() ? List.of() : List.of(kind),
            Arrays.stream(words.split("\\s+")).filter(word -> !word.isEmpty()).toList(), form.isTicked("free"), form.isTicked("retired"));
        List<StockViews.Part> parts = StockViews.list(site.book(), asked);
        Map<String, Object> values = Map.of("parts", parts.subList(0, Math.min(MOST, parts.size())), "all", parts.size(), "words", words,
            "kind", kind, "free", form.isTicked("free"), "retired", form.isTicked("retired"));
        if (Site.wantsPart(ctx)) {
            site.part(ctx, "stockRows", Map.of("parts", values.get("parts"), "all", parts.size()));
        } else {
            site.page(ctx, "stock", "Stock", Section.STOCK, values);
        }
    }

    private void show(Context ctx) throws Exception {
        StockViews.PartHistory part = StockViews.show(site.book(), ctx.pathParam("tag"));
        site.page(ctx, "part", "%s %s".formatted(part.part().kind(), part.part().tag()), Section.STOCK, Map.of("part", part));
    }
}
