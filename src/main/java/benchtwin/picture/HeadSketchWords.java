package benchtwin.picture;

import benchtwin.club.AngleReading;
import benchtwin.club.Quantity;
import benchtwin.measure.LengthText;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** What a head's sketch says in words. */
final class HeadSketchWords {

    private static final char NO_BREAK = '\u00a0';

    private HeadSketchWords() {
    }

    private static String reading(AngleReading reading) {
        return reading == AngleReading.EDGE ? "with the leading edge square" : reading.word();
    }

    /** Everything shown, a sentence an angle. */
    static String table(HeadSketchPicture picture) {
        List<String> sentences = new ArrayList<>();
        sentences.add("A %s-handed %s, its angles read %s.".formatted(picture.hand().word(),
            picture.category().word(), reading(picture.reading())));
        AngleChange.of(picture).forEach(change -> sentences.add(sentence(change)));
        sentences.add(centre(picture.sizes()));
        sentences.add(length(picture.sizes()));
        return String.join(" ", sentences);
    }

    private static String sentence(AngleChange change) {
        if (!change.isMeasured()) {
            return "%s: not measured, drawn at %s.".formatted(change.capitalName(), AngleChange.degrees(change.standInDeg()));
        }
        if (change.beforeDeg().isEmpty()) {
            return "%s: not measured before, %s after.".formatted(change.capitalName(), AngleChange.degrees(change.drawnDeg()));
        }
        if (change.afterDeg().isEmpty()) {
            return "%s: %s before, not known after.".formatted(change.capitalName(), AngleChange.degrees(change.drawnDeg()));
        }
        return change.isChanged() ? "%s: %s before, %s after, %s.".formatted(change.capitalName(),
            AngleChange.degrees(change.drawnBeforeDeg()), AngleChange.degrees(change.drawnDeg()), change.differenceText())
            : "%s: %s, stays.".formatted(change.capitalName(), AngleChange.degrees(change.drawnDeg()));
    }

    /** Where the centre of gravity is. */
    static String centre(SketchSizes sizes) {
        if (!sizes.hasCentre()) {
            return "Centre of gravity (CG) not measured.";
        }
        return "CG %s mm toward the toe from G, %s mm up.".formatted(Words.fixed(sizes.cgToeMm().getAsDouble(), 1),
            Words.fixed(sizes.cgUpMm().getAsDouble(), 1));
    }

    /** How long the club is. */
    static String length(SketchSizes sizes) {
        OptionalDouble after = sizes.lengthAfterMm();
        OptionalDouble before = sizes.lengthBeforeMm();
        if (after.isEmpty() && before.isEmpty()) {
            return "Playing length not known.";
        }
        double mm = after.orElseGet(before::getAsDouble);
        String change = after.isPresent() && before.isPresent()
            ? Words.difference(after.getAsDouble() - before.getAsDouble(), 1) : "0";
        return "Playing length %s from the cap to G%s.".formatted(inches(mm), change.equals("0") ? "" : ", " + change
            + " mm from what it was");
    }

    /** What of it can be trusted with a ruler. */
    static String toScale(HeadSketchPicture picture) {
        List<String> drawn = new ArrayList<>();
        if (AngleChange.of(picture).stream().anyMatch(AngleChange::isMeasured)) {
            drawn.add("angles");
        }
        drawn.add("G");
        if (picture.sizes().hasCentre()) {
            drawn.add("CG");
        }
        if (picture.sizes().hoselMm().isPresent()) {
            drawn.add("hosel");
        }
        return "To scale: %s; the outline is only a sketch.".formatted(String.join(", ", drawn));
    }

    static String inches(double mm) {
        return LengthText.inchesAndSixteenths(mm).replace(' ', NO_BREAK) + NO_BREAK + "in";
    }

    /** What the number in a column is, where the reading changes its meaning. */
    static String heading(AngleChange change, AngleReading reading) {
        return change.angle() == Quantity.LOFT && reading.isWood() ? "Loft, " + reading.word() : change.capitalName();
    }
}
