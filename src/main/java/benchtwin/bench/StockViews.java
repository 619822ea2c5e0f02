package benchtwin.bench;

import benchtwin.book.BookCheck;
import benchtwin.book.CurrentReading;
import benchtwin.book.Note;
import benchtwin.book.Promise;
import benchtwin.book.Standing;
import benchtwin.book.State;
import benchtwin.book.StateOf;
import benchtwin.book.StateText;
import benchtwin.book.Thing;
import benchtwin.book.ThingKind;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** Finds parts in the book, shows one, counts them, and proves that they stand as their events say. */
public final class StockViews {

    private static final List<String> OF_THE_MODEL = List.of("category", "number", "hand", "model", "port", "mass_g", "fits");

    private StockViews() {
    }

    /**
     * A part as it stands.
     * @param kind     head, shaft and so on
     * @param tag      its tag
     * @param standing in the stock, promised, built in or retired, in words
     * @param club     the club it sits in
     * @param place    where it lies
     * @param count    how many there are: 1 of any but a sleeve or weight; empty where nobody counted them
     * @param facts    what is known of it, by name
     * @param readings what it measures now
     * @param promises to whom it is promised
     */
    public record Part(String kind, String tag, String standing, Optional<String> club, Optional<String> place, OptionalInt count,
                       Map<String, String> facts, List<PartReading> readings, List<String> promises) {

        /**
         * Something known of it.
         * @param name the fact's name
         * @return empty when it is not known
         */
        public Optional<String> fact(String name) {
            return Optional.ofNullable(facts.get(name));
        }

        /**
         * Whether it is a sleeve or a weight, of which there may be several.
         * @return false for a part with its own tag
         */
        public boolean isCounted() {
            return kind.equals(ThingKind.SLEEVE.word()) || kind.equals(ThingKind.WEIGHT.word());
        }

        /**
         * Its tag with its kind before it, which no other part has.
         * @return for instance {@code head:H-014}
         */
        public String fullTag() {
            return kind + ":" + tag;
        }

        /**
         * What it is, in a few words.
         * @return category, number, hand and model of a head and so on, as far as they are known
         */
        public String what() {
            return StockViews.what(isCounted(), facts);
        }
    }

    /**
     * A reading of a part.
     * @param id          its number in the book
     * @param quantity    what, with its unit at the end
     * @param value       what was read
     * @param uncertainty its standard uncertainty, if one is recorded
     * @param condition   how, by name
     * @param gauge       on what
     * @param day         the day it was read, if that was written down
     * @param entered     the day it counts from: when it was read, else when it was entered
     * @param note        anything else, such as that it was worked out and not read
     */
    public record PartReading(long id, String quantity, double value, OptionalDouble uncertainty, Map<String, String> condition,
                              Optional<String> gauge, Optional<String> day, String entered, Optional<String> note) {
    }

    /**
     * A part with what befell it.
     * @param part    how it stands
     * @param history what befell it, oldest first
     * @param notes   notes on it
     */
    public record PartHistory(Part part, List<String> history, List<String> notes) {
    }

    /**
     * Which parts are asked for.
     * @param kinds   words of the kinds wanted; all when empty
     * @param words   each must be in the tag, the place, a fact or a promise
     * @param free    only those that are neither promised, built in nor retired
     * @param retired those that left the stock as well
     */
    public record Asked(List<String> kinds, List<String> words, boolean free, boolean retired) {
    }

    /**
     * How many there are of each model.
     * @param kind     head, shaft and so on
     * @param what     category, number, hand and model, as far as they are known
     * @param free     neither promised, built in nor retired
     * @param promised promised
     * @param builtIn  in clubs
     * @param retired  left the stock
     */
    public record Tally(String kind, String what, int free, int promised, int builtIn, int retired) {
    }

    /**
     * Lists parts.
     * @param book  the book
     * @param asked which
     * @return by kind and tag
     * @throws BadInput when the book cannot be read, or a kind is none
     */
    public static List<Part> list(OpenBook book, Asked asked) throws BadInput {
        return states(book, asked).stream().map(part -> part(book, part)).toList();
    }

    static String what(boolean counted, Map<String, String> facts) {
        return OF_THE_MODEL.stream().filter(name -> facts.containsKey(name) && (counted || !name.equals("mass_g")))
            .map(name -> ColumnText.value(name, facts.get(name))).collect(Collectors.joining(" "));
    }

    private static List<StateOf> states(OpenBook book, Asked asked) throws BadInput {
        List<ThingKind> kinds = kinds(asked.kinds());
        return book.read(view -> {
            List<StateOf> parts = new ArrayList<>();
            for (ThingKind kind : kinds) {
                List<StateOf> ofKind = new ArrayList<>();
                view.eachState(kind, text -> {
                    if (mayBeAsked(asked, text)) {
                        ofKind.add(text.whole());
                    }
                });
                ofKind.stream().filter(part -> PartLine.of(part).isAsked(asked))
                    .sorted(Comparator.comparing(part -> part.thing().tag())).forEach(parts::add);
            }
            return parts;
        });
    }

    /** What can be told without reading all of a state: only parts that may be asked for are read whole. */
    private static boolean mayBeAsked(Asked asked, StateText part) {
        return (asked.retired() || part.standing() != Standing.RETIRED) && (!asked.free() || part.standing() == Standing.THERE)
            && (part.isPromised() || asked.words().stream().allMatch(part::says));
    }

    /** The kinds that are asked for, each once and in order; all when none is named. */
    static List<ThingKind> kinds(List<String> words) throws BadInput {
        List<ThingKind> kinds = new ArrayList<>();
        for (String word : words) {
            kinds.add(kind(word));
        }
        return kinds.isEmpty() ? StockBook.PART_KINDS : kinds.stream().distinct().sorted().toList();
    }

    private static ThingKind kind(String word) throws BadInput {
        String asked = word.strip().toLowerCase(Locale.ROOT);
        String singular = asked.endsWith("s") ? asked.substring(0, asked.length() - 1) : asked;
        return StockBook.PART_KINDS.stream().filter(kind -> kind.word().equals(singular)).findFirst().orElseThrow(() -> new BadInput(
            "\"%s\" is no kind of part; expected one of %s".formatted(word,
                String.join(", ", StockBook.PART_KINDS.stream().map(ThingKind::word).toList()))));
    }

    /**
     * Everything of one part.
     * @param book the book
     * @param tag  its tag; with its kind before a colon where several parts share it: {@code head:H-014}
     * @return the part and what befell it
     * @throws BadInput when there is none, or more than one
     */
    public static PartHistory show(OpenBook book, String tag) throws BadInput {
        return book.read(view -> {
            Thing part = StockBook.part(view, tag);
            return new PartHistory(part(book, new StateOf(part, view.state(part))),
                HistoryWords.of(book, view.events(part)),
                view.notes(part).stream().map(Note::text).toList());
        });
    }

    /**
     * Counts what there is.
     * @param book  the book
     * @param asked which parts; those that left the stock are counted apart
     * @return by kind and model
     * @throws BadInput when the book cannot be read
     */
    public static List<Tally> tally(OpenBook book, Asked asked) throws BadInput {
        return tallied(states(book, new Asked(asked.kinds(), asked.words(), false, true)).stream().map(PartLine::of).toList());
    }

    static List<Tally> tallied(List<PartLine> parts) {
        Map<ThingKind, Map<String, int[]>> tallies = new TreeMap<>();
        for (PartLine part : parts) {
            int[] counts = tallies.computeIfAbsent(part.part().kind(), kind -> new TreeMap<>())
                .computeIfAbsent(part.what(), what -> new int[4]);
            switch (part.standing()) {
                case RETIRED -> counts[3]++;
                case BUILT_IN -> counts[2]++;
                default -> {
                    counts[0] += part.free();
                    counts[1] += part.promised();
                }
            }
        }
        List<Tally> all = new ArrayList<>();
        tallies.forEach((kind, models) -> models.forEach((what, counts) ->
            all.add(new Tally(kind.word(), what, counts[0], counts[1], counts[2], counts[3]))));
        return all;
    }

    /**
     * Whether how every part, club and job stands is what its events say.
     * @param book the book
     * @return what was found
     * @throws BadInput when the book cannot be read
     */
    public static BookCare.Check audit(OpenBook book) throws BadInput {
        return book.read(view -> BookCare.Check.of(BookCheck.derived(view)));
    }

    static Part part(OpenBook book, StateOf part) {
        State state = part.state();
        boolean counted = part.thing().kind().isCounted();
        return new Part(part.thing().kind().word(), part.thing().tag(), standing(state), state.club(), state.fact("place"),
            counted && state.fact("count").isEmpty() ? OptionalInt.empty() : OptionalInt.of(counted ? state.count() : 1),
            state.facts(), state.readings().stream().map(reading -> reading(book, reading)).toList(),
            state.promises().stream().map(StockViews::promise).toList());
    }

    private static String promise(Promise promise) {
        return promise.count() > 1 ? "%s (%d)".formatted(promise.text(), promise.count()) : promise.text();
    }

    private static String standing(State state) {
        return switch (state.standing()) {
            case BUILT_IN -> Standing.BUILT_IN.word();
            case RETIRED -> Standing.RETIRED.word();
            default -> state.promises().isEmpty() ? "in stock" : "promised";
        };
    }

    private static PartReading reading(OpenBook book, CurrentReading reading) {
        return new PartReading(reading.id(), reading.read().quantity(), reading.read().value().orElseThrow(),
            reading.read().uncertainty(), reading.read().condition(), reading.read().gauge(),
            reading.read().measuredAt().map(moment -> moment.day(book.zone()).toString()),
            reading.since().day(book.zone()).toString(), reading.read().note());
    }
}
