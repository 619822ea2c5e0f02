package benchtwin.cli;

import benchtwin.bench.BadInput;
import benchtwin.bench.OddReading;
import benchtwin.bench.OpenBook;
import benchtwin.bench.QuantityList;
import benchtwin.bench.Sitting;
import benchtwin.club.AngleReading;
import benchtwin.club.Category;
import benchtwin.club.LengthMethod;
import benchtwin.club.Quantity;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import picocli.CommandLine.Option;

/** How readings were taken, for commands that enter some. */
final class SittingOptions {

    @Option(names = "--reading", paramLabel = "HOW", order = 10,
        description = "how the angles were read: soled, square or edge; default soled for a driver or fairway, else edge")
    private AngleReading reading;
    @Option(names = "--length-method", paramLabel = "HOW", order = 10, defaultValue = "axis",
        description = "how the length was taken: axis, rules60 or ruler; default ${DEFAULT-VALUE}")
    private LengthMethod lengthMethod;
    @Option(names = "--clamp", paramLabel = "LENGTH", order = 10, description = "length of butt in the clamp, such as 5 or 127 mm")
    private String clamp;
    @Option(names = "--bare", order = 10, description = "the frequency was read on the bare butt, not over the grip")
    private boolean bare;
    @Option(names = "--on", paramLabel = "DATE", order = 11, description = "the day it was read, if it was not just now")
    private String on;
    @Option(names = "--gauge", paramLabel = "NAME", order = 11, description = "what it was read on")
    private String gauge;
    @Option(names = "--station", paramLabel = "NAME", order = 11, description = "where it was read")
    private String station;
    @Option(names = "--read-by", paramLabel = "NAME", order = 11, description = "who read it")
    private String readBy;
    @Option(names = "--refuse-odd", order = 12, description = "enter nothing when a value is far from the club's last reading, or from "
        + "what such a club usually measures; without it such values are entered and named")
    private boolean refuseOdd;
    @Option(names = "--note", paramLabel = "TEXT", order = 12, description = "anything else")
    private String note;

    /**
     * The sitting.
     * @param values  as typed: loft=9.3 and so on; a quantity given more than once was read more than once
     * @param setting the sleeve's setting, if it was typed
     */
    Sitting sitting(List<String> values, Optional<String> setting) throws BadInput {
        Map<Quantity, List<Double>> read = new LinkedHashMap<>();
        for (String one : values) {
            QuantityList.OF_CLUBS.values("reading", one)
                .forEach((quantity, value) -> read.computeIfAbsent(quantity, key -> new ArrayList<>()).add(value));
        }
        Double clampMm = ShopOptions.mm("--clamp", clamp);
        return new Sitting(read, Optional.ofNullable(reading), lengthMethod, setting,
            clampMm == null ? OptionalDouble.empty() : OptionalDouble.of(clampMm), !bare, day("--on", on),
            Optional.ofNullable(gauge), Optional.ofNullable(station), Optional.ofNullable(readBy), Optional.ofNullable(note));
    }

    /**
     * What is odd about readings that are about to be entered of a club. By themselves they are entered and said to be odd, since
     * a script cannot be asked; with the option nothing is.
     * @param book    the book
     * @param tag     the club's tag
     * @param sitting what was read
     * @return what to say of them once they are entered
     * @throws BadInput with all that is odd, when that is to be refused
     */
    List<String> odd(OpenBook book, String tag, Sitting sitting) throws BadInput {
        return odd(OddReading.questions(book, tag, sitting), refuseOdd, "club correct " + tag);
    }

    /** The same of a club that is not in the book yet. */
    List<String> odd(Category category, String tag, Sitting sitting) throws BadInput {
        return odd(OddReading.questions(category, sitting), refuseOdd, "club correct " + tag);
    }

    /** What to say of questions, once what they are about is entered; or the refusal to enter it. */
    static List<String> odd(List<String> questions, boolean refused, String correct) throws BadInput {
        if (!questions.isEmpty() && refused) {
            throw new BadInput(String.join("; ", questions) + ": nothing was entered; read again, or leave out --refuse-odd if it is so");
        }
        return questions.stream().map(question -> ("Look again: %s. It is entered; if it was a slip, put it right: benchtwin %s")
            .formatted(question, correct)).toList();
    }

    /** A day from an option; empty when it was not given. */
    static Optional<LocalDate> day(String option, String text) throws BadInput {
        if (text == null) {
            return Optional.empty();
        }
        try {
            return Optional.of(LocalDate.parse(text.strip()));
        } catch (DateTimeParseException notADay) {
            throw new BadInput("%s \"%s\" is not a day; expected year-month-day, such as 2026-05-03".formatted(option, text));
        }
    }
}
