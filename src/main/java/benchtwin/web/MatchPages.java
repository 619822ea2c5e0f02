package benchtwin.web;

import benchtwin.bench.BadInput;
import benchtwin.bench.Cautions;
import benchtwin.bench.HeadSketches;
import benchtwin.bench.JobBook;
import benchtwin.bench.JobPlanning;
import benchtwin.bench.MatchService;
import benchtwin.bench.PlayerBook;
import benchtwin.club.Quantity;
import benchtwin.match.Keep;
import benchtwin.match.MatchAnswer;
import benchtwin.match.Ranked;
import benchtwin.match.ShopSettings;
import benchtwin.match.Tolerances;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** Find a head (or a shaft, or a whole backup) that makes a club's twin, and make it a job. */
final class MatchPages implements Routes {

    private static final int SHOWN = 5;

    private final Site site;

    MatchPages(Site site) {
        this.site = site;
    }

    @Override
    public void add(RoutesConfig routes) {
        routes.get("/clubs/{tag}/twin", this::ranking);
        routes.post("/clubs/{tag}/twin", this::promise);
    }

    private void ranking(Context ctx) throws BadInput {
        String tag = ctx.pathParam("tag");
        Form form = Form.query(ctx);
        MatchAnswer answer = answer(tag, form);
        Map<String, Object> part = Map.of("answer", answer, "token", ctx.attribute(Site.TOKEN), "tag", tag,
            "asked", ctx.queryString() == null ? "" : ctx.queryString(), "cautions", Cautions.of(answer),
            "sketches", answer.results().stream().map(option -> HeadSketches.of(option).svg()).toList());
        if (Site.wantsPart(ctx)) {
            site.part(ctx, "twinRanking", part);
        } else {
            Map<String, Object> values = new java.util.HashMap<>(part);
            values.put("keep", form.text("keep").orElse(Keep.SHAFT.word()));
            values.put("otherModels", form.isTicked("otherModels"));
            values.put("tolerances", tolerances(tag, form));
            values.remove("token");
            site.page(ctx, "twin", "Twin of " + tag, Section.PLAYERS, values);
        }
    }

    private MatchAnswer answer(String tag, Form form) throws BadInput {
        Keep keep = form.choice("keep", "keep", Keep.values()).orElse(Keep.SHAFT);
        return MatchService.twinOf(site.stock().of(site.book(), false), tag, new MatchService.Wish(keep, form.isTicked("otherModels"),
            SHOWN, new Tolerances(tolerances(tag, form), Map.of()), ShopSettings.DEFAULT, OptionalDouble.empty(), Map.of()));
    }

    /** Those the player prefers, and what was typed in their place. */
    private Map<Quantity, Double> tolerances(String tag, Form form) throws BadInput {
        Map<Quantity, Double> tolerances = new EnumMap<>(Quantity.class);
        tolerances.putAll(PlayerBook.tolerancesFor(site.book(), tag));
        for (Quantity quantity : Quantity.targetable()) {
            Optional<Double> typed = form.number("tol-" + quantity.word(), "tolerance of " + quantity.word());
            if (typed.isPresent()) {
                if (!(typed.get() > 0)) {
                    throw new BadInput("a tolerance of %s for %s is not above 0".formatted(typed.get(), quantity.word()));
                }
                tolerances.put(quantity, typed.get());
            }
        }
        return tolerances;
    }

    private void promise(Context ctx) throws BadInput {
        String tag = ctx.pathParam("tag");
        Form form = Form.posted(ctx);
        MatchAnswer answer = answer(tag, form);
        String head = form.need("head", "the head");
        String shaft = form.need("shaft", "the shaft");
        Ranked chosen = answer.results().stream().filter(option -> option.head().tag().equals(head) && option.shaft().tag().equals(shaft))
            .findFirst().orElseThrow(() -> new BadInput("%s is no longer among the nearest: something was entered meanwhile. Look at the ranking again"
                .formatted(head)));
        String number = JobPlanning.promise(site.book(), new JobPlanning.For(Optional.empty(), new JobBook.Order(JobBook.What.TWIN,
            Optional.empty(), Optional.of(tag), form.text("due").map(due -> due.replace('T', ' ')), "")),
            List.of(JobPlanning.twin(tag, chosen, answer.favourite())));
        ctx.redirect("/jobs/" + number);
    }
}
