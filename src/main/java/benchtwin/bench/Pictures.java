package benchtwin.bench;

import benchtwin.club.Quantity;
import benchtwin.club.Wanted;
import benchtwin.match.Pick;
import benchtwin.match.Ranked;
import benchtwin.match.ShaftAnswer;
import benchtwin.match.ShaftPick;
import benchtwin.measure.LengthText;
import benchtwin.measure.Units;
import benchtwin.picture.LadderPicture;
import benchtwin.picture.Picture;
import benchtwin.picture.Rung;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;

/** Draws answers. */
public final class Pictures {

    private Pictures() {
    }

    /**
     * A choice of shafts on a frequency axis: each pick's club with the butt cut only, and trimmed.
     * @param answer a choice with at least one pick
     * @return the picture
     */
    public static Picture of(ShaftAnswer answer) {
        Wanted wanted = answer.target().of(Quantity.FREQUENCY).orElseThrow();
        boolean ladder = answer.request().picking().pick() == Pick.LADDER;
        List<Rung> rungs = new ArrayList<>();
        for (ShaftPick pick : answer.picks()) {
            Ranked option = pick.option();
            rungs.add(new Rung(option.shaft().tag(), option.shaft().model(), OptionalDouble.of(pick.untrimmedCpm()),
                option.predicted().get(Quantity.FREQUENCY), option.uncertainty().get(Quantity.FREQUENCY),
                ladder ? OptionalDouble.of(wanted.value() + pick.rungCpm()) : OptionalDouble.empty(), trim(pick),
                option.shaft().keeping().place().orElse("")));
        }
        long inside = answer.picks().stream()
            .filter(pick -> Math.abs(pick.option().difference().get(Quantity.FREQUENCY)) <= wanted.tolerance()).count();
        String title = ladder
            ? format("A ladder around %.1f cpm: %d of %d shafts within %s cpm of their rung", wanted.value(), inside,
                rungs.size(), number(wanted.tolerance()))
            : format("Nearest to %.1f cpm: %d of %d shafts within %s cpm", wanted.value(), inside, rungs.size(),
                number(wanted.tolerance()));
        String axis = format("frequency of the club, cpm (%s, %s in in the clamp)",
            answer.readOverGrip() ? "over the grip" : "on the bare butt",
            LengthText.inchesAndSixteenths(answer.clampMm()));
        return new LadderPicture(title, axis, wanted.value(), wanted.tolerance(), rungs);
    }

    private static String trim(ShaftPick pick) {
        List<String> words = new ArrayList<>();
        if (pick.tipTrimMm() > 0) {
            words.add(tip(pick.tipTrimMm()) + " tip");
        }
        if (pick.buttCutMm() > 0) {
            words.add(number(pick.buttCutMm()) + " mm butt");
        }
        return words.isEmpty() ? "not cut" : String.join(", ", words);
    }

    /** Inches where it is a whole number of sixteenths, else mm. */
    private static String tip(double mm) {
        double sixteenths = 16 * Units.inches(mm);
        return Math.abs(sixteenths - Math.rint(sixteenths)) < 0.01 ? LengthText.inchesAndSixteenths(mm) + " in"
            : number(mm) + " mm";
    }

    private static String number(double value) {
        return value == Math.rint(value) ? format("%.0f", value) : format("%.1f", value);
    }

    private static String format(String format, Object... args) {
        return String.format(Locale.ROOT, format, args);
    }

    /**
     * Says whether a file can be drawn to, before anything is worked out.
     * @param file a path ending in .svg or .png
     * @throws BadInput when it ends otherwise, or its folder is not there
     */
    public static void check(Path file) throws BadInput {
        WrittenFile.check(file, List.of(".svg", ".png"), "picture");
    }

    /**
     * Draws a picture into a file, over one that is there already.
     * @param picture the picture
     * @param file    a path that {@link #check} let through
     * @throws BadInput when it cannot be written, or there are no fonts to write with
     */
    public static void write(Picture picture, Path file) throws BadInput {
        boolean png = file.getFileName().toString().toLowerCase(Locale.ROOT).endsWith(".png");
        try {
            WrittenFile.write(file, png ? picture.png() : picture.svg().getBytes(StandardCharsets.UTF_8));
        } catch (IllegalStateException noFonts) {
            throw new BadInput("the picture was not drawn: " + noFonts.getMessage());
        }
    }
}
