package benchtwin.samples;

import benchtwin.book.Author;
import benchtwin.book.Book;
import benchtwin.book.BookEntry;
import benchtwin.book.BookProblem;
import benchtwin.book.ClubActs;
import benchtwin.book.CurrentReading;
import benchtwin.book.EventKind;
import benchtwin.book.Moment;
import benchtwin.book.NewEvent;
import benchtwin.book.NewReading;
import benchtwin.book.Thing;
import benchtwin.book.ThingKind;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A year at the bench, week by week: clubs read again and again on several gauges, now and then a reading put right. */
final class SeasonYear {

    private static final int WEEKS = 52;
    private static final int FAVOURITES_SITTINGS = 14;
    /** Readings of a sitting on average, for planning how many there are. */
    private static final double READ_AT_ONCE = 8.5;
    private static final double CORRECTED_SHARE = 0.004;
    private static final double NOTED_SHARE = 0.01;

    private final Draw draw;
    private final SeasonStock stock;
    private final Book book;
    private final Author author;
    private final TestClock clock;
    private final Map<String, Thing> clubs = new HashMap<>();
    private int left;

    SeasonYear(Draw draw, SeasonStock stock, Book book, Author author, TestClock clock) {
        this.draw = draw;
        this.stock = stock;
        this.book = book;
        this.author = author;
        this.clock = clock;
    }

    /** Enters so many readings more, and whatever else happens in a year. */
    void run(int readings) throws BookProblem {
        left = readings;
        book.write(author, "the season's gauges and players", entry -> {
            for (String gauge : SeasonReadings.gauges()) {
                if (entry.thing(ThingKind.GAUGE, gauge).isEmpty()) {
                    entry.add(ThingKind.GAUGE, gauge, NewEvent.of(EventKind.RECEIVED));
                }
            }
            return players(entry);
        });
        List<List<SeasonClubs.Club>> weeks = weeks();
        SeasonParts parts = new SeasonParts(draw.of("parts"), stock);
        for (int week = 0; week < WEEKS; week++) {
            LocalDate monday = SeasonBook.FIRST_DAY.plusWeeks(week);
            clock.set(SeasonBook.evening(monday.plusDays(6)));
            List<SeasonClubs.Club> due = weeks.get(week);
            int number = week;
            left -= book.write(author, "parts of week " + (week + 1), entry -> parts.week(entry, number, WEEKS, monday));
            book.write(author, "clubs of week " + (week + 1), entry -> {
                for (SeasonClubs.Club club : due) {
                    sitting(entry, club, monday.plusDays(draw.random().nextInt(6)));
                }
                return null;
            });
        }
        book.write(author, "the last week", entry -> {
            for (int i = 0; left > 0; i = (i + 1) % stock.clubs().all().size()) {
                sitting(entry, stock.clubs().all().get(i), clock.instant().atZone(clock.getZone()).toLocalDate());
            }
            return null;
        });
    }

    private Object players(BookEntry entry) throws BookProblem {
        for (String player : stock.clubs().players()) {
            Thing thing = entry.add(ThingKind.PLAYER, player, NewEvent.of(EventKind.RECEIVED).with(Map.of("hand", "right")));
            if (draw.chance(0.3)) {
                entry.note(thing, draw.pick(List.of("likes the rib a touch left", "wants to hear before anything is bent",
                    "asks for the old tape again")));
            }
        }
        return null;
    }

    /** Every club once in the first weeks; then more often, the favourite most of all. */
    private List<List<SeasonClubs.Club>> weeks() {
        List<List<SeasonClubs.Club>> weeks = new ArrayList<>();
        for (int week = 0; week < WEEKS; week++) {
            weeks.add(new ArrayList<>());
        }
        List<SeasonClubs.Club> all = stock.clubs().all();
        for (int i = 0; i < all.size(); i++) {
            weeks.get(i * 4 / all.size()).add(all.get(i));
        }
        for (int i = 0; i < FAVOURITES_SITTINGS; i++) {
            weeks.get(4 + i * 3).add(all.get(0));
        }
        int more = (int) (left / READ_AT_ONCE) - all.size() - FAVOURITES_SITTINGS;
        for (int i = 0; i < more; i++) {
            weeks.get(4 + draw.random().nextInt(WEEKS - 4)).add(draw.pick(all));
        }
        return weeks;
    }

    private void sitting(BookEntry entry, SeasonClubs.Club club, LocalDate day) throws BookProblem {
        if (left == 0) {
            return;
        }
        Thing thing = clubs.get(club.tag());
        boolean first = thing == null;
        if (first) {
            thing = entry.add(ThingKind.CLUB, club.tag(), NewEvent.of(EventKind.RECEIVED).at(Moment.on(day))
                .with(club.lasting()));
            clubs.put(club.tag(), thing);
        } else if (draw.chance(CORRECTED_SHARE)) {
            correct(entry, thing);
        }
        List<NewReading> readings = new SeasonReadings(draw, club, day).all();
        List<NewReading> kept = readings.subList(0, Math.min(left, readings.size()));
        left -= kept.size();
        if (first) {
            Map<String, String> facts = new HashMap<>(club.parts());
            facts.put("state", draw.chance(0.2) ? "backup" : "in play");
            new ClubActs(entry).enter(thing, NewEvent.of(EventKind.RECORDED).at(Moment.on(day)).with(facts).reading(kept));
        } else {
            NewEvent event = NewEvent.of(draw.chance(0.15) ? EventKind.FOUND : EventKind.RECORDED).at(Moment.on(day)).reading(kept);
            entry.add(thing, draw.chance(0.05) ? event.saying("after the second round") : event);
        }
        if (draw.chance(NOTED_SHARE)) {
            entry.note(thing, draw.pick(List.of("sits a little shut", "ball flight lower than the backup", "ferrule came loose")));
        }
    }

    private void correct(BookEntry entry, Thing club) throws BookProblem {
        Optional<CurrentReading> wrong = entry.state(club).readings().stream().findFirst();
        if (wrong.isPresent() && left > 1) {
            NewReading read = wrong.get().read();
            double right = Draw.round(read.value().orElseThrow() + 0.1, 1);
            entry.add(club, NewEvent.of(EventKind.CORRECTED).at(wrong.get().since()).saying("misread").reading(List.of(
                new NewReading(read.quantity(), java.util.OptionalDouble.of(right), read.uncertainty(), read.unit(),
                    read.condition(), read.gauge(), read.station(), read.measuredAt(), read.by(), read.note(), read.corrects())
                    .correcting(wrong.get().id(), "misread"))));
            left--;
        }
    }
}
