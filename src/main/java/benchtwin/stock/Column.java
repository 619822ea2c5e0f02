package benchtwin.stock;

import benchtwin.measure.LengthText;
import benchtwin.measure.Units;
import java.util.Optional;

/**
 * One column a file may have.
 * @param name     its canonical name, which ends in its unit
 * @param required whether the header must have it, under this name or its other one
 * @param example  a good cell
 */
record Column(String name, boolean required, String example) {

    static Column need(String name, String example) {
        return new Column(name, true, example);
    }

    static Column may(String name, String example) {
        return new Column(name, false, example);
    }

    /** The same quantity under its other unit: any length in inches may come in millimetres, and the other way. */
    Optional<String> otherName() {
        if (name.equals("swing_weight")) {
            return Optional.of("swing_weight_points");
        }
        return Unit.of(name).otherName(name);
    }

    /** A good cell for the name it stands under in the file. */
    String exampleUnder(String nameInFile) {
        if (nameInFile.equals(name)) {
            return example;
        }
        if (nameInFile.equals("swing_weight_points")) {
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
