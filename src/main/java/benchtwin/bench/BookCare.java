package benchtwin.bench;

import benchtwin.book.BookCheck;
import benchtwin.book.BookProblem;
import benchtwin.book.BookRestore;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Optional;

/** Looks after the book as a whole: copies it, checks it, puts a copy back. */
public final class BookCare {

    private BookCare() {
    }

    /**
     * What a check found.
     * @param things   how many things the book knows
     * @param events   how many events befell them
     * @param readings how many readings it holds
     * @param findings what is wrong; empty for a clean book
     */
    public record Check(int things, long events, long readings, List<String> findings) {

        static Check of(BookCheck check) {
            return new Check(check.things(), check.events(), check.readings(), check.findings());
        }
    }

    /**
     * Copies the book while it may be in use.
     * @param book the book
     * @param copy a file that is not there yet
     * @throws BadInput when it is there, or cannot be written
     */
    public static void backUp(OpenBook book, Path copy) throws BadInput {
        try {
            book.book().backUp(copy);
        } catch (BookProblem problem) {
            throw new BadInput(problem.getMessage());
        }
    }

    /**
     * Checks everything: the file, what refers to what, and that every state is what the events say.
     * @param book the book
     * @return what was found
     * @throws BadInput when it cannot even be read
     */
    public static Check check(OpenBook book) throws BadInput {
        try {
            return Check.of(BookCheck.all(book.book()));
        } catch (BookProblem problem) {
            throw new BadInput(problem.getMessage());
        }
    }

    /**
     * Puts a backup in the book's place.
     * @param book   where the book lies, or is to lie
     * @param backup the backup
     * @return the copy of the book as it was, if there was one
     * @throws BadInput when the backup is not whole, or the book cannot be written
     */
    public static Optional<Path> restore(Path book, Path backup) throws BadInput {
        try {
            return BookRestore.restore(book, backup, Clock.systemUTC());
        } catch (BookProblem problem) {
            throw new BadInput(problem.getMessage());
        }
    }
}
