package benchtwin.web;

import benchtwin.bench.AnswerMemory;
import benchtwin.bench.BadInput;
import benchtwin.bench.Cautions;
import benchtwin.bench.JobBook;
import benchtwin.bench.JobPlanning;
import benchtwin.bench.MatchService;
import benchtwin.bench.OptionWords;
import benchtwin.bench.Workshop;
import benchtwin.club.Quantity;
import benchtwin.match.Keep;
import benchtwin.match.MatchAnswer;
import benchtwin.match.Ranked;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.Duration;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

/** Find a head (or a shaft, or a whole backup) that makes a club's twin, and make it a job. */
final class MatchPages implements Routes {

    private final Site site;
    private final Explained explained;
    private final Choice choice;
    private final AnswerMemory<MatchAnswer> answers = new AnswerMemory<>();

    MatchPages(Site site) {
        this.site = site;
        this.explained = new Explained(site);
        this.choice = new Choice(site);
    }

    @Override
    public void add(RoutesConfig routes) {
        routes.get("/clubs/{tag}/twin", ctx -> show(ctx, List.of()));
        routes.get("/clubs/{tag}/twin/how", ctx -> explained.how(ctx, options(ctx)));
        routes.get("/clubs/{tag}/twin/sketch", ctx -> explained.sketch(ctx, options(ctx)));
        routes.post("/clubs/{tag}/twin", this::promise);
    }

    private MatchAnswer answer(MatchForm asked, Optional<Duration> patience) throws BadInput {
        Workshop workshop = site.stock(false, patience);
        MatchService.Wish wish = asked.wish();
        return Waiting.answer(answers, patience, workshop, List.of(asked.tag(), wish), () -> MatchService.twinOf(workshop, asked.tag(), wish));
    }

    private void show(Context ctx, List<String> messages) throws BadInput {
        MatchForm asked = MatchForm.of(site.book(), ctx);
        MatchAnswer answer = answer(asked, site.patience(messages));
        Map<String, Object> part = new HashMap<>();
        part.put("answer", answer);
        part.put("views", answer.results().stream().map(option -> TwinView.of(answer, option, asked)).toList());
        part.put("asked", asked);
        part.put("token", ctx.attribute(Site.TOKEN));
        part.put("cautions", Cautions.of(answer));
        part.put("messages", messages);
        if (Site.wantsPart(ctx)) {
            ctx.header("HX-Push-Url", asked.asked().at(path(asked)));
            part.put("leftOut", asked.isLeavingOut());
            site.part(ctx, "twinPart", part);
        } else {
            part.remove("token");
            site.page(ctx, "twin", "Twin of " + answer.favourite().name(), Section.PLAYERS, part);
        }
    }

    private static String path(MatchForm asked) {
        return "/clubs/" + FindPages.encoded(asked.tag()) + "/twin";
    }

    private Explained.Options options(Context ctx) throws BadInput {
        MatchForm asked = MatchForm.of(site.book(), ctx);
        MatchAnswer answer = answer(asked, Waiting.FOR_EVER);
        List<Ranked> all = Stream.concat(answer.results().stream(), answer.belowTheLine().stream().map(MatchAnswer.Below::option)).toList();
        return new Explained.Options(all, answer.favourite().name(), option -> answer.favourite().target(),
            option -> OptionWords.name(answer.keep(), option), asked.asked().at(path(asked)));
    }

    private void promise(Context ctx) throws BadInput {
        MatchForm asked = MatchForm.of(site.book(), ctx);
        MatchAnswer answer = answer(asked, Waiting.FOR_EVER);
        choice.make(ctx, JobBook.What.TWIN, asked.tag(), answer.results(), Function.identity(),
            option -> JobPlanning.twin(asked.tag(), option, answer.favourite()), messages -> show(ctx, messages));
    }

    /** What a person may set a tolerance of. */
    static List<Quantity> adjustable(MatchAnswer answer) {
        return answer.favourite().target().wanted().keySet().stream().filter(quantity -> quantity.defaultTolerance() > 0).toList();
    }

    /** What the twin may keep. */
    static List<Keep> keeps() {
        return List.of(Keep.SHAFT, Keep.HEAD, Keep.NONE);
    }
}
