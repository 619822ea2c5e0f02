package benchtwin.bench;

import java.nio.file.Path;
import java.time.Clock;
import java.util.Optional;

/** Opens books at another time than now, for tests of other packages. */
public final class ClockedBook {

    private ClockedBook() {
    }

    /**
     * Opens a book; makes it when there is none.
     * @param file  where it lies
     * @param by    who uses it
     * @param clock the time of what is entered
     * @return the book
     * @throws BadInput when it cannot be opened
     */
    public static OpenBook open(Path file, String by, Clock clock) throws BadInput {
        return OpenBook.open(file, Optional.of(by), clock);
    }
}
