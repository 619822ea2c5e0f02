package benchtwin.web;

import benchtwin.bench.BadInput;
import benchtwin.bench.ChangedMeanwhile;
import benchtwin.bench.OpenBook;
import benchtwin.bench.Seen;
import io.javalin.http.Context;
import java.util.List;
import java.util.Optional;

/**
 * What happens to a form that enters something: it is entered and the browser is sent on, or the form comes back as it was typed,
 * with what is wrong, what is odd, or what somebody else entered meanwhile.
 */
final class Entering {

    private static final String SO = "so";
    private static final String SEEN = "seen";
    private static final int CONFLICT = 409;
    private static final int BAD_REQUEST = 400;

    /** Enters what a form says. */
    interface Act {
        Outcome enter(Form form, OpenBook book) throws BadInput;
    }

    /** Shows the form again. */
    interface Again {
        void show(Draft draft) throws BadInput;
    }

    /**
     * What came of a form.
     * @param path      where to go on
     * @param said      what to tell there
     * @param questions what has to be answered first; then nothing was entered
     * @param answer    goes back with the form when it is so
     */
    record Outcome(String path, List<String> said, List<String> questions, String answer) {

        static Outcome done(String path, List<String> said) {
            return new Outcome(path, said, List.of(), "");
        }

        static Outcome asked(List<String> questions, String answer) {
            return new Outcome("", List.of(), questions, answer);
        }
    }

    private Entering() {
    }

    /**
     * Takes a form that was sent.
     * @param site  the site
     * @param ctx   the request
     * @param act   enters it, into a book that refuses what was overtaken
     * @param again shows the form again
     */
    static void post(Site site, Context ctx, Act act, Again again) throws BadInput {
        Form form = Form.posted(ctx);
        long seen = form.count(SEEN);
        try {
            Outcome outcome = act.enter(form, site.book(ctx));
            if (outcome.questions().isEmpty()) {
                site.goOn(ctx, outcome.path(), outcome.said());
            } else {
                again.show(new Draft(seen, form.typed(), List.of(), List.of(), outcome.questions(), outcome.answer()));
            }
        } catch (ChangedMeanwhile changed) {
            ctx.status(CONFLICT);
            again.show(new Draft(changed.lastEntry(), form.typed(), List.of(), changed.messages(), List.of(), ""));
        } catch (BadInput bad) {
            ctx.status(BAD_REQUEST);
            again.show(new Draft(seen, form.typed(), bad.messages(), List.of(), List.of(), ""));
        }
    }

    /** Whether just this was asked about before and is said to be so. */
    static boolean isSo(Form form, String answer) {
        return form.text(SO).equals(Optional.of(answer));
    }

    /** What the page of a form was made from, as of when. */
    static Seen seen(Form form) throws BadInput {
        return Seen.at(form.count(SEEN));
    }
}
