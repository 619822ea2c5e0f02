package benchtwin.web;

import benchtwin.bench.ClubHistory;
import benchtwin.bench.ClubViews;
import benchtwin.bench.PlayerBook;
import benchtwin.match.Tolerances;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.Map;

/** Players and clubs: what they have now, readings over time. */
final class ClubPages implements Routes {

    private final Site site;

    ClubPages(Site site) {
        this.site = site;
    }

    @Override
    public void add(RoutesConfig routes) {
        routes.get("/players", ctx -> site.page(ctx, "players", "Players", Section.PLAYERS,
            Map.of("players", PlayerBook.list(site.book()))));
        routes.get("/players/{name}", ctx -> {
            PlayerBook.Player player = PlayerBook.show(site.book(), ctx.pathParam("name"));
            site.page(ctx, "player", player.name(), Section.PLAYERS, Map.of("player", player));
        });
        routes.get("/clubs/{tag}", this::club);
    }

    private void club(Context ctx) throws Exception {
        String tag = ctx.pathParam("tag");
        ClubViews.Club club = ClubViews.show(site.book(), tag, ClubViews.When.NOW);
        String history = club.values().isEmpty() ? "" : ClubHistory.picture(site.book(), tag,
            new Tolerances(PlayerBook.tolerancesFor(site.book(), tag), Map.of())).svg();
        site.page(ctx, "club", club.tag(), Section.PLAYERS, Map.of("club", club, "history", history));
    }
}
