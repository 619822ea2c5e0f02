package benchtwin.stock;

import benchtwin.club.Word;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Fixed words and lists in cells. Case does not count; spaces, hyphens and underscores are alike. */
final class Words {

    /** Between the members of a list in one cell. */
    private static final Pattern BETWEEN = Pattern.compile("[+|]");

    /** The constants of each word list by their folded words, built once. */
    private static final ClassValue<Map<String, Object>> BY_WORD = new ClassValue<>() {
        @Override
        protected Map<String, Object> computeValue(Class<?> words) {
            return Arrays.stream(words.getEnumConstants())
                .collect(Collectors.toMap(constant -> Nearest.fold(((Word) constant).word()), constant -> constant));
        }
    };

    private Words() {
    }

    static <E extends Enum<E> & Word> Optional<E> find(String text, Class<E> words) {
        return Optional.ofNullable(BY_WORD.get(words).get(Nearest.fold(text))).map(words::cast);
    }

    /** What may stand there, and what was probably meant. */
    static String expectation(String text, List<String> allowed) {
        return "one of " + String.join(", ", allowed)
            + Nearest.to(text, allowed).map(near -> " (did you mean " + near + "?)").orElse("");
    }

    static <E extends Enum<E> & Word> List<String> of(Class<E> words) {
        return Arrays.stream(words.getEnumConstants()).map(Word::word).toList();
    }

    /** Yes or no; empty for anything else. */
    static Optional<Boolean> yesOrNo(String text) {
        return switch (Nearest.fold(text)) {
            case "yes", "true", "1" -> Optional.of(true);
            case "no", "false", "0" -> Optional.of(false);
            default -> Optional.empty();
        };
    }

    /** The members of a cell that lists several, stripped; an empty member shows as an empty text. */
    static List<String> list(String cell) {
        if (cell.indexOf('+') < 0 && cell.indexOf('|') < 0) {
            return List.of(cell.strip());
        }
        return Arrays.stream(BETWEEN.split(cell, -1)).map(String::strip).toList();
    }
}
