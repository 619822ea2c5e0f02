package benchtwin.bench;

import benchtwin.book.BookProblem;
import benchtwin.book.BookView;
import benchtwin.book.CurrentReading;
import benchtwin.book.EventKind;
import benchtwin.book.KeptEvent;
import benchtwin.book.Promise;
import benchtwin.book.State;
import benchtwin.book.Thing;
import benchtwin.book.ThingKind;
import benchtwin.measure.LengthText;
import benchtwin.measure.Reading;
import benchtwin.measure.Taken;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** How a number of a part came about: a reading and what is worked out from it, something recorded, how many are free. */
public final class HowPart {

    /** What an address calls how many are free. */
    public static final String FREE = "free";
    private static final String FREQUENCY = "frequency_cpm";
    private static final String COUNT = "count";
    /** A reading is called by its number. */
    private static final String READING = "\\d{1,18}";

    private HowPart() {
    }

    /** The stock, asked for only where something of a shaft is worked out. */
    public interface Stock {
        /**
         * The stock now.
         * @return as recorded
         * @throws BadInput when the book cannot be read
         */
        Workshop workshop() throws BadInput;
    }

    /**
     * One of its numbers.
     * @param book  the book
     * @param stock the stock
     * @param tag   the part's tag
     * @param of    number of a reading, name of something recorded, or {@link #FREE}
     * @return the account
     * @throws BadInput when there is no such part or number
     */
    public static Account of(OpenBook book, Stock stock, String tag, String of) throws BadInput {
        Account.Teller tell = book.read(view -> {
            Thing part = StockBook.part(view, tag);
            State state = view.state(part);
            if (of.equals(FREE)) {
                return free(book, view, part, state);
            }
            return of.matches(READING) ? reading(book, view, part, state, Long.parseLong(of)) : recorded(book, view, part, state, of);
        });
        frequency(tell, book, stock, tag, of);
        return of.matches(READING) ? tell.aside("± is one standard uncertainty. Defaults are in the handbook, section 12.").done() : tell.done();
    }

    private static Account.Teller reading(OpenBook book, BookView view, Thing part, State state, long id) throws BookProblem {
        CurrentReading one = state.readings().stream().filter(reading -> reading.id() == id).findFirst().orElseThrow(() -> new BookProblem(
            "reading %d is not one that %s measures now".formatted(id, part.name())));
        String column = one.read().quantity();
        GaugeReference gauges = GaugeReference.of(view);
        Repeats sitting = Repeats.with(one, state.readings());
        Account.Teller tell = Account.tell("Where the %s of %s comes from".formatted(ColumnText.name(column), part.name()),
            ColumnText.value(column, one.read().value().orElseThrow()), one.read().uncertainty().isPresent()
                ? "± " + ColumnText.size(column, one.read().uncertainty().getAsDouble()) : "");
        tell.table("As it was read", ReadingRows.COLUMNS, new ReadingRows(book, view, part, gauges).of(sitting.readings()));
        if (sitting.readings().size() > 1) {
            tell.say("Together: %s ± %s.".formatted(ColumnText.value(column, sitting.mean()), ColumnText.size(column, sitting.uncertainty())))
                .law(Formula.MEAN);
        }
        CurrentReading newest = state.readings().stream().filter(reading -> reading.read().quantity().equals(column))
            .max(CurrentReading.BY_TIME).orElseThrow();
        if (!column.equals(FREQUENCY) && sitting.readings().stream().noneMatch(reading -> reading.id() == newest.id())) {
            tell.warn("A newer reading counts in its place: reading %d, %s.".formatted(newest.id(), ColumnText.value(column, newest.read().value().orElseThrow())));
        }
        carried(tell, column, one, sitting, gauges);
        return tell;
    }

    /** As it stands on the gauge all are carried to. */
    private static void carried(Account.Teller tell, String column, CurrentReading one, Repeats sitting, GaugeReference gauges) {
        if (one.read().gauge().isEmpty() || gauges.reference(column).isEmpty()) {
            tell.say(one.read().gauge().isEmpty() ? "The gauge was not recorded, so it is used as it was read."
                : "No offset of a gauge is accepted for this, so it is used as it was read.");
            return;
        }
        String gauge = one.read().gauge().get();
        String reference = gauges.reference(column).get();
        Reading read = new Reading(sitting.mean(), sitting.uncertainty(), new Taken(Optional.empty(), one.read().gauge(), one.read().by()));
        Reading on = gauges.carried(column, read);
        if (gauge.equals(reference)) {
            tell.say("%s is the gauge that others are carried to, so it is used as it was read.".formatted(gauge));
        } else if (on == read) {
            tell.warn("No accepted offset leads from %s to %s, so it is used as it was read.".formatted(gauge, reference));
        } else {
            tell.say("Used as %s ± %s, carried to %s: %s reads %s more.".formatted(ColumnText.size(column, on.value()),
                ColumnText.size(column, on.standardUncertainty()), reference, gauge, ColumnText.size(column, read.value() - on.value())))
                .law(Formula.CARRIED);
        }
    }

    /** A shaft's readings of frequency together, and what they make in the condition in which shafts are compared. */
    private static void frequency(Account.Teller tell, OpenBook book, Stock stock, String tag, String of) throws BadInput {
        boolean isOne = book.read(view -> {
            Thing part = StockBook.part(view, tag);
            return part.kind() == ThingKind.SHAFT && view.state(part).readings().stream().anyMatch(reading ->
                Long.toString(reading.id()).equals(of) && reading.read().quantity().equals(FREQUENCY));
        });
        if (!isOne) {
            return;
        }
        String bare = tag.replaceFirst("^shaft:", "");
        ProfileService.Answer shaft = ProfileService.of(stock.workshop(), bare, OptionalDouble.empty());
        List<List<String>> rows = new ArrayList<>();
        for (ProfileService.ReadingLine line : shaft.readings()) {
            rows.add(List.of(LengthText.inchesAndSixteenths(line.freeLengthMm()) + " in", HowText.number(line.tipMassG(), "g"),
                line.overGrip() ? "over the grip" : "bare", Integer.toString(line.readings()), HowText.number(line.readCpm(), "cpm"),
                HowText.number(line.uCpm(), "cpm"), Double.isNaN(line.computedCpm()) ? "" : HowText.number(line.computedCpm(), "cpm")));
        }
        tell.table("All its readings, condition by condition", List.of("Free length", "At the tip#", "Butt", "Readings#", "Read#", "±#", "Beam reads#"), rows);
        if (shaft.rawCpm().isPresent()) {
            tell.say("In the condition in which shafts are compared (5 in in the clamp, 205 g at the tip, bare) it reads %s%s.".formatted(
                HowText.number(shaft.rawCpm().getAsDouble(), "cpm"), shaft.rawUCpm().isPresent() ? " ± " + HowText.number(shaft.rawUCpm().getAsDouble(), "cpm") : ""))
                .law(Formula.RAW_FREQUENCY, shaft.grip());
        } else {
            tell.warn("It cannot be carried to the condition in which shafts are compared: its mass, its clamp or free length is not recorded.");
        }
        shaft.notes().forEach(note -> tell.say(note + "."));
    }

    private static Account.Teller recorded(OpenBook book, BookView view, Thing part, State state, String name) throws BookProblem {
        String text = state.fact(name).orElseThrow(() -> new BookProblem("nothing called %s is recorded of %s".formatted(name, part.name())));
        List<List<String>> rows = new ArrayList<>();
        for (KeptEvent event : view.events(part)) {
            String said = event.event().facts().get(name);
            if (said != null) {
                rows.add(List.of(HistoryWords.when(book, event.since()), said.isEmpty() ? "taken back" : ColumnText.value(name, said),
                    event.event().kind().word(), entered(book, event)));
            }
        }
        return Account.tell("Where the %s of %s comes from".formatted(ColumnText.name(name), part.name()), ColumnText.value(name, text), "")
            .say("It was recorded, and is neither read off a gauge nor computed. The last entry counts.")
            .table("What was recorded", List.of("When", "What", "As the part was", "Entered"), rows);
    }

    private static String entered(OpenBook book, KeptEvent event) {
        return HistoryWords.when(book, event.entry().at()) + event.entry().by().map(by -> " by " + by).orElse("")
            + (event.event().sheet().isPresent() ? ", out of a file" : "");
    }

    private static Account.Teller free(OpenBook book, BookView view, Thing part, State state) throws BookProblem {
        if (!part.kind().isCounted() || state.fact(COUNT).isEmpty()) {
            throw new BookProblem("%s is not counted".formatted(part.name()));
        }
        List<List<String>> rows = new ArrayList<>();
        for (KeptEvent event : view.events(part)) {
            if (event.event().facts().containsKey(COUNT) && event.event().kind() != EventKind.PROMISED && event.event().kind() != EventKind.RELEASED) {
                rows.add(List.of(HistoryWords.when(book, event.since()), event.event().facts().get(COUNT), event.event().kind().word(), entered(book, event)));
            }
        }
        return Account.tell("How many of %s are free".formatted(part.name()), "%d of %d".formatted(state.count() - state.promised(), state.count()), "")
            .say("%d there, less %d promised.".formatted(state.count(), state.promised()))
            .points("Promised:", state.promises().stream().map(HowPart::promised).toList())
            .table("What was counted", List.of("When", "Count#", "As", "Entered"), rows);
    }

    private static String promised(Promise promise) {
        return "%d to %s".formatted(promise.count(), promise.text());
    }
}
