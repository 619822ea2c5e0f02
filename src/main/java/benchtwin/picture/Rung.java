package benchtwin.picture;

import java.util.OptionalDouble;

/**
 * One shaft on a ladder.
 * @param tag                    which shaft, as written on it
 * @param model                  what it is; may be empty
 * @param untrimmedCpm           what it would read in the same build with nothing cut, cpm, if that is known
 * @param trimmedCpm             what it is predicted to read as trimmed, cpm
 * @param standardUncertaintyCpm one standard deviation of that prediction, cpm, 0 or more
 * @param targetCpm              what this rung should read, cpm, where the rungs have targets of their own
 * @param trim                   the cuts in words, for instance {@code 3/8 in tip, 21 mm butt}; may be empty
 * @param note                   what else to know about it; may be empty
 */
public record Rung(String tag, String model, OptionalDouble untrimmedCpm, double trimmedCpm,
                   double standardUncertaintyCpm, OptionalDouble targetCpm, String trim, String note) {

    /**
     * Checks the numbers and makes the texts printable: on one line, without control characters.
     * @throws IllegalArgumentException naming the tag and the number that cannot be
     */
    public Rung {
        tag = Words.required("tag", tag);
        model = Words.printable(model);
        trim = Words.printable(trim);
        note = Words.printable(note);
        Words.positive("shaft " + tag + ": a frequency as trimmed", trimmedCpm);
        Words.notNegative("shaft " + tag + ": an uncertainty", standardUncertaintyCpm);
        if (untrimmedCpm.isPresent()) {
            Words.positive("shaft " + tag + ": a frequency untrimmed", untrimmedCpm.getAsDouble());
        }
        if (targetCpm.isPresent()) {
            Words.positive("shaft " + tag + ": a target", targetCpm.getAsDouble());
        }
    }

    /** Half the whisker, cpm. */
    double whiskerCpm() {
        return 2 * standardUncertaintyCpm;
    }
}
