package benchtwin.web;

import benchtwin.bench.BadInput;
import benchtwin.bench.JobBook;
import benchtwin.bench.OpenBook;
import benchtwin.bench.Today;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.Cookie;
import io.javalin.http.SameSite;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The first page: today's jobs, what they wait for, what to be careful of; a new job. And what a browser keeps of its user. */
final class TodayPages implements Routes {

    private static final int A_YEAR_S = 365 * 24 * 3600;
    private static final int LONGEST_NAME = 60;

    private final Site site;

    TodayPages(Site site) {
        this.site = site;
    }

    @Override
    public void add(RoutesConfig routes) {
        routes.get("/", ctx -> today(ctx, Draft.empty(site.book().lastEntry())));
        routes.post("/jobs", ctx -> Entering.post(site, ctx, TodayPages::take, draft -> today(ctx, draft)));
        routes.post("/theme", TodayPages::theme);
        routes.post("/who", TodayPages::who);
    }

    private void today(Context ctx, Draft draft) throws BadInput {
        site.page(ctx, "today", "Today", Section.TODAY, Map.of("today", Today.of(site.book()), "draft", draft));
    }

    private static Entering.Outcome take(Form form, OpenBook book) throws BadInput {
        Optional<String> club = form.text("club");
        Optional<String> player = form.text("player");
        if (club.isEmpty() && player.isEmpty()) {
            throw new BadInput("a job is for somebody: type the club's tag or the player's name");
        }
        String number = JobBook.add(book, new JobBook.Order(form.choice("what", "what the job makes", JobBook.What.values())
            .orElse(JobBook.What.REPAIR), player, club, form.text("due").map(due -> due.replace('T', ' ')), form.text("words").orElse("")));
        return Entering.Outcome.done("/jobs/" + number, List.of("Job %s is taken on.".formatted(number)));
    }

    /** Light or dark, kept by the browser. */
    private static void theme(Context ctx) {
        Form form = Form.posted(ctx);
        keep(ctx, "theme", form.text("theme").filter(word -> word.equals("dark") || word.equals("light")).orElse(""));
        ctx.redirect(OwnPath.of(form.text("back").orElse("/")));
    }

    /** Who enters, kept by the browser. */
    private static void who(Context ctx) throws BadInput {
        Form form = Form.posted(ctx);
        String name = form.text("who").orElse("");
        if (name.length() > LONGEST_NAME) {
            throw new BadInput("a name of %d characters; expected at most %d".formatted(name.length(), LONGEST_NAME));
        }
        keep(ctx, "who", URLEncoder.encode(name, StandardCharsets.UTF_8));
        ctx.redirect(OwnPath.of(form.text("back").orElse("/")));
    }

    private static void keep(Context ctx, String name, String value) {
        Cookie kept = new Cookie(name, value);
        kept.setPath("/");
        kept.setHttpOnly(true);
        kept.setSameSite(SameSite.STRICT);
        kept.setMaxAge(A_YEAR_S);
        ctx.cookie(kept);
    }
}
