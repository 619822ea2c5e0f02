package benchtwin.picture;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Collectors;

/**
 * Shafts as rungs on a frequency axis: what each would read with nothing cut (open dot), what it is predicted to read as
 * trimmed (filled dot, with a whisker of twice its standard uncertainty), and the trim between them, against the target.
 * Frequencies are in cpm throughout; letters and flex numbers have no place here.
 * @param title        what to see, for instance {@code Five shafts within 2 cpm of 252}
 * @param axisLabel    the quantity with its unit and the condition it holds for, for instance
 *                     {@code Frequency, cpm: 127 mm clamp on the bare butt, 200 g head}
 * @param targetCpm    the target, cpm
 * @param toleranceCpm how far from it is still right, either way, cpm, 0 or more
 * @param rungs        the shafts in the order they are to stand, top to bottom; at least one
 */
public record LadderPicture(String title, String axisLabel, double targetCpm, double toleranceCpm, List<Rung> rungs)
    implements Picture {

    /**
     * Checks the numbers and makes the texts printable.
     * @throws IllegalArgumentException naming what is missing or cannot be
     */
    public LadderPicture {
        title = Words.required("title", title);
        axisLabel = Words.required("axis label", axisLabel);
        Words.positive("a target", targetCpm);
        Words.notNegative("a tolerance", toleranceCpm);
        rungs = List.copyOf(rungs);
        if (rungs.isEmpty()) {
            throw new IllegalArgumentException("a ladder needs at least one shaft");
        }
    }

    @Override
    public String svg() {
        Fonts.require();
        return SvgSheet.text(this, new LadderDrawing(this));
    }

    @Override
    public byte[] png() {
        Fonts.require();
        return PngSheet.bytes(new LadderDrawing(this));
    }

    @Override
    public String inWords() {
        return "%s. Target %s cpm, within %s cpm either way. ".formatted(axisLabel, Words.fixed(targetCpm, 1),
            Words.fixed(toleranceCpm, 1)) + rungs.stream().map(this::inWords).collect(Collectors.joining(" "));
    }

    private String inWords(Rung rung) {
        StringBuilder words = new StringBuilder(rung.tag());
        append(words, ", ", rung.model());
        words.append(": ").append(Words.fixed(rung.trimmedCpm(), 1)).append(" cpm as trimmed, ± ")
            .append(Words.fixed(rung.whiskerCpm(), 1)).append(" (twice the standard uncertainty), ")
            .append(Words.difference(rung.trimmedCpm() - wantedCpm(rung), 1)).append(" cpm from ")
            .append(Words.fixed(wantedCpm(rung), 1));
        append(words, "; cut ", rung.trim());
        OptionalDouble untrimmed = rung.untrimmedCpm();
        words.append(untrimmed.isPresent()
            ? "; untrimmed " + Words.fixed(untrimmed.getAsDouble(), 1) + " cpm" : "; untrimmed frequency not known");
        append(words, "; ", rung.note());
        return words.append('.').toString();
    }

    /** What a rung should read, cpm: its own target, or the ladder's. */
    double wantedCpm(Rung rung) {
        return rung.targetCpm().orElse(targetCpm);
    }

    private static void append(StringBuilder words, String before, String text) {
        if (!text.isEmpty()) {
            words.append(before).append(text);
        }
    }
}
