package benchtwin.book;

import benchtwin.samples.TestClock;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import java.util.Random;

/** Acts at random, lawful or refused, with hostile texts and awkward numbers, at a clock that jumps and is put back at times. */
final class RandomBook {

    private static final List<String> FACTS = List.of("model", "place", "condition", "state", "finish", "it's \"a\" fact", "{", "\0");
    private static final List<String> QUANTITIES = List.of("loft_deg", "lie_deg", "mass_g", "frequency_cpm", "length_mm");

    private final Random random;
    private final TestClock clock = TestClock.at(Instant.parse("2026-03-01T08:00:00Z"));
    private int done;
    private int refused;

    RandomBook(long seed) {
        random = new Random(seed);
    }

    Clock clock() {
        return clock;
    }

    int done() {
        return done;
    }

    int refused() {
        return refused;
    }

    /** Several acts, each an entry of its own. */
    void act(Book book, int acts) throws BookProblem {
        for (int act = 0; act < acts; act++) {
            clock.on(Duration.ofMinutes(random.nextInt(20) == 0 ? -600 : random.nextInt(900)));
            Author author = new Author(random.nextBoolean() ? Optional.of(HostileTexts.any(random)) : Optional.empty(), "test build");
            try {
                book.write(author, HostileTexts.any(random), entry -> {
                    for (int events = random.nextInt(6); events >= 0; events--) {
                        one(entry);
                    }
                    return null;
                });
                done++;
            } catch (BookProblem told) {
                refused++;
            }
        }
    }

    private void one(BookEntry entry) throws BookProblem {
        List<Thing> things = new ArrayList<>();
        for (ThingKind kind : ThingKind.values()) {
            things.addAll(entry.things(kind));
        }
        if (things.size() < 6 || random.nextInt(4) == 0) {
            ThingKind kind = ThingKind.values()[random.nextInt(ThingKind.values().length)];
            if (kind == ThingKind.JOB) {
                new JobActs(entry).open(facts(), HostileTexts.any(random));
            } else {
                entry.add(kind, HostileTexts.any(random), event(EventKind.RECEIVED));
            }
            return;
        }
        Thing thing = things.get(random.nextInt(things.size()));
        switch (random.nextInt(8)) {
            case 0 -> entry.note(thing, HostileTexts.any(random));
            case 1 -> correct(entry, thing);
            case 2, 3, 4 -> act(entry, thing, things);
            default -> entry.add(thing, event(kind(thing)));
        }
    }

    private EventKind kind(Thing thing) {
        return switch (thing.kind()) {
            case CLUB -> random.nextBoolean() ? EventKind.RECORDED : EventKind.FOUND;
            case HEAD -> random.nextBoolean() ? EventKind.BENT : EventKind.GROUND;
            case GAUGE -> EventKind.CHECKED;
            default -> random.nextBoolean() ? EventKind.MEASURED : EventKind.DESCRIBED;
        };
    }

    private void act(BookEntry entry, Thing thing, List<Thing> things) throws BookProblem {
        List<Thing> jobs = things.stream().filter(one -> one.kind() == ThingKind.JOB).toList();
        Optional<Thing> job = jobs.isEmpty() ? Optional.empty() : Optional.of(jobs.get(random.nextInt(jobs.size())));
        List<Thing> clubs = things.stream().filter(one -> one.kind() == ThingKind.CLUB).toList();
        PartActs parts = new PartActs(entry);
        if (thing.kind() == ThingKind.JOB) {
            JobActs acts = new JobActs(entry);
            switch (random.nextInt(6)) {
                case 0 -> acts.handOver(thing, facts(), HostileTexts.any(random));
                case 1 -> acts.callOff(thing, HostileTexts.any(random));
                default -> acts.plan(thing, facts(), things.stream().filter(one -> one.kind().isPart() && random.nextInt(3) == 0)
                    .map(one -> new JobActs.Needed(one, 1)).limit(2).toList());
            }
        } else if (thing.kind().isPart()) {
            switch (random.nextInt(8)) {
                case 0 -> parts.move(thing, HostileTexts.any(random));
                case 1 -> parts.release(thing, random.nextBoolean() ? job : Optional.empty(), HostileTexts.any(random));
                case 2 -> parts.retire(thing, random.nextInt(3) == 0, HostileTexts.any(random));
                case 3 -> parts.giveBack(thing, HostileTexts.any(random));
                case 4 -> parts.count(thing, random.nextInt(9));
                case 5 -> parts.buildIn(thing, clubs.isEmpty() ? thing : clubs.get(0), job);
                case 6 -> parts.pull(thing, facts(), job);
                default -> parts.promise(thing, random.nextBoolean() ? job : Optional.empty(), HostileTexts.any(random),
                    thing.kind().isCounted() ? random.nextInt(4) : 1);
            }
        }
    }

    private void correct(BookEntry entry, Thing thing) throws BookProblem {
        List<CurrentReading> read = entry.state(thing).readings();
        if (read.isEmpty()) {
            return;
        }
        CurrentReading wrong = read.get(random.nextInt(read.size()));
        NewReading right = random.nextInt(3) == 0 ? wrong.read().takingBack(wrong.id(), HostileTexts.any(random))
            : reading(wrong.read().quantity()).correcting(wrong.id(), HostileTexts.any(random));
        entry.add(thing, new NewEvent(EventKind.CORRECTED, moment(), Optional.empty(), Map.of(), Optional.of(
            HostileTexts.any(random)), List.of(right), Optional.empty()));
    }

    private NewEvent event(EventKind kind) {
        List<NewReading> readings = new ArrayList<>();
        for (int more = random.nextInt(4); more > 0; more--) {
            readings.add(reading(QUANTITIES.get(random.nextInt(QUANTITIES.size()))));
        }
        Map<String, String> facts = facts();
        if (kind == EventKind.BENT) {
            facts.put("bent_%s_deg".formatted(random.nextBoolean() ? "upright" : "back"), Integer.toString(random.nextInt(3)));
        }
        return new NewEvent(kind, moment(), Optional.empty(), facts, random.nextBoolean() ? Optional.empty()
            : Optional.of(HostileTexts.any(random)), readings, random.nextInt(3) > 0 ? Optional.empty()
            : Optional.of(new SheetOrigin(HostileTexts.any(random), facts())));
    }

    private NewReading reading(String quantity) {
        return new NewReading(quantity, OptionalDouble.of(HostileTexts.number(random)),
            random.nextBoolean() ? OptionalDouble.empty() : OptionalDouble.of(Math.abs(HostileTexts.number(random))), "unit",
            random.nextBoolean() ? Map.of() : Map.of("how", HostileTexts.any(random)), text(), text(), moment(), text(), text(),
            OptionalLong.empty());
    }

    private Optional<String> text() {
        return random.nextBoolean() ? Optional.empty() : Optional.of(HostileTexts.any(random));
    }

    private Map<String, String> facts() {
        Map<String, String> facts = new HashMap<>();
        for (int more = random.nextInt(4); more > 0; more--) {
            facts.put(FACTS.get(random.nextInt(FACTS.size())), random.nextInt(6) == 0 ? "" : HostileTexts.any(random));
        }
        return facts;
    }

    private Optional<Moment> moment() {
        return switch (random.nextInt(3)) {
            case 0 -> Optional.empty();
            case 1 -> Optional.of(Moment.on(LocalDate.of(2026, 2, 1).plusDays(random.nextInt(60))));
            default -> Optional.of(Moment.at(Instant.parse("2026-02-01T00:00:00Z").plusSeconds(random.nextInt(5_000_000))));
        };
    }
}
