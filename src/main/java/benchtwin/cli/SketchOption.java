package benchtwin.cli;

import benchtwin.bench.BadInput;
import benchtwin.bench.Pictures;
import benchtwin.picture.HeadSketchPicture;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.Option;

/** Whether the head of an answer is drawn. */
final class SketchOption {

    @Option(names = "--plot", paramLabel = "FILE", order = 40,
        description = "draw the head before and after into a file ending in .svg or .png; of several options the first, or the "
            + "one that is promised")
    private Path plot;

    /** Refuses a file that cannot be written, before anything is worked out. */
    void check() throws BadInput {
        if (plot != null) {
            Pictures.check(plot);
        }
    }

    boolean isAsked() {
        return plot != null;
    }

    /**
     * Draws it.
     * @param sketch empty where the answer has no head to draw
     * @param err    takes the word that nothing was drawn
     */
    void draw(Optional<HeadSketchPicture> sketch, PrintWriter err) throws BadInput {
        if (plot == null) {
            return;
        }
        if (sketch.isPresent()) {
            Pictures.write(sketch.get(), plot);
        } else {
            err.println("%s was not drawn: there is no option whose head it could show".formatted(plot));
        }
    }
}
