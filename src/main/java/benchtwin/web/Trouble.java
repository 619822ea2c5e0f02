package benchtwin.web;

import benchtwin.bench.BadInput;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpResponseException;
import java.util.List;
import java.util.Map;

/** What a person sees when something cannot be done. Never a stack trace. */
final class Trouble implements Routes {

    private static final int BAD_REQUEST = 400;
    private static final int NOT_FOUND = 404;
    private static final int FAULT = 500;

    private final Site site;

    Trouble(Site site) {
        this.site = site;
    }

    @Override
    public void add(RoutesConfig routes) {
        routes.exception(BadInput.class, (bad, ctx) -> say(ctx, BAD_REQUEST, "That cannot be done", bad.messages()));
        routes.exception(Refused.class, (refused, ctx) -> say(ctx, refused.status(), "Refused", List.of(refused.getMessage())));
        routes.exception(HttpResponseException.class, (wrong, ctx) -> say(ctx, wrong.getStatus(), "That cannot be done",
            List.of(wrong.getStatus() == NOT_FOUND ? "There is no page here." : "This request cannot be answered.")));
        routes.exception(Exception.class, (fault, ctx) -> say(ctx, FAULT, "A fault of the program",
            List.of("This is a fault of the program, not of your input: " + fault.getClass().getSimpleName() + ". Nothing was changed.")));
        routes.error(NOT_FOUND, ctx -> {
            if (ctx.resultInputStream() == null || "Endpoint GET %s not found".formatted(ctx.path()).equals(ctx.result())
                || String.valueOf(ctx.result()).startsWith("Endpoint")) {
                say(ctx, NOT_FOUND, "Nothing here", List.of("There is no page here."));
            }
        });
    }

    private void say(Context ctx, int status, String title, List<String> messages) {
        ctx.status(status);
        if (Site.wantsPart(ctx)) {
            site.part(ctx, "messages", Map.of("messages", messages));
        } else {
            site.page(ctx, "trouble", title, Section.NONE, Map.of("messages", messages));
        }
    }
}
