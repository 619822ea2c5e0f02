package benchtwin.web;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.Set;

/**
 * Every request passes here first, in this order: what the answer may load and that it is not kept; a name that is ours; a method there
 * is; a browser that is known; one that may come in; and for what changes something a form of our own, no larger than forms are.
 */
final class Guard implements Routes {

    /** Everything comes from here, nothing is written into a page: no inline script, no inline style. */
    static final String POLICY = "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self'; connect-src 'self'; "
        + "form-action 'self'; base-uri 'none'; frame-ancestors 'none'";
    private static final String FIELD = "token";
    private static final Set<String> READING = Set.of("GET", "HEAD");
    private static final String CHANGING = "POST";
    /** What somebody sees who has not given the passphrase: nothing of the book. */
    private static final Set<String> OPEN = Set.of(SignInPages.PATH, "/theme", "/favicon.ico");
    private static final int UNREADABLE = 400;
    private static final int NOT_ALLOWED = 405;
    private static final int ELSEWHERE = 421;
    private static final int FORBIDDEN = 403;
    private static final int SIGN_IN = 401;

    private final HostCheck hosts;
    private final Door door;

    Guard(Access access, Door door) {
        hosts = new HostCheck(access);
        this.door = door;
    }

    @Override
    public void add(RoutesConfig routes) {
        routes.before(this::check);
    }

    private void check(Context ctx) {
        SafeHeaders.all((name, value) -> ctx.header(name, value));
        if (!hosts.isOurs(ctx.header("Host"), ctx.req().getLocalAddr())) {
            throw new Refused(ELSEWHERE, "This page is not served under that name. If it is a name of this machine, start the pages with --host NAME.");
        }
        String method = ctx.req().getMethod();
        boolean changing = CHANGING.equals(method);
        if (!changing && !READING.contains(method)) {
            ctx.header("Allow", "GET, HEAD, POST");
            throw new Refused(NOT_ALLOWED, "Nothing here answers to that.");
        }
        boolean known = door.recognise(ctx);
        if (door.standing(ctx) == Standing.STRANGER && !OPEN.contains(ctx.path()) && !Assets.isListed(ctx.path())) {
            toSignIn(ctx, changing);
            return;
        }
        if (changing) {
            BodyLimit.check(ctx);
            if (!known || !door.isOwnForm(sent(ctx), ctx)) {
                throw new Refused(FORBIDDEN, "This form did not come from these pages, or it was open too long. Go back, reload, and send it again.");
            }
        }
    }

    private static void toSignIn(Context ctx, boolean changing) {
        String query = ctx.queryString() == null ? "" : "?" + ctx.queryString();
        String signIn = SignInPages.PATH + "?next=" + FindPages.encoded(changing ? "/" : ctx.path() + query);
        if (Site.wantsPart(ctx)) {
            ctx.header("HX-Redirect", SignInPages.PATH);
        } else if (!changing) {
            ctx.redirect(signIn, HttpStatus.SEE_OTHER);
            ctx.skipRemainingHandlers();
            return;
        }
        throw new Refused(SIGN_IN, "Sign in first. Nothing was changed.");
    }

    private static String sent(Context ctx) {
        String header = ctx.header("X-Token");
        try {
            String field = ctx.formParam(FIELD);   // read even where the header has it: what cannot be read is refused here
            return header != null ? header : field;
        } catch (Exception unreadable) {   // checked ones come out of there too, undeclared
            throw new Refused(UNREADABLE, "What was sent cannot be read as a form.");
        }
    }
}
