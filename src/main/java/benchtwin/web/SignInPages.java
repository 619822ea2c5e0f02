package benchtwin.web;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.net.Inet6Address;
import java.net.InetAddress;
import java.net.UnknownHostException;
import java.time.Clock;
import java.time.Duration;
import java.util.Arrays;
import java.util.List;
import java.util.Map;

/** Where a browser on another machine gives the passphrase, and where it signs out. */
final class SignInPages implements Routes {

    static final String PATH = "/sign-in";
    private static final int WRONG = 403;
    private static final int TOO_OFTEN = 429;
    /** Of the sixteen bytes of a long address, those a network gives; one machine may use all the others. */
    private static final int NETWORK_BYTES = 8;

    private final Site site;
    private final Access access;
    private final Door door;
    private final TryLimit limit;

    SignInPages(Site site, Access access, Door door, Clock clock) {
        this.site = site;
        this.access = access;
        this.door = door;
        limit = new TryLimit(clock);
    }

    @Override
    public void add(RoutesConfig routes) {
        if (access.isNetwork()) {
            routes.get(PATH, ctx -> {
                if (door.standing(ctx) == Standing.STRANGER) {
                    ask(ctx, Form.query(ctx), List.of());
                } else {
                    ctx.redirect(OwnPath.of(Form.query(ctx).text("next").orElse("/")), HttpStatus.SEE_OTHER);
                }
            });
            routes.post(PATH, this::signIn);
            routes.post("/sign-out", ctx -> {
                door.signOut(ctx);
                ctx.redirect(PATH, HttpStatus.SEE_OTHER);
            });
        }
    }

    private void signIn(Context ctx) {
        Form form = Form.posted(ctx);
        String address = network(ctx.req().getRemoteAddr());
        Duration wait = limit.ask(address);
        if (!wait.isZero()) {
            long seconds = wait.plusMillis(999).toSeconds();
            ctx.status(TOO_OFTEN).header("Retry-After", String.valueOf(seconds));
            ask(ctx, form, List.of("Too many wrong passphrases. Wait %s, then try again.".formatted(
                seconds < 120 ? seconds + " s" : (seconds + 59) / 60 + " min")));
        } else if (isRight(form.text("passphrase").orElse(""))) {
            limit.right(address);
            door.letIn(ctx);
            ctx.redirect(OwnPath.of(form.text("next").orElse("/")), HttpStatus.SEE_OTHER);
        } else {
            ctx.status(WRONG);
            ask(ctx, form, List.of("That is not the passphrase. It stands where the pages were started."));
        }
    }

    /** One at a time: each takes a processor for a while, on purpose. */
    private synchronized boolean isRight(String typed) {
        return access.passphrase().orElseThrow().matches(typed);
    }

    private void ask(Context ctx, Form form, List<String> messages) {
        site.page(ctx, "signIn", "Sign in", Section.NONE, Map.of("messages", messages, "next", form.text("next").orElse("/"),
            "clear", !ctx.req().isSecure()));
    }

    /** What counts as one address: of a long one the network's part. */
    static String network(String address) {
        try {
            InetAddress parsed = InetAddress.getByName(address.replaceAll("[\\[\\]]|%.*", ""));
            return parsed instanceof Inet6Address ? Arrays.toString(Arrays.copyOf(parsed.getAddress(), NETWORK_BYTES)) : parsed.getHostAddress();
        } catch (UnknownHostException odd) {
            return address;
        }
    }
}
