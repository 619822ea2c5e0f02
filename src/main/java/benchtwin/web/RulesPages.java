package benchtwin.web;

import benchtwin.bench.BadInput;
import benchtwin.bench.RulesService;
import benchtwin.bench.RulesWords;
import benchtwin.bench.Workshop;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.HashMap;
import java.util.Map;

/** Clubs against the published equipment limits: one, a player's bag, all of them. Advice only. */
final class RulesPages implements Routes {

    private static final String LOCAL = "localRule";

    private final Site site;

    RulesPages(Site site) {
        this.site = site;
    }

    /** Holds clubs of the stock against the limits. */
    @FunctionalInterface
    private interface Check {
        RulesService.Answer of(Workshop workshop, boolean localInForce) throws BadInput;
    }

    @Override
    public void add(RoutesConfig routes) {
        routes.get("/clubs/{tag}/rules", this::club);
        routes.get("/players/{name}/rules", ctx -> several(ctx, (workshop, local) -> RulesService.bag(workshop, ctx.pathParam("name"), local)));
        routes.get("/rules", ctx -> several(ctx, RulesService::all));
    }

    private void club(Context ctx) throws BadInput {
        RulesService.Answer answer = answer(ctx, (workshop, local) -> RulesService.club(workshop, ctx.pathParam("tag"), local));
        String tag = answer.clubs().get(0).club().tag();
        show(ctx, "rules", tag + " against the rules", answer);
    }

    private void several(Context ctx, Check check) throws BadInput {
        RulesService.Answer answer = answer(ctx, check);
        show(ctx, "rulesBag", RulesWords.title(answer), answer);
    }

    /** From what the clubs measure now, as found or accepted: that is what is played. */
    private RulesService.Answer answer(Context ctx, Check check) throws BadInput {
        return check.of(site.stock().of(site.book(), true), Form.query(ctx).isTicked(LOCAL));
    }

    private void show(Context ctx, String template, String title, RulesService.Answer answer) {
        Map<String, Object> values = new HashMap<>();
        values.put("answer", answer);
        site.page(ctx, template, title, Section.PLAYERS, values);
    }
}
