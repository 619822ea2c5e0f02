package benchtwin.web;

import benchtwin.bench.BadInput;
import benchtwin.bench.PredictService;
import benchtwin.bench.Workshop;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** What would this build measure? Every quantity with its uncertainty, and where each input came from. */
final class PredictPages implements Routes {

    private static final int BAD_REQUEST = 400;

    private final Site site;

    PredictPages(Site site) {
        this.site = site;
    }

    @Override
    public void add(RoutesConfig routes) {
        routes.get(PredictForm.PATH, this::show);
        routes.get(PredictForm.PATH + "/sketch", this::sketch);
    }

    private static PredictService.Answer answer(PredictForm asked, Workshop workshop) throws BadInput {
        if (asked.fields().isWrong()) {
            throw new BadInput(asked.fields().messages());
        }
        if (!asked.missing().isEmpty()) {
            throw new BadInput("it still needs " + String.join(" and ", asked.missing()));
        }
        return PredictService.predict(workshop, asked.build());
    }

    private void show(Context ctx) throws BadInput {
        PredictForm asked = PredictForm.of(ctx);
        List<String> messages = new ArrayList<>();
        Map<String, Object> part = new HashMap<>();
        if (asked.missing().isEmpty() || asked.fields().isWrong()) {
            try {
                part.put("answer", answer(asked, site.stock().of(site.book(), false)));
            } catch (BadInput cannot) {
                ctx.status(BAD_REQUEST);
                messages.addAll(cannot.messages());
            }
        }
        part.put("asked", asked);
        part.put("messages", messages);
        if (Site.wantsPart(ctx)) {
            ctx.header("HX-Push-Url", asked.asked().at(PredictForm.PATH));
            part.put("swapped", true);
            site.part(ctx, "predicted", part);
        } else {
            site.page(ctx, "predict", "What would it measure?", Section.STOCK, part);
        }
    }

    private void sketch(Context ctx) throws BadInput {
        PredictForm asked = PredictForm.of(ctx);
        Workshop workshop = site.stock().of(site.book(), false);
        String svg = PredictService.sketch(workshop, answer(asked, workshop)).svg();
        site.drawing(ctx, "Head %s before and after".formatted(asked.build().head()), Section.STOCK, svg, asked.asked().at(PredictForm.PATH));
    }
}
