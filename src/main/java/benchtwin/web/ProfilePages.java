package benchtwin.web;

import benchtwin.bench.BadInput;
import benchtwin.bench.ProfileService;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/** A shaft's readings and its stiffness along it, as a picture and in numbers. */
final class ProfilePages implements Routes {

    private static final int BAD_REQUEST = 400;

    private final Site site;

    ProfilePages(Site site) {
        this.site = site;
    }

    @Override
    public void add(RoutesConfig routes) {
        routes.get("/stock/{tag}/profile", this::show);
    }

    private void show(Context ctx) throws BadInput {
        Fields fields = Fields.of(ctx);
        List<String> messages = new ArrayList<>();
        OptionalDouble clampMm = ShaftsForm.clampMm(fields, "assumeClamp", "clamp assumed");
        if (fields.isWrong()) {
            ctx.status(BAD_REQUEST);
            messages.addAll(fields.messages());
        }
        ProfileService.Answer answer = ProfileService.of(site.stock().of(site.book(), false), ctx.pathParam("tag"), clampMm);
        Map<String, Object> values = new HashMap<>(Map.of("answer", answer, "fields", fields, "messages", messages));
        site.page(ctx, "profile", "Stiffness of shaft " + answer.shaft().tag(), Section.STOCK, values);
    }
}
