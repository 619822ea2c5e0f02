package benchtwin.book;

/** What was asked of the book cannot be done; the message says what, where and what was expected, for people. */
public class BookProblem extends Exception {

    private static final long serialVersionUID = 1;

    /**
     * @param message one line, for people
     */
    public BookProblem(String message) {
        super(message);
    }

    /**
     * @param message one line, for people
     * @param cause   what the file or the database said
     */
    public BookProblem(String message, Throwable cause) {
        super(message, cause);
    }
}
