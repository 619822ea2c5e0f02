package benchtwin.bench;

import benchtwin.book.BookEntry;
import benchtwin.book.BookProblem;
import benchtwin.book.ClubActs;
import benchtwin.book.EventKind;
import benchtwin.book.JobActs;
import benchtwin.book.NewEvent;
import benchtwin.book.NewReading;
import benchtwin.book.PartActs;
import benchtwin.book.Thing;
import benchtwin.book.ThingKind;
import benchtwin.samples.TestClock;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;

/** Whatever can befall a workshop's parts and clubs, at random, refused acts and rows that make no sense among it. */
final class RandomActs {

    private static final List<ThingKind> STOCK = List.of(ThingKind.HEAD, ThingKind.SHAFT, ThingKind.GRIP, ThingKind.SLEEVE, ThingKind.WEIGHT);

    private final OpenBook book;
    private final TestClock clock;
    private final Random random;
    private int made;

    RandomActs(OpenBook book, TestClock clock, long seed) {
        this.book = book;
        this.clock = clock;
        this.random = new Random(seed);
    }

    /** One entry of a few events; nothing where one of them is refused. */
    void act() {
        clock.on(Duration.ofMinutes(random.nextInt(8) == 0 ? 1_500 : random.nextInt(90)));
        try {
            book.write("at random", entry -> {
                for (int events = random.nextInt(3); events >= 0; events--) {
                    one(entry);
                }
                return null;
            });
        } catch (BadInput refused) {
            // an act that cannot be leaves the book as it was
        }
    }

    private void one(BookEntry entry) throws BookProblem {
        PartActs parts = new PartActs(entry);
        Thing part = any(entry, pick(STOCK));
        switch (random.nextInt(17)) {
            case 0 -> parts.move(part, pick(List.of("van", "drawer 7", "Bank \"A\"")));
            case 1 -> parts.promise(part, Optional.empty(), pick(List.of("Ms Fern", "Mr Heath")), 1);
            case 2 -> parts.release(part, Optional.empty(), "not wanted");
            case 3 -> parts.retire(part, random.nextBoolean(), "dropped");
            case 4 -> parts.giveBack(part, "found again");
            case 5 -> parts.count(any(entry, pick(List.of(ThingKind.SLEEVE, ThingKind.WEIGHT))), random.nextInt(9));
            case 6 -> parts.buildIn(part, any(entry, ThingKind.CLUB), Optional.empty());
            case 7 -> parts.pull(part, Map.of(), Optional.empty());
            case 8 -> entry.add(any(entry, ThingKind.HEAD), NewEvent.of(EventKind.MEASURED).reading(List.of(
                NewReading.of("loft_deg", 8 + random.nextInt(400) / 10.0, "degrees"))));
            case 9 -> entry.add(any(entry, ThingKind.SHAFT), NewEvent.of(EventKind.MEASURED).reading(List.of(
                NewReading.of("frequency_cpm", 200 + random.nextInt(100), "cycles per minute"))));
            case 10 -> entry.add(part, NewEvent.of(EventKind.DESCRIBED).with(Map.of(pick(List.of("model", "hand", "mass_g", "tip_mm", "fits")),
                pick(List.of("Alder", "sideways", "-3", "", "8.5")))));
            case 11 -> club(entry, any(entry, ThingKind.CLUB));
            case 12 -> newClub(entry);
            case 13 -> entry.add(any(entry, pick(List.of(ThingKind.HEAD, ThingKind.GRIP))), NewEvent.of(EventKind.BENT).with(
                Map.of("bent_upright_deg", "0.5")));
            case 14 -> job(entry, part);
            case 15 -> entry.note(part, "looks new");
            default -> gauge(entry);
        }
    }

    private void club(BookEntry entry, Thing club) throws BookProblem {
        new ClubActs(entry).enter(club, NewEvent.of(pick(List.of(EventKind.RECORDED, EventKind.FOUND))).with(Map.of("state",
            pick(List.of("in play", "damaged", "backup", "no such state")))).reading(List.of(
                NewReading.of("swing_weight_points", 20 + random.nextInt(8), "points"))));
    }

    private void newClub(BookEntry entry) throws BookProblem {
        entry.add(ThingKind.CLUB, "NEW-" + ++made, NewEvent.of(EventKind.RECEIVED).with(Map.of("player", "N. Oakes", "category", "driver",
            "hand", "right")));
        entry.add(ThingKind.HEAD, "NEW-H-" + made, NewEvent.of(EventKind.RECEIVED).with(Map.of("model", "Alder", "category", "driver", "hand",
            "right", "adjust", "none", "bore_mm", "8.5", "bore_kind", "parallel")));
    }

    private void job(BookEntry entry, Thing part) throws BookProblem {
        JobActs acts = new JobActs(entry);
        Thing job = acts.open(Map.of("what", "twin", "player", "N. Oakes"), "");
        acts.plan(job, Map.of(), List.of(new JobActs.Needed(part, 1)));
        if (random.nextBoolean()) {
            acts.callOff(job, "sold");
        }
    }

    /** Seldom, because then everything is read anew. */
    private void gauge(BookEntry entry) throws BookProblem {
        if (random.nextInt(4) == 0) {
            entry.add(ThingKind.GAUGE, "scale " + ++made, NewEvent.of(EventKind.RECEIVED).with(Map.of("uncertainty_mass_g", "0.2")));
        } else {
            entry.add(any(entry, ThingKind.PLAYER), NewEvent.of(EventKind.DESCRIBED).with(Map.of("tolerance_loft", "0.4")));
        }
    }

    private Thing any(BookEntry entry, ThingKind kind) {
        return pick(entry.things(kind));
    }

    private <T> T pick(List<T> from) {
        return from.get(random.nextInt(from.size()));
    }
}
