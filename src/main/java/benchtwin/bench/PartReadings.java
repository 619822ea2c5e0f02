package benchtwin.bench;

import benchtwin.book.BookProblem;
import benchtwin.book.BookView;
import benchtwin.book.CurrentReading;
import benchtwin.book.EventKind;
import benchtwin.book.Moment;
import benchtwin.book.NewEvent;
import benchtwin.book.NewReading;
import benchtwin.book.State;
import benchtwin.book.Thing;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;

/** Enters what is read of a part, one quantity at a time. The readings before it stay in its history. */
public final class PartReadings {

    /**
     * Something that says how a quantity was read.
     * @param name  its name in the book
     * @param ways  what it can be, where there are a few; empty where it is typed
     * @param value as it was the last time, in the way it is typed
     */
    public record Condition(String name, List<String> ways, String value) {
    }

    /**
     * What a page or a command needs to know to ask for a reading.
     * @param part       the part
     * @param quantity   the quantity, by its name in the book
     * @param last       what was read of it last and still counts
     * @param conditions what says how it is read
     * @param expected   what a value looks like
     */
    public record Ask(StockViews.Part part, String quantity, Optional<StockViews.PartReading> last, List<Condition> conditions,
                      String expected) {
    }

    /**
     * What was read.
     * @param quantity  the quantity, by its name in the book
     * @param value     as a bench writes it
     * @param condition how it was read, by name, as typed
     * @param gauge     on what
     * @param on        the day, if it was not just now
     * @param note      free text
     */
    public record Read(String quantity, String value, Map<String, String> condition, Optional<String> gauge, Optional<LocalDate> on,
                       Optional<String> note) {
    }

    /**
     * What came of it.
     * @param part    the part's tag
     * @param words   quantity and value, as a bench says them
     * @param remarks what the person who entered it should know
     */
    public record Entered(String part, String words, List<String> remarks) {
    }

    private PartReadings() {
    }

    /**
     * How a page or a command asks for a condition.
     * @param condition what says how it was read
     * @return its name, and what is typed
     */
    public static String asked(Condition condition) {
        return switch (condition.name()) {
            case "reading" -> "Angles read";
            case "weighed_with" -> "Weighed with";
            case "read_at_setting" -> "Sleeve set at";
            case "clamp_mm" -> "Butt in the clamp, in";
            case "free_length_mm" -> "Free length, in";
            case "tip_mass_g" -> "Mass at the tip, g";
            case "over_grip" -> "Clamped over a grip";
            case "plane_deg" -> "Plane, degrees";
            default -> ColumnText.name(condition.name());
        };
    }

    /**
     * What can be read of a part.
     * @param book the book
     * @param tag  its tag
     * @return names of quantities; none for a weight
     * @throws BadInput when there is no such part
     */
    public static List<String> quantities(OpenBook book, String tag) throws BadInput {
        return book.read(view -> {
            Thing part = StockBook.part(view, tag);
            return PartQuantity.of(part.kind(), view.state(part)).stream().map(PartQuantity::column).toList();
        });
    }

    /**
     * The word a quantity or a condition is typed with.
     * @param name its name in the book
     * @return without its unit: {@code cg-up}
     */
    public static String word(String name) {
        return ColumnText.bare(name).replace('_', '-');
    }

    /**
     * The quantity a word names.
     * @param book the book
     * @param tag  the part's tag
     * @param word as it is typed
     * @return its name in the book
     * @throws BadInput when there is no such part, or that is not read of it
     */
    public static String named(OpenBook book, String tag, String word) throws BadInput {
        List<String> all = quantities(book, tag);
        return all.stream().filter(name -> name.equals(word.strip()) || word(name).equalsIgnoreCase(word.strip())).findFirst().orElseThrow(() ->
            new BadInput("\"%s\" is not read of %s; %s".formatted(word, tag, all.isEmpty() ? "nothing is" : "expected one of "
                + String.join(", ", all.stream().map(PartReadings::word).toList()))));
    }

    /**
     * What has to be asked to read a quantity.
     * @param book     the book
     * @param tag      the part's tag
     * @param quantity the quantity
     * @return the part, its last reading and how it was read
     * @throws BadInput when there is no such part, or that is not read of it
     */
    public static Ask ask(OpenBook book, String tag, String quantity) throws BadInput {
        StockViews.Part part = StockViews.show(book, tag).part();
        return book.read(view -> {
            Thing thing = StockBook.part(view, part.fullTag());
            State state = view.state(thing);
            PartQuantity asked = quantity(thing, state, quantity);
            Optional<CurrentReading> last = last(state, quantity);
            return new Ask(part, quantity, last.flatMap(one -> part.readings().stream().filter(read -> read.id() == one.id()).findFirst()),
                asked.conditions(last.or(() -> likeIt(state, asked)).map(read -> read.read().condition()).orElse(Map.of())),
                ColumnText.expected(quantity));
        });
    }

    /** A reading of another quantity that is read in the same way, such as loft for lie. */
    private static Optional<CurrentReading> likeIt(State state, PartQuantity asked) {
        List<String> names = asked.conditions(Map.of()).stream().map(Condition::name).toList();
        return state.readings().stream().filter(read -> !read.read().condition().isEmpty()
            && names.containsAll(read.read().condition().keySet())).max(CurrentReading.BY_TIME);
    }

    private static Optional<CurrentReading> last(State state, String quantity) {
        return state.readings().stream().filter(read -> read.read().quantity().equals(quantity)).max(CurrentReading.BY_TIME);
    }

    private static PartQuantity quantity(Thing part, State state, String asked) throws BookProblem {
        List<PartQuantity> all = PartQuantity.of(part.kind(), state);
        return all.stream().filter(one -> one.column().equals(asked)).findFirst().orElseThrow(() -> new BookProblem(
            "\"%s\" is not read of %s; %s".formatted(asked, part.name(), all.isEmpty() ? "nothing is" : "expected one of "
                + String.join(", ", all.stream().map(one -> ColumnText.name(one.column())).toList()))));
    }

    /**
     * What to ask before a reading is entered: it can be, but is far from what was read in the same way last, or from what such a
     * part usually measures where it was not.
     * @param book the book
     * @param tag  the part's tag
     * @param read what was read
     * @return questions; none when nothing is odd
     * @throws BadInput when there is no such part or quantity, or the value is none
     */
    public static List<String> questions(OpenBook book, String tag, Read read) throws BadInput {
        return book.read(view -> {
            Thing part = StockBook.part(view, tag);
            State state = view.state(part);
            PartQuantity quantity = quantity(part, state, read.quantity());
            NewReading now = reading(view, quantity, read);
            Optional<CurrentReading> last = state.readings().stream().filter(one -> one.read().quantity().equals(now.quantity())
                && one.read().condition().equals(now.condition())).max(CurrentReading.BY_TIME);
            return OddReading.ofPart(book, now, last, quantity.usual(), part.kind()).stream().toList();
        });
    }

    /**
     * Enters a reading.
     * @param book the book
     * @param tag  the part's tag
     * @param read what was read
     * @return what came of it
     * @throws BadInput when it is none, or cannot be
     */
    public static Entered read(OpenBook book, String tag, Read read) throws BadInput {
        if (read.on().filter(day -> day.isAfter(book.today())).isPresent()) {
            throw new BadInput("%s is still to come; expected today, %s, or a day before".formatted(read.on().get(), book.today()));
        }
        return book.write("stock read", entry -> {
            Thing part = StockBook.part(entry, tag);
            PartQuantity quantity = quantity(part, entry.state(part), read.quantity());
            NewReading now = GaugeReference.of(entry).trusted(List.of(reading(entry, quantity, read))).get(0);
            AsStock before = AsStock.of(book, entry, part);
            NewEvent event = NewEvent.of(EventKind.MEASURED).reading(List.of(now));
            entry.add(part, read.on().map(day -> event.at(Moment.on(day))).orElse(event));
            List<String> remarks = new ArrayList<>(before.then(AsStock.of(book, entry, part)));
            if (last(entry.state(part), now.quantity()).filter(one -> one.read().value().equals(now.value())).isEmpty()) {
                remarks.add("A later reading, or work done since, still counts; this one stands in the history.");
            }
            return new Entered(part.tag(), "%s %s".formatted(ColumnText.name(now.quantity()), ColumnText.value(now.quantity(),
                now.value().orElseThrow())), remarks);
        });
    }

    private static NewReading reading(BookView view, PartQuantity quantity, Read read) throws BookProblem {
        try {
            return new NewReading(quantity.column(), OptionalDouble.of(quantity.value(read.value())),
                OptionalDouble.of(quantity.uncertainty()), quantity.unit(), quantity.condition(read.condition()),
                read.gauge(), Optional.empty(), read.on().map(Moment::on), Optional.empty(), read.note(), OptionalLong.empty());
        } catch (BadInput bad) {
            throw new BookProblem(bad.getMessage());
        }
    }
}
