package benchtwin.bench;

import benchtwin.book.BookProblem;

/** What the book will not do, found where nobody knows who asks: what is to be done about it is put into words on the way out. */
final class ToBeDone extends BookProblem {

    private static final long serialVersionUID = 1;

    private final String problem;
    private final ToDo what;

    /**
     * @param problem what is wrong, up to where the words begin that say what to do
     * @param what    what to do
     */
    ToBeDone(String problem, ToDo what) {
        super(problem + what.in(WayIn.LINE));
        this.problem = problem;
        this.what = what;
    }

    /** The message of any problem, for somebody who came in one way or the other. */
    static String words(BookProblem any, WayIn way) {
        return any instanceof ToBeDone telling ? telling.problem + telling.what.in(way) : any.getMessage();
    }
}
