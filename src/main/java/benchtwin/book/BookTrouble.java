package benchtwin.book;

import java.nio.file.Path;
import java.sql.SQLException;
import org.sqlite.SQLiteException;

/** What a database says when it cannot, in words for people. */
final class BookTrouble {

    private BookTrouble() {
    }

    /** The problem behind a failure; null when it is a mistake of the program's own. */
    static BookProblem of(Path file, Throwable failure) {
        for (Throwable cause = failure; cause != null; cause = cause.getCause()) {
            if (cause instanceof SQLiteException said) {
                return of(file, said);
            }
            if (cause instanceof BookProblem problem) {
                return problem;
            }
        }
        return null;
    }

    private static BookProblem of(Path file, SQLException said) {
        int code = ((SQLiteException) said).getResultCode().code & 0xff;
        String message = switch (code) {
            case 13 -> "the disk is full: nothing of this was recorded; make room, then enter it again";
            case 8 -> "it can only be read: nothing of this was recorded; make the file and its folder writable, or name "
                + "another with --book";
            case 5, 6 -> "another program held it for too long: nothing of this was recorded; try again";
            case 14 -> "it cannot be opened; see that its folder is there and may be written to";
            case 26 -> "it is not a book of this program, or a damaged one; restore a backup with benchtwin book restore";
            case 11 -> "it is damaged; see what is left with benchtwin book check, or restore a backup with benchtwin book "
                + "restore";
            case 10 -> "the disk failed to read or write it: nothing of this was recorded";
            default -> null;
        };
        return message == null ? null : new BookProblem("the book %s: %s".formatted(file, message), said);
    }
}
