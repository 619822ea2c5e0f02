package benchtwin.web;

import benchtwin.bench.AnswerMemory;
import benchtwin.bench.BadInput;
import benchtwin.bench.Cautions;
import benchtwin.bench.ChangeService;
import benchtwin.bench.ChangeWords;
import benchtwin.bench.JobBook;
import benchtwin.bench.JobPlanning;
import benchtwin.bench.Workshop;
import benchtwin.match.ChangeAnswer;
import benchtwin.match.Way;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.Duration;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** Change something about a club: every way to get it, all that moves along, and one of them made a job. */
final class ChangePages implements Routes {

    private static final int BAD_REQUEST = 400;

    private final Site site;
    private final Explained explained;
    private final Choice choice;
    private final AnswerMemory<ChangeService.Answer> answers = new AnswerMemory<>();

    ChangePages(Site site) {
        this.site = site;
        this.explained = new Explained(site);
        this.choice = new Choice(site);
    }

    @Override
    public void add(RoutesConfig routes) {
        routes.get("/clubs/{tag}/change", ctx -> show(ctx, List.of()));
        routes.get("/clubs/{tag}/change/how", ctx -> explained.how(ctx, options(ctx)));
        routes.get("/clubs/{tag}/change/sketch", ctx -> explained.sketch(ctx, options(ctx)));
        routes.post("/clubs/{tag}/change", this::promise);
    }

    private ChangeService.Answer answer(ChangeForm asked, Optional<Duration> patience) throws BadInput {
        if (asked.fields().isWrong()) {
            throw new BadInput(asked.fields().messages());
        }
        Workshop workshop = site.stock(asked.job(), true, patience);
        ChangeService.Wish wish = asked.wish().orElseThrow(() -> new BadInput("nothing is asked for yet"));
        return Waiting.answer(answers, patience, workshop, List.of(asked.tag(), wish), () -> ChangeService.ways(workshop, asked.tag(), wish));
    }

    private static String path(ChangeForm asked) {
        return "/clubs/" + FindPages.encoded(asked.tag()) + "/change";
    }

    private void show(Context ctx, List<String> messages) throws BadInput {
        ChangeForm asked = ChangeForm.of(site.book(), ctx);
        Map<String, Object> part = new HashMap<>();
        part.put("asked", asked);
        part.put("messages", messages);
        part.put("token", ctx.attribute(Site.TOKEN));
        Optional<Duration> patience = site.patience(asked.job(), messages);
        site.stock(Optional.empty(), true, patience).club(asked.tag());
        if (asked.wish().isPresent() || asked.fields().isWrong()) {
            try {
                ChangeService.Answer answer = answer(asked, patience);
                part.put("answer", answer);
                part.put("views", answer.change().ways().stream().map(way -> ChangeView.of(answer.change(), way, asked)).toList());
                part.put("cautions", Cautions.of(answer.change()));
            } catch (BadInput cannot) {
                ctx.status(BAD_REQUEST);
                part.put("messages", Stream.concat(messages.stream(), cannot.messages().stream()).toList());
            }
        }
        if (Site.wantsPart(ctx)) {
            ctx.header("HX-Push-Url", asked.asked().at(path(asked)));
            part.put("swapped", true);
            site.part(ctx, "changeWays", part);
        } else {
            part.remove("token");
            site.page(ctx, "change", "Change " + asked.tag(), Section.PLAYERS, part);
        }
    }

    private Explained.Options options(Context ctx) throws BadInput {
        ChangeForm asked = ChangeForm.of(site.book(), ctx);
        ChangeAnswer change = answer(asked, Waiting.FOR_EVER).change();
        return new Explained.Options(change.ways().stream().map(Way::option).toList(), change.request().club().name(), option -> change.target(),
            option -> change.ways().stream().filter(way -> way.option() == option).map(ChangeWords::levers).findFirst().orElseThrow(),
            asked.asked().at(path(asked)));
    }

    private void promise(Context ctx) throws BadInput {
        ChangeForm asked = ChangeForm.of(site.book(), ctx);
        ChangeAnswer change = answer(asked, Waiting.FOR_EVER).change();
        choice.make(ctx, new Choice.About(JobBook.What.CHANGE, Optional.of(asked.tag()), asked.job()), change.ways(), Way::option,
            way -> JobPlanning.changed(asked.tag(), way, change),
            messages -> show(ctx, messages));
    }
}
