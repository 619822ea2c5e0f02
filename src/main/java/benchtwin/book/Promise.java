package benchtwin.book;

import java.util.Optional;

/**
 * To whom a part is promised.
 * @param job   the job's tag, where it is one of the book's
 * @param whom  the person or job in words
 * @param count how many of a counted part, 1 of any other
 */
public record Promise(Optional<String> job, String whom, int count) {

    public Promise {
        if (count < 1) {
            throw new IllegalArgumentException("a promise is of 1 or more, not " + count);
        }
    }

    /**
     * As lists show it.
     * @return the job and for whom it is, or the words
     */
    public String text() {
        return job.map(tag -> whom.isEmpty() ? "job " + tag : "job %s, %s".formatted(tag, whom)).orElse(whom);
    }
}
