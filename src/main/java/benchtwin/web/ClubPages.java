package benchtwin.web;

import benchtwin.bench.BadInput;
import benchtwin.bench.ClubHistory;
import benchtwin.bench.ClubViews;
import benchtwin.bench.OpenBook;
import benchtwin.bench.PlayerBook;
import benchtwin.match.Tolerances;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/** One club: what it measures against what it should, readings over time; and beside another club, or itself on another day. */
final class ClubPages implements Routes {

    private final Site site;

    ClubPages(Site site) {
        this.site = site;
    }

    @Override
    public void add(RoutesConfig routes) {
        routes.get("/clubs/{tag}", this::club);
        routes.get("/clubs/{tag}/compare", this::compare);
    }

    private void club(Context ctx) throws BadInput {
        String tag = ctx.pathParam("tag");
        long seen = site.book().lastEntry();
        ClubViews.Club club = ClubViews.show(site.book(), tag, ClubViews.When.NOW);
        Tolerances tolerances = tolerances(site.book(), tag);
        String history = club.values().isEmpty() ? "" : ClubHistory.picture(site.book(), tag, tolerances).svg();
        site.page(ctx, "club", club.tag(), Section.PLAYERS, Map.of("club", club, "history", history, "draft", Draft.empty(seen),
            "drift", ClubViews.againstRecord(site.book(), tag, tolerances)));
    }

    /** How far off counts as right: what the club's player prefers, else the usual. */
    static Tolerances tolerances(OpenBook book, String tag) throws BadInput {
        return new Tolerances(PlayerBook.tolerancesFor(book, tag), Map.of());
    }

    private void compare(Context ctx) throws BadInput {
        String tag = ctx.pathParam("tag");
        Form form = Form.query(ctx);
        Optional<String> with = form.text("with");
        Optional<LocalDate> on = form.day("on", "the day");
        Map<String, Object> values = new HashMap<>(Map.of("tag", tag, "with", with.orElse(""), "on", on.map(LocalDate::toString).orElse("")));
        if (with.isPresent() || on.isPresent()) {
            values.put("compared", ClubViews.compare(site.book(), tag, ClubViews.When.NOW, with.orElse(tag), on.isPresent()
                ? new ClubViews.When(on, true) : ClubViews.When.NOW, tolerances(site.book(), tag)));
        } else {
            ClubViews.show(site.book(), tag, ClubViews.When.NOW);
        }
        site.page(ctx, "compare", "%s compared".formatted(tag), Section.PLAYERS, values);
    }
}
