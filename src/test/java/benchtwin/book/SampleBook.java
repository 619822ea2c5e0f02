package benchtwin.book;

import benchtwin.samples.TestClock;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * A small book with something of everything, of which one is kept in the test resources for every version of the book.
 *
 * <p>When the book gets a new version, keep the file of the old one and add one of the new: run {@code main} with the file to
 * write, such as {@code src/test/resources/benchtwin/book/version-2.book}, and put what it prints beside it, as
 * {@code version-2.txt}, after reading it line by line.
 */
final class SampleBook {

    private SampleBook() {
    }

    /** Writes the book to the file that is named, and prints what is in it. */
    public static void main(String[] args) throws IOException, BookProblem {
        Path file = Path.of(args[0]);
        Files.deleteIfExists(file);
        Book book = Book.open(Files.createTempDirectory("sample").resolve("sample.book"),
            TestClock.ticking(Instant.parse("2026-05-01T08:00:00Z")));
        fill(book);
        book.backUp(file);
        lines(book).forEach(System.out::println);
    }

    private static NewEvent event(EventKind kind, String... facts) {
        Map<String, String> known = new HashMap<>();
        for (int at = 0; at < facts.length; at += 2) {
            known.put(facts[at], facts[at + 1]);
        }
        return NewEvent.of(kind).with(known);
    }

    private static Moment day(int ofMay) {
        return Moment.on(LocalDate.of(2026, 5, ofMay));
    }

    static void fill(Book book) throws BookProblem {
        Thing player = book.write(Books.JO, "a player", entry -> {
            Thing one = entry.add(ThingKind.PLAYER, "Å. Brännström", event(EventKind.RECEIVED, "hand", "right"));
            entry.note(one, "likes the rib a touch left; \"DROP TABLE note\"");
            return one;
        });
        Thing head = book.write(Books.JO, "parts", entry -> {
            entry.add(ThingKind.SHAFT, "S-7", event(EventKind.RECEIVED, "model", "Reed", "place", "drawer 3"));
            entry.add(ThingKind.SLEEVE, "SL-1", event(EventKind.RECEIVED, "count", "4"));
            entry.add(ThingKind.WEIGHT, "W-10", event(EventKind.RECEIVED, "count", "3"));
            entry.add(ThingKind.GRIP, "G-2", event(EventKind.RECEIVED));
            entry.add(ThingKind.GAUGE, "loft gauge", event(EventKind.RECEIVED));
            return entry.add(ThingKind.HEAD, "H-014", event(EventKind.RECEIVED, "model", "Sedge", "place", "drawer 1").reading(List.of(
                NewReading.of("loft_deg", 9.2, "degrees"), NewReading.of("lie_deg", 85.5, "degrees"),
                NewReading.of("mass_g", 198.4, "grams"))).from(new SheetOrigin("heads", Map.of("tag", "H-014"))));
        });
        correct(book, head);
        record(book);
        Thing job = book.write(Books.JO, "a job", entry -> new JobActs(entry).open(Map.of("player", player.tag(), "what", "twin"),
            "before Thursday"));
        book.write(Books.JO, "its plan", entry -> {
            new JobActs(entry).plan(job, Map.of("plan", "lie 0.6 upright"), List.of(new JobActs.Needed(head, 1),
                new JobActs.Needed(entry.thing(ThingKind.WEIGHT, "W-10").orElseThrow(), 2)));
            return null;
        });
        book.write(Books.JO, "a bend", entry -> {
            entry.add(head, event(EventKind.BENT, "bent_upright_deg", "0.6").at(day(2)).of(job).reading(List.of(
                NewReading.of("loft_deg", 9.3, "degrees"), NewReading.of("lie_deg", 59.1, "degrees"))));
            new PartActs(entry).retire(entry.thing(ThingKind.GRIP, "G-2").orElseThrow(), true, "");
            new PartActs(entry).buildIn(entry.thing(ThingKind.SHAFT, "S-7").orElseThrow(),
                entry.thing(ThingKind.CLUB, "AB-D").orElseThrow(), Optional.of(job));
            return null;
        });
    }

    private static void correct(Book book, Thing head) throws BookProblem {
        List<CurrentReading> read = book.read(view -> view.state(head)).readings();
        book.write(Books.JO, "digits swapped", entry -> {
            entry.add(head, event(EventKind.CORRECTED).reading(List.of(
                NewReading.of("lie_deg", 58.5, "degrees").correcting(read.get(0).id(), "digits swapped"),
                read.get(2).read().takingBack(read.get(2).id(), "weighed with the wrench"))));
            return null;
        });
    }

    private static void record(Book book) throws BookProblem {
        book.write(Books.JO, "a club", entry -> {
            Thing club = entry.add(ThingKind.CLUB, "AB-D", event(EventKind.RECORDED, "player", "Å. Brännström", "head", "H-009",
                "grip", "plain").at(day(1)).reading(List.of(NewReading.of("frequency_cpm", 251.5, "cpm"))));
            entry.add(club, event(EventKind.DESCRIBED, "grip", "ribbed").at(day(2)));
            return null;
        });
    }

    /** Everything a book of this kind shows, a line a thing and a line a note. */
    static List<String> lines(Book book) throws BookProblem {
        return book.read(view -> {
            List<String> lines = new ArrayList<>();
            for (ThingKind kind : ThingKind.values()) {
                for (StateOf one : view.states(kind)) {
                    State state = one.state();
                    lines.add("%s: %s %s %s%s%s%s, %d events".formatted(one.thing().name(), state.standing().word(), state.facts(),
                        readings(state.readings()),
                        state.promises().isEmpty() ? "" : ", promised to " + state.promises().stream()
                            .map(promise -> promise.count() + " × " + promise.text()).collect(Collectors.joining(", ")),
                        state.club().map(club -> ", in club " + club).orElse(""),
                        state.accepted().map(was -> ", accepted %s %s".formatted(was.since().text(), readings(was.readings())))
                            .orElse(""), view.events(one.thing()).size()));
                    view.notes(one.thing()).forEach(note -> lines.add("  %s, %s: %s".formatted(note.entry().at().text(),
                        note.entry().by().orElse("nobody"), note.text())));
                }
            }
            return lines;
        });
    }

    private static String readings(List<CurrentReading> readings) {
        return readings.stream().map(one -> "%s %s".formatted(one.read().quantity(), one.read().value().orElseThrow()))
            .collect(Collectors.joining(", ", "[", "]"));
    }
}
