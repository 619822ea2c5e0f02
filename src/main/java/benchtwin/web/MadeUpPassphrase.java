package benchtwin.web;

import java.security.SecureRandom;
import java.util.random.RandomGenerator;

/**
 * A passphrase nobody has to think of: five short words that mean nothing, of letters every keyboard has in one place, easy to read
 * out across a workshop. Each word is two times a consonant and a vowel.
 */
public final class MadeUpPassphrase {

    /** No two that sound alike (c, k, q), none that is read as a digit; ours. */
    private static final String CONSONANTS = "bdghlmnprstvwz";
    private static final String VOWELS = "aeiou";
    private static final int WORDS = 5;
    private static final int SYLLABLES = 2;

    private MadeUpPassphrase() {
    }

    /**
     * A fresh one.
     * @return five words with a blank between them
     */
    public static String fresh() {
        return of(new SecureRandom());
    }

    static String of(RandomGenerator random) {
        StringBuilder words = new StringBuilder();
        for (int word = 0; word < WORDS; word++) {
            words.append(word == 0 ? "" : " ");
            for (int syllable = 0; syllable < SYLLABLES; syllable++) {
                words.append(CONSONANTS.charAt(random.nextInt(CONSONANTS.length()))).append(VOWELS.charAt(random.nextInt(VOWELS.length())));
            }
        }
        return words.toString();
    }

    /** How hard it is to guess, bits. */
    static double bits() {
        return WORDS * SYLLABLES * Math.log(CONSONANTS.length() * VOWELS.length()) / Math.log(2);
    }
}
