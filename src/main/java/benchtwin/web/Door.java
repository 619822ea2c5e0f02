package benchtwin.web;

import io.javalin.http.Context;
import io.javalin.http.Cookie;
import io.javalin.http.SameSite;
import java.time.Clock;
import java.util.List;

/** Knows each browser by a cookie, and whether it may come in. */
final class Door {

    private static final String COOKIE = "benchtwin-";
    private static final String IDENTITY = "identity";
    /** A program on this machine that passes on what others ask is not this machine asking. */
    private static final List<String> PASSED_ON = List.of("Forwarded", "X-Forwarded-For", "X-Real-IP", "Via");

    private final Access access;
    private final Tokens tokens = new Tokens();
    private final Sessions sessions;

    Door(Access access, Clock clock) {
        this.access = access;
        sessions = new Sessions(clock);
    }

    /**
     * Reads who it is, or gives a new browser an identity.
     * @return whether it was known before
     */
    boolean recognise(Context ctx) {
        String cookie = ctx.cookie(cookieName(ctx));
        boolean known = Tokens.isIdentity(cookie);
        if (known) {
            become(ctx, cookie);
        } else {
            renew(ctx);
        }
        return known;
    }

    /** The passphrase was right. The browser gets another identity, or one that somebody planted before would be let in with it. */
    void letIn(Context ctx) {
        sessions.open(renew(ctx));
        settle(ctx);
    }

    /** It does not want to be known any more. */
    void signOut(Context ctx) {
        sessions.close(ctx.attribute(IDENTITY));
        renew(ctx);
    }

    Standing standing(Context ctx) {
        return ctx.attribute(Site.STANDING);
    }

    boolean isOwnForm(String token, Context ctx) {
        return tokens.belong(token, ctx.attribute(IDENTITY));
    }

    private String renew(Context ctx) {
        String identity = tokens.identity();
        Cookie own = new Cookie(cookieName(ctx), identity);
        own.setHttpOnly(true);
        // lax: a link in a message would come without a strict one, and be given another in its place. Reading changes nothing
        own.setSameSite(SameSite.LAX);
        own.setSecure(ctx.req().isSecure());
        own.setPath("/");
        ctx.cookie(own);
        become(ctx, identity);
        return identity;
    }

    private void become(Context ctx, String identity) {
        ctx.attribute(IDENTITY, identity);
        ctx.attribute(Site.TOKEN, tokens.of(identity));
        settle(ctx);
    }

    private void settle(Context ctx) {
        Standing standing = Standing.STRANGER;
        if (!access.isNetwork() || isHere(ctx)) {
            standing = Standing.HERE;
        } else if (sessions.use(ctx.attribute(IDENTITY))) {
            standing = Standing.SIGNED_IN;
        }
        ctx.attribute(Site.STANDING, standing);
    }

    private static boolean isHere(Context ctx) {
        return HostCheck.isLoopback(ctx.req().getRemoteAddr()) && PASSED_ON.stream().allMatch(header -> ctx.header(header) == null);
    }

    /** Cookies do not know ports: two books served side by side would take each other's. */
    private static String cookieName(Context ctx) {
        return COOKIE + ctx.req().getLocalPort();
    }
}
