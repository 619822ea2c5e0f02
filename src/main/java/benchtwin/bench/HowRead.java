package benchtwin.bench;

import benchtwin.book.BookProblem;
import benchtwin.book.BookView;
import benchtwin.book.CurrentReading;
import benchtwin.book.State;
import benchtwin.book.Thing;
import benchtwin.book.ThingKind;
import benchtwin.club.Category;
import benchtwin.club.Quantity;
import benchtwin.club.QuantityText;
import benchtwin.club.ValueComparison;
import benchtwin.match.Tolerances;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** How a number of a club that was read came about, and how far it is from what it is held against. */
public final class HowRead {

    private static final String NOW = "What it measures now";

    private final OpenBook book;
    private final BookView view;
    private final GaugeReference gauges;
    private final Quantity quantity;

    private HowRead(OpenBook book, BookView view, Quantity quantity) {
        this.book = book;
        this.view = view;
        this.gauges = GaugeReference.of(view);
        this.quantity = quantity;
    }

    /** One side of a comparison: what was read, and all of that carried to one way of reading. */
    private record Side(String label, Thing club, List<CurrentReading> readings, Map<Quantity, ClubValues.Value> read,
                        Map<Quantity, ClubValues.Value> carried) {

        static Side of(String label, Thing club, List<CurrentReading> readings, Optional<Category> category) {
            Map<Quantity, ClubValues.Value> read = ClubValues.of(readings);
            return new Side(label, club, readings, read, ClubValues.carried(read, category));
        }
    }

    /**
     * What a club measures now, against its record.
     * @param book       the book
     * @param tag        the club's tag
     * @param word       the quantity's word
     * @param tolerances how far off still counts as right
     * @return the account
     * @throws BadInput when there is no such club, or it was never read
     */
    public static Account now(OpenBook book, String tag, String word, Tolerances tolerances) throws BadInput {
        Quantity quantity = HowOption.quantity(word);
        return book.read(view -> {
            HowRead how = new HowRead(book, view, quantity);
            Thing club = OpenBook.need(view, ThingKind.CLUB, tag);
            State state = view.state(club);
            Side should = Side.of("What it should measure", club, state.accepted().map(ClubReadings::accepted).orElse(List.of()),
                ClubViews.category(state));
            Side now = Side.of(NOW, club, ClubReadings.current(state), ClubViews.category(state));
            return how.account("Where the %s of %s comes from".formatted(QuantityText.name(quantity), club.tag()), should, now, tolerances,
                ClubReadings.unread(state).contains(quantity));
        });
    }

    /**
     * Two clubs, or one on two days.
     * @param book       the book
     * @param a          the club held to
     * @param whenA      on which day
     * @param b          the other
     * @param whenB      on which day
     * @param word       the quantity's word
     * @param tolerances how far apart still counts as the same
     * @return the account
     * @throws BadInput when there is no such club, or neither was read
     */
    public static Account compared(OpenBook book, String a, ClubViews.When whenA, String b, ClubViews.When whenB, String word,
                                   Tolerances tolerances) throws BadInput {
        Quantity quantity = HowOption.quantity(word);
        return book.read(view -> {
            HowRead how = new HowRead(book, view, quantity);
            Side first = side(book, view, a, whenA);
            Side second = side(book, view, b, whenB);
            return how.account("How the %s of %s and of %s compares".formatted(QuantityText.name(quantity), first.label(), second.label()),
                first, second, tolerances, false);
        });
    }

    private static Side side(OpenBook book, BookView view, String tag, ClubViews.When when) throws BookProblem {
        Thing club = OpenBook.need(view, ThingKind.CLUB, tag);
        State state = ClubViews.state(book, view, club, when);
        return Side.of(ClubViews.label(club, when), club, ClubReadings.current(state), ClubViews.category(state));
    }

    private Account account(String title, Side first, Side second, Tolerances tolerances, boolean moved) throws BookProblem {
        List<String> remarks = new ArrayList<>();
        ValueComparison compared = ClubViews.compared(of(first), of(second), tolerances, gauges, remarks).get(quantity);
        Optional<ClubValues.Value> shown = Optional.ofNullable(second.read().get(quantity)).or(() -> Optional.ofNullable(first.read().get(quantity)));
        if (shown.isEmpty()) {
            throw new BookProblem("the %s was not read".formatted(QuantityText.name(quantity)));
        }
        boolean asCompared = !second.label().equals(NOW) && compared != null && compared.b().isPresent();
        Account.Teller tell = Account.tell(title, QuantityText.value(quantity, asCompared ? compared.b().getAsDouble() : shown.get().value()),
            "± " + QuantityText.size(quantity, shown.get().uncertainty()));
        if (moved) {
            tell.warn("It was changed by work since it was read, and not read again.");
        }
        tell(tell, second);
        if (isOneReading(first, second)) {
            return tell.say("%s rests on the same reading, so nothing is off.".formatted(first.label())).done();
        }
        tell(tell, first);
        remarks.addAll(gauges.remarks());
        remarks.forEach(remark -> tell.warn(remark + "."));
        if (compared != null && compared.difference().isPresent()) {
            apart(tell, compared, first.carried().get(quantity), second.carried().get(quantity));
        }
        return tell.done();
    }

    private boolean isOneReading(Side first, Side second) {
        ClubValues.Value one = first.read().get(quantity);
        ClubValues.Value other = second.read().get(quantity);
        return one != null && other != null && one.ids().equals(other.ids());
    }

    private Map<Quantity, ClubValues.Value> of(Side side) {
        return side.carried().containsKey(quantity) ? Map.of(quantity, side.carried().get(quantity)) : Map.of();
    }

    private void tell(Account.Teller tell, Side side) {
        ClubValues.Value read = side.read().get(quantity);
        if (read == null) {
            tell.say(side.label() + ": not read.");
            return;
        }
        List<CurrentReading> own = side.readings().stream().filter(reading -> read.ids().contains(reading.id())).toList();
        tell.say("%s: %s ± %s%s.".formatted(side.label(), number(read.value()), number(read.uncertainty()),
            own.size() > 1 ? ", the mean of %d readings".formatted(own.size()) : ""));
        tell.table(side.label() + ": read", ReadingRows.COLUMNS, new ReadingRows(book, view, side.club(), gauges).of(own));
        if (own.size() > 1) {
            tell.law(Formula.MEAN);
        }
        ClubValues.Value carried = side.carried().get(quantity);
        if (!carried.condition().equals(read.condition())) {
            tell.say("Carried to %s, so that it can be compared: %s.".formatted(ColumnText.condition(carried.condition()), number(carried.value())))
                .law(quantity == Quantity.LENGTH ? Formula.AXIS_LENGTH : Formula.SOLED_LOFT, quantity == Quantity.LENGTH
                    ? "lie " + number(Quantity.LIE, side.read().get(Quantity.LIE).value())
                    : "lie %s, face %s".formatted(number(Quantity.LIE, side.read().get(Quantity.LIE).value()),
                        number(Quantity.FACE, side.read().get(Quantity.FACE).value())));
        }
    }

    private void apart(Account.Teller tell, ValueComparison compared, ClubValues.Value first, ClubValues.Value second) {
        double shift = compared.b().orElseThrow() - second.value();
        double u = compared.difference().orElseThrow().standardUncertainty();
        double ofOffset = u * u - first.uncertainty() * first.uncertainty() - second.uncertainty() * second.uncertainty();
        boolean onTwo = Math.abs(shift) > 1e-12 || ofOffset > 1e-12;
        if (onTwo) {
            tell.law(Formula.CARRIED, "%s, brought to %s: %s, the offset good to %s".formatted(second.gauge().orElse("?"), first.gauge().orElse("?"),
                number(compared.b().orElseThrow()), number(Math.sqrt(Math.max(0, ofOffset)))));
        }
        double off = compared.difference().orElseThrow().value();
        tell.say("Off by %s − %s = %s ± %s, which is %s tolerances of %s: %s.".formatted(number(compared.b().orElseThrow()),
            number(compared.a().orElseThrow()), HowText.moves(quantity, off), number(u), HowText.fixed(off / compared.tolerance(), 2),
            QuantityText.size(quantity, compared.tolerance()), compared.isBeyondUncertainty() ? "more than measuring explains" : "no more than measuring explains"));
        tell.law(Formula.DIFFERENCE);
    }

    private String number(double value) {
        return number(quantity, value);
    }

    private static String number(Quantity of, double value) {
        return HowText.number(value, of.unit());
    }
}
