package benchtwin.bench;

import benchtwin.book.BookCheck;
import benchtwin.book.BookProblem;
import benchtwin.book.BookView;
import benchtwin.book.CurrentReading;
import benchtwin.book.Note;
import benchtwin.book.PartActs;
import benchtwin.book.Promise;
import benchtwin.book.Standing;
import benchtwin.book.State;
import benchtwin.book.StateOf;
import benchtwin.book.StateText;
import benchtwin.book.Thing;
import benchtwin.book.ThingKind;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** The parts in the book: finding them, and what is done to them. */
public final class StockBook {

    private static final List<ThingKind> PART_KINDS = Arrays.stream(ThingKind.values()).filter(ThingKind::isPart).toList();

    private StockBook() {
    }

    /**
     * A part as it stands.
     * @param kind     head, shaft and so on
     * @param tag      its tag
     * @param standing in the stock, promised, in a club or retired, in words
     * @param place    where it lies
     * @param count    how many there are, 1 but for sleeves and weights
     * @param facts    what is known of it, by name
     * @param readings what it measures now
     * @param promises to whom it is promised
     */
    public record Part(String kind, String tag, String standing, Optional<String> place, int count,
                       Map<String, String> facts, List<PartReading> readings, List<String> promises) {

        /**
         * Something known of it.
         * @param name the fact's name
         * @return empty when it is not known
         */
        public Optional<String> fact(String name) {
            return Optional.ofNullable(facts.get(name));
        }
    }

    /**
     * A reading of a part.
     * @param id          its number in the book
     * @param quantity    what, with its unit at the end
     * @param value       what was read
     * @param uncertainty its standard uncertainty; NaN where none is recorded
     * @param condition   how, by name
     * @param gauge       on what
     * @param day         the day it counts from
     */
    public record PartReading(long id, String quantity, double value, double uncertainty, Map<String, String> condition,
                              Optional<String> gauge, String day) {
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
     * @param words   each must be in the tag, the place or a fact
     * @param free    only those that are neither promised, built in nor retired
     * @param retired those that left the stock as well
     */
    public record Asked(List<String> kinds, List<String> words, boolean free, boolean retired) {
    }

    /**
     * Lists parts.
     * @param book  the book
     * @param asked which
     * @return by kind and tag
     * @throws BadInput when the book cannot be read, or a kind is none
     */
    public static List<Part> list(OpenBook book, Asked asked) throws BadInput {
        List<ThingKind> kinds = new ArrayList<>();
        for (String word : asked.kinds()) {
            kinds.add(kind(word));
        }
        return book.read(view -> {
            List<Part> parts = new ArrayList<>();
            for (ThingKind kind : kinds.isEmpty() ? PART_KINDS : kinds) {
                List<Part> ofKind = new ArrayList<>();
                view.eachState(kind, text -> {
                    if (isAsked(asked, text)) {
                        ofKind.add(part(book, text.whole()));
                    }
                });
                ofKind.sort(Comparator.comparing(Part::tag));
                parts.addAll(ofKind);
            }
            return parts;
        });
    }

    /** Whether it is one of those asked for; its readings are read only then. */
    private static boolean isAsked(Asked asked, StateText part) {
        return (asked.retired() || part.standing() != Standing.RETIRED) && (!asked.free() || isFree(part))
            && asked.words().stream().allMatch(word -> speaksOf(part, word));
    }

    private static ThingKind kind(String word) throws BadInput {
        String singular = word.toLowerCase(Locale.ROOT).replaceAll("s$", "");
        return PART_KINDS.stream().filter(kind -> kind.word().equals(singular)).findFirst().orElseThrow(() -> new BadInput(
            "\"%s\" is no kind of part; expected one of %s".formatted(word,
                String.join(", ", PART_KINDS.stream().map(ThingKind::word).toList()))));
    }

    private static boolean isFree(StateText part) {
        return part.standing() == Standing.THERE && (!part.isPromised() ? count(part.facts()) > 0
            : part.state().promised() < part.state().count());
    }

    private static int count(Map<String, String> facts) {
        return Integer.parseInt(facts.getOrDefault("count", "1"));
    }

    private static boolean speaksOf(StateText part, String word) {
        String asked = word.toLowerCase(Locale.ROOT);
        return part.thing().tag().toLowerCase(Locale.ROOT).contains(asked)
            || part.facts().values().stream().anyMatch(text -> text.toLowerCase(Locale.ROOT).contains(asked))
            || part.isPromised() && promises(part.state()).stream().anyMatch(text -> text.toLowerCase(Locale.ROOT).contains(asked));
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
            Thing part = part(view, tag);
            return new PartHistory(part(book, new StateOf(part, view.state(part))),
                view.events(part).stream().map(event -> HistoryWords.of(book, event)).toList(),
                view.notes(part).stream().map(Note::text).toList());
        });
    }

    /**
     * Puts parts somewhere else.
     * @param book  the book
     * @param tags  which
     * @param place where
     * @throws BadInput when one is not there or retired; then none is moved
     */
    public static void move(OpenBook book, List<String> tags, String place) throws BadInput {
        acts(book, "stock move", tags, (acts, part) -> acts.move(part, place));
    }

    /**
     * Promises parts.
     * @param book  the book
     * @param tags  which
     * @param job   the job they are for, by number
     * @param whom  for whom, in words
     * @param count how many of a counted part
     * @throws BadInput when one is not free; then none is promised
     */
    public static void reserve(OpenBook book, List<String> tags, Optional<String> job, String whom, int count) throws BadInput {
        actsFor(book, "stock reserve", tags, job, (acts, part, forJob) -> acts.promise(part, forJob, whom, count));
    }

    /**
     * Takes promises back.
     * @param book the book
     * @param tags which parts
     * @param job  only this job's promise, by number
     * @param why  in words
     * @throws BadInput when one is not promised; then none is released
     */
    public static void release(OpenBook book, List<String> tags, Optional<String> job, String why) throws BadInput {
        actsFor(book, "stock release", tags, job, (acts, part, forJob) -> acts.release(part, forJob, why));
    }

    /**
     * Takes parts out of the stock.
     * @param book    the book
     * @param tags    which
     * @param cracked whether they are cracked and so never come back
     * @param why     in words
     * @return promises that lapsed by it, in words
     * @throws BadInput when one is not there or retired already; then none is retired
     */
    public static List<String> retire(OpenBook book, List<String> tags, boolean cracked, String why) throws BadInput {
        List<String> lapsed = new ArrayList<>();
        acts(book, "stock retire", tags, (acts, part) -> {
            for (Promise promise : acts.retire(part, cracked, why)) {
                lapsed.add("%s was promised to %s".formatted(part.name(), promise.text()));
            }
        });
        return lapsed;
    }

    /**
     * Brings retired parts back.
     * @param book the book
     * @param tags which
     * @param why  in words
     * @throws BadInput when one is not retired, or cracked; then none comes back
     */
    public static void giveBack(OpenBook book, List<String> tags, String why) throws BadInput {
        acts(book, "stock return", tags, (acts, part) -> acts.giveBack(part, why));
    }

    /**
     * Puts down how many of counted parts there are.
     * @param book   the book
     * @param counts by tag
     * @throws BadInput when one is not counted or more are promised; then no count is changed
     */
    public static void count(OpenBook book, Map<String, Integer> counts) throws BadInput {
        acts(book, "stock count", List.copyOf(counts.keySet()), (acts, part) -> acts.count(part,
            counts.entrySet().stream().filter(one -> one.getKey().equalsIgnoreCase(part.tag())
                || one.getKey().equalsIgnoreCase(part.kind().word() + ":" + part.tag())).findFirst().orElseThrow().getValue()));
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
     * Counts what there is.
     * @param book  the book
     * @param asked which parts
     * @return by kind and model
     * @throws BadInput when the book cannot be read
     */
    public static List<Tally> tally(OpenBook book, Asked asked) throws BadInput {
        Map<String, int[]> tallies = new TreeMap<>();
        for (Part part : list(book, new Asked(asked.kinds(), asked.words(), false, true))) {
            int[] counts = tallies.computeIfAbsent(part.kind() + "\t" + model(part), key -> new int[4]);
            int promised = part.promises().isEmpty() ? 0 : part.count() == 1 ? 1 : Math.min(part.count(), part.promises().size());
            switch (part.standing()) {
                case "retired" -> counts[3] += 1;
                case "built in" -> counts[2] += 1;
                default -> {
                    counts[1] += promised;
                    counts[0] += part.count() - promised;
                }
            }
        }
        return tallies.entrySet().stream().map(one -> {
            String[] key = one.getKey().split("\t", 2);
            int[] counts = one.getValue();
            return new Tally(key[0], key[1], counts[0], counts[1], counts[2], counts[3]);
        }).toList();
    }

    private static String model(Part part) {
        return String.join(" ", List.of("category", "number", "hand", "model", "port", "fits").stream().map(part::fact)
            .flatMap(Optional::stream).toList());
    }

    /**
     * Whether how every part stands is what its events say.
     * @param book the book
     * @return what was found
     * @throws BadInput when the book cannot be read
     */
    public static BookCare.Check audit(OpenBook book) throws BadInput {
        return book.read(view -> BookCare.Check.of(BookCheck.derived(view)));
    }

    /** Something done to one part. */
    @FunctionalInterface
    private interface Act {
        void on(PartActs acts, Thing part) throws BookProblem;
    }

    /** Something done to one part for a job. */
    @FunctionalInterface
    private interface ActForJob {
        void on(PartActs acts, Thing part, Optional<Thing> job) throws BookProblem;
    }

    private static void acts(OpenBook book, String what, List<String> tags, Act act) throws BadInput {
        actsFor(book, what, tags, Optional.empty(), (acts, part, none) -> act.on(acts, part));
    }

    private static void actsFor(OpenBook book, String what, List<String> tags, Optional<String> job, ActForJob act)
        throws BadInput {
        book.write(what, entry -> {
            Optional<Thing> forJob = job.isEmpty() ? Optional.empty()
                : Optional.of(OpenBook.need(entry, ThingKind.JOB, job.get()));
            PartActs acts = new PartActs(entry);
            for (String tag : tags) {
                act.on(acts, part(entry, tag), forJob);
            }
            return null;
        });
    }

    /** The part a tag names, alone or with its kind before a colon. */
    static Thing part(BookView view, String typed) throws BookProblem {
        for (ThingKind kind : PART_KINDS) {
            String before = kind.word() + ":";
            if (typed.toLowerCase(Locale.ROOT).startsWith(before)) {
                return OpenBook.need(view, kind, typed.substring(before.length()));
            }
        }
        List<Thing> found = view.find(typed).stream().filter(thing -> thing.kind().isPart()).toList();
        List<Thing> exact = found.stream().filter(thing -> thing.tag().equals(typed)).toList();
        List<Thing> meant = exact.isEmpty() ? found : exact;
        if (meant.size() == 1) {
            return meant.get(0);
        }
        if (meant.size() > 1) {
            throw new BookProblem("%s may be %s; say which, such as %s:%s".formatted(typed, String.join(" or ",
                meant.stream().map(Thing::name).toList()), meant.get(0).kind().word(), meant.get(0).tag()));
        }
        List<String> tags = PART_KINDS.stream().flatMap(kind -> view.things(kind).stream()).map(Thing::tag).toList();
        throw new BookProblem(tags.isEmpty() ? "no part %s: the book has no parts yet; benchtwin stock import reads them"
            .formatted(typed) : "no part is tagged %s in the book; nearest are %s".formatted(typed, NearNames.of(typed, tags)));
    }

    private static Part part(OpenBook book, StateOf part) {
        State state = part.state();
        return new Part(part.thing().kind().word(), part.thing().tag(), standing(state), state.fact("place"),
            part.thing().kind().isCounted() ? state.count() : 1, state.facts(),
            state.readings().stream().map(reading -> reading(book, reading)).toList(),
            promises(state));
    }

    private static List<String> promises(State state) {
        return state.promises().stream().map(promise -> promise.count() > 1 ? "%s (%d)".formatted(promise.text(), promise.count())
            : promise.text()).toList();
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
            reading.read().uncertainty().orElse(Double.NaN), reading.read().condition(), reading.read().gauge(),
            reading.since().day(book.zone()).toString());
    }
}
