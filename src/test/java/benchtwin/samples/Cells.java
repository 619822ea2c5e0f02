package benchtwin.samples;

import benchtwin.club.Word;
import benchtwin.measure.LengthText;
import benchtwin.measure.Reading;
import benchtwin.measure.Units;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Collection;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;

/** Values as the cells of the sample files write them; a missing value is an empty cell. */
final class Cells {

    /** A length this near a sixteenth of an inch is written as one where a person would, mm. */
    private static final double NEAR_SIXTEENTH_MM = 0.2;
    private static final int SIXTEENTHS = 16;

    private Cells() {
    }

    static String number(double value, int decimals) {
        if (Double.isNaN(value)) {
            return "";
        }
        BigDecimal rounded = BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_EVEN).stripTrailingZeros();
        return rounded.signum() == 0 ? "0" : rounded.toPlainString();
    }

    static String number(OptionalDouble value, int decimals) {
        return number(value.orElse(Double.NaN), decimals);
    }

    static String reading(Optional<Reading> reading, int decimals) {
        return number(reading.map(Reading::value).orElse(Double.NaN), decimals);
    }

    /** Millimetres in decimal inches. */
    static String inches(double mm, int decimals) {
        return number(Units.inches(mm), decimals);
    }

    static String inches(OptionalDouble mm, int decimals) {
        return inches(mm.orElse(Double.NaN), decimals);
    }

    static String inches(Optional<Reading> readingMm, int decimals) {
        return inches(readingMm.map(Reading::value).orElse(Double.NaN), decimals);
    }

    /** Inches and a fraction where that is the same within a hair, decimal inches elsewhere. */
    static String tapeInches(double mm) {
        double sixteenths = Math.rint(Units.inches(mm) * SIXTEENTHS);
        boolean near = Math.abs(mm - Units.mm(sixteenths / SIXTEENTHS)) < NEAR_SIXTEENTH_MM;
        return near ? LengthText.inchesAndSixteenths(mm) : inches(mm, 2);
    }

    static String words(Collection<? extends Word> words) {
        return words.stream().map(Word::word).sorted().collect(Collectors.joining("+"));
    }

    static String text(Optional<String> text) {
        return text.orElse("");
    }

    static String yesOrNo(boolean yes) {
        return yes ? "yes" : "no";
    }
}
