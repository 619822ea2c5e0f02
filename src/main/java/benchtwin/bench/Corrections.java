package benchtwin.bench;

import benchtwin.book.BookEntry;
import benchtwin.book.BookProblem;
import benchtwin.book.BookView;
import benchtwin.book.EventKind;
import benchtwin.book.KeptEvent;
import benchtwin.book.KeptReading;
import benchtwin.book.NewEvent;
import benchtwin.book.NewReading;
import benchtwin.book.Thing;
import benchtwin.book.ThingKind;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Puts readings right: a correction takes the place of what it corrects, and both are kept, with the reason. */
public final class Corrections {

    private static final int LONGEST_WHY = 2000;

    private Corrections() {
    }

    /**
     * What came of a correction.
     * @param of   what it was a reading of, by its full name
     * @param what the quantity as a bench calls it
     * @param was  what stood there, with its unit
     * @param now  what stands there now; empty when it was taken back
     */
    public record Corrected(String of, String what, String was, Optional<String> now) {
    }

    /** Finds the thing a tag names. */
    @FunctionalInterface
    private interface Finds {
        Thing in(BookView view) throws BookProblem;
    }

    /**
     * Puts a club's reading right.
     * @param book  the book
     * @param tag   the club's tag
     * @param id    the reading's number, as the club's page shows it
     * @param value what it should have said, as a bench writes it; empty to take it back
     * @param why   in words
     * @return what came of it
     * @throws BadInput when there is no such reading of it, it was corrected already, the value is none, or no reason is given
     */
    public static Corrected ofClub(OpenBook book, String tag, long id, Optional<String> value, String why) throws BadInput {
        return correct(book, "club correct", view -> OpenBook.need(view, ThingKind.CLUB, tag), id, value, why);
    }

    /**
     * Puts a part's reading right.
     * @param book  the book
     * @param tag   the part's tag
     * @param id    the reading's number, as the part's page shows it
     * @param value what it should have said, as a bench writes it; empty to take it back
     * @param why   in words
     * @return what came of it
     * @throws BadInput when there is no such reading of it, it was corrected already, the value is none, or no reason is given
     */
    public static Corrected ofPart(OpenBook book, String tag, long id, Optional<String> value, String why) throws BadInput {
        return correct(book, "stock correct", view -> StockBook.part(view, tag), id, value, why);
    }

    private static Corrected correct(OpenBook book, String act, Finds finds, long id, Optional<String> value, String why)
        throws BadInput {
        if (why.isBlank()) {
            throw new BadInput("a correction needs a reason, such as --why \"digits swapped\"");
        }
        if (why.length() > LONGEST_WHY) {
            throw new BadInput("--why has %d characters; expected at most %d".formatted(why.length(), LONGEST_WHY));
        }
        return book.write(act, entry -> correct(entry, finds.in(entry), id, value, why));
    }

    private static Corrected correct(BookEntry entry, Thing thing, long id, Optional<String> typed, String why) throws BookProblem {
        for (KeptEvent event : entry.events(thing)) {
            for (KeptReading reading : event.readings()) {
                if (reading.id() == id) {
                    OptionalDouble value = value(thing, reading.read().quantity(), typed);
                    entry.add(thing, NewEvent.of(EventKind.CORRECTED).at(event.since()).saying(why)
                        .reading(List.of(corrected(reading, value, why))));
                    return said(thing, reading, value);
                }
            }
        }
        throw new BookProblem("%s has no reading %d; benchtwin %s show %s lists them".formatted(thing.name(), id,
            thing.kind() == ThingKind.CLUB ? "club" : "stock", thing.tag()));
    }

    private static Corrected said(Thing thing, KeptReading reading, OptionalDouble value) {
        String quantity = reading.read().quantity();
        OptionalDouble was = reading.read().value();
        return new Corrected(thing.name(), ColumnText.name(quantity),
            was.isPresent() ? ColumnText.value(quantity, was.getAsDouble()) : "taken back",
            value.isPresent() ? Optional.of(ColumnText.value(quantity, value.getAsDouble())) : Optional.empty());
    }

    private static OptionalDouble value(Thing thing, String quantity, Optional<String> typed) throws BookProblem {
        if (typed.isEmpty()) {
            return OptionalDouble.empty();
        }
        OptionalDouble value = ColumnText.parse(quantity, typed.get());
        if (value.isEmpty() || !Double.isFinite(value.getAsDouble())) {
            throw new BookProblem("\"%s\" is no %s; expected %s".formatted(typed.get(), ColumnText.name(quantity),
                ColumnText.expected(quantity)));
        }
        Optional<ReadColumn> column = thing.kind() == ThingKind.CLUB ? ReadColumn.of(quantity) : Optional.empty();
        try {
            if (column.isPresent()) {
                AskedRange.check(column.get().quantity(), value.getAsDouble());
            }
        } catch (BadInput outside) {
            throw new BookProblem(outside.getMessage());
        }
        return value;
    }

    private static NewReading corrected(KeptReading reading, OptionalDouble value, String why) {
        NewReading read = reading.read();
        return value.isEmpty() ? read.takingBack(reading.id(), why)
            : read.saying(value.getAsDouble()).correcting(reading.id(), why);
    }
}
