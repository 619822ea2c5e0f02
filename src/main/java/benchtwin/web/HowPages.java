package benchtwin.web;

import benchtwin.bench.Account;
import benchtwin.bench.BadInput;
import benchtwin.bench.ClubViews;
import benchtwin.bench.HowJob;
import benchtwin.bench.HowPart;
import benchtwin.bench.HowRead;
import benchtwin.bench.HowSet;
import benchtwin.bench.OddReading;
import benchtwin.bench.SetRun;
import benchtwin.bench.SetService;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.LocalDate;
import java.util.Optional;

/** How the numbers of clubs, parts, jobs and plans of sets came about. Those of options are with their answers. */
final class HowPages implements Routes {

    private final Site site;
    private final Explained explained;

    HowPages(Site site) {
        this.site = site;
        this.explained = new Explained(site);
    }

    @Override
    public void add(RoutesConfig routes) {
        routes.get("/clubs/{tag}/how", this::club);
        routes.get("/clubs/{tag}/compare/how", this::compared);
        routes.get("/clubs/{tag}/read/{quantity}/why", this::asked);
        routes.get("/stock/{tag}/how", this::part);
        routes.get("/jobs/{number}/how", this::job);
        routes.get("/sets/{id}/how", this::set);
    }

    private static String club(String tag) {
        return "/clubs/" + FindPages.encoded(tag);
    }

    private void club(Context ctx) throws BadInput {
        String tag = ctx.pathParam("tag");
        explained.show(ctx, Section.PLAYERS, HowRead.now(site.book(), tag, Explained.of(ctx), ClubPages.tolerances(site.book(), tag)),
            new Explained.Back(club(tag), tag));
    }

    private void compared(Context ctx) throws BadInput {
        String tag = ctx.pathParam("tag");
        Form form = Form.query(ctx);
        Optional<LocalDate> on = form.day("on", "the day");
        Account account = HowRead.compared(site.book(), tag, ClubViews.When.NOW, form.text("with").orElse(tag), on.isPresent()
            ? new ClubViews.When(on, true) : ClubViews.When.NOW, Explained.of(ctx), ClubPages.tolerances(site.book(), tag));
        explained.show(ctx, Section.PLAYERS, account, new Explained.Back(Asked.nothing().with("with", form.text("with").orElse(""))
            .with("on", on.map(LocalDate::toString).orElse("")).at(club(tag) + "/compare"), "the comparison"));
    }

    private void asked(Context ctx) throws BadInput {
        String tag = ctx.pathParam("tag");
        String quantity = ctx.pathParam("quantity");
        explained.show(ctx, Section.PLAYERS, OddReading.why(site.book(), tag, quantity, Form.query(ctx).need("typed", "the reading")),
            new Explained.Back(club(tag) + "/read/" + quantity, "the reading"));
    }

    private void part(Context ctx) throws BadInput {
        String tag = ctx.pathParam("tag");
        explained.show(ctx, Section.STOCK, HowPart.of(site.book(), () -> site.stock().of(site.book(), false), tag, Explained.of(ctx)),
            new Explained.Back("/stock/" + FindPages.encoded(tag), tag.replace(":", " ")));
    }

    private void job(Context ctx) throws BadInput {
        String number = ctx.pathParam("number");
        String of = Explained.of(ctx);
        if (of.equals(HowJob.READY)) {
            explained.show(ctx, Section.TODAY, HowJob.ready(site.book(), number, TicketPages.usual(site.book())),
                new Explained.Back("/jobs/" + number + "/ticket", "the ticket"));
        } else {
            explained.show(ctx, Section.TODAY, HowJob.aim(site.book(), number, Form.query(ctx).need("club", "the club"), of),
                new Explained.Back("/jobs/" + number, "the job"));
        }
    }

    private void set(Context ctx) throws BadInput {
        SetRun run = site.sets().get(ctx.pathParam("id"));
        explained.show(ctx, Section.SETS, account(run, Form.query(ctx), Explained.of(ctx)), new Explained.Back("/sets/" + run.id(), "the plan"));
    }

    private static Account account(SetRun run, Form form, String of) throws BadInput {
        if (run.answer().isEmpty()) {
            return HowSet.searching(run.now());
        }
        SetService.Answer answer = run.answer().get();
        Optional<String> club = form.text("club");
        if (club.isPresent()) {
            return HowSet.ofClub(answer, club.get(), of);
        }
        if (form.text("player").isPresent()) {
            return HowSet.group(answer, form.need("player", "the player"), of);
        }
        return switch (of) {
            case HowSet.COST -> HowSet.cost(answer, run.before().map(SetRun.Before::score));
            case HowSet.GAP -> HowSet.gap(answer, run.now().steps());
            case HowSet.ORDER -> HowSet.order(answer);
            case HowSet.PINS -> HowSet.pins(answer);
            default -> throw new BadInput("\"%s\" is no number of a plan".formatted(of));
        };
    }
}
