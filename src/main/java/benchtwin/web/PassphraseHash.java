package benchtwin.web;

import java.security.GeneralSecurityException;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.text.Normalizer;
import java.util.Arrays;
import java.util.Base64;
import javax.crypto.SecretKeyFactory;
import javax.crypto.spec.PBEKeySpec;

/**
 * A passphrase as it is kept: not itself, but what a slow one-way function makes of it and a salt of its own. Who reads it has to try
 * passphrases one by one, each at the cost of all the rounds.
 */
public final class PassphraseHash {

    /** Fewest signs of a passphrase somebody chose; ours. */
    public static final int LEAST_SIGNS = 12;
    /** Most, so that nobody makes the slow function slower; ours. */
    static final int MOST_SIGNS = 200;
    /** Rounds of HMAC-SHA-256, as the OWASP Password Storage Cheat Sheet asks of this method; memory. */
    static final int ROUNDS = 600_000;
    private static final String METHOD = "PBKDF2WithHmacSHA256";
    private static final String MARK = "pbkdf2-sha256";
    private static final int SALT_BYTES = 16;
    private static final int HASH_BYTES = 32;
    private static final int PARTS = 4;

    private final int rounds;
    private final byte[] salt;
    private final byte[] hash;

    private PassphraseHash(int rounds, byte[] salt, byte[] hash) {
        this.rounds = rounds;
        this.salt = salt;
        this.hash = hash;
    }

    /**
     * Of a passphrase, with a salt of its own.
     * @param passphrase as it was typed or made up
     * @return what is kept of it
     */
    public static PassphraseHash of(String passphrase) {
        byte[] salt = new byte[SALT_BYTES];
        new SecureRandom().nextBytes(salt);
        return new PassphraseHash(ROUNDS, salt, slow(passphrase, salt, ROUNDS));
    }

    /**
     * As {@link #text} wrote it.
     * @throws IllegalArgumentException for anything else, fewer rounds than are safe included
     */
    static PassphraseHash parse(String text) {
        String[] parts = text.strip().split(" ");
        if (parts.length != PARTS || !parts[0].equals(MARK)) {
            throw new IllegalArgumentException("expected: " + MARK + " rounds salt hash");
        }
        int rounds = Integer.parseInt(parts[1]);
        byte[] salt = Base64.getDecoder().decode(parts[2]);
        byte[] hash = Base64.getDecoder().decode(parts[3]);
        if (rounds < ROUNDS || rounds > 100 * ROUNDS || salt.length < SALT_BYTES || hash.length != HASH_BYTES) {
            throw new IllegalArgumentException("expected at least %d rounds, %d bytes of salt and %d of hash".formatted(ROUNDS, SALT_BYTES,
                HASH_BYTES));
        }
        return new PassphraseHash(rounds, salt, hash);
    }

    /** One line of text; the passphrase cannot be read out of it. */
    String text() {
        Base64.Encoder base64 = Base64.getEncoder();
        return "%s %d %s %s".formatted(MARK, rounds, base64.encodeToString(salt), base64.encodeToString(hash));
    }

    /** Whether this is the passphrase. Takes as long for a wrong one as for the right one; blanks more or fewer between words do not count. */
    boolean matches(String typed) {
        return typed.length() <= MOST_SIGNS && MessageDigest.isEqual(hash, slow(typed, salt, rounds));
    }

    private static byte[] slow(String passphrase, byte[] salt, int rounds) {
        char[] signs = Normalizer.normalize(passphrase.strip().replaceAll("\\s+", " "), Normalizer.Form.NFC).toCharArray();
        PBEKeySpec asked = new PBEKeySpec(signs, salt, rounds, 8 * HASH_BYTES);
        try {
            return SecretKeyFactory.getInstance(METHOD).generateSecret(asked).getEncoded();
        } catch (GeneralSecurityException missing) {
            throw new IllegalStateException(METHOD + " is part of every Java", missing);
        } finally {
            asked.clearPassword();
            Arrays.fill(signs, '\0');
        }
    }
}
