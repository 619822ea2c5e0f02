package benchtwin.stock;

import benchtwin.measure.LengthText;
import benchtwin.measure.Units;
import java.util.Optional;

/** One column a file may have. */
final class Column {

    private static final String SWING_WEIGHT = "swing_weight";
    private static final String SWING_WEIGHT_POINTS = "swing_weight_points";

    private final String name;
    private final boolean required;
    private final String example;
    private final int place;
    private final Optional<String> otherName;
    private final String recordName;
    private final boolean length;

    private Column(String name, boolean required, String example, int place) {
        this.name = name;
        this.required = required;
        this.example = example;
        this.place = place;
        otherName = name.equals(SWING_WEIGHT) ? Optional.of(SWING_WEIGHT_POINTS) : Unit.of(name).otherName(name);
        recordName = otherName.filter(other -> Unit.of(other) == Unit.MILLIMETRES || Unit.of(other) == Unit.POINTS)
            .orElse(name);
        length = otherName.isPresent() && !name.equals(SWING_WEIGHT);
    }

    static Column need(String name, String example) {
        return new Column(name, true, example, -1);
    }

    static Column may(String name, String example) {
        return new Column(name, false, example, -1);
    }

    /** The same as one of a kind's columns. */
    Column at(int placeAmongTheKinds) {
        return new Column(name, required, example, placeAmongTheKinds);
    }

    /** Its canonical name, which ends in its unit. */
    String name() {
        return name;
    }

    /** Whether the header must have it, under this name or its other one. */
    boolean required() {
        return required;
    }

    /** A good cell. */
    String example() {
        return example;
    }

    /** Where it stands among the columns of its kind, from 0. */
    int place() {
        return place;
    }

    /** The same quantity under its other unit: any length in inches may come in millimetres, and the other way. */
    Optional<String> otherName() {
        return otherName;
    }

    /** The one of its names that is in the program's own unit: lengths in mm, a swing weight in points. */
    String recordName() {
        return recordName;
    }

    /** Whether it holds a length, so that its cells may name millimetres or, under inches, fractions. */
    boolean isLength() {
        return length;
    }

    /** Whether that is its canonical name. */
    boolean isInOwnUnit() {
        return recordName.equals(name);
    }

    /** A good cell for the name it stands under in the file. */
    String exampleUnder(String nameInFile) {
        if (nameInFile.equals(name)) {
            return example;
        }
        if (nameInFile.equals(SWING_WEIGHT_POINTS)) {
            return "32.4";
        }
        double mm = name.endsWith("_mm") ? Double.parseDouble(example) : LengthText.parseMm(example).orElseThrow();
        return nameInFile.endsWith("_mm") ? NumberText.write(mm, 1) : NumberText.write(Units.inches(mm), 3);
    }

    /** What a cell of this column holds, in words: its unit and an example. */
    String expectation(String nameInFile) {
        return Unit.of(nameInFile).words() + ", such as " + exampleUnder(nameInFile);
    }
}
