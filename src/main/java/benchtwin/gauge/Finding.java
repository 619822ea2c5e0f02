package benchtwin.gauge;

import java.util.Optional;

/**
 * Something worked out from readings, or the reason why it cannot be.
 * @param found  the result, if there is one
 * @param whyNot a sentence for the bench, empty exactly when there is a result
 * @param <T>    what was worked out
 */
public record Finding<T>(Optional<T> found, String whyNot) {

    public Finding {
        if (found.isPresent() != whyNot.isEmpty()) {
            throw new IllegalArgumentException("a finding is a result or a reason, not both and not neither");
        }
    }

    static <T> Finding<T> of(T result) {
        return new Finding<>(Optional.of(result), "");
    }

    static <T> Finding<T> refused(String whyNot) {
        return new Finding<>(Optional.empty(), whyNot);
    }
}
