package benchtwin.web;

import benchtwin.bench.BadInput;
import benchtwin.bench.PlayerBook;
import benchtwin.bench.SetChoices;
import benchtwin.bench.SetRun;
import benchtwin.bench.SetRuns;
import benchtwin.bench.SetService;
import benchtwin.bench.WantedSets;
import benchtwin.match.ShopSettings;
import benchtwin.sets.PlanLimits;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.Duration;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

/** Plans of sets: choose, watch, stop, decide, plan again, make jobs. */
final class SetPages implements Routes {

    private static final Duration USUAL_TIME = Duration.ofMinutes(2);
    private static final double LONGEST_S = 1800;
    private static final int CONFLICT = 409;

    private final Site site;
    private final SetRuns runs;

    SetPages(Site site, SetRuns runs) {
        this.site = site;
        this.runs = runs;
    }

    @Override
    public void add(RoutesConfig routes) {
        routes.get("/sets", ctx -> ask(ctx, List.of(), List.of()));
        routes.post("/sets", this::start);
        routes.get("/sets/{id}", ctx -> show(ctx, List.of()));
        routes.post("/sets/{id}/stop", this::stop);
        routes.post("/sets/{id}/again", this::again);
        routes.post("/sets/{id}/swap", this::swap);
        routes.post("/sets/{id}/jobs", this::promise);
        new SetLive(site, runs).add(routes);
    }

    private void ask(Context ctx, List<String> wrong, List<?> sheets) throws BadInput {
        site.page(ctx, "setsAsk", "Plan sets", Section.SETS, Map.of("wrong", wrong, "sheets", sheets, "runs", runs.all(),
            "players", PlayerBook.inShort(site.book()).stream().filter(player -> player.clubs() > 0).toList(),
            "chosen", ctx.method().name().equals("POST") ? ctx.formParams("player") : ctx.queryParams("player")));
    }

    private void start(Context ctx) throws BadInput {
        Form form = Form.posted(ctx);
        if (busy(ctx)) {
            return;
        }
        try {
            SetTargetsBrought brought = SetTargetsBrought.of(ctx);
            if (!brought.sheets().isEmpty()) {
                ctx.status(400);
                ask(ctx, brought.wrong(), brought.sheets());
                return;
            }
            List<String> players = form.all("player");
            if (brought.sets().isEmpty() && players.isEmpty()) {
                throw new BadInput("nobody is chosen: tick a player, or bring a file of the sets that are wanted");
            }
            WantedSets sets = brought.sets().isPresent() ? brought.sets().get()
                : WantedSets.ofRecord(site.stock().of(site.book(), false), players, form.isTicked("straighten"));
            SetService.Wish wish = new SetService.Wish(List.of(), List.of(), List.of(), form.text("grip"), ShopSettings.DEFAULT);
            go(ctx, sets, wish, limits(form), Optional.empty());
        } catch (BadInput cannot) {
            ctx.status(400);
            ask(ctx, cannot.messages().stream().map(SetPages::plain).toList(), List.of());
        }
    }

    private void go(Context ctx, WantedSets sets, SetService.Wish wish, PlanLimits limits, Optional<SetRun.Before> before) throws BadInput {
        SetRun run = runs.start(site.stock().of(site.book(), false), sets, wish, limits, before);
        ctx.redirect("/sets/" + run.id());
    }

    /** Whether another plan is being searched for; then the page says which. */
    private boolean busy(Context ctx) {
        Optional<SetRun> other = runs.running();
        other.ifPresent(run -> {
            ctx.status(CONFLICT);
            site.page(ctx, "setsBusy", "One plan at a time", Section.SETS, Map.of("run", run));
        });
        return other.isPresent();
    }

    private static PlanLimits limits(Form form) throws BadInput {
        double time = form.number("seconds", "the time").orElse((double) USUAL_TIME.toSeconds());
        double gap = form.number("gap", "the gap").orElse(0.0);
        if (!(time >= 1 && time <= LONGEST_S)) {
            throw new BadInput("the time: expected 1 to %.0f seconds".formatted(LONGEST_S));
        }
        if (!(gap >= 0 && gap < 100)) {
            throw new BadInput("the gap: expected per cent from 0 to below 100");
        }
        return new PlanLimits(Duration.ofMillis(Math.round(time * 1000)), gap, OptionalInt.empty(), 1);
    }

    /** What the command line calls by its options. */
    private static String plain(String message) {
        return message.replaceFirst("^--(pin|ban|players|from-record):? ", "");
    }

    private void show(Context ctx, List<String> wrong) throws BadInput {
        SetRun run = runs.get(ctx.pathParam("id"));
        SetRun.Now now = run.now();
        if (run.answer().isPresent()) {
            site.page(ctx, "setPlan", title(run), Section.SETS, Map.of("run", run, "answer", run.answer().get(), "wrong", wrong));
        } else {
            site.page(ctx, "setRun", title(run), Section.SETS, Map.of("run", run, "now", now,
                "wrong", run.failure().map(List::of).orElse(wrong)));
        }
    }

    private static String title(SetRun run) {
        return "Plan %s: %s".formatted(run.id(), run.players().size() == 1 ? run.players().get(0) : run.players().size() + " players");
    }

    private void stop(Context ctx) throws BadInput {
        SetRun run = runs.get(ctx.pathParam("id"));
        run.stop();
        ctx.redirect("/sets/" + run.id());
    }

    private SetService.Answer answer(SetRun run) throws BadInput {
        return run.answer().orElseThrow(() -> new BadInput("there is no plan yet: wait for it, or stop it"));
    }

    /** Plans the rest again, with what is locked as it is. */
    private void again(Context ctx) throws BadInput {
        SetRun run = runs.get(ctx.pathParam("id"));
        Form form = Form.posted(ctx);
        List<String> banned = Arrays.stream(form.text("banned").orElse("").split("[\\s,;]+")).filter(tag -> !tag.isEmpty()).toList();
        List<String> heads = form.all("head");
        List<String> shafts = form.all("shaft");
        next(ctx, run, SetChoices.kept(answer(run), new HashSet<>(heads), new HashSet<>(shafts), banned), limits(form),
            "%d part%s locked%s".formatted(heads.size() + shafts.size(), heads.size() + shafts.size() == 1 ? "" : "s",
                banned.isEmpty() ? "" : ", without " + String.join(", ", banned)));
    }

    /** Everything as it is but one part. */
    private void swap(Context ctx) throws BadInput {
        SetRun run = runs.get(ctx.pathParam("id"));
        Form form = Form.posted(ctx);
        try {
            String club = form.need("club", "the club");
            String tag = form.need("tag", "the part's tag");
            SetChoices.Part part = "head".equals(form.text("part").orElse("")) ? SetChoices.Part.HEAD : SetChoices.Part.SHAFT;
            next(ctx, run, SetChoices.swapped(answer(run), club, part, tag), run.limits(), "%s with %s %s by hand".formatted(club, part.word(), tag));
        } catch (BadInput cannot) {
            ctx.status(400);
            show(ctx, cannot.messages().stream().map(SetPages::plain).toList());
        }
    }

    private void next(Context ctx, SetRun run, SetService.Wish wish, PlanLimits limits, String words) throws BadInput {
        if (!busy(ctx)) {
            try {
                go(ctx, run.sets(), wish, limits, Optional.of(new SetRun.Before(run.id(), answer(run).plan().score(), words)));
            } catch (BadInput cannot) {
                ctx.status(400);
                show(ctx, cannot.messages().stream().map(SetPages::plain).toList());
            }
        }
    }

    private void promise(Context ctx) throws BadInput {
        SetRun run = runs.get(ctx.pathParam("id"));
        try {
            run.promise(site.book(ctx), Form.posted(ctx).text("due").map(due -> due.replace('T', ' ')));
            ctx.redirect("/sets/" + run.id());
        } catch (BadInput cannot) {
            ctx.status(CONFLICT);
            show(ctx, cannot.messages());
        }
    }
}
