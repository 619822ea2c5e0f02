package benchtwin.web;

import benchtwin.bench.AnswerMemory;
import benchtwin.bench.BadInput;
import benchtwin.bench.Cautions;
import benchtwin.bench.JobBook;
import benchtwin.bench.JobPlanning;
import benchtwin.bench.Pictures;
import benchtwin.bench.ShaftsService;
import benchtwin.bench.ShaftsWords;
import benchtwin.bench.Workshop;
import benchtwin.club.Quantity;
import benchtwin.club.Target;
import benchtwin.club.Wanted;
import benchtwin.match.MatchAnswer;
import benchtwin.match.Ranked;
import benchtwin.match.ShaftAnswer;
import benchtwin.match.ShaftPick;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.Duration;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** Choose shafts from the drawer for a club's stiffness, the nearest or a ladder, and make one of them a job. */
final class ShaftsPages implements Routes {

    private static final int OK = 200;
    private static final int BAD_REQUEST = 400;

    private final Site site;
    private final Explained explained;
    private final Choice choice;
    private final AnswerMemory<ShaftAnswer> answers = new AnswerMemory<>();

    ShaftsPages(Site site) {
        this.site = site;
        this.explained = new Explained(site);
        this.choice = new Choice(site);
    }

    @Override
    public void add(RoutesConfig routes) {
        routes.get("/clubs/{tag}/shafts", ctx -> show(ctx, List.of()));
        routes.get("/clubs/{tag}/shafts/picture", this::picture);
        routes.get("/clubs/{tag}/shafts/how", ctx -> explained.how(ctx, options(ctx)));
        routes.get("/clubs/{tag}/shafts/sketch", ctx -> explained.sketch(ctx, options(ctx)));
        routes.post("/clubs/{tag}/shafts", this::promise);
    }

    private ShaftAnswer answer(ShaftsForm asked, Optional<Duration> patience) throws BadInput {
        if (asked.fields().isWrong()) {
            throw new BadInput(asked.fields().messages());
        }
        Workshop workshop = site.stock(asked.job(), false, patience);
        return Waiting.answer(answers, patience, workshop, asked.wish(), () -> ShaftsService.choose(workshop, asked.wish()));
    }

    private static String path(ShaftsForm asked) {
        return "/clubs/" + FindPages.encoded(asked.tag()) + "/shafts";
    }

    private void show(Context ctx, List<String> messages) throws BadInput {
        ShaftsForm asked = ShaftsForm.of(site.book(), ctx);
        Map<String, Object> part = new HashMap<>();
        part.put("asked", asked);
        part.put("messages", messages);
        part.put("token", ctx.attribute(Site.TOKEN));
        Optional<Duration> patience = site.patience(asked.job(), messages);
        site.stock(Optional.empty(), false, patience).club(asked.tag());
        try {
            ShaftAnswer answer = answer(asked, patience);
            part.put("answer", answer);
            part.put("views", answer.picks().stream().map(pick -> ShaftView.of(answer, pick, asked)).toList());
            part.put("cautions", Cautions.of(answer));
            part.put("picture", asked.asked().at(path(asked) + "/picture"));
        } catch (BadInput cannot) {
            // where nothing was asked yet, the club's own head may be the one that broke: another can be named
            ctx.status(asked.asked().query().isEmpty() ? OK : BAD_REQUEST);
            part.put("messages", Stream.concat(messages.stream(), cannot.messages().stream()).toList());
        }
        if (Site.wantsPart(ctx)) {
            ctx.header("HX-Push-Url", asked.asked().at(path(asked)));
            part.put("swapped", true);
            site.part(ctx, "shaftsRanking", part);
        } else {
            part.remove("token");
            site.page(ctx, "shafts", "Shafts for " + asked.tag(), Section.PLAYERS, part);
        }
    }

    private void picture(Context ctx) throws BadInput {
        ShaftsForm asked = ShaftsForm.of(site.book(), ctx);
        ShaftAnswer answer = answer(asked, Waiting.FOR_EVER);
        if (answer.picks().isEmpty()) {
            throw new BadInput("no shaft was picked, so there is nothing to draw");
        }
        String svg = Pictures.of(answer).svg();
        if (Site.wantsPart(ctx)) {
            ctx.html("<div class=\"picture\">" + svg + "</div>");
        } else {
            site.page(ctx, "sketchPage", "Shafts by frequency", Section.PLAYERS, Map.of("svg", svg, "back", asked.asked().at(path(asked))));
        }
    }

    private Explained.Options options(Context ctx) throws BadInput {
        ShaftsForm asked = ShaftsForm.of(site.book(), ctx);
        ShaftAnswer answer = answer(asked, Waiting.FOR_EVER);
        List<Ranked> all = Stream.concat(answer.picks().stream().map(ShaftPick::option),
            answer.belowTheLine().stream().map(MatchAnswer.Below::option)).toList();
        return new Explained.Options(all, answer.request().club().name(), option -> target(answer, option), option -> option.shaft().tag(),
            asked.asked().at(path(asked)));
    }

    /** The target, or that of the option's rung. */
    private static Target target(ShaftAnswer answer, Ranked option) {
        double rung = answer.picks().stream().filter(pick -> pick.option() == option).mapToDouble(ShaftPick::rungCpm).findFirst().orElse(0);
        Map<Quantity, Wanted> wanted = new EnumMap<>(Quantity.class);
        answer.target().wanted().forEach((quantity, one) -> wanted.put(quantity, wanted(quantity, one, rung)));
        return new Target(answer.target().reading(), wanted);
    }

    /** What is wanted of a quantity on a rung. */
    static Wanted wanted(Quantity quantity, Wanted wanted, double rungCpm) {
        return quantity == Quantity.FREQUENCY ? new Wanted(wanted.value() + rungCpm, wanted.tolerance(), wanted.weight()) : wanted;
    }

    private void promise(Context ctx) throws BadInput {
        ShaftsForm asked = ShaftsForm.of(site.book(), ctx);
        ShaftAnswer answer = answer(asked, Waiting.FOR_EVER);
        choice.make(ctx, new Choice.About(JobBook.What.CHANGE, Optional.of(asked.tag()), asked.job()), answer.picks(), ShaftPick::option,
            pick -> JobPlanning.reshafted(pick, answer),
            messages -> show(ctx, messages));
    }

    /** What an option is called. */
    static String name(ShaftAnswer answer, ShaftPick pick) {
        return ShaftsWords.isLadder(answer) ? "%s on the rung %s cpm".formatted(pick.option().shaft().tag(), ShaftsWords.rung(pick.rungCpm()))
            : pick.option().shaft().tag();
    }
}
