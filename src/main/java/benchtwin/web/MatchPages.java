package benchtwin.web;

import benchtwin.bench.AnswerMemory;
import benchtwin.bench.BadInput;
import benchtwin.bench.Cautions;
import benchtwin.bench.JobBook;
import benchtwin.bench.JobPlanning;
import benchtwin.bench.OpenBook;
import benchtwin.bench.OptionWords;
import benchtwin.bench.Workshop;
import benchtwin.match.Favourite;
import benchtwin.match.Keep;
import benchtwin.match.MatchAnswer;
import benchtwin.match.Ranked;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.Duration;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

/** Find a head (or a shaft, or a whole backup) that makes the twin of a club or of a written target, and make it a job. */
final class MatchPages implements Routes {

    private static final int BAD_REQUEST = 400;

    private final Site site;
    private final Explained explained;
    private final Choice choice;
    private final AnswerMemory<MatchAnswer> answers = new AnswerMemory<>();

    MatchPages(Site site) {
        this.site = site;
        this.explained = new Explained(site);
        this.choice = new Choice(site);
    }

    /** Reads what is asked out of an address. */
    @FunctionalInterface
    private interface Asks {
        MatchForm of(OpenBook book, Context ctx) throws BadInput;
    }

    @Override
    public void add(RoutesConfig routes) {
        Map.<String, Asks>of("/clubs/{tag}/twin", MatchForm::ofClub, MatchForm.WRITTEN, MatchForm::ofTarget).forEach((path, asks) -> {
            routes.get(path, ctx -> show(ctx, asks.of(site.book(), ctx), List.of()));
            routes.get(path + "/how", ctx -> explained.how(ctx, options(asks.of(site.book(), ctx))));
            routes.get(path + "/sketch", ctx -> explained.sketch(ctx, options(asks.of(site.book(), ctx))));
            routes.post(path, ctx -> promise(ctx, asks.of(site.book(), ctx)));
        });
    }

    private MatchAnswer answer(MatchForm asked, Workshop workshop, Optional<Duration> patience) throws BadInput {
        if (asked.fields().isWrong()) {
            throw new BadInput(asked.fields().messages());
        }
        if (!asked.missing().isEmpty()) {
            throw new BadInput("not enough is written yet: it still needs " + String.join("; ", asked.missing()));
        }
        return Waiting.answer(answers, patience, workshop, asked.question(), () -> asked.answer(workshop));
    }

    private MatchAnswer answer(MatchForm asked) throws BadInput {
        return answer(asked, site.stock(asked.job(), false, Waiting.FOR_EVER), Waiting.FOR_EVER);
    }

    private void show(Context ctx, MatchForm asked, List<String> messages) throws BadInput {
        Optional<Duration> patience = site.patience(asked.job(), messages);
        Workshop workshop = site.stock(asked.job(), false, patience);
        Optional<Favourite> favourite = asked.favourite(workshop);
        List<String> said = new ArrayList<>(messages);
        Map<String, Object> part = new HashMap<>();
        if (asked.missing().isEmpty() || asked.fields().isWrong()) {
            try {
                MatchAnswer answer = answer(asked, workshop, patience);
                part.put("answer", answer);
                part.put("views", answer.results().stream().map(option -> TwinView.of(answer, option, asked)).toList());
                part.put("cautions", Cautions.of(answer));
            } catch (BadInput cannot) {
                ctx.status(BAD_REQUEST);
                said.addAll(cannot.messages());
            }
        }
        part.put("asked", asked);
        part.put("messages", said);
        if (Site.wantsPart(ctx)) {
            ctx.header("HX-Push-Url", asked.asked().at(asked.path()));
            part.put("token", ctx.attribute(Site.TOKEN));
            part.put("leftOut", asked.isLeavingOut());
            site.part(ctx, "twinPart", part);
        } else if (favourite.isPresent()) {
            part.put("favourite", favourite.get());
            site.page(ctx, "twin", "Twin of " + favourite.get().name(), Section.PLAYERS, part);
        } else {
            site.page(ctx, "target", "From a written target", Section.STOCK, part);
        }
    }

    private Explained.Options options(MatchForm asked) throws BadInput {
        MatchAnswer answer = answer(asked);
        List<Ranked> all = Stream.concat(answer.results().stream(), answer.belowTheLine().stream().map(MatchAnswer.Below::option)).toList();
        return new Explained.Options(all, answer.favourite().name(), option -> answer.favourite().target(),
            option -> OptionWords.name(answer.keep(), option), asked.asked().at(asked.path()));
    }

    private void promise(Context ctx, MatchForm asked) throws BadInput {
        MatchAnswer answer = answer(asked);
        choice.make(ctx, new Choice.About(JobBook.What.TWIN, asked.club(), asked.job()), answer.results(), Function.identity(),
            option -> asked.club().isPresent() ? JobPlanning.twin(asked.club().get(), option, answer.favourite())
                : JobPlanning.written(option, answer.favourite()), messages -> show(ctx, asked, messages));
    }

    /** What the twin may keep. */
    static List<Keep> keeps() {
        return List.of(Keep.SHAFT, Keep.HEAD, Keep.NONE);
    }
}
