package benchtwin.web;

import benchtwin.bench.BadInput;
import benchtwin.bench.Cautions;
import benchtwin.bench.OpenBook;
import benchtwin.bench.PlayerBook;
import benchtwin.bench.Regrip;
import benchtwin.club.Hazard;
import benchtwin.match.ShopSettings;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** New grips for a player's whole bag: choose the model, see what it changes club by club, make it a job. */
final class RegripPages implements Routes {

    private static final String MODEL = "model";
    private static final String PUTTERS = "putters";

    private final Site site;

    RegripPages(Site site) {
        this.site = site;
    }

    @Override
    public void add(RoutesConfig routes) {
        routes.get("/players/{name}/regrip", ctx -> show(ctx, Form.query(ctx), Draft.empty(site.book().lastEntry())));
        routes.post("/players/{name}/regrip", ctx -> Entering.post(site, ctx, (form, book) -> promise(ctx, form, book),
            draft -> show(ctx, Form.posted(ctx), draft)));
    }

    private void show(Context ctx, Form form, Draft draft) throws BadInput {
        String player = PlayerBook.show(site.book(), ctx.pathParam("name")).name();
        Optional<String> model = form.text(MODEL);
        List<Regrip.Model> models = Regrip.models(site.book());
        Map<String, Object> values = new HashMap<>(Map.of("player", player, "model", model.orElse(""), PUTTERS, form.isTicked(PUTTERS),
            "models", models, "draft", draft, "cautions", Cautions.ofHazards(Set.of(Hazard.SOLVENT))));
        if (model.filter(name -> models.stream().anyMatch(one -> one.name().equalsIgnoreCase(name))).isPresent()) {
            values.put("plan", plan(player, form));
        }
        site.page(ctx, "regrip", "New grips for " + player, Section.PLAYERS, values);
    }

    private Regrip.Plan plan(String player, Form form) throws BadInput {
        return Regrip.of(site.book(), player, form.need(MODEL, "the grip"), form.isTicked(PUTTERS), ShopSettings.DEFAULT);
    }

    /** What becomes a job is what was looked at, or nothing. */
    private Entering.Outcome promise(Context ctx, Form form, OpenBook book) throws BadInput {
        String name = ctx.pathParam("name");
        Regrip.Plan plan = plan(name, form);
        if (!form.text("plan").equals(Optional.of(plan.key()))) {
            throw new BadInput("no job was made: other grips are free now than when you opened the page. The plan below is how it would "
                + "be now");
        }
        String number = Regrip.promise(book.asSeen(Entering.seen(form).player(name)), plan, form.text("due").map(due -> due.replace('T', ' ')));
        return Entering.Outcome.done("/jobs/" + number, List.of("Job %s: %d new grip%s for %s, promised to it.".formatted(number, plan.served(),
            plan.served() == 1 ? "" : "s", plan.player())));
    }
}
