package benchtwin.bench;

import benchtwin.book.BookProblem;
import benchtwin.book.BookView;
import benchtwin.book.ThingKind;
import benchtwin.club.Grip;
import benchtwin.club.Head;
import benchtwin.club.Inventory;
import benchtwin.club.RecordedClub;
import benchtwin.club.Shaft;
import benchtwin.club.Sleeve;
import benchtwin.stock.Fault;
import benchtwin.stock.InventoryRead;
import benchtwin.stock.InventoryReader;
import benchtwin.stock.StockFiles;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * The stock as read from files, with what was odd about them.
 * @param inventory the parts and clubs
 * @param remarks   warnings, faults of rows that were left out, unknown columns; one line each
 * @param way       how who asks of it came in
 */
public record Workshop(Inventory inventory, List<String> remarks, WayIn way) {

    /**
     * Reads the stock.
     * @param files        which files
     * @param goodRowsOnly whether the good rows are taken when others have faults
     * @return the workshop
     * @throws BadInput with every fault, when a file is bad and the good rows were not asked for
     */
    public static Workshop load(StockFiles files, boolean goodRowsOnly) throws BadInput {
        return of(InventoryReader.read(files, goodRowsOnly), WayIn.LINE);
    }

    /**
     * The stock as it was read.
     * @param read what was read
     * @param way  how who asks of it came in
     * @return the workshop
     * @throws BadInput with every fault, when nothing was taken
     */
    static Workshop of(InventoryRead read, WayIn way) throws BadInput {
        if (read.inventory().isEmpty()) {
            List<String> messages = new ArrayList<>(read.faults().stream().map(Fault::text).toList());
            more(messages, read.faultCount() - read.faults().size(), "faults");
            messages.add("Nothing was read. " + ToDo.GOOD_ROWS.in(way));
            throw new BadInput(messages);
        }
        return ofGoodRows(read, way);
    }

    /** The good rows of what was read; nothing when there are none. */
    static Workshop ofGoodRows(InventoryRead read, WayIn way) {
        List<String> remarks = new ArrayList<>();
        read.faults().forEach(fault -> remarks.add("left out: " + fault.text()));
        more(remarks, read.faultCount() - read.faults().size(), "faults");
        read.warnings().forEach(warning -> remarks.add(warning.text()));
        more(remarks, read.warningCount() - read.warnings().size(), "warnings");
        read.unknownColumns().forEach((file, columns) -> remarks.add(
            "%s: columns not known here, kept as they are: %s".formatted(file, String.join(", ", columns))));
        return new Workshop(read.inventory().orElse(Inventory.EMPTY), List.copyOf(remarks), way);
    }

    /**
     * The stock as the book has it.
     * @param book    the book
     * @param forJob  the job that is planned: what is promised to it is free for it
     * @param asFound whether clubs are taken as they measure now, not as they should
     * @return the workshop
     * @throws BadInput when the book cannot be read, or there is no such job that is neither done nor called off
     */
    public static Workshop of(OpenBook book, Optional<String> forJob, boolean asFound) throws BadInput {
        return of(book.read(view -> StockInventory.of(book, view, open(view, forJob), asFound, CloseLook.AT_ALL)), book.way());
    }

    /**
     * The stock as the book has it, as far as a question about one club goes: what the book says of parts and clubs that are
     * out of the question, whatever they measure, is not read to the end. Answers about that club are the same as from all of it.
     * @param book    the book
     * @param club    the club's tag
     * @param parts   tags of further parts the question names
     * @param forJob  the job that is planned: what is promised to it is free for it
     * @param asFound whether clubs are taken as they measure now, not as they should, because one is to be changed: then any
     *                grip may come into question
     * @return the workshop
     * @throws BadInput when the book cannot be read
     */
    public static Workshop about(OpenBook book, String club, Set<String> parts, Optional<String> forJob, boolean asFound)
        throws BadInput {
        return of(book.read(view -> StockInventory.of(book, view, open(view, forJob), asFound, view.thing(ThingKind.CLUB, club)
            .map(thing -> CloseLook.at(view.text(thing), parts, asFound)).orElse(CloseLook.AT_ALL))), book.way());
    }

    /** The job's number as the book has it; a job that is over cannot be planned. */
    private static Optional<String> open(BookView view, Optional<String> forJob) throws BookProblem {
        return forJob.isEmpty() ? forJob : Optional.of(JobBook.needOpen(view, forJob.get()).tag());
    }

    /** What is to be done, in the words of the way who asks came in. */
    String asks(ToDo what, Object... values) {
        return what.in(way, values);
    }

    static void more(List<String> lines, int count, String what) {
        if (count > 0) {
            lines.add("and %d more %s".formatted(count, what));
        }
    }

    /**
     * A recorded club.
     * @param tag its tag
     * @return the club
     * @throws BadInput naming the nearest three tags
     */
    public RecordedClub club(String tag) throws BadInput {
        return find("club", tag, inventory::club, inventory.clubs().stream().map(RecordedClub::tag).toList());
    }

    /**
     * A head.
     * @param tag its tag
     * @return the head
     * @throws BadInput naming the nearest three tags
     */
    public Head head(String tag) throws BadInput {
        return find("head", tag, inventory::head, inventory.heads().stream().map(Head::tag).toList());
    }

    /**
     * A shaft.
     * @param tag its tag
     * @return the shaft
     * @throws BadInput naming the nearest three tags
     */
    public Shaft shaft(String tag) throws BadInput {
        return find("shaft", tag, inventory::shaft, inventory.shafts().stream().map(Shaft::tag).toList());
    }

    /**
     * A grip.
     * @param tag its tag
     * @return the grip
     * @throws BadInput naming the nearest three tags
     */
    public Grip grip(String tag) throws BadInput {
        return find("grip", tag, inventory::grip, inventory.grips().stream().map(Grip::tag).toList());
    }

    /**
     * A sleeve.
     * @param name its name
     * @return the sleeve
     * @throws BadInput naming the nearest three
     */
    public Sleeve sleeve(String name) throws BadInput {
        return find("sleeve", name, inventory::sleeve, inventory.sleeves().stream().map(Sleeve::name).toList());
    }

    /** The tag of a head or a shaft as the stock writes it. */
    String headOrShaft(String typed) throws BadInput {
        List<String> tags = Stream.concat(inventory.heads().stream().map(Head::tag), inventory.shafts().stream().map(Shaft::tag)).toList();
        return find("head or shaft", typed, tag -> Optional.of(tag).filter(tags::contains), tags);
    }

    private static <T> T find(String kind, String tag, Function<String, Optional<T>> find, List<String> tags)
        throws BadInput {
        Optional<T> found = find.apply(tag).or(() ->
            tags.stream().filter(tag::equalsIgnoreCase).findFirst().flatMap(find));
        if (found.isPresent()) {
            return found.get();
        }
        String nearest = NearNames.of(tag, tags);
        throw new BadInput(tags.isEmpty() ? "no %s %s: no file with %ss was given".formatted(kind, tag, kind)
            : "no %s is tagged %s; nearest are %s".formatted(kind, tag, nearest));
    }
}
