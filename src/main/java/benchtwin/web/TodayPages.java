package benchtwin.web;

import benchtwin.bench.JobBook;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.Cookie;
import io.javalin.http.SameSite;
import java.util.List;
import java.util.Map;

/** The first page: today's jobs. */
final class TodayPages implements Routes {

    private static final int A_YEAR_S = 365 * 24 * 3600;

    private final Site site;

    TodayPages(Site site) {
        this.site = site;
    }

    @Override
    public void add(RoutesConfig routes) {
        routes.get("/", this::today);
        routes.post("/theme", TodayPages::theme);
    }

    private void today(Context ctx) throws Exception {
        List<JobBook.Job> jobs = JobBook.list(site.book(), false);
        site.page(ctx, "today", "Today", Section.TODAY, Map.of("jobs", jobs));
    }

    /** Light or dark, kept by the browser. */
    private static void theme(Context ctx) {
        Form form = Form.posted(ctx);
        Cookie theme = new Cookie("theme", form.text("theme").filter(word -> word.equals("dark") || word.equals("light")).orElse(""));
        theme.setPath("/");
        theme.setSameSite(SameSite.STRICT);
        theme.setMaxAge(A_YEAR_S);
        ctx.cookie(theme);
        ctx.redirect(OwnPath.of(form.text("back").orElse("/")));
    }
}
