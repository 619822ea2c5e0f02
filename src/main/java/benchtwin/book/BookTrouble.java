package benchtwin.book;

import java.nio.file.Path;
import org.sqlite.SQLiteException;

/** What a database says when it cannot, in words for people. */
final class BookTrouble {

    /** Result codes of the database. Published: sqlite.org, Result and Error Codes. */
    static final int BUSY = 5;
    static final int LOCKED = 6;
    static final int READ_ONLY = 8;
    static final int IO = 10;
    static final int CORRUPT = 11;
    static final int FULL = 13;
    static final int CANNOT_OPEN = 14;
    static final int PROTOCOL = 15;
    static final int NO_DATABASE = 26;

    private static final String ONLY_READ = "it can only be read: nothing of this was recorded; make the file and its folder "
        + "writable, or use another book";
    private static final int BASIC_CODE = 0xff;

    private BookTrouble() {
    }

    /** The problem behind a failure; null when it is a mistake of the program's own. */
    static BookProblem of(Path file, Throwable failure) {
        for (Throwable cause = failure; cause != null; cause = cause.getCause()) {
            if (cause instanceof BookProblem problem) {
                return problem;
            }
        }
        String message = switch (code(failure)) {
            case FULL -> "the disk is full: nothing of this was recorded; make room, then enter it again";
            case READ_ONLY -> ONLY_READ;
            case BUSY, LOCKED, PROTOCOL -> "another program held it for too long: nothing of this was recorded; try again";
            case CANNOT_OPEN -> "it cannot be opened; see that its folder is there and may be written to";
            case NO_DATABASE -> "it is not a book of this program, or a damaged one; restore a backup with benchtwin book restore";
            case CORRUPT -> "it is damaged; see what is left with benchtwin book check, or restore a backup with benchtwin book "
                + "restore";
            case IO -> "the disk failed to read or write it: nothing of this was recorded";
            default -> null;
        };
        return message == null ? null : problem(file, message, failure);
    }

    static BookProblem readOnly(Path file, Throwable failure) {
        return problem(file, ONLY_READ, failure);
    }

    private static BookProblem problem(Path file, String message, Throwable failure) {
        return new BookProblem("the book %s: %s".formatted(file, message), failure);
    }

    /** The problem behind a failure to open a book, whatever it is. */
    static BookProblem opening(Path file, Exception failure) {
        BookProblem problem = of(file, failure);
        return problem != null ? problem
            : new BookProblem("the book %s cannot be opened: %s".formatted(file, said(failure)), failure);
    }

    /** The database's result code behind a failure, without its finer shades; 0 when there is none. */
    static int code(Throwable failure) {
        for (Throwable cause = failure; cause != null; cause = cause.getCause()) {
            if (cause instanceof SQLiteException said) {
                return said.getResultCode().code & BASIC_CODE;
            }
        }
        return 0;
    }

    /** Whether a file is past reading, rather than out of reach. */
    static boolean isDamage(Throwable failure) {
        int code = code(failure);
        return code == CORRUPT || code == NO_DATABASE;
    }

    /** What was said last, on one line, without the statement and its values. */
    static String said(Throwable failure) {
        Throwable cause = failure;
        while (cause.getCause() != null) {
            cause = cause.getCause();
        }
        return String.valueOf(cause.getMessage()).replaceAll("\\s*\\R\\s*", " ");
    }
}
