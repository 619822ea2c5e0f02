package benchtwin.web;

import benchtwin.club.Step;
import benchtwin.match.Ranked;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * Names an option in an address: by its parts and its steps, so that what is chosen is what was looked at, even when something
 * was entered meanwhile and the ranks have changed.
 */
final class OptionKey {

    private static final int LETTERS = 12;

    private OptionKey() {
    }

    static String of(Ranked option) {
        String all = option.head().tag() + '\n' + option.shaft().tag() + '\n'
            + option.plan().steps().stream().map(Step::words).collect(Collectors.joining("\n"));
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(all.getBytes(StandardCharsets.UTF_8));
            return HexFormat.of().formatHex(digest).substring(0, LETTERS);
        } catch (NoSuchAlgorithmException everyJavaHasIt) {
            throw new IllegalStateException(everyJavaHasIt);
        }
    }

    /** The one of some that has a key. */
    static <T> Optional<T> find(List<T> all, Function<T, Ranked> option, String key) {
        return all.stream().filter(one -> of(option.apply(one)).equals(key)).findFirst();
    }
}
