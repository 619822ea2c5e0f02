package benchtwin.bench;

import benchtwin.book.BookEntry;
import benchtwin.book.BookProblem;
import benchtwin.book.BookView;
import benchtwin.book.EventKind;
import benchtwin.book.KeptEvent;
import benchtwin.book.KeptReading;
import benchtwin.book.LastWords;
import benchtwin.book.NewEvent;
import benchtwin.book.NewReading;
import benchtwin.book.Thing;
import benchtwin.book.ThingKind;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;

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

    /**
     * A reading as it stands in the record.
     * @param of       what it is a reading of, by its tag
     * @param id       its number
     * @param quantity its name in the book
     * @param says     what it says, with its unit; empty where it took another back
     * @param on       the day it counts from
     * @param how      the gauge it was read on and how, in words; empty where nothing was recorded
     * @param by       the number of the reading that stands in its place
     * @param expected what a value looks like
     */
    public record Old(String of, long id, String quantity, Optional<String> says, LocalDate on, String how, OptionalLong by,
                      String expected) {
    }

    /**
     * A reading of a club.
     * @param book the book
     * @param tag  the club's tag
     * @param id   the reading's number
     * @return the reading as it was entered
     * @throws BadInput when there is no such club, or no such reading of it
     */
    public static Old readOfClub(OpenBook book, String tag, long id) throws BadInput {
        return book.read(view -> old(book, view, OpenBook.need(view, ThingKind.CLUB, tag), id));
    }

    /**
     * A reading of a part.
     * @param book the book
     * @param tag  the part's tag
     * @param id   the reading's number
     * @return the reading as it was entered
     * @throws BadInput when there is no such part, or no such reading of it
     */
    public static Old readOfPart(OpenBook book, String tag, long id) throws BadInput {
        return book.read(view -> old(book, view, StockBook.part(view, tag), id));
    }

    private static Old old(OpenBook book, BookView view, Thing thing, long id) throws BookProblem {
        List<KeptEvent> events = view.events(thing);
        KeptEvent event = holding(book, events, thing, id);
        KeptReading kept = reading(event, id).orElseThrow();
        NewReading read = kept.read();
        String on = read.gauge().map(gauge -> "on " + gauge).orElse("");
        String condition = ColumnText.condition(read.condition());
        return new Old(thing.tag(), id, read.quantity(), read.value().isPresent()
            ? Optional.of(ColumnText.value(read.quantity(), read.value().getAsDouble())) : Optional.empty(),
            read.measuredAt().orElse(event.since()).day(book.zone()), on + (on.isEmpty() || condition.isEmpty() ? "" : ", ") + condition,
            new LastWords(events).correctionOf(kept).map(other -> OptionalLong.of(other.id())).orElse(OptionalLong.empty()),
            ColumnText.expected(read.quantity()));
    }

    private static Optional<KeptReading> reading(KeptEvent event, long id) {
        return event.readings().stream().filter(reading -> reading.id() == id).findFirst();
    }

    private static KeptEvent holding(OpenBook book, List<KeptEvent> events, Thing thing, long id) throws BookProblem {
        return events.stream().filter(event -> reading(event, id).isPresent()).findFirst().orElseThrow(() -> new BookProblem(
            "%s has no reading %d; %s".formatted(thing.name(), id, book.asks(ToDo.LIST_READINGS,
                thing.kind() == ThingKind.CLUB ? "club" : "stock", thing.tag()))));
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
            throw new BadInput(book.asks(ToDo.SAY_WHY));
        }
        if (why.length() > LONGEST_WHY) {
            throw new BadInput("%s has %d characters; expected at most %d".formatted(book.asks(ToDo.REASON), why.length(), LONGEST_WHY));
        }
        return book.write(act, entry -> correct(book, entry, finds.in(entry), id, value, why));
    }

    private static Corrected correct(OpenBook book, BookEntry entry, Thing thing, long id, Optional<String> typed, String why)
        throws BookProblem {
        KeptEvent event = holding(book, entry.events(thing), thing, id);
        KeptReading reading = reading(event, id).orElseThrow();
        OptionalDouble value = value(thing, reading.read().quantity(), typed);
        Optional<AsStock> before = thing.kind().isPart() ? Optional.of(AsStock.of(book, entry, thing)) : Optional.empty();
        entry.add(thing, NewEvent.of(EventKind.CORRECTED).at(event.since()).saying(why).reading(List.of(corrected(reading, value, why))));
        if (before.isPresent()) {
            before.get().then(AsStock.of(book, entry, thing));
        }
        return said(thing, reading, value);
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
        if (value.isEmpty()) {
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
