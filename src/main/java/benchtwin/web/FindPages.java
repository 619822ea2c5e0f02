package benchtwin.web;

import benchtwin.bench.TagFinder;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;

/** Scan or type any tag or name, from any page. */
final class FindPages implements Routes {

    private final Site site;

    FindPages(Site site) {
        this.site = site;
    }

    @Override
    public void add(RoutesConfig routes) {
        routes.get("/find", this::find);
    }

    private void find(Context ctx) throws Exception {
        String typed = Form.query(ctx).text("q").orElse("");
        List<TagFinder.Found> found = TagFinder.find(site.book(), typed);
        if (found.size() == 1) {
            ctx.redirect(path(found.get(0)));
            return;
        }
        site.page(ctx, "find", typed.isEmpty() ? "Find" : "Find " + typed, Section.NONE, Map.of("typed", typed, "found", found));
    }

    /** The page of a thing. */
    static String path(TagFinder.Found found) {
        return switch (found.kind()) {
            case "player" -> "/players/" + encoded(found.tag());
            case "club" -> "/clubs/" + encoded(found.tag());
            case "job" -> "/jobs/" + encoded(found.tag());
            case "gauge" -> "/gauges/" + encoded(found.tag());
            default -> "/stock/" + encoded(found.kind() + ":" + found.tag());
        };
    }

    /** As one piece of a path, or a value of a query: whatever letters it holds, it comes back as it was. */
    static String encoded(String tag) {
        return URLEncoder.encode(tag, StandardCharsets.UTF_8).replace("+", "%20");
    }
}
