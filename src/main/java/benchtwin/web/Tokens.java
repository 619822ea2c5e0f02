package benchtwin.web;

import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.util.Base64;
import java.util.regex.Pattern;
import javax.crypto.Mac;
import javax.crypto.spec.SecretKeySpec;

/**
 * Identities of browsers and what their forms carry. A form's token is worked out from its browser's identity with a key only this
 * run of the program has, so nothing is kept for browsers that come and go, and who knows or plants a cookie still has no token.
 */
final class Tokens {

    private static final String METHOD = "HmacSHA256";
    private static final int BYTES = 32;
    /** 32 bytes in base 64 for addresses. */
    private static final Pattern IDENTITY = Pattern.compile("[A-Za-z0-9_-]{43}");

    private final SecureRandom random = new SecureRandom();
    private final SecretKeySpec key = new SecretKeySpec(bytes(), METHOD);

    /** An identity nobody can guess. */
    String identity() {
        return text(bytes());
    }

    /** Whether a cookie's value can be an identity at all. */
    static boolean isIdentity(String cookie) {
        return cookie != null && IDENTITY.matcher(cookie).matches();
    }

    /** What forms sent to this browser carry. */
    String of(String identity) {
        try {
            Mac mac = Mac.getInstance(METHOD);
            mac.init(key);
            return text(mac.doFinal(identity.getBytes(StandardCharsets.UTF_8)));
        } catch (GeneralSecurityException missing) {
            throw new IllegalStateException(METHOD + " is part of every Java", missing);
        }
    }

    /** Whether a form carries the token of the browser it comes from. */
    boolean belong(String token, String identity) {
        return token != null && MessageDigest.isEqual(token.getBytes(StandardCharsets.UTF_8), of(identity).getBytes(StandardCharsets.UTF_8));
    }

    private byte[] bytes() {
        byte[] bytes = new byte[BYTES];
        random.nextBytes(bytes);
        return bytes;
    }

    private static String text(byte[] bytes) {
        return Base64.getUrlEncoder().withoutPadding().encodeToString(bytes);
    }
}
