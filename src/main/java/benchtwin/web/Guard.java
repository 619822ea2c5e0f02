package benchtwin.web;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.Cookie;
import io.javalin.http.SameSite;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.util.Base64;
import java.util.Set;

/**
 * Keeps strangers out. Every request must name this machine as its host (or a page elsewhere could reach the pages by a name of its
 * own that it points here); every post must bring the token of the browser's own cookie; every answer says what a page may load.
 */
final class Guard implements Routes {

    /** Everything comes from here, nothing is written into a page: no inline script, no inline style. */
    static final String POLICY = "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self'; connect-src 'self'; "
        + "form-action 'self'; base-uri 'none'; frame-ancestors 'none'";
    private static final String COOKIE = "benchtwin";
    private static final String FIELD = "token";
    private static final Set<String> READING = Set.of("GET", "HEAD");
    private static final int TOKEN_BYTES = 32;

    private final SecureRandom random = new SecureRandom();

    Guard(Site site) {
    }

    @Override
    public void add(RoutesConfig routes) {
        routes.before(this::check);
    }

    private void check(Context ctx) {
        ctx.header("Content-Security-Policy", POLICY);
        ctx.header("X-Content-Type-Options", "nosniff");
        ctx.header("Referrer-Policy", "same-origin");
        ctx.header("Cross-Origin-Opener-Policy", "same-origin");
        ctx.header("Cross-Origin-Resource-Policy", "same-origin");
        if (!isHere(ctx.header("Host"))) {
            throw new Refused(421, "This page is not served under that name.");
        }
        String cookie = ctx.cookie(COOKIE);
        boolean known = cookie != null && cookie.length() >= TOKEN_BYTES;
        if (!READING.contains(ctx.method().name()) && !(known && same(cookie, sent(ctx)))) {
            throw new Refused(403, "This form did not come from these pages, or it was open too long. Go back, reload, and send it again.");
        }
        if (!known) {
            cookie = fresh();
            Cookie own = new Cookie(COOKIE, cookie);
            own.setHttpOnly(true);
            own.setSameSite(SameSite.STRICT);
            own.setPath("/");
            ctx.cookie(own);
        }
        ctx.attribute(Site.TOKEN, cookie);
    }

    private static String sent(Context ctx) {
        String header = ctx.header("X-Token");
        return header != null ? header : ctx.formParam(FIELD);
    }

    private static boolean same(String a, String b) {
        return b != null && MessageDigest.isEqual(a.getBytes(StandardCharsets.UTF_8), b.getBytes(StandardCharsets.UTF_8));
    }

    private String fresh() {
        byte[] bytes = new byte[TOKEN_BYTES];
        random.nextBytes(bytes);
        return Base64.getUrlEncoder().withoutPadding().encodeToString(bytes);
    }

    private static boolean isHere(String host) {
        if (host == null) {
            return false;
        }
        String name = host.replaceFirst(":\\d+$", "");
        return name.equals("localhost") || name.equals(BenchServer.LOOPBACK) || name.equals("[::1]");
    }
}
