package benchtwin.web;

import io.javalin.http.Context;
import java.io.IOException;
import java.io.OutputStream;

/** What is sent to the pages is a form, and no larger than forms are. Looked at before anything of it is used. */
final class BodyLimit {

    /** No form without a file is longer, bytes; ours. */
    static final int FORM = 256 * 1024;
    /** Files sent at once are no larger together, MB; a season's list of shafts has two. Ours. */
    static final int FILE_MB = 16;
    private static final long MB = 1024L * 1024;
    /** So much of what is too large is still read, so that the answer reaches who sent it; ours. */
    private static final long DROPPED_MB = 64;
    private static final String PLAIN = "application/x-www-form-urlencoded";
    private static final String WITH_FILE = "multipart/form-data";
    private static final int NO_LENGTH = 411;
    private static final int TOO_LARGE = 413;
    private static final int NO_FORM = 415;

    private BodyLimit() {
    }

    static void check(Context ctx) {
        long length = ctx.req().getContentLengthLong();
        if (length < 0) {
            throw new Refused(NO_LENGTH, "What was sent does not say how long it is.");
        }
        if (length == 0) {
            return;
        }
        String type = String.valueOf(ctx.req().getContentType()).split(";")[0].strip();
        if (type.equalsIgnoreCase(PLAIN)) {
            allow(ctx, length, FORM, "256 kB");
        } else if (type.equalsIgnoreCase(WITH_FILE)) {
            allow(ctx, length, FILE_MB * MB + FORM, FILE_MB + " MB");
        } else {
            throw new Refused(NO_FORM, "What was sent is not a form.");
        }
    }

    private static void allow(Context ctx, long length, long most, String words) {
        if (length > most) {
            if (length <= DROPPED_MB * MB) {
                drop(ctx);
            }
            throw new Refused(TOO_LARGE, "What was sent is larger than %s. Nothing of it was taken.".formatted(words));
        }
    }

    /** A browser shows an answer only once all it sends has gone; what is not much too large is let in and dropped. */
    private static void drop(Context ctx) {
        try {
            ctx.req().getInputStream().transferTo(OutputStream.nullOutputStream());
        } catch (IOException gone) {
            // whoever sent it is not there any more, and will read no answer
        }
    }
}
