package benchtwin.bench;

import benchtwin.book.BookProblem;
import benchtwin.book.BookView;
import benchtwin.book.PartActs;
import benchtwin.book.Promise;
import benchtwin.book.Thing;
import benchtwin.book.ThingKind;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** What is done to the parts in the book. */
public final class StockBook {

    static final List<ThingKind> PART_KINDS = Arrays.stream(ThingKind.values()).filter(ThingKind::isPart).toList();

    private StockBook() {
    }

    /**
     * Puts parts somewhere else.
     * @param book  the book
     * @param tags  which
     * @param place where
     * @return their tags as the book has them
     * @throws BadInput when one is not there or retired; then none is moved
     */
    public static List<String> move(OpenBook book, List<String> tags, String place) throws BadInput {
        return acts(book, "stock move", tags, (acts, part) -> acts.move(part, place));
    }

    /**
     * Promises parts.
     * @param book  the book
     * @param tags  which
     * @param job   the job they are for, by number
     * @param whom  for whom, in words
     * @param count how many of a counted part
     * @return their tags as the book has them
     * @throws BadInput when one is not free or the job is over; then none is promised
     */
    public static List<String> reserve(OpenBook book, List<String> tags, Optional<String> job, String whom, int count) throws BadInput {
        return actsFor(book, "stock reserve", tags, job, true, (acts, part, forJob) -> acts.promise(part, forJob, whom, count));
    }

    /**
     * Takes promises back.
     * @param book the book
     * @param tags which parts
     * @param job  only this job's promise, by number
     * @param why  in words
     * @return their tags as the book has them
     * @throws BadInput when one is not promised; then none is released
     */
    public static List<String> release(OpenBook book, List<String> tags, Optional<String> job, String why) throws BadInput {
        return actsFor(book, "stock release", tags, job, false, (acts, part, forJob) -> acts.release(part, forJob, why));
    }

    /**
     * Parts that left the stock.
     * @param tags    their tags as the book has them
     * @param remarks promises that lapsed by it, and clubs they sit in
     */
    public record Retired(List<String> tags, List<String> remarks) {
    }

    /**
     * Takes parts out of the stock.
     * @param book    the book
     * @param tags    which
     * @param cracked whether they are cracked and so never come back
     * @param why     in words
     * @return what came of it
     * @throws BadInput when one is not there or retired already; then none is retired
     */
    public static Retired retire(OpenBook book, List<String> tags, boolean cracked, String why) throws BadInput {
        List<String> remarks = new ArrayList<>();
        return book.write("stock retire", entry -> {
            PartActs acts = new PartActs(entry);
            List<String> done = new ArrayList<>();
            for (String tag : tags) {
                Thing part = part(entry, tag);
                if (cracked && part.kind().isCounted()) {
                    throw new BookProblem("%s is a kind of which there are several: %s"
                        .formatted(part.name(), book.asks(ToDo.COUNT_LEFT, part.tag())));
                }
                entry.state(part).club().ifPresent(club -> remarks.add("%s sits in club %s: %s".formatted(part.name(), club,
                    book.asks(ToDo.CLUB_DAMAGED, club))));
                for (Promise promise : acts.retire(part, cracked, why)) {
                    remarks.add("%s was promised to %s, who needs another".formatted(part.name(), promise.text()));
                }
                done.add(part.tag());
            }
            return new Retired(done, remarks);
        });
    }

    /**
     * Brings retired parts back.
     * @param book the book
     * @param tags which
     * @param why  in words
     * @return their tags as the book has them
     * @throws BadInput when one is not retired, or cracked; then none comes back
     */
    public static List<String> giveBack(OpenBook book, List<String> tags, String why) throws BadInput {
        return acts(book, "stock return", tags, (acts, part) -> acts.giveBack(part, why));
    }

    /**
     * Puts down how many of counted parts there are.
     * @param book   the book
     * @param counts by tag
     * @return the kinds and their counts, in words
     * @throws BadInput when one is not counted or more are promised; then no count is changed
     */
    public static List<String> count(OpenBook book, Map<String, Integer> counts) throws BadInput {
        return book.write("stock count", entry -> {
            PartActs acts = new PartActs(entry);
            List<String> done = new ArrayList<>();
            for (Map.Entry<String, Integer> one : counts.entrySet()) {
                Thing part = part(entry, one.getKey());
                acts.count(part, one.getValue());
                done.add("%d of %s".formatted(one.getValue(), part.tag()));
            }
            return done;
        });
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

    private static List<String> acts(OpenBook book, String what, List<String> tags, Act act) throws BadInput {
        return actsFor(book, what, tags, Optional.empty(), false, (acts, part, none) -> act.on(acts, part));
    }

    private static List<String> actsFor(OpenBook book, String what, List<String> tags, Optional<String> job, boolean open,
                                        ActForJob act) throws BadInput {
        return book.write(what, entry -> {
            Optional<Thing> forJob = job.isEmpty() ? Optional.empty() : Optional.of(open ? JobBook.needOpen(entry, job.get())
                : OpenBook.need(entry, ThingKind.JOB, job.get()));
            PartActs acts = new PartActs(entry);
            List<String> done = new ArrayList<>();
            for (String tag : tags) {
                Thing part = part(entry, tag);
                act.on(acts, part, forJob);
                done.add(part.tag());
            }
            return done;
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
        if (tags.isEmpty()) {
            throw new ToBeDone("no part %s: the book has no parts yet; ".formatted(typed), ToDo.IMPORT_PARTS);
        }
        throw new BookProblem("no part is tagged %s in the book; nearest are %s".formatted(typed, NearNames.of(typed, tags)));
    }
}
